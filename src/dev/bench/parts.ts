import { spawnSync } from 'node:child_process';
import type { Program } from '../../language';
import { SheetProgram } from '../../language/program/sheet-program';
import { createLibrary } from '../../library';
import { lint } from '../../lints';
import { type SessionCell, SheetSession } from '../../session';
import { once, warm } from './timing';
import { cells, closures, formulas, overCases, uncertain } from './workloads';

/** What a part measured: milliseconds, or whatever its name says. Each part runs in a process of its own. */
export type Measured = Readonly<Record<string, number>>;

const library = () => createLibrary() as Exclude<ReturnType<typeof createLibrary>, { problem: string }>;

/** From text to the value of every formula. */
function textToResults(program: Program, sheet: string): number {
  program.update([{ id: '0', text: sheet }]);
  return program.results('0').reduce((sum, { value }) => sum + (value?.kind === 'quantity' ? value.base : 0), 0);
}

/** As text to results, with a program that knows nothing yet. */
const afresh = (sheet: string) => textToResults(new SheetProgram(library()), sheet);

/** The parts by name. What a check of one result against the other shows wrong ends the run. */
export const parts: Readonly<Record<string, () => Measured | Promise<Measured>>> = {
  'cold-ours': () => {
    const { sheet } = formulas(10_000);
    const ready = new SheetProgram(library());
    return { text: once(() => textToResults(ready, sheet)) };
  },
  'cold-mathjs': async () => {
    const { create, all } = await import('mathjs');
    const math = create(all);
    const { mathjs } = formulas(10_000);
    return { text: once(() => mathjs.map(scoped(math))) };
  },
  'warm-ours': () => {
    const [large, small] = [formulas(10_000), formulas(1_000)];
    const text = warm(() => afresh(large.sheet), 15, 10);
    const textOfThousand = warm(() => afresh(small.sheet), 60, 40);
    const program = new SheetProgram(library());
    program.update([{ id: '0', text: large.sheet }]);
    program.evaluate();
    const again = warm(() => program.evaluate(), 60, 60);
    const byHand = closures(10_000);
    const hand = warm(byHand.run, 60, 60);
    program.results('0').forEach(({ value }, k) => {
      same(value?.kind === 'quantity' ? value.base : Number.NaN, byHand.values[k], 1e-12);
    });
    return { text, textOfThousand, again, hand };
  },
  'warm-mathjs': async () => {
    const { create, all } = await import('mathjs');
    const math = create(all);
    const { mathjs } = formulas(10_000);
    const text = warm(() => mathjs.map(scoped(math)), 3, 1);
    const compiled = mathjs.map((line) => math.compile(line));
    const run = () => {
      const scope = new Map();
      for (const formula of compiled) {
        formula.evaluate(scope);
      }
    };
    return { text, again: warm(run, 3, 2) };
  },
  edit: () => {
    const measured: Record<string, number> = {};
    for (const count of [500, 2000, 10_000]) {
      const session = new SheetSession();
      const sheet: SessionCell[] = cells(count).map((cell) => ({ ...cell, kind: 'calculation' }));
      session.update(sheet);
      for (const { id } of sheet) {
        session.outputs(id);
        session.diagnostics(id);
      }
      let edits = 0;
      measured[`of${count}`] = warm(
        () => {
          const edited = sheet.slice();
          edited[250] = { ...edited[250], text: edited[250].text.replace('11.9', `11.${++edits}`) };
          for (const id of session.update(edited)) {
            session.outputs(id);
            session.diagnostics(id);
          }
        },
        40,
        40,
      );
    }
    return measured;
  },
  lints: () => {
    const text = Array.from({ length: 2500 }, (_, k) =>
      [
        `c${k} = circuit(load: ${5 + (k % 9)} A, voltage: 208 V, length: ${40 + (k % 60)} ft, material: Cu)`,
        `d${k} = voltage_drop(12 AWG Cu, ${5 + (k % 9)} A, ${40 + (k % 60)} ft)`,
        `p${k} = 208 V * ${5 + (k % 9)} A`,
        `check d${k} <= 8 V "run ${k}"`,
      ].join('\n'),
    ).join('\n');
    const evaluate = () => {
      const program = new SheetProgram(library());
      program.update([{ id: '0', text }]);
      return program;
    };
    evaluate();
    const evaluated: number[] = [];
    const linted: number[] = [];
    for (let i = 0; i < 3; i++) {
      let program = evaluate();
      evaluated.push(once(() => (program = evaluate())));
      linted.push(once(() => lint(program, ['0'])));
    }
    return { evaluate: Math.min(...evaluated), lint: Math.min(...linted) };
  },
  cases: async () => {
    const work = overCases(100_000);
    const program = new SheetProgram(library());
    program.update([{ id: '0', text: work.sheet }]);
    const { columns } = program.vary(['volts', 'ohms'], 100_000);
    if (!columns) {
      throw new Error('These formulas are not run in columns.');
    }
    const ours = () => columns.run([work.volts, work.ohms], 100_000);
    const measured = { ours: warm(ours), hand: warm(work.byHand) };
    work.columns.forEach((column, k) => {
      for (const at of [0, 1, 2047, 99_999]) {
        same(columns.output(k)[at], column[at], 1e-12);
      }
    });
    const { create, all } = await import('mathjs');
    const math = create(all);
    const compiled = work.mathjs.map((line) => math.compile(line));
    const few = 200; // As many as end soon; the time for all is that many times as long.
    const mathjs = once(() => {
      for (let at = 0; at < few; at++) {
        const scope = new Map<string, unknown>([
          ['volts', math.unit(work.volts[at], 'V')],
          ['ohms', math.unit(work.ohms[at], 'ohm')],
        ]);
        for (const formula of compiled) {
          formula.evaluate(scope);
        }
      }
    });
    return { ...measured, mathjs: (mathjs * 100_000) / few };
  },
  uncertainty: () => {
    const measured: Record<string, number> = {};
    for (const shared of [false, true]) {
      const work = uncertain(1000, 50, shared);
      const name = shared ? 'correlated' : 'independent';
      const program = new SheetProgram(library());
      program.update([{ id: '0', text: work.sheet }]);
      measured[name] = warm(() => program.evaluate(), 60, 60);
      const python = inPython(work.python, work.names);
      if (!python) {
        continue;
      }
      measured[`${name}Python`] = python.ms;
      const results = program.results('0').slice(-1000);
      results.forEach(({ value }, k) => {
        const uncertainty = value?.kind === 'quantity' ? (value.uncertainty?.standard ?? Number.NaN) : Number.NaN;
        same(uncertainty, python.deviations[k], 1e-12);
      });
    }
    return measured;
  },
};

/** Evaluates lines in one scope, from their text. */
const scoped = (math: { evaluate(line: string, scope: Map<string, unknown>): unknown }) => {
  const scope = new Map<string, unknown>();
  return (line: string) => math.evaluate(line, scope);
};

function same(ours: number, other: number, tolerance: number): void {
  if (!(Math.abs(ours - other) <= tolerance * Math.abs(other))) {
    throw new Error(`The two sides differ, so their times say nothing: ${ours} and ${other}.`);
  }
}

/** The same formulas in Python's `uncertainties` (compiled first); nothing where it is not installed. */
function inPython(lines: readonly string[], names: readonly string[]) {
  const readings = lines.filter((line) => line.startsWith('r'));
  const formulas = lines.filter((line) => !line.startsWith('r'));
  const script = `
import json, sys, time
try:
    from uncertainties import ufloat
except ImportError:
    sys.exit(3)
code = compile(${JSON.stringify(formulas.join('\n'))} + "\\nresult = [x.std_dev for x in [${names.join(', ')}]]", "formulas", "exec")
times = []
for _ in range(5):
    scope = {"ufloat": ufloat}
    exec(${JSON.stringify(readings.join('\n'))}, scope)
    start = time.perf_counter()
    exec(code, scope)
    times.append(time.perf_counter() - start)
print(json.dumps({"ms": sorted(times)[2] * 1000, "deviations": scope["result"]}))
`;
  for (const python of ['python3', '/usr/bin/python3']) {
    const { status, stdout } = spawnSync(python, ['-'], { input: script, encoding: 'utf8', maxBuffer: 1e8 });
    if (status === 0) {
      return JSON.parse(stdout) as { readonly ms: number; readonly deviations: readonly number[] };
    }
  }
  return undefined;
}
