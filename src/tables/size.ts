import type { Size } from './contract';

/** One circular mil in square millimetres, exact by the inch: the area of a circle 0.001 in across. */
const mm2PerCmil = (Math.PI / 4) * 0.0254 ** 2;

/** Area of a gauge number by the exact definition, d = 0.005 in × 92^((36 − n) / 39); 1/0 is n = 0, 2/0 is n = −1. */
function gaugeArea(n: number): number {
  const diameterMils = 5 * 92 ** ((36 - n) / 39);
  return diameterMils ** 2 * mm2PerCmil;
}

/** `12`, `1/0`, `0`, `000` as gauge numbers; the four aught sizes end at 4/0. */
function gaugeNumber(text: string): number | undefined {
  const aughts = /^([1-4])\/0$/.exec(text);
  if (aughts) {
    return 1 - Number(aughts[1]);
  }
  if (/^0{1,4}$/.test(text)) {
    return 1 - text.length;
  }
  return /^[1-9]\d?$/.test(text) ? Number(text) : undefined;
}

const pattern = /^(?:#|No\.\s*)?\s*(\d+(?:[.,/]\d+)?)\s*(AWG|kcmil|MCM|mm²|mm2|sq\s?mm)?$/i;

/**
 * Reads a conductor size as people write it (`12 AWG`, `#12`, `12AWG`, `1/0 AWG`, `000 AWG`, `250 MCM`, `2.5 mm2`) into
 * its canonical form, or undefined when it is none. It says nothing about whether any table has the size.
 */
export function parseSize(text: string): Size | undefined {
  const trimmed = text.trim();
  const match = pattern.exec(trimmed);
  if (!match) {
    return undefined;
  }
  const number = match[1];
  const unit = match[2]?.toLowerCase() ?? (/^(#|no\.)/i.test(trimmed) ? 'awg' : undefined);
  if (unit === 'awg') {
    const n = gaugeNumber(number);
    if (n === undefined || n > 56) {
      return undefined;
    }
    return { text: `${n > 0 ? n : `${1 - n}/0`} AWG`, unit: 'AWG', mm2: gaugeArea(n) };
  }
  const value = Number(number.replace(',', '.'));
  if (unit === undefined || !(value > 0)) {
    return undefined;
  }
  return unit === 'kcmil' || unit === 'mcm'
    ? { text: `${value} kcmil`, unit: 'kcmil', mm2: value * 1000 * mm2PerCmil }
    : { text: `${value} mm²`, unit: 'mm²', mm2: value };
}

/** Negative when `a` is the smaller; by metal area, so that AWG, kcmil and mm² order together. */
export const compareSizes = (a: Size, b: Size): number => a.mm2 - b.mm2;

/** The next smaller and the next larger of `among` in the size's own unit, for a message about one that is in no table. */
export function nearestSizes(size: Size, among: readonly Size[]): Size[] {
  const inch = size.unit !== 'mm²';
  const comparable = among.filter((other) => (other.unit !== 'mm²') === inch).sort(compareSizes);
  const smaller = comparable.filter((other) => compareSizes(other, size) < 0).at(-1);
  const larger = comparable.find((other) => compareSizes(other, size) > 0);
  return [smaller, larger].filter((found) => found !== undefined);
}
