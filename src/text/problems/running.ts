import { defineProblems } from './contract';

export const runningProblems = defineProblems('No result', {
  'division-by-zero': {
    means: 'The divisor comes to zero.',
    why: 'The quotient has no value, and an infinite one would spread unseen.',
    remedy: 'Check the divisor: a reading of zero, or two values that cancel out.',
    example: 'ohms = 5 V / (3 A - 3 A)',
  },
  'negative-root': {
    means: 'The root or the logarithm of a value that is too small.',
    why: 'It has no value among real quantities.',
    remedy: 'Check the signs and the order of what is subtracted.',
    example: 'x = sqrt(3 - 7)',
  },
  overflow: {
    means: 'A result is larger than numbers reach.',
    why: 'Nothing in this trade is; a prefix or an exponent has slipped.',
    remedy: 'Check the magnitudes.',
    example: 'x = 1e308 * 1e308',
  },
  'no-result': {
    means: 'A function or an operation has no result for these values.',
    why: 'A figure made up in its place would look like a result.',
    remedy: 'The message says what is missing; change the value that it names.',
    example: 'loads = [9 kW, 4 kW]\nlargest = max(loads where loads > 20 kW)',
  },
  'missing-value': {
    means: 'A total or a list needs every value, and some rows have none.',
    why: 'A sum that skips a row is too small, and nobody sees it.',
    remedy: 'Correct the rows that the message names, or take `known(…)` to say that they may be left out.',
    example:
      'panel = schedule\n  | tag | load   |\n  | --- | ---    |\n  | P1  | 9.2 kW |\n  | P2  |        |\ntotal = sum(panel.load)',
  },
  'absent-field': {
    means: 'A record has no value in this field here.',
    why: 'What was not given or does not apply is not zero.',
    remedy: 'Give what the message names, or do without the field.',
    example:
      'kiln = circuit\n  load: 17 A\n  continuous: yes\n  kind: general\n  voltage: 208 V\n  material: Cu\ndrop = kiln.drop_percent',
  },
  'out-of-bounds': {
    means: 'A value lies outside what the parameter can mean.',
    why: 'A power factor above 1 or a length below 0 does not exist.',
    remedy: 'Check the value; the page of the function tells the bounds.',
    example: 'amps = line_current(5 kW, 240 V, power_factor: 1.8)',
  },
  'input-out-of-range': {
    means: 'An input has a value outside its stated bounds.',
    why: 'The sheet was written for values between them.',
    remedy: 'Change the value, or the bounds where the sheet still holds beyond them.',
    example: 'input run = 500 ft from 5 ft to 400 ft "one-way length"',
  },
  'function-fault': {
    means: 'A function of the library broke down on these arguments.',
    why: 'This is a fault of the program, not of the sheet; the rest of the sheet is not touched by it.',
    remedy: 'Tell it to the makers, with the line. Work the value out by hand meanwhile.',
    example: {
      situation: 'a function of the library that fails on its arguments; none is known',
      says: '`broken` broke down on these arguments. This is a fault of the program, not of the sheet.',
    },
  },
});
