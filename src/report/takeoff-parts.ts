import { showMoney, showNumber } from '../display';
import { message, type Part, paragraph, type Table, words } from './document';
import type { Takeoff } from './takeoff';

/** Longer lists stand in the schedule already. */
const mostNamed = 12;

/** The takeoff as tables, with what was counted and how. */
export function takeoffParts(takeoff: Takeoff | undefined): Part[] {
  if (!takeoff) {
    return [];
  }
  const { wire, raceway, devices, wastePercent, wasteGiven, without, of, cost, unpriced, unknown } = takeoff;
  const waste = wasteGiven ? '' : ', taken because the sheet states none (`waste: 7 %` in its front matter)';
  const counted =
    `Of ${of.length > mostNamed ? `all ${of.length} circuits` : of.join(', ')}. Lengths to order include ` +
    `${showNumber(wastePercent)} % for waste${waste}. Counted are two live conductors a circuit, three for three phases, ` +
    'and one equipment grounding conductor where it is known, in each set; neutrals of three-phase circuits and make-up ' +
    'at the ends are not.';
  const lengths = wire.length > 0 || raceway.length > 0;
  return [
    ...(of.length > 0 ? [{ kind: 'paragraph', content: message(counted) } as const] : []),
    ...(unknown.length > 0 ? [{ kind: 'paragraph', content: message(missing(unknown)) } as const] : []),
    ...(lengths ? [lengthTable('Conductor', wire, takeoff), lengthTable('Raceway', raceway, takeoff)].flat() : []),
    ...countTable(devices, takeoff),
    ...(cost ? [paragraph(`Together ${showMoney(cost.amount, cost.currency)}.`)] : []),
    ...(cost && unpriced.length > 0 ? [paragraph(`Without a price, and so not in it: ${unpriced.join(', ')}.`)] : []),
    ...(without.length > 0 ? [paragraph(`Without a length, and so not counted: ${without.join(', ')}.`)] : []),
  ];
}

const missing = (names: readonly string[]): string =>
  `\`takeoff:\` in the front matter names ${names.map((name) => `\`${name}\``).join(', ')}, and no circuit is called so: nothing is counted for it. Correct the name, or take it out.`;

function lengthTable(title: string, lines: Takeoff['wire'], { cost: total }: Takeoff): Table[] {
  if (lines.length === 0) {
    return [];
  }
  return [
    {
      kind: 'table',
      columns: [
        { title, width: 3 },
        { title: 'Length ft', align: 'right' },
        { title: 'To order ft', align: 'right' },
        ...(total ? [{ title: `Cost ${total.currency}`, align: 'right' as const }] : []),
      ],
      rows: lines.map(({ what, feet, feetToOrder, cost }) =>
        [what, showNumber(feet), showNumber(feetToOrder), ...(total ? [moneyCell(cost)] : [])].map((text) =>
          words(text),
        ),
      ),
    },
  ];
}

function countTable(lines: Takeoff['devices'], { cost: total }: Takeoff): Table[] {
  if (lines.length === 0) {
    return [];
  }
  return [
    {
      kind: 'table',
      columns: [
        { title: 'Overcurrent device', width: 4 },
        { title: 'Count', align: 'right' },
        ...(total ? [{ title: `Cost ${total.currency}`, align: 'right' as const }] : []),
      ],
      rows: lines.map(({ what, count, cost }) =>
        [what, String(count), ...(total ? [moneyCell(cost)] : [])].map((text) => words(text)),
      ),
    },
  ];
}

const moneyCell = (cost: number | undefined): string => (cost === undefined ? '–' : showMoney(cost));
