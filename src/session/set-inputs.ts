import { children, Node, parse, type SyntaxTree, spanOf, textOf, type VariedInput } from '../language';
import { createLibrary } from '../library';
import { readSheet, type SheetFile, writeSheet } from '../notebook';
import { applyEdits } from '../text';
import { readUnit, type Unit } from '../units';
import { InputReader, isBareNumber } from './cases/input-reader';
import { SheetSession } from './sheet-session';

export interface InputsSet {
  /** The sheet with the inputs' new values in place. */
  readonly bytes: Uint8Array;
  /** Names that no `input` statement of the sheet declares. */
  readonly unknown: readonly string[];
  /** Names that the sheet declares as inputs. */
  readonly inputs: readonly string[];
  /** What is wrong with a value, by name: it cannot be read, is of another kind, or lies outside the input's bounds. */
  readonly problems: ReadonlyMap<string, string>;
}

/**
 * Puts values in the place of those a sheet's `input` statements hold. A value is written as in a cell; a bare number
 * takes the unit that the input is written with. The bytes given are not touched.
 */
export function setInputs(bytes: Uint8Array, values: ReadonlyMap<string, string>): InputsSet {
  const session = new SheetSession();
  const varied = values.size > 0 ? variedIn(session, readSheet(bytes), [...values.keys()]) : [];
  const units = new Map(
    varied.flatMap(({ name, type }) => (type.kind === 'quantity' ? [[name, type.unit] as const] : [])),
  );
  return { ...writeInputs(bytes, values, units), problems: problemsOf(session, varied, values) };
}

/** The same without a look at what the values mean. `units` are those that bare numbers take. */
export function writeInputs(
  bytes: Uint8Array,
  values: ReadonlyMap<string, string>,
  units: ReadonlyMap<string, Unit> = new Map(),
): Omit<InputsSet, 'problems'> {
  const file = readSheet(bytes);
  const library = createLibrary();
  const inputs: string[] = [];
  if (!file.editable || 'problem' in library) {
    return { bytes, unknown: [], inputs };
  }
  const cells = file.cells.map((cell) => {
    if (cell.kind === 'prose') {
      return cell;
    }
    const tree = parse(cell.text, library.vocabulary, { readUnit });
    const edits = tree.statements.flatMap((statement) => {
      if (tree.kinds[statement] !== Node.Input) {
        return [];
      }
      const [name, expression] = children(tree, statement);
      const input = textOf(tree, name);
      inputs.push(input);
      const value = values.get(input);
      return value === undefined || expression === undefined
        ? []
        : [{ span: spanOf(tree, expression), newText: writtenFor(value, tree, expression, units.get(input)) }];
    });
    return edits.length > 0 ? { ...cell, text: applyEdits(cell.text, edits) } : cell;
  });
  return {
    bytes: writeSheet(cells, file.origin),
    unknown: [...values.keys()].filter((name) => !inputs.includes(name)),
    inputs,
  };
}

/** Tries each value on the sheet as it is. One that needs the sheet's own names shows what is wrong when it runs there. */
function problemsOf(
  session: SheetSession,
  varied: readonly VariedInput[],
  values: ReadonlyMap<string, string>,
): ReadonlyMap<string, string> {
  const problems = new Map<string, string>();
  for (const input of varied) {
    const read =
      input.type.kind === 'unknown'
        ? undefined
        : new InputReader(input, session.program.library).read(values.get(input.name)!);
    if (read && 'problem' in read) {
      problems.set(input.name, read.problem);
    }
  }
  return problems;
}

function variedIn(session: SheetSession, { cells }: SheetFile, names: readonly string[]): readonly VariedInput[] {
  session.update(cells.map(({ kind, text }, index) => ({ id: String(index), kind, text })));
  return session.program.vary(names).inputs;
}

/**
 * A value in place of an expression: a text with its quotation marks, a bare number with the unit that is written there,
 * or `unit` where what stands there is no plain quantity.
 */
export function writtenFor(given: string, tree: SyntaxTree, expression: number, unit?: Unit): string {
  const value = given.trim();
  if (tree.kinds[expression] === Node.Text) {
    return /^["“„]/.test(value) ? value : `"${value.replaceAll('"', '″')}"`; // No text can hold a plain mark.
  }
  const symbol = unitWritten(tree, expression) ?? unit?.symbol;
  return symbol && isBareNumber(value) ? `${value} ${symbol}` : value;
}

/** The unit of a plain quantity as it is written; undefined for any other expression. */
export const unitWritten = (tree: SyntaxTree, expression: number): string | undefined =>
  tree.kinds[expression] === Node.Quantity ? tree.unitTexts[tree.units[expression]] : undefined;
