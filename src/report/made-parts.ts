import { showBeside } from '../display';
import type { ReportShape } from '../notebook';
import {
  type Banner,
  bullets,
  type Cell,
  type Part,
  paragraph,
  type Table,
  textTable,
  type Verdict,
  verdictInline,
  words,
} from './document';
import type { ReportCheck, ReportCircuit, ReportInput } from './input';

/** The code, the tables' edition and the documents that everything rests on. */
export function basisParts({ edition, frontMatter, sources }: ReportInput): Part[] {
  const editions = [...new Set(sources.map(({ source }) => source.replace(/,? (Table|§|Chapter|Annex).*$/, '')))];
  const units = frontMatter.units === 'SI' ? 'SI (metres, millimetres)' : 'US (feet, inches)';
  return [
    bullets([
      `Code edition: ${frontMatter.code ?? `${edition}, assumed because the sheet names none`}.`,
      ...(editions.length > 0 ? [`Values were read from: ${editions.join('; ')}.`] : []),
      `Units: ${units}.`,
      'Local amendments, the listing of the equipment and the authority having jurisdiction go before these tables.',
    ]),
  ];
}

export function readingsParts({ readings }: ReportInput): Part[] {
  const rows = readings.map(({ what, value, meter, limits, temperature, remark, line }) => [
    what,
    value,
    meter || 'not stated',
    limits || 'not stated',
    temperature || 'not stated',
    isolationIn(remark),
    remark,
    String(line),
  ]);
  const titles = ['Reading', 'Value', 'Meter', 'Limits', 'Temperature', 'Isolated', 'Remark', 'Line'];
  const widths = [1.3, 1, 1.5, 1, 1.1, 0.9, 1.8, 0.5];
  return rows.length === 0
    ? []
    : [
        textTable(
          titles.map((title, i) => ({ title, width: widths[i] })),
          rows,
        ),
      ];
}

/** Whether the part that was read was cut off from everything else, as far as the remark beside the reading says. */
function isolationIn(remark: string): string {
  if (/\b(not isolated|still connected|in circuit|live|energi[sz]ed)\b/i.test(remark)) {
    return /\bde-?energi[sz]ed\b/i.test(remark) ? 'yes' : 'no';
  }
  return /\b(isolated|disconnected|unplugged|lifted|nothing connected|connected to nothing)\b/i.test(remark)
    ? 'yes'
    : 'not stated';
}

export function givenParts({ given }: ReportInput): Part[] {
  const columns = [
    { title: 'Name', width: 1.2 },
    { title: 'Value', width: 1 },
    { title: 'Remark', width: 2.2 },
    { title: 'Line', width: 0.4 },
  ];
  const rows = given.map(({ name, value, remark, line }) => [name, value, remark, String(line)]);
  return rows.length === 0 ? [] : [textTable(columns, rows)];
}

/** A circuit's row: what is drawn, what protects it, what carries it, and the drop at its end. */
export function circuitParts({ circuits }: ReportInput): Part[] {
  return circuits.length === 0
    ? []
    : [
        {
          kind: 'table',
          columns: [
            { title: 'Tag', width: 1.3 },
            { title: 'V / ph', width: 0.8 },
            { title: 'Load A', align: 'right', width: 0.7 },
            { title: 'Cont.', width: 0.6 },
            { title: 'OCPD A', align: 'right', width: 0.7 },
            { title: 'Conductors', width: 1.7 },
            { title: 'Ampacity A', align: 'right', width: 0.9 },
            { title: 'EGC', width: 1.1 },
            { title: 'Raceway', width: 1 },
            { title: 'One way ft', align: 'right', width: 0.8 },
            { title: 'Drop %', align: 'right', width: 0.7 },
          ],
          rows: circuits.map(circuitRow),
        },
      ];
}

const circuitRow = (circuit: ReportCircuit): Cell[] =>
  [
    circuit.tag,
    [circuit.volts === undefined ? '' : number(circuit.volts), circuit.phases ?? ''].join(' / '),
    number(circuit.loadAmps),
    circuit.continuous === undefined ? 'not stated' : circuit.continuous ? 'yes' : 'no',
    number(circuit.ocpdAmps),
    circuit.sets > 1 ? `${circuit.sets} × ${circuit.conductor}` : circuit.conductor,
    showBeside(circuit.ampacityAmps, circuit.requiredAmps),
    circuit.egc,
    circuit.raceway,
    circuit.lengthFeet === undefined ? '' : number(circuit.lengthFeet),
    circuit.dropPercent === undefined ? '' : showBeside(circuit.dropPercent, circuit.dropLimitPercent),
  ].map((text) => words(text));

const number = (value: number): string => showBeside(value);

/** Every check with both sides and its margin, and below the table what keeps the doubtful ones from an answer. */
export function checksParts({ checks }: ReportInput): Part[] {
  if (checks.length === 0) {
    return [paragraph('The sheet holds no checks.')];
  }
  const doubts = checks.filter(({ advice }) => advice !== undefined).map(({ label, advice }) => `${label}: ${advice}.`);
  return [
    checksTable(checks),
    ...(doubts.length > 0 ? [paragraph('What decides the doubtful ones:'), bullets(doubts)] : []),
  ];
}

const checksTable = (checks: readonly ReportCheck[]): Table => ({
  kind: 'table',
  columns: [
    { title: 'Check', width: 2 },
    { title: 'Comparison', width: 2 },
    { title: 'Margin', width: 1.1 },
    { title: 'Verdict', width: 0.9 },
    { title: 'Line', width: 0.4 },
  ],
  rows: checks.map(({ label, verdict, comparison, margin, line }) => [
    words(label === comparison?.text ? '' : label),
    comparison ? [{ kind: 'maths', ...comparison }] : words('not evaluated'),
    words(margin ?? ''),
    [verdictInline(verdict)],
    words(String(line)),
  ]),
});

/** What the rules found, then what was allowed and why. */
export function findingsParts({ findings, allowed }: ReportInput): Part[] {
  const found: Part[] =
    findings.length === 0
      ? [paragraph(allowed.length > 0 ? 'No further findings.' : 'No findings.')]
      : [
          textTable(
            [
              { title: 'Weight', width: 0.8 },
              { title: 'Finding', width: 4 },
              { title: 'Rule', width: 1.4 },
              { title: 'Line', width: 0.4 },
            ],
            findings.map(({ severity, message, code, line }) => [severity, message, code, String(line)]),
          ),
        ];
  if (allowed.length === 0) {
    return found;
  }
  return [
    ...found,
    { kind: 'heading', depth: 3, content: words('Allowed, with the reason') },
    textTable(
      [
        { title: 'Rule', width: 1.4 },
        { title: 'What was found', width: 2.4 },
        { title: 'Reason given in the sheet', width: 2.4 },
        { title: 'Line', width: 0.4 },
      ],
      allowed.map(({ lint, message: found, reason, line }) => [lint, found, reason || 'none given', String(line)]),
    ),
  ];
}

/** Banners above everything: missing values with the reason, failed checks, checks without an answer. */
export function bannersOf({ missing, checks }: ReportInput): Banner[] {
  const banners: Banner[] = [];
  if (missing.length > 0) {
    banners.push({
      tone: 'error',
      title: 'Not complete: values are missing',
      items: missing.map(({ what, why, line }) => `${what} (line ${line}): ${why}`),
    });
  }
  const told = (wanted: Verdict) =>
    checks.filter(({ verdict, comparison }) => verdict === wanted && comparison).map(({ label }) => label);
  const failed = told('no');
  if (failed.length > 0) {
    banners.push({ tone: 'error', title: failed.length === 1 ? 'A check fails' : 'Checks fail', items: failed });
  }
  const open = told('cannot tell');
  if (open.length > 0) {
    banners.push({ tone: 'warning', title: 'The readings cannot decide', items: open });
  }
  return banners;
}

export function assumptionParts({ assumptions, edition, frontMatter }: ReportInput): Part[] {
  const all = [...(frontMatter.code ? [] : [`code edition ${edition}: the sheet names none`]), ...assumptions];
  return all.length === 0 ? [paragraph('None were made by the calculation.')] : [bullets(all)];
}

export function sourceParts({ sources }: ReportInput): Part[] {
  return sources.length === 0
    ? []
    : [
        bullets(
          sources.map(
            ({ source, fromMemory }) => source + (fromMemory ? ' (from memory, not from a publication)' : ''),
          ),
        ),
      ];
}

/** Stand in every report, whatever the sheet holds; the practice behind them is that of NFPA 70E Article 120. */
const beforeWork = 'De-energise, lock out and prove dead before work.';
const whoDecides =
  'The adopted code with its local amendments, the listing of the equipment, the authority having jurisdiction and a ' +
  'licensed person decide; this report is an aid and approves nothing.';

export const cautionParts = ({ cautions }: ReportInput): Part[] => [
  bullets([
    beforeWork,
    ...cautions,
    ...(cautions.some((text) => text.includes('licensed person')) ? [] : [whoDecides]),
  ]),
];

/** Who signs besides: the customer for a call, the engineer of record for a memo. Common practice, no source. */
const otherSigners: Readonly<Partial<Record<ReportShape, string>>> = {
  'service report': 'Received by the customer',
  'load memo': 'Engineer of record, with seal where required',
};

export function signatureParts({ frontMatter: { prepared_by, checked_by, report } }: ReportInput): Part[] {
  const other = report && otherSigners[report];
  return [
    {
      kind: 'signatures',
      lines: [
        { role: 'Prepared by', name: prepared_by ?? '' },
        { role: 'Checked by', name: checked_by ?? '' },
        ...(other ? [{ role: other, name: '' }] : []),
      ],
    },
  ];
}
