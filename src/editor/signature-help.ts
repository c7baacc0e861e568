import { functionSignature } from '../display';
import { children, type FunctionDefinition, Node, type Program, textOf } from '../language';
import type { Span } from '../text';
import type { EditedSheet } from './contract';
import { accepted } from './hover/function';
import { functionNamed } from './known-functions';
import { nameBefore } from './name-before';

/** A function's parameters while one of its arguments is typed. */
export interface Signature {
  readonly label: string;
  readonly summary: string;
  /** Each with its stretch of the label. */
  readonly parameters: readonly { readonly span: Span; readonly page: string }[];
  /** Index in `parameters` of what is being typed; -1 when it is none of them. */
  readonly active: number;
}

/** The call around an offset of a cell, read from the text, since a call that is being typed is seldom whole. */
export function signatureAt({ program }: EditedSheet, cell: string, offset: number): Signature | undefined {
  const text = program.tree(cell)?.text;
  const call = text === undefined ? undefined : openCall(text, offset);
  if (!call) {
    return undefined;
  }
  const definition = functionNamed(program, call.name);
  return definition ? librarySignature(definition, call) : sheetSignature(program, call);
}

interface OpenCall {
  readonly name: string;
  /** Arguments before the cursor's. */
  readonly position: number;
  /** The name written before the cursor's argument. */
  readonly named?: string;
}

/** The innermost call whose bracket is open at the offset; the statement may run over lines. */
function openCall(text: string, offset: number): OpenCall | undefined {
  const before = text.slice(text.lastIndexOf('\n\n', offset - 1) + 1, offset);
  const open: { at: number; commas: number; from: number }[] = [];
  let inText = false;
  for (let i = 0; i < before.length; i++) {
    const c = before[i];
    if (c === '"' || (inText && c === '\n')) {
      inText = c === '"' && !inText;
    } else if (inText) {
    } else if (c === '/' && before[i + 1] === '/') {
      const end = before.indexOf('\n', i);
      if (end < 0) {
        return undefined; // In a comment.
      }
      i = end;
    } else if (c === '(' || c === '[') {
      open.push({ at: i, commas: 0, from: i + 1 });
    } else if (c === ')' || c === ']') {
      open.pop();
    } else if (c === ',' || c === ';') {
      const inner = open.at(-1);
      if (inner) {
        inner.commas++;
        inner.from = i + 1;
      }
    }
  }
  while (open.length > 0) {
    const { at, commas, from } = open.pop()!;
    const name = before[at] === '(' ? nameBefore(before, at) : undefined;
    if (name !== undefined && !inText) {
      const named = /^\s*([\p{L}_][\p{L}\p{N}_]*)\s*:/u.exec(before.slice(from))?.[1];
      return { name, position: commas, ...(named !== undefined && { named }) };
    }
  }
  return undefined;
}

function librarySignature(definition: FunctionDefinition, call: OpenCall): Signature {
  const label = functionSignature(definition);
  let from = label.indexOf('(') + 1;
  const parameters = Object.entries(definition.parameters)
    .sort(([, a], [, b]) => Number(a.named ?? false) - Number(b.named ?? false)) // In the order of the label.
    .map(([id, parameter]) => {
      const start = from + (wholeWord(id).exec(label.slice(from))?.index ?? 0);
      const end = start + /^[^,;)]*/.exec(label.slice(start))![0].trimEnd().length;
      from = end;
      return { id, parameter, span: { start, end }, page: `${parameter.meaning}. ${accepted(parameter)}` };
    });
  const positional = parameters.filter(({ parameter }) => !parameter.named);
  const repeated = positional.at(-1)?.parameter.repeated ? positional.length - 1 : -1;
  const byPosition = call.position < positional.length ? call.position : repeated;
  const active = call.named === undefined ? byPosition : parameters.findIndex(({ id }) => id === call.named);
  return { label, summary: definition.summary, parameters, active };
}

const wholeWord = (word: string): RegExp => new RegExp(`(?<![\\p{L}\\p{N}_])${word}(?![\\p{L}\\p{N}_])`, 'u');

/** A function that the sheet itself defines. */
function sheetSignature(program: Program, call: OpenCall): Signature | undefined {
  const info = program.name(call.name);
  const tree = info && program.tree(info.cell);
  const statement = tree?.statements[info!.statement];
  if (!tree || statement === undefined || tree.kinds[statement] !== Node.FunctionDefinition) {
    return undefined;
  }
  const [, list] = children(tree, statement);
  const names = [...children(tree, list)].map((node) => textOf(tree, node));
  let from = call.name.length + 1;
  const parameters = names.map((name) => {
    const span = { start: from, end: from + name.length };
    from = span.end + 2;
    return { span, page: '' };
  });
  const active = call.named === undefined ? call.position : names.indexOf(call.named);
  return {
    label: `${call.name}(${names.join(', ')})`,
    summary: textOf(tree, statement),
    parameters,
    active: active < names.length ? active : -1,
  };
}
