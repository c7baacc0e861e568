import { defineProblems } from './contract';

export const solvingProblems = defineProblems('solve', {
  'unknown-in-no-equation': {
    means: 'An unknown stands in none of the equations.',
    why: 'Nothing then says what it is.',
    remedy: 'Add an equation that holds it, or take it out of the `solve` line.',
    example: 'solve current, power\n  208 V == current * 13.2 Ω',
  },
  'too-few-equations': {
    means: 'There are fewer independent equations than unknowns.',
    why: 'Any number of values would satisfy them.',
    remedy: 'Add an equation, or give one of the unknowns a value.',
    example: 'solve volts, amps\n  volts == amps * 13.2 Ω',
  },
  'too-many-equations': {
    means: 'There are more equations than unknowns.',
    why: 'They settle more than is asked and may contradict each other.',
    remedy: 'Name another unknown, or write the spare equation as a `check`.',
    example: 'solve amps\n  208 V == amps * 13.2 Ω\n  amps == 16 A',
  },
  'too-many-unknowns': {
    means: 'One `solve` has more unknowns than it takes.',
    why: 'The bound keeps every sheet quick and sure to end.',
    remedy: 'Part the equations into several `solve` statements.',
    example: {
      situation: 'a `solve` line that names 100 unknowns',
      says: '100 unknowns are more than one `solve` takes (12). Part them into several, each with its own equations.',
    },
  },
  'no-solution': {
    means: 'No values satisfy the equations, within the bounds where there are some.',
    why: 'A nearest value would look like a solution.',
    remedy: 'Check signs and terms, or widen the bounds.',
    example: 'solve a, b\n  a + b == 4 A\n  a + b == 5 A',
  },
  'several-solutions': {
    means: 'More than one value satisfies the equations.',
    why: 'Which is meant is not for a program to say.',
    remedy: 'Write bounds behind `solve` that hold one of them alone.',
    example: 'solve x in 0 .. 10\n  x ^ 2 - 5 * x + 6 == 0',
  },
  'needs-bounds': {
    means: 'No formula gives the unknown, or nothing tells its unit, and nothing says where to search for it.',
    why: 'A search without bounds may end at a value that makes no sense.',
    remedy: 'Write `solve name in low .. high`.',
    example: 'solve x\n  x + sin(x) == 3',
  },
  'empty-bounds': {
    means: 'The lower bound of an unknown lies above the upper one.',
    why: 'Nothing lies between them.',
    remedy: 'Swap the two, or move them apart.',
    example: 'solve amps in 30 A .. 10 A\n  208 V == amps * 13.2 Ω',
  },
  'tangled-unknowns': {
    means: 'Several unknowns hang on one another, and no equation can be turned round for one of them.',
    why: 'They are found one after the other; only linear equations are solved together.',
    remedy: 'Give one of them a value, or rewrite an equation so that one stands alone on one side.',
    example: 'solve x, y\n  sin(x + y) == 1\n  cos(x - y) == 1',
  },
});
