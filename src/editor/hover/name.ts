import { blocksOf, showValue, toText } from '../../display';
import { type NameInfo, Node, type Program, type StatementResult, type Step, textOf, type Value } from '../../language';
import type { TableReference } from '../../text';
import { citations } from '../citations';
import { functionNamed } from '../known-functions';
import { escaped, verbatim } from '../markdown';
import { type Origin, originOf } from '../origin';
import { why } from '../why';
import { conductorOf, conductorPage } from './conductor';

/** More lines of a derivation than this are left to the cell's own output. */
const longest = 24;

/** A name: its value, how it is written, how it came about, and what it rests on. */
export function namePage(program: Program, info: NameInfo): string {
  const { result } = info;
  const parts = [`**${escaped(info.name)}** ${result ? valueText(result) : 'has no value yet'}`];
  const tree = program.tree(info.cell);
  const statement = tree?.statements[info.statement];
  if (tree && statement !== undefined) {
    const lines = textOf(tree, statement).split('\n');
    const written = lines.length > longest ? [...lines.slice(0, longest), '…'] : lines;
    parts.push(verbatim(written.join('\n'), 'kilofoot'));
  }
  if (result?.remark) {
    parts.push(escaped(result.remark));
  }
  if (result?.value) {
    const { steps } = result.trace();
    const lines = toText(blocksOf(result)).split('\n');
    const shown = lines.length > longest ? [...lines.slice(0, longest), '…'] : lines;
    parts.push(origin(originOf(program, info), steps), verbatim(shown.join('\n'), 'text'));
    const chain = (why(program, info.name) ?? '').split('\n');
    if (chain.length > 2) {
      const told = chain.length > longest ? [...chain.slice(0, longest), '… `kilofoot explain` tells the rest'] : chain;
      parts.push('Goes back to:', verbatim(told.join('\n'), 'text'));
    }
    const sources = citations(tablesIn(steps));
    if (sources.length > 0) {
      parts.push(`Tables used: ${sources.map(escaped).join('; ')}`);
    }
  }
  return parts.concat(conductorBehind(program, result?.value)).join('\n\n');
}

/** What the tables tell of a value that is a conductor. */
function conductorBehind(program: Program, value: Value | undefined): string[] {
  const conductor = conductorOf(value);
  return conductor ? [conductorPage(program, conductor)] : [];
}

/** A field of a record: its value and what the record's function says of it. */
export function memberPage(program: Program, cell: string, node: number): string | undefined {
  const tree = program.tree(cell);
  const value = program.valueAt(cell, node);
  if (!tree || !value) {
    return undefined;
  }
  const path = textOf(tree, node);
  const [base, field] = path.split('.').map((part) => part.trim());
  const meaning = fieldMeaning(program, base, field);
  const first = `**${escaped(path)}** = ${escaped(showValue(value))}`;
  return [first, ...(meaning ? [escaped(meaning)] : []), ...conductorBehind(program, value)].join('\n\n');
}

/** What the function behind a name says of one of its result's fields. */
export function fieldMeaning(program: Program, name: string, field: string): string | undefined {
  const result = functionNamed(program, functionBehind(program, name) ?? '')?.result;
  const fields = result && 'record' in result ? result.record : {};
  return Object.hasOwn(fields, field) ? fields[field].meaning : undefined;
}

/** The function whose result a name stands for, when it is defined by nothing but a call. */
function functionBehind(program: Program, name: string): string | undefined {
  const info = program.name(name);
  const tree = info && program.tree(info.cell);
  if (!info || !tree) {
    return undefined;
  }
  const statement = tree.statements[info.statement];
  const second = tree.nextSiblings[tree.firstChildren[statement]];
  if (tree.kinds[statement] === Node.BlockCall) {
    return textOf(tree, second);
  }
  return tree.kinds[second] === Node.Call ? textOf(tree, tree.firstChildren[second]) : undefined;
}

function valueText(result: StatementResult): string {
  if (result.value) {
    return result.value.kind === 'record' ? '' : `= ${escaped(showValue(result.value as Value))}`;
  }
  return result.missing?.length
    ? `has no value, because ${result.missing.map(escaped).join(' and ')} has none`
    : 'has no value; its line has an error';
}

/** Where a value comes from; the file too when that is another sheet. */
function origin(kind: Origin, [only]: readonly Step[]): string {
  return only?.kind === 'taken' ? `Taken from ${escaped(only.file)}.` : origins[kind];
}

/** Where a value comes from, in words. */
const origins: Readonly<Record<Origin, string>> = {
  input: 'An input: whoever uses the sheet may change it.',
  used: 'Taken from another sheet:',
  measured: 'Measured, with the limits of its meter:',
  function: 'A function of the sheet.',
  solved: 'Found by solving:',
  schedule: 'A schedule:',
  given: 'Given in the sheet.',
  computed: 'Computed:',
};

function tablesIn(steps: readonly Step[]): TableReference[] {
  return steps.flatMap((step) =>
    step.kind === 'table'
      ? [step.source]
      : step.kind === 'call' || step.kind === 'taken' || step.kind === 'row'
        ? tablesIn(step.steps)
        : [],
  );
}
