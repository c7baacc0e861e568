import { defineProblems } from './contract';

export const readingProblems = defineProblems('Readings and their doubt', {
  'wrong-limits': {
    means: 'The limits behind `±` are of another kind than the reading.',
    why: 'A resistance is not uncertain by volts.',
    remedy: 'Write them in the unit of the reading, or in %.',
    example: 'element = 13.2 Ω ± 0.1 V',
  },
  'negative-limits': {
    means: 'The limits behind `±` come to less than zero.',
    why: 'They reach as far up as down, so they have no sign.',
    remedy: 'Write them without a sign.',
    example: 'element = 13.2 Ω ± (0 Ω - 1 Ω)',
  },
  'wrong-meter': {
    means: 'The meter states its accuracy for another kind of quantity.',
    why: 'A voltage range says nothing of how well the same instrument reads ohms.',
    remedy: 'Define a meter for the range that took the reading.',
    example: 'bench = meter(reading: 0.5 %, range: 0.1 Ω)\nsupply = 207.6 V by bench',
  },
  'not-a-meter': {
    means: 'What stands behind `by` is no meter.',
    why: 'The doubt of a reading comes from the data sheet of an instrument.',
    remedy: 'Define it with `meter(…)`, or state the limits with `±`.',
    example: 'shop = 20 °C\nsupply = 207.6 V by shop',
  },
  'no-accuracy': {
    means: 'A meter is defined without an accuracy.',
    why: 'Its readings would pass for exact.',
    remedy: 'State `reading:`, `digits:` or `range:` from its data sheet.',
    example: 'pocket = meter()',
  },
  'no-resolution': {
    means: 'A meter counts its last digits, and the reading does not show them.',
    why: 'What a digit is worth is read from the number as it was written.',
    remedy: 'Write the reading as a number, or state the `resolution:` of the meter.',
    example: 'pocket = meter(reading: 0.8 %, digits: 5)\nhalf = (207.6 V / 2) by pocket',
  },
  'correlation-with-certain': {
    means: 'A reading is said to vary with something that has no doubt.',
    why: 'What is certain does not vary, so nothing varies with it.',
    remedy: 'Name a reading behind `with:`, or leave the correlation out.',
    example: 'exact = measured(1 A, standard: 1 mA, with: 5 V, correlation: 0.5)',
  },
  'impossible-correlation': {
    means: 'The stated correlations cannot all hold at once.',
    why: 'A coefficient lies between −1 and 1, and several must fit one another, or a variance becomes negative.',
    remedy: 'Check the coefficients.',
    example:
      'volts = measured(5 V, standard: 3 mV)\namps = measured(1 A, standard: 1 mA, with: volts, correlation: -1.2)',
  },
  'over-range': {
    means: 'A reading over range is used without the end of the meter’s range.',
    why: '“Over range” is a bound, and a bound needs its number.',
    remedy: 'Write the end of the range behind it, such as `OL 60 MΩ`.',
    example: 'insulation = OL',
  },
  'cannot-tell': {
    means: 'The readings leave open which of two ways a choice goes.',
    why: 'Taking one of the two would hide the doubt from everything that hangs on it.',
    remedy: 'Read more exactly, or keep both values and check them.',
    example: 'supply = 208 V ± 3 V\ndevice = if supply > 207 V then 20 A else 25 A',
  },
  'result-depends-on-doubt': {
    means:
      'Within its doubt, a reading reaches over a step of the function, and the result is that of the value alone.',
    why: 'A table or a standard size jumps: a little more, and another row would have been taken.',
    remedy: 'Look at the result at the limits of the reading; read more exactly where it matters.',
    example: 'current = 16.2 A ± 0.5 A\ndevice = ocpd_for(current, continuous: yes)',
  },
});
