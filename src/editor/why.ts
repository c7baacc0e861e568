import { citation, mathsText, showNumber, showValue, toText } from '../display';
import type { Program, StatementResult, Step, Value, ValueOrigin } from '../language';
import { fromBase } from '../units';

/** Deeper chains are cut short; each step of one can be asked about by itself. */
const deepest = 40;

/**
 * The chain from a name, or a field of a record (`kiln.drop`), back to what was measured, given, read from a table and
 * assumed, as a tree in plain text. Undefined for a name that the sheet does not give a value.
 */
export function why(program: Program, name: string): string | undefined {
  const found = resultCalled(program, name);
  if (!found) {
    return undefined;
  }
  const told = new Set<StatementResult>();
  const lines: string[] = [];
  const field = name.includes('.') ? `${name} = ${shown(fieldOf(found.value, name))}` : undefined;
  tell(found, field, '', '', told, lines, 0);
  return lines.join('\n');
}

/** What the doubt of a name's value is made of: a table in plain text; undefined where the value has none. */
export function uncertaintyBudget(program: Program, name: string): string | undefined {
  const value = fieldOf(resultCalled(program, name)?.value, name);
  if (value?.kind !== 'quantity' || !value.uncertainty) {
    return undefined;
  }
  const { uncertainty, unit } = value;
  // A difference has no offset: the doubt of 20 °C is told in degrees, not on the scale.
  const size = (base: number) => `${showNumber(fromBase(base, unit) - fromBase(0, unit))} ${unit.symbol}`.trim();
  const rows = uncertainty.sources.map(({ name: source, share }) => [
    source,
    size(uncertainty.standard * Math.sqrt(share)),
    `${showNumber(100 * share)} %`,
  ]);
  const half = (uncertainty.high - uncertainty.low) / 2;
  return [
    toText([{ kind: 'table', head: ['source', 'standard uncertainty', 'share of the variance'], rows }]),
    `together:      ${size(uncertainty.standard)}`,
    `95 % coverage: ± ${size(half)} (k = ${showNumber(uncertainty.coverageFactor)}${
      uncertainty.limits === undefined ? '' : `; guaranteed limits ± ${size(uncertainty.limits)}`
    })`,
  ].join('\n');
}

function resultCalled(program: Program, name: string): StatementResult | undefined {
  const [base] = name.split('.');
  return program.name(base)?.result;
}

/** The field that a dotted name leads to. */
const fieldOf = (value: Value | undefined, name: string): Value | undefined =>
  name
    .split('.')
    .slice(1)
    .reduce((at: Value | undefined, field) => (at?.kind === 'record' ? at.fields.get(field) : undefined), value);

const shown = (value: Value | undefined): string => (value ? showValue(value) : 'no value');

function tell(
  result: StatementResult,
  field: string | undefined,
  first: string,
  rest: string,
  told: Set<StatementResult>,
  lines: string[],
  depth: number,
): void {
  const own = result.name ?? result.label ?? 'this line';
  // A record is told by the field that is asked about; all of them would hide the chain.
  const name = field ?? (result.value?.kind === 'record' ? own : `${own} = ${shown(result.value)}`);
  if (told.has(result)) {
    lines.push(`${first}${name}, told above`);
    return;
  }
  told.add(result);
  const remark = result.remark ? `  // ${result.remark}` : '';
  lines.push(`${first}${name}, ${originOf(result)}${remark}`);
  const evidence = result.taken ? [] : evidenceIn(result.value ? result.trace().steps : []);
  const there = result.taken?.result;
  const needs = there ? there.needs : result.needs;
  const children: ((first: string, rest: string) => void)[] = [
    ...evidence.map((text) => (lead: string) => void lines.push(lead + text)),
    ...(there?.value ? evidenceIn(there.trace().steps) : []).map(
      (text) => (lead: string) => void lines.push(lead + text),
    ),
    ...(depth < deepest ? needs : []).map(
      (need) => (lead: string, under: string) => tell(need, undefined, lead, under, told, lines, depth + 1),
    ),
  ];
  for (const [i, child] of children.entries()) {
    const isLast = i === children.length - 1;
    child(`${rest}${isLast ? '└ ' : '├ '}`, `${rest}${isLast ? '  ' : '│ '}`);
  }
}

const words: Readonly<Record<ValueOrigin, string>> = {
  given: 'given in the sheet',
  input: 'an input of the sheet',
  measured: 'measured',
  taken: 'taken',
  computed: 'computed',
};

function originOf(result: StatementResult): string {
  if (result.missing?.length) {
    return `which needs ${result.missing.join(' and ')}`;
  }
  const { taken } = result;
  if (taken) {
    return `from ${taken.file}${taken.result ? `, ${originOf(taken.result)}` : ''}`;
  }
  if (result.origin !== 'computed') {
    return result.origin === 'given' && /\b(name|rating|data) ?plate\b/i.test(result.remark ?? '')
      ? 'from the nameplate'
      : words[result.origin];
  }
  if (result.value?.kind === 'meter') {
    return 'as its maker states';
  }
  const { steps } = result.trace();
  const last = steps.at(-1);
  const formula = last?.kind === 'formula' || last?.kind === 'comparison' ? mathsText(last.formula) : undefined;
  const by = last?.kind === 'call' ? ` by ${last.function}` : '';
  return formula === undefined ? words.computed + by : `computed as ${formula}`;
}

/** Tables and assumptions, each once. */
function evidenceIn(steps: readonly Step[]): string[] {
  const lines = steps.flatMap((step): string[] => {
    switch (step.kind) {
      case 'table': {
        const row = step.row.map(([column, cell]) => `${column} ${cell}`).join(', ');
        const memory = step.source.basis === 'memory' ? ', from memory' : '';
        return [`table: ${showValue(step.result)}, ${citation(step.source)}${memory}${row && `, ${row}`}`];
      }
      case 'assumption':
        return [`assumed: ${step.text}`];
      case 'call': {
        const taken = step.arguments.filter(({ given, value }) => !given && value.kind !== 'absent');
        const list = taken.map(({ name, value }) => `${name} ${showValue(value)}`).join(', ');
        return [...(list === '' ? [] : [`assumed: ${list}`]), ...evidenceIn(step.steps)];
      }
      case 'taken':
        return evidenceIn(step.steps);
      default:
        return [];
    }
  });
  return [...new Set(lines)];
}
