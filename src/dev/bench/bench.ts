/**
 * `npm run bench`: how fast the parts are beside other ways of doing the same work, side by side in one run. Times differ
 * from machine to machine; ratios are what counts, and each stands beside the one aimed at.
 */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import { type Measured, parts } from './parts';

async function main(part: string | undefined): Promise<void> {
  if (part !== undefined) {
    console.log(JSON.stringify(await parts[part]()));
    return;
  }
  const { 'cold-ours': coldOurs, 'cold-mathjs': coldMathjs, 'warm-ours': ours, 'warm-mathjs': mathjs } = all();
  const { edit, lints, cases, uncertainty } = measured;
  console.log('10,000 formulas with units\n');
  row('text to results, cold', coldOurs.text, [['mathjs', coldMathjs.text, '>= 10']]);
  row('text to results, warm', ours.text, [['mathjs', mathjs.text, '>= 60']]);
  row('evaluated again', ours.again, [
    ['mathjs, compiled', mathjs.again, '>= 1000'],
    ['closures by hand', ours.hand, '>= 1'],
  ]);
  row('a formula’s cost at 10,000', ours.text / 10_000, [['at 1,000', ours.textOfThousand / 1_000, '>= 0.83']]);
  console.log('\nOne edited cell: parsed, checked, evaluated, linted, shown\n');
  row('of 500 (aim: under 5 ms)', edit.of500, []);
  row('of 2,000', edit.of2000, []);
  row('of 10,000', edit.of10000, []);
  console.log('\n10,000 statements with circuits\n');
  row('linted', lints.lint, [['evaluated twice', lints.evaluate * 2, '>= 1']]);
  console.log('\n60 formulas, 100,000 cases, all results kept\n');
  row('in columns', cases.ours, [
    ['typed arrays by hand', cases.hand, '>= 1'],
    ['mathjs, compiled', cases.mathjs, '>= 1000'],
  ]);
  console.log('\n1,000 formulas over 50 readings\n');
  for (const [kind, aim] of [
    ['independent', '>= 50'],
    ['correlated', '>= 100'],
  ]) {
    const python = uncertainty[`${kind}Python`];
    row(kind, uncertainty[kind], python === undefined ? [] : [['Python uncertainties', python, aim]]);
    if (python === undefined) {
      console.log('  (Python’s uncertainties is not installed: apt-get install python3-uncertainties)');
    }
  }
}

const measured: Record<string, Measured> = {};

/** Each part in a process of its own, so that none warms another up, and bundled, as what ships is. */
function all(): Record<string, Measured> {
  const bundle = join(__dirname, '..', '..', '..', 'out', 'bench.js');
  buildSync({
    entryPoints: [__filename],
    bundle: true,
    platform: 'node',
    external: ['mathjs', 'esbuild'],
    outfile: bundle,
    logLevel: 'error',
  });
  for (const part of Object.keys(parts)) {
    const child = spawnSync(process.execPath, [bundle, part], { encoding: 'utf8' });
    if (child.status !== 0) {
      throw new Error(`${part} did not end well:\n${child.stderr}`);
    }
    measured[part] = JSON.parse(child.stdout.trim().split('\n').at(-1)!);
  }
  return measured;
}

function row(what: string, ms: number, others: readonly (readonly [name: string, ms: number, aim: string])[]): void {
  console.log(`${what.padEnd(34)} ${time(ms)}`);
  for (const [name, other, aim] of others) {
    console.log(`  ${name.padEnd(32)} ${time(other)}   ${(other / ms).toPrecision(3)} times ours (aim ${aim})`);
  }
}

const time = (ms: number): string =>
  (ms >= 1 ? `${ms.toPrecision(4)} ms` : `${(ms * 1000).toPrecision(3)} µs`).padStart(10);

void main(process.argv[2]);
