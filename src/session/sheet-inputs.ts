import { children, Node, type SyntaxTree, spanOf, textContent, textOf } from '../language';
import type { Edit } from '../text';
import { InputReader } from './cases/input-reader';
import { unitWritten, writtenFor } from './set-inputs';
import type { SheetSession } from './sheet-session';

/** An `input` line of a sheet. */
export interface SheetInput {
  readonly name: string;
  readonly cell: string;
  /** Its value as the sheet writes it. */
  readonly written: string;
  /** The unit that a bare number takes; none for a plain number and what is no quantity. */
  readonly unit?: string;
  /** What it means, where the sheet says so. */
  readonly label?: string;
  /** As the sheet writes them. */
  readonly bounds?: { readonly low: string; readonly high: string };
}

interface Place {
  readonly cell: string;
  readonly tree: SyntaxTree;
  readonly statement: number;
  readonly name: string;
  readonly expression: number;
}

/** The inputs of a sheet in order of place. */
export function sheetInputs(session: SheetSession): SheetInput[] {
  const places = placesOf(session);
  const { inputs } = session.program.vary(places.map(({ name }) => name));
  return places.map(({ cell, tree, statement, name, expression }, i) => {
    const label = [...children(tree, statement)].find((child, at) => at > 1 && tree.kinds[child] === Node.Text);
    const { bounds, type } = inputs[i];
    const unit = unitWritten(tree, expression) ?? (type.kind === 'quantity' ? type.unit.symbol : '');
    return {
      name,
      cell,
      written: textOf(tree, expression),
      ...(unit !== '' && { unit }),
      ...(label !== undefined && { label: textContent(tree, label) }),
      ...(bounds && { bounds: { low: bounds.low, high: bounds.high } }),
    };
  });
}

/**
 * A new value for an input as the one edit that puts it in place, or what is wrong with it. It is written as in a cell; a
 * bare number takes the unit that stands there.
 */
export function inputEdit(
  session: SheetSession,
  name: string,
  given: string,
): { readonly cell: string; readonly edit: Edit } | { readonly problem: string } {
  const place = placesOf(session).find((candidate) => candidate.name === name);
  if (!place) {
    return { problem: `\`${name}\` is no input of the sheet any more.` };
  }
  const [varied] = session.program.vary([name]).inputs;
  // An input whose line has an error has no kind to hold the value against; the sheet tells what is wrong with it.
  const isKnown = varied.type.kind !== 'unknown';
  const read = isKnown ? new InputReader(varied, session.program.library).read(given) : undefined;
  if (read && 'problem' in read) {
    return read;
  }
  const { cell, tree, expression } = place;
  const unit = varied.type.kind === 'quantity' ? varied.type.unit : undefined;
  return { cell, edit: { span: spanOf(tree, expression), newText: writtenFor(given, tree, expression, unit) } };
}

function placesOf(session: SheetSession): Place[] {
  return session.calculations().flatMap((cell) => {
    const tree = session.program.tree(cell);
    return (tree?.statements ?? []).flatMap((statement): Place[] => {
      const [name, expression] = tree?.kinds[statement] === Node.Input ? [...children(tree, statement)] : [];
      return tree && name !== undefined && expression !== undefined
        ? [{ cell, tree, statement, name: textOf(tree, name), expression }]
        : [];
    });
  });
}
