/**
 * Writes the report of a schedule of 2,000 circuits in every format and tells the time and the memory that it took:
 * `npm run bench:report`, or with another number of circuits behind it.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { readFont } from '../cli/fonts';
import { buildReport, evaluateSheet, type ReportFormat, reportFormats, reportInput, writeReport } from '../core';

const count = Number(process.argv[2] ?? 2000);
/** Circuits that are worked out in full, step by step; with 2,000 rows they make 300 pages. */
const worked = Number(process.argv[3] ?? 150);

function largeSheet(): string {
  const sizes = ['12 AWG Cu THHN', '10 AWG Cu THHN', '8 AWG Cu THHN', '6 AWG Cu THHN'];
  const rows = Array.from({ length: count }, (_, i) => {
    const load = (1.2 + (i % 17) * 0.21).toFixed(2);
    return `  | C${i + 1} | ${load} kVA | ${i % 3 === 0 ? 120 : 208} V | ${30 + (i % 90)} ft | ${sizes[i % 4]} |`;
  });
  return [
    '---\ntitle: Two thousand circuits\ndate: 2026-11-20\nrevision: A\nreport: circuit schedule\n---\n',
    '# Two thousand circuits\n\nMade to see how long a long report takes.\n',
    '```kft\npanel = schedule',
    '  | tag | load | voltage | length | conductor |\n  | --- | --- | --- | --- | --- |',
    ...rows,
    '  amps = load / voltage\n  drop = voltage_drop(conductor, amps, length) / voltage in %',
    'total = sum(panel.load)\n```\n',
    ...Array.from({ length: worked }, (_, i) => workedCircuit(i)),
  ].join('\n');
}

const workedCircuit = (i: number): string => `## Feeder ${i + 1}

\`\`\`kft
feeder_${i + 1} = circuit
  load: ${16 + (i % 40)} A
  kind: general
  continuous: yes
  voltage: 208 V
  length: ${40 + i} ft
  material: Cu
  insulation: THHN
check feeder_${i + 1}.drop_percent <= 5 % "drop of feeder ${i + 1}"
\`\`\`
`;

async function main(): Promise<void> {
  const folder = join(__dirname, '..', '..', 'out', 'large');
  mkdirSync(folder, { recursive: true });
  const begun = performance.now();
  const document = buildReport(reportInput(evaluateSheet(largeSheet())));
  console.log(`${count} circuits evaluated and put together in ${seconds(begun)}`);
  for (const format of Object.keys(reportFormats) as ReportFormat[]) {
    const start = performance.now();
    const bytes = await writeReport(document, format, { font: readFont });
    writeFileSync(join(folder, `large.${format}`), bytes);
    const memory = Math.round(process.memoryUsage().rss / 2 ** 20);
    console.log(`${format.padEnd(5)} ${seconds(start)}, ${Math.round(bytes.length / 1024)} kB, ${memory} MB in use`);
  }
  console.log(`at most ${Math.round(process.resourceUsage().maxRSS / 1024)} MB`);
}

const seconds = (since: number): string => `${((performance.now() - since) / 1000).toFixed(1)} s`;

main();
