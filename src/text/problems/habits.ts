import { defineProblems } from './contract';

export const habitProblems = defineProblems('Spellings from elsewhere', {
  'decimal-comma': {
    means: 'A number has a comma where its decimal point belongs.',
    why: 'A comma parts arguments and items, so `12,5` could be two numbers.',
    remedy: 'Write a point.',
    example: 'element = 13,21 Ω',
  },
  'thousands-separator': {
    means: 'The digits of a number are parted in groups.',
    why: 'The same sign is the decimal sign elsewhere: the value could be a thousand times off.',
    remedy: 'Write the digits without a sign between them.',
    example: 'fault = 22,000 A',
  },
  'point-without-digit': {
    means: 'A decimal point has no digit on one side.',
    why: 'A lone point is easily overlooked, and the digits behind it say how finely a meter reads.',
    remedy: 'Write a digit on both sides, or leave the point out.',
    example: 'leads = 5. Ω',
  },
  'foreign-plus-minus': {
    means: 'Limits are written with `+/-`.',
    why: 'Those are three operators in a row.',
    remedy: 'Write `±` or `+-`.',
    example: 'element = 13.2 Ω +/- 0.1 Ω',
  },
  'foreign-power': {
    means: 'A power is written with `**`.',
    why: 'The language has one sign for it.',
    remedy: 'Write `^`.',
    example: 'area = 3 ** 2',
  },
  'foreign-times': {
    means: 'A letter or a sign stands for multiplication that does not multiply here.',
    why: 'A letter could be a name.',
    remedy: 'Write `*`, `·` or `×`.',
    example: 'total = 2 x 3',
  },
  'foreign-of': {
    means: 'A share is written with `of`.',
    why: 'A formula shows its operators.',
    remedy: 'Write `*`.',
    example: 'share = 80 % of 20 A',
  },
  'foreign-choice': {
    means: 'A choice is written with `?` and `:`.',
    why: 'A sheet is read by people who never saw that notation.',
    remedy: 'Write `if condition then value else value`.',
    example: 'device = 17 A > 16 A ? 25 A : 20 A',
  },
  'foreign-comment': {
    means: 'A remark begins with a sign that begins no remark here.',
    why: '`#` begins a wire size.',
    remedy: 'Begin it with `//`.',
    example: 'supply = 208 V # at the receptacle',
  },
  'foreign-money': {
    means: 'A price is written with the sign of its currency.',
    why: 'Several currencies share a sign.',
    remedy: 'Write the currency’s letters behind the number.',
    example: 'price = $4.50',
  },
  'foreign-fraction': {
    means: 'A fraction is written as one character.',
    why: 'Too few of them exist for every value, and they are easily misread in print.',
    remedy: 'Write the number with a decimal point.',
    example: 'motor = ½ hp',
  },
  'foreign-length': {
    means: 'Feet or inches are written with a prime or a quotation mark.',
    why: 'The quotation mark begins a text, and the signs are easily confused.',
    remedy: 'Write `ft` or `in`.',
    example: "run = 62'",
  },
  'foreign-definition': {
    means: 'A definition begins with a word such as `let`.',
    why: 'A line that begins with a name and `=` is a definition already.',
    remedy: 'Take the word out.',
    example: 'let supply = 208 V',
  },
  'foreign-answer': {
    means: 'An answer is written as `true` or `false`.',
    why: 'Checks and fields answer in plain words.',
    remedy: 'Write `yes` or `no`.',
    example: 'continuous = true',
  },
  'turned-comparison': {
    means: 'The two signs of a comparison stand in the wrong order.',
    why: 'An arrow means nothing here.',
    remedy: 'Write `>=` or `<=`.',
    example: 'check 25 A => 17 A',
  },
  'broken-unit': {
    means: 'A unit of one word is written as two.',
    why: 'A unit ends where a space stands, and what follows would be something else.',
    remedy: 'Write it as one word, such as `degC`.',
    example: 'room = 20 deg C',
  },
  'two-units': {
    means: 'A quantity has two units, such as feet and inches.',
    why: 'Whether the parts add or multiply is not guessed.',
    remedy: 'Add the parts.',
    example: 'run = 5 ft 6 in',
  },
  'misspelt-size': {
    means: 'A conductor’s size is written in a way that reads as something else.',
    why: 'Without its unit, `1/0` is a division by zero and `12` a number.',
    remedy: 'Write the size with its unit, such as `1/0 AWG`.',
    example: 'wire = 1/0',
  },
  'degree-sign-missing': {
    means: 'A temperature is written with the letter of another unit: `C` is the coulomb, `F` the farad.',
    why: 'A resistance worked out at the wrong temperature looks like a right one.',
    remedy: 'Write `°C` or `degC`, `°F` or `degF`.',
    example: 'ohms = resistance(12 AWG Cu stranded, 100 ft, temperature: 68 F)',
  },
});
