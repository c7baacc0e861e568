import { defineProblems } from './contract';

export const nameProblems = defineProblems('Names, functions and arguments', {
  'unknown-name': {
    means: 'Nothing in the sheet has this name.',
    why: 'A name without a value could only be guessed.',
    remedy: 'Correct the spelling, define the name in a line of its own, or take it from another sheet with `use`.',
    example: 'supply = 240 V\ncurrent = suply / 12 Ω',
  },
  'duplicate-name': {
    means: 'A name is defined more than once.',
    why: 'The order of cells does not matter, so no definition is the later one.',
    remedy: 'Rename or remove all but one.',
    example: 'run = 85 ft\nrun = 62 ft',
  },
  cycle: {
    means: 'A name is needed to work out itself.',
    why: 'Such a circle has no beginning, and going round it would not end.',
    remedy: 'Give one of the names a value of its own, or write the relations as equations below a `solve`.',
    example: 'drop = current * 0.1 Ω\ncurrent = (120 V - drop) / 8 Ω',
  },
  'name-taken': {
    means: 'A function of the sheet has the name of a library function.',
    why: 'A formula that calls it could mean either.',
    remedy: 'Choose another name.',
    example: 'ampacity(x) = x * 0.8',
  },
  'unknown-function': {
    means: 'Nothing by this name can be called.',
    why: 'What a function does is not guessed from its name.',
    remedy: 'Correct the spelling, or define it: `f(x) = …`.',
    example: 'ohms = resistence(12 AWG Cu, 100 ft)',
  },
  'function-not-called': {
    means: 'A function is named without its arguments.',
    why: 'A function by itself is no value.',
    remedy: 'Write its arguments in parentheses, or as fields below it.',
    example: 'ohms = resistance',
  },
  'not-a-function': {
    means: 'Arguments stand behind the name of a value.',
    why: 'A value takes no arguments; a product is written with its sign.',
    remedy: 'Take the parentheses out, or write `*`.',
    example: 'supply = 208 V\npower = supply(3 A)',
  },
  'unknown-field': {
    means: 'A record has no field of this name.',
    why: 'A field that is not there has no value.',
    remedy: 'Correct the spelling; completion lists the fields behind the point.',
    example: 'element = heater(resistance: 11.9 Ω, voltage: 208 V)\nwatts = element.pwer',
  },
  'no-fields': {
    means: 'A field is asked of a value that is no record.',
    why: 'A quantity has nothing inside it.',
    remedy: 'Take the point and the name out, or name the record that has the field.',
    example: 'supply = 208 V\nx = supply.current',
  },
  'unknown-parameter': {
    means: 'The function has no parameter of this name.',
    why: 'An argument that is dropped would change the result unseen.',
    remedy: 'Correct the spelling; the hover on the function lists its parameters.',
    example: 'ohms = resistance(12 AWG Cu, 100 ft, temprature: 20 °C)',
  },
  'unnamed-argument': {
    means: 'An argument stands without its name where the function takes none so.',
    why: 'Which of several optional parameters it is for is not guessed.',
    remedy: 'Write the parameter’s name and a colon before it.',
    example: 'ohms = resistance(12 AWG Cu, 100 ft, 20 °C)',
  },
  'argument-twice': {
    means: 'A parameter gets two values.',
    why: 'Which of them counts cannot be told.',
    remedy: 'Keep one.',
    example: 'ohms = resistance(12 AWG Cu, 100 ft, length: 50 ft)',
  },
  'too-many-arguments': {
    means: 'More arguments stand here than the function takes.',
    why: 'One that is dropped would change the result unseen.',
    remedy: 'Remove it; for several values write a list, or add them up.',
    example: 'root = sqrt(4, 9)',
  },
  'missing-argument': {
    means: 'A parameter that the function cannot do without has no value.',
    why: 'Nothing that a result hangs on is assumed unless the function says so.',
    remedy: 'Add it.',
    example: 'ohms = resistance(12 AWG Cu)',
  },
  'wrong-argument': {
    means: 'An argument is of another kind than its parameter takes.',
    why: 'A length in the place of a current would give a figure, and a wrong one.',
    remedy: 'Check the order of the arguments and the unit.',
    example: 'ohms = resistance(12 AWG Cu, 20 A)',
  },
  'unknown-choice': {
    means: 'A parameter takes one of a few words, and this is none of them.',
    why: 'Each word stands for a row or rule of its own.',
    remedy: 'Write one of the words that the message lists.',
    example: 'size = raceway_for([12 AWG Cu THHN], type: EMTT)',
  },
});
