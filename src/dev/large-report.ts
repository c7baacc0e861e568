/**
 * Writes the report of 2,000 circuits in every format, each in a process of its own as the command line does, and tells
 * the time and the memory that it took: `npm run bench:report`, or with other numbers of circuits behind it.
 */
import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { readFont } from '../cli/fonts';
import { buildReport, evaluateSheet, type ReportFormat, reportFormats, reportInput, writeReport } from '../core';

const count = Number(process.argv[2] ?? 2000);
/** Of them so many are worked out in full, step by step, and the others are rows of a schedule. */
const worked = Number(process.argv[3] ?? 250);
/** Set in the process that writes one format. */
const only = process.argv[4] as ReportFormat | undefined;

function largeSheet(): string {
  const sizes = ['12 AWG Cu THHN', '10 AWG Cu THHN', '8 AWG Cu THHN', '6 AWG Cu THHN'];
  const rows = Array.from({ length: count - worked }, (_, i) => {
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

const folder = join(__dirname, '..', '..', 'out', 'large');

async function writeOne(format: ReportFormat): Promise<void> {
  const begun = performance.now();
  const document = buildReport(reportInput(evaluateSheet(largeSheet())));
  const start = performance.now();
  let pages = '';
  const bytes = await writeReport(document, format, {
    font: readFont,
    progress: ({ doing }) => {
      pages = /of (\d+)$/.exec(doing)?.[1] ?? pages;
    },
  });
  writeFileSync(join(folder, `large.${format}`), bytes);
  const memory = Math.round(process.resourceUsage().maxRSS / 1024);
  console.log(
    `${format.padEnd(5)} sheet ${seconds(begun, start)}, report ${seconds(start)}, ${Math.round(bytes.length / 1024)} kB, ` +
      `at most ${memory} MB${pages && `, ${pages} pages`}`,
  );
}

function main(): void {
  mkdirSync(folder, { recursive: true });
  console.log(`${count} circuits, ${worked} of them worked out in full`);
  for (const format of Object.keys(reportFormats)) {
    const args = [...process.execArgv, __filename, String(count), String(worked), format];
    execFileSync(process.execPath, args, { stdio: 'inherit' });
  }
}

const seconds = (from: number, to = performance.now()): string => `${((to - from) / 1000).toFixed(1)} s`;

if (only) {
  writeOne(only);
} else {
  main();
}
