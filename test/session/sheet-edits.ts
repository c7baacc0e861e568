import fc from 'fast-check';
import type { SessionCell } from '../../src/core';

/** Statements that hang on one another across cells, and of which lints speak or fall silent with the others. */
const statements = [
  'reading = 0.48 Ω',
  'reading = 0.48 Ω // four-wire',
  'reading = 4.8 V / 10 A',
  'reading = 0.4 Ω by pocket',
  'pocket = meter(reading: 0.8 %, digits: 5)',
  'rate = 1.98 Ω/kft',
  'rate = resistance_per_length(wire)',
  'left = reading / rate in ft',
  'left = conductor_length(reading, wire)',
  'wire = 12 AWG Cu stranded THHN',
  'wire = 14 AWG Cu solid THHN',
  'input run = 160 ft from 5 ft to 400 ft "one way"',
  'run = 160 ft',
  'shed = circuit(load: 12 A, kind: general, continuous: no, voltage: 120 V, length: run, conductor: wire)',
  'yard = circuit(load: 22 A, voltage: 208 V, length: run, conductor: 12 AWG Cu THHN, ocpd: 30 A)',
  'allow voltage-drop "lamps do not mind"',
  'allow unused-name "for a later sheet"',
  'tank = heater(resistance: reading, voltage: 240 V)',
  'second = heater(resistance: 25.6 Ω, voltage: 240 V)',
  'check tank.power >= 2 kW "gives its heat"',
  'check shed.drop_percent <= 3 %',
  'allowed = ampacity(wire)',
  'nine = 0.7 * allowed',
  'solve flow, power\n  supply == flow * reading\n  power == supply * flow',
  'supply = 208 V',
  'f(x) = x * reading',
  'g = f(2 A)',
  'panel = schedule\n  | load | conductor | voltage |\n  | --- | --- | --- |\n  | 30 A | 12 AWG Cu THHN | 240 V |\n  | 5 A | wire | 240 V |',
  'load = sum(panel.load)',
  'g',
  'broken = (1 +',
];

const proses = [
  '# A sheet',
  'The part was disconnected and proved dead.',
  'The run is `= run in m` long, and `= nothing` beside it.',
  'It draws `= flow`; the wire is `= wire`.',
  '```kft-result\nrun = 160 ft\n```\n\nAs it came out.',
];

/** Cells of a sheet without errors, each in several readings: what lints say of one hangs on how the others read. */
const slots: readonly (readonly string[])[] = [
  ['pocket = meter(reading: 0.8 %, digits: 5)', ''],
  ['reading = 0.48 Ω', 'reading = 0.48 Ω // isolated', 'reading = 4.8 V / 10 A', 'reading = 0.52 Ω // four-wire'],
  [
    'tank = heater(resistance: reading, voltage: 240 V)',
    'tank = heater(resistance: reading, voltage: 240 V, isolated: yes)',
  ],
  [
    'second = heater(resistance: 25.6 Ω, voltage: 240 V)',
    '',
    'lamp = heater(resistance: 11 Ω, voltage: 120 V) // lamp',
  ],
  ['wire = 14 AWG Cu THHN', 'wire = 10 AWG Cu solid THHN', 'wire = size', 'wire = size\nother = wire'],
  ['size = 14 AWG Cu THHN', 'size = 8 AWG Cu THHN', 'size = 14 AWG Cu THHN\n'],
  ['run = 160 ft', 'input run = 160 ft from 5 ft to 400 ft "one way"', 'run = 40 ft'],
  [
    'shed = circuit(load: 22 A, kind: general, continuous: no, voltage: 120 V, length: run, conductor: wire)',
    'shed = circuit(load: 12 A, kind: general, continuous: no, voltage: 120 V, length: 60 ft, conductor: wire, ocpd: 30 A)',
    'allow voltage-drop "lamps do not mind"\nshed = circuit(load: 12 A, voltage: 120 V, length: run, conductor: wire)',
  ],
  ['spare = 5 V', 'spare = 5 V\nmore = spare * 2', 'allow unused-name "for later"\nspare = 5 V', 'spare = (5 V'],
  [
    'rate = resistance_per_length(wire)\nleft = reading / rate in ft',
    'rate = 1.98 Ω/kft\nleft = reading / rate in ft',
    '',
  ],
];

const fronts = [
  '---\ncode: NEC 2023\n---',
  '---\ncode: NEC 2020\nunits: SI\n---',
  '---\ncode: NEC 1907\n---',
  '---\nseverities:\n  unused-name: warning\n  voltage-drop: off\n---',
];

const text = fc
  .array(fc.constantFrom(...statements), { maxLength: 4 })
  .map((lines) => lines.map((line) => `${line}\n`).join(''));

const body = fc.oneof(
  { weight: 4, arbitrary: fc.record({ kind: fc.constant('calculation' as const), text }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('prose' as const), text: fc.constantFrom(...proses) }) },
);

type Body = Omit<SessionCell, 'id'>;

/** Cells of a sheet, each with an id that stays its own. */
type Cells = readonly SessionCell[];

/** An edit of a sheet; `at` and `to` are places, counted round. */
export type SheetEdit =
  | { readonly kind: 'write' | 'insert'; readonly at: number; readonly cell: Body }
  | { readonly kind: 'vary'; readonly at: number; readonly variant: number }
  | { readonly kind: 'delete'; readonly at: number }
  | { readonly kind: 'move'; readonly at: number; readonly to: number }
  | { readonly kind: 'rename'; readonly from: string; readonly to: string }
  | { readonly kind: 'front'; readonly text: string };

const place = fc.nat({ max: 20 });
const names = fc.constantFrom('reading', 'wire', 'run', 'flow', 'panel', 'shed', 'supply', 'other');

export const anyEdit: fc.Arbitrary<SheetEdit> = fc.oneof(
  { weight: 12, arbitrary: fc.record({ kind: fc.constant('vary'), at: place, variant: place }) },
  { weight: 4, arbitrary: fc.record({ kind: fc.constantFrom('write', 'insert'), at: place, cell: body }) },
  fc.record({ kind: fc.constant('delete'), at: place }),
  { weight: 2, arbitrary: fc.record({ kind: fc.constant('move'), at: place, to: place }) },
  fc.record({ kind: fc.constant('rename'), from: names, to: names }),
  fc.record({ kind: fc.constant('front'), text: fc.constantFrom(...fronts) }),
) as fc.Arbitrary<SheetEdit>;

const anyCells: fc.Arbitrary<Cells> = fc
  .array(body, { minLength: 1, maxLength: 6 })
  .map((cells) => cells.map((cell, i) => ({ id: `cell ${i}`, ...cell })));

const soundCells: fc.Arbitrary<Cells> = fc
  .tuple(fc.tuple(...slots.map((variants) => fc.constantFrom(...variants))), fc.constantFrom(...proses))
  .chain(([texts, prose]) =>
    fc.shuffledSubarray(
      [
        { id: 'prose', kind: 'prose' as const, text: prose },
        ...texts.map((text, k): SessionCell => ({ id: `slot ${k}`, kind: 'calculation', text })),
      ],
      { minLength: slots.length },
    ),
  );

export const anySheet: fc.Arbitrary<Cells> = fc.oneof(anyCells, { weight: 3, arbitrary: soundCells });

/** The sheet after an edit. `newId` names a cell that comes in. */
export function edited(cells: Cells, edit: SheetEdit, newId: string): Cells {
  const spot = (at: number) => (cells.length === 0 ? 0 : at % cells.length);
  switch (edit.kind) {
    case 'write':
      return cells.map((cell, i) => (i === spot(edit.at) ? { ...cell, ...edit.cell } : cell));
    case 'vary':
      return cells.map((cell, i) => {
        const variants = i === spot(edit.at) && cell.id.startsWith('slot ') ? slots[Number(cell.id.slice(5))] : [];
        return variants.length > 0 ? { ...cell, text: variants[edit.variant % variants.length] } : cell;
      });
    case 'insert':
      return inserted(cells, edit.at % (cells.length + 1), { id: newId, ...edit.cell });
    case 'delete':
      return without(cells, spot(edit.at));
    case 'move': {
      const rest = without(cells, spot(edit.at));
      return cells.length === 0 ? cells : inserted(rest, edit.to % cells.length, cells[spot(edit.at)]);
    }
    case 'rename': {
      const name = new RegExp(`\\b${edit.from}\\b`, 'g');
      return cells.map((cell) => (cell.id === front ? cell : { ...cell, text: cell.text.replace(name, edit.to) }));
    }
    case 'front': {
      const others = cells.filter(({ id }) => id !== front);
      return [{ id: front, kind: 'prose', text: edit.text }, ...others];
    }
  }
}

const front = 'front';

const inserted = (cells: Cells, at: number, cell: SessionCell): Cells => [
  ...cells.slice(0, at),
  cell,
  ...cells.slice(at),
];

const without = (cells: Cells, at: number): Cells => cells.filter((_, i) => i !== at);
