import { messageText } from '../display';
import type { DataTable } from './document';
import type { ReportInput } from './input';
import type { Takeoff } from './takeoff';

/** The report's figures with full precision, each unit in its column's heading or in a column of its own. */
export function dataTables(input: ReportInput, takeoff: Takeoff | undefined): DataTable[] {
  const tables: DataTable[] = [
    {
      name: 'Results',
      columns: ['name', 'value', 'unit', 'low', 'high', 'shown'].map((title) => ({ title })),
      rows: input.values.map(({ name, value, unit, low, high, text }) => [name, value, unit, low, high, text]),
    },
    {
      name: 'Checks',
      columns: ['check', 'comparison', 'margin', 'verdict', 'line'].map((title) => ({ title })),
      rows: input.checks.map(({ label, comparison, margin, verdict, line }) => [
        label,
        comparison?.text,
        margin,
        verdict,
        line,
      ]),
    },
    circuits(input),
    ...takeoffTables(takeoff),
    {
      name: 'Findings',
      columns: ['severity', 'rule', 'message', 'line'].map((title) => ({ title })),
      rows: input.findings.map(({ severity, code, message, line }) => [severity, code, messageText(message), line]),
    },
    {
      name: 'Readings',
      columns: ['reading', 'value', 'meter', 'limits', 'temperature', 'remark', 'line'].map((title) => ({ title })),
      rows: input.readings.map((one) => [
        one.what,
        one.value,
        one.meter,
        one.limits,
        one.temperature,
        one.remark,
        one.line,
      ]),
    },
  ];
  return tables.filter(({ rows }) => rows.length > 0);
}

function circuits({ circuits: all }: ReportInput): DataTable {
  return {
    name: 'Circuits',
    columns: [
      { title: 'tag' },
      { title: 'kind' },
      { title: 'voltage', unit: 'V' },
      { title: 'phases' },
      { title: 'load', unit: 'A' },
      { title: 'continuous' },
      { title: 'overcurrent device', unit: 'A' },
      { title: 'sets' },
      { title: 'conductor' },
      { title: 'ampacity', unit: 'A' },
      { title: 'equipment grounding conductor' },
      { title: 'raceway' },
      { title: 'one-way length', unit: 'ft' },
      { title: 'voltage drop', unit: '%' },
    ],
    rows: all.map((one) => [
      one.tag,
      one.kind,
      one.volts,
      one.phases,
      one.loadAmps,
      one.continuous === undefined ? undefined : one.continuous ? 'yes' : 'no',
      one.ocpdAmps,
      one.sets,
      one.conductor,
      one.ampacityAmps,
      one.egc,
      one.raceway,
      one.lengthFeet,
      one.dropPercent,
    ]),
  };
}

function takeoffTables(takeoff: Takeoff | undefined): DataTable[] {
  if (!takeoff) {
    return [];
  }
  const lengths = [
    { title: 'length', unit: 'ft' },
    { title: `to order, ${takeoff.wastePercent} % waste included`, unit: 'ft' },
  ];
  const priced = takeoff.cost ? [{ title: 'cost', unit: takeoff.cost.currency }] : [];
  const costOf = ({ cost }: { readonly cost?: number }) => (takeoff.cost ? [cost] : []);
  const byLength = (name: string, title: string, lines: Takeoff['wire']): DataTable => ({
    name,
    columns: [{ title }, ...lengths, ...priced],
    rows: lines.map((line) => [line.what, line.feet, line.feetToOrder, ...costOf(line)]),
  });
  return [
    byLength('Takeoff conductors', 'conductor', takeoff.wire),
    byLength('Takeoff raceway', 'raceway', takeoff.raceway),
    {
      name: 'Takeoff devices',
      columns: [{ title: 'overcurrent device' }, { title: 'count' }, ...priced],
      rows: takeoff.devices.map((line) => [line.what, line.count, ...costOf(line)]),
    },
  ];
}
