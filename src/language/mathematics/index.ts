import { all, any, known } from './answers';
import { exp, ln, log10 } from './exponentials';
import type { MathematicsFunction } from './operation';
import { count, max, mean, min, sum } from './reductions';
import { abs, sign, sqrt } from './roots';
import { ceil, floor, round } from './rounding';
import { acos, asin, atan, atan2, cos, sin, tan } from './trigonometry';

/** Plain mathematics, which every sheet has whatever its library. */
export const mathematics: readonly MathematicsFunction[] = [
  sqrt,
  abs,
  min,
  max,
  sum,
  mean,
  count,
  all,
  any,
  known,
  round,
  floor,
  ceil,
  sign,
  sin,
  cos,
  tan,
  asin,
  acos,
  atan,
  atan2,
  exp,
  ln,
  log10,
];
