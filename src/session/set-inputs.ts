import { children, Node, parse, type SyntaxTree, spanOf, textOf } from '../language';
import { createLibrary } from '../library';
import { readSheet, writeSheet } from '../notebook';
import { applyEdits } from '../text';
import { readUnit } from '../units';

export interface InputsSet {
  /** The sheet with the inputs' new values in place. */
  readonly bytes: Uint8Array;
  /** Names that no `input` statement of the sheet declares. */
  readonly unknown: readonly string[];
  /** Names that the sheet declares as inputs. */
  readonly inputs: readonly string[];
}

/**
 * Puts values in the place of those a sheet's `input` statements hold. A value is written as in a cell; a bare number
 * takes the unit that the input is written with. The bytes given are not touched.
 */
export function setInputs(bytes: Uint8Array, values: ReadonlyMap<string, string>): InputsSet {
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
      inputs.push(textOf(tree, name));
      const value = values.get(textOf(tree, name));
      return value === undefined || expression === undefined
        ? []
        : [{ span: spanOf(tree, expression), newText: withUnit(value, tree, expression) }];
    });
    return edits.length > 0 ? { ...cell, text: applyEdits(cell.text, edits) } : cell;
  });
  return {
    bytes: writeSheet(cells, file.origin),
    unknown: [...values.keys()].filter((name) => !inputs.includes(name)),
    inputs,
  };
}

const bareNumber = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

function withUnit(value: string, tree: SyntaxTree, expression: number): string {
  const unit = tree.kinds[expression] === Node.Quantity ? tree.units[expression] : -1;
  return unit >= 0 && bareNumber.test(value.trim()) ? `${value.trim()} ${tree.unitTexts[unit]}` : value.trim();
}
