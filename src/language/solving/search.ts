/** Where a function of one number is zero between two others, as far as a search can tell. */
export interface Search {
  /** Places where it is zero, in order. */
  readonly roots: readonly number[];
  /** Places where it changes its sign without being zero: it jumps there. */
  readonly jumps: readonly number[];
  /** Whether it has a value at the places looked at. */
  readonly values: 'all' | 'some' | 'none';
}

/** Places at which the function is looked at first. */
const samples = 240;
/** Ends further apart than this, as a ratio, are also looked at by equal ratios. */
const wide = 10;
const longestStep = 200;
/** After so many zeros, jumps and valleys the search ends: there are several anyway. */
const mostPlaces = 40;

/** How far beside a change of sign the function is looked at, in steps between samples, and how small it is at a zero. */
const beside = 1e-3;
const smallness = 1e-3;

/** Searches for every zero of `f` from `low` to `high`: changes of sign between samples, and places where it touches zero. */
export function search(f: (x: number) => number, low: number, high: number): Search {
  const xs = placesBetween(low, high);
  const ys = xs.map(f);
  const roots: number[] = [];
  const jumps: number[] = [];
  for (let i = 0, places = 0; i < xs.length && places < mostPlaces; i++) {
    const before = i > 0 ? ys[i - 1] : Number.NaN;
    const isValleyBefore = i > 1 && isValley(ys[i - 2], before, ys[i]);
    places += ys[i] === 0 || ys[i] * before < 0 || isValleyBefore ? 1 : 0;
    if (ys[i] === 0) {
      roots.push(xs[i]);
    } else if (ys[i] * before < 0) {
      const root = between(f, [xs[i - 1], ys[i - 1]], [xs[i], ys[i]]);
      (root.isZero ? roots : jumps).push(root.x);
    } else if (isValleyBefore) {
      roots.push(...touching(f, xs[i - 2], xs[i]));
    }
  }
  const values = ys.every(Number.isFinite) ? 'all' : ys.some(Number.isFinite) ? 'some' : 'none';
  return { roots: distinct(roots, high - low), jumps, values };
}

function placesBetween(low: number, high: number): number[] {
  const even = Array.from({ length: samples + 1 }, (_, i) =>
    i === samples ? high : low + ((high - low) * i) / samples,
  );
  if (low <= 0 || high / low <= wide) {
    return even;
  }
  const ratio = Math.log(high / low);
  const xs: number[] = [];
  // The nearer of the next ones, each once.
  for (let i = 0, next = 1; i < even.length; i++) {
    for (; next < samples; next++) {
      const x = low * Math.exp((ratio * next) / samples);
      if (x >= even[i]) {
        next += x === even[i] ? 1 : 0;
        break;
      }
      xs.push(x);
    }
    xs.push(even[i]);
  }
  return xs;
}

type Point = readonly [x: number, y: number];

/** The place of a change of sign: by the secant with the Illinois weights, and every third time by halving. */
function between(f: (x: number) => number, [x1, y1]: Point, [x2, y2]: Point): { x: number; isZero: boolean } {
  let [a, fa, b, fb] = [x1, y1, x2, y2];
  // What the secant is drawn through: an end that stays twice in a row counts half.
  let [wa, wb] = [fa, fb];
  let moved: 'a' | 'b' | undefined;
  for (let step = 0; step < longestStep && !isNextTo(a, b); step++) {
    const secant = b - (wb * (b - a)) / (wb - wa);
    const x = step % 3 !== 2 && secant > a && secant < b ? secant : a + (b - a) / 2;
    const y = f(x);
    if (y === 0) {
      return { x, isZero: true };
    }
    if (!Number.isFinite(y)) {
      return { x, isZero: false };
    }
    if (y * fa > 0) {
      [a, fa, wa] = [x, y, y];
      wb = moved === 'a' ? wb / 2 : wb;
      moved = 'a';
    } else {
      [b, fb, wb] = [x, y, y];
      wa = moved === 'b' ? wa / 2 : wa;
      moved = 'b';
    }
  }
  const [x, y] = Math.abs(fa) < Math.abs(fb) ? [a, fa] : [b, fb];
  return { x, isZero: isFarSmaller(f, x, y, beside * (x2 - x1)) };
}

/** True at a zero, where the function is far smaller than a little beside it; at a jump or a pole it is not. */
function isFarSmaller(f: (x: number) => number, x: number, y: number, distance: number): boolean {
  const near = [f(x - distance), f(x + distance)].filter(Number.isFinite).map(Math.abs);
  return near.length > 0 && Math.abs(y) <= smallness * Math.max(...near);
}

/** True when no number lies between two. */
const isNextTo = (a: number, b: number): boolean => {
  const middle = a + (b - a) / 2;
  return middle <= a || middle >= b;
};

const isValley = (before: number, at: number, after: number): boolean =>
  before * at > 0 && at * after > 0 && Math.abs(at) < Math.abs(before) && Math.abs(at) <= Math.abs(after);

const golden = (Math.sqrt(5) - 1) / 2;

/** The lowest place of the function's size between two, where that is zero. */
function touching(f: (x: number) => number, from: number, to: number): number[] {
  const size = (x: number) => Math.abs(f(x));
  let [a, b] = [from, to];
  let [c, d] = [b - golden * (b - a), a + golden * (b - a)];
  let [fc, fd] = [size(c), size(d)];
  for (let step = 0; step < longestStep && c < d; step++) {
    if (fc <= fd) {
      [b, d, fd] = [d, c, fc];
      c = b - golden * (b - a);
      fc = size(c);
    } else {
      [a, c, fc] = [c, d, fd];
      d = a + golden * (b - a);
      fd = size(d);
    }
  }
  const [x, y] = fc <= fd ? [c, fc] : [d, fd];
  return isFarSmaller(f, x, y, beside * (to - from)) ? [x] : [];
}

/** Neighbours that are one place, but for rounding, once. */
function distinct(roots: readonly number[], span: number): number[] {
  const sorted = [...roots].sort((a, b) => a - b);
  return sorted.filter((root, i) => i === 0 || root - sorted[i - 1] > 1e-7 * span);
}
