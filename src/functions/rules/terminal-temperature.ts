import { Failure } from '../../language';
import type { Size, TemperatureColumn } from '../../tables';

/** Which temperature column the terminals allow, and why. */
export interface TerminalColumn {
  readonly column: TemperatureColumn;
  readonly from: 'given' | 'rule' | 'cable';
  readonly because: string;
}

/** Cables whose final ampacity is that of 60 °C conductors, the section that says so, and where derating starts. */
export const cablesHeldTo60: Readonly<Record<string, { section: string; deratedFrom: TemperatureColumn }>> = {
  'NM-B': { section: '334.80', deratedFrom: 90 },
  'UF-B': { section: '340.80', deratedFrom: 60 },
};

/** Area between 1 AWG (42.4 mm²) and 1/0 AWG (53.5 mm²), where the rule by size changes over. */
const aboveOneAwgMm2 = 48;

const isColumn = (value: number): value is TemperatureColumn => value === 60 || value === 75 || value === 90;

/**
 * NEC 110.14(C). `given` is the marked rating in °C. With none marked, a circuit over 100 A has 75 °C terminals and one
 * up to 100 A has 60 °C; where the circuit's `rating` in amperes is not known, sizes 14 to 1 AWG count as 60 °C.
 */
export function terminalColumn(
  size: Size,
  insulation: string,
  given: number | undefined,
  rating: number | undefined,
): TerminalColumn | Failure {
  if (given !== undefined && !isColumn(given)) {
    return new Failure(
      `Terminals are rated 60 °C, 75 °C or 90 °C; ${given} °C is none of them.`,
      'terminals',
      'unknown-terminal-rating',
    );
  }
  const cable = cablesHeldTo60[insulation];
  if (cable) {
    return { column: 60, from: 'cable', because: `${insulation} cable is held to the 60 °C column (${cable.section})` };
  }
  if (given !== undefined) {
    return { column: given as TemperatureColumn, from: 'given', because: `terminals given as ${given} °C` };
  }
  const large = rating === undefined ? size.mm2 > aboveOneAwgMm2 : rating > 100;
  const reason =
    rating === undefined ? (large ? 'larger than 1 AWG' : '14 to 1 AWG') : large ? 'over 100 A' : '100 A or less';
  return large
    ? { column: 75, from: 'rule', because: `terminals not given, ${reason}: 75 °C` }
    : { column: 60, from: 'rule', because: `terminals not given, ${reason}: 60 °C` };
}
