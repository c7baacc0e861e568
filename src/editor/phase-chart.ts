import { type Block, showNumber, showValue } from '../display';
import { drawBars } from '../drawing';
import type { PhaseLoads } from '../functions';
import { fromBase, withPrefix } from '../units';

/** The load of each phase of a panel as a bar, and in words with how unequal they are. */
export function phaseChart(loads: PhaseLoads): Block {
  const { loadColumn, phaseColumn, phases, sample } = loads;
  const bases = phases.map(({ base }) => base);
  const unit = sample.unitIsDerived ? withPrefix(Math.max(...bases), sample.unit) : sample.unit;
  const { uncertainty: _, ...certain } = sample;
  const write = (base: number) => showValue({ ...certain, base, unit, unitIsDerived: false });
  const mean = bases.reduce((sum, base) => sum + base, 0) / bases.length;
  const title = `${loadColumn} by ${phaseColumn.replace(/s$/, '')}`;
  const figures = phases.map(({ name, base }) => `${name} ${write(base)}`).join(', ');
  const said = [compared(loads, mean, write), ...remarks(loads)].join('; ');
  const text = `${title}: ${figures}; ${said}`;
  const drawing = drawBars({
    title,
    description: text,
    bars: phases.map(({ name, base }) => ({ name, figures: write(base), value: fromBase(base, unit) })),
    across: { value: fromBase(mean, unit), text: `mean ${write(mean)}` },
  });
  return { kind: 'drawing', drawing, text, caption: `${title}: ${said}` };
}

type Write = (base: number) => string;

/** How unequal they are: of three by their unbalance, of two by what one carries more than the other. */
function compared({ phases, unbalance }: PhaseLoads, mean: number, write: Write): string {
  const sorted = [...phases].sort((a, b) => b.base - a.base);
  const [most, least] = [sorted[0], sorted.at(-1)!];
  if (write(most.base) === write(least.base)) {
    return 'all carry the same';
  }
  if (unbalance === undefined) {
    return `${most.name} carries ${write(most.base - least.base)} more than ${least.name}`;
  }
  const furthest = [...phases].sort((a, b) => Math.abs(b.base - mean) - Math.abs(a.base - mean))[0];
  const where = furthest.base > mean ? 'above' : 'below';
  return `unbalance ${showNumber(unbalance)} %, ${furthest.name} lies furthest ${where} the mean of ${write(mean)}`;
}

const remarks = ({ across, unplaced, doubtful, loadColumn }: PhaseLoads): string[] => [
  ...(across === 'shared' ? ['what lies across several is shared equally among them'] : []),
  ...(across === 'on each' ? ['what lies across several counts on each of them'] : []),
  ...(unplaced > 0
    ? [`${unplaced} ${unplaced === 1 ? 'row' : 'rows'} with a ${loadColumn} left out: on no phase`]
    : []),
  ...(doubtful ? ['of doubtful loads the best values count'] : []),
];
