import { showValue } from '../display';
import { children, Node, type StatementResult, type SyntaxTree, spanOf, textContent, textOf } from '../language';
import type { Span } from '../text';
import type { EditedSheet } from './contract';

export type SymbolKind = 'input' | 'value' | 'record' | 'function' | 'table' | 'check' | 'field';

/** One line of a cell's outline. */
export interface SheetSymbol {
  readonly name: string;
  /** The value or the verdict, in a few words. */
  readonly detail: string;
  readonly kind: SymbolKind;
  readonly span: Span;
  /** The name itself. */
  readonly nameSpan: Span;
  readonly fields: readonly SheetSymbol[];
}

const kinds: Partial<Record<Node, SymbolKind>> = {
  [Node.Definition]: 'value',
  [Node.Input]: 'input',
  [Node.BlockCall]: 'record',
  [Node.FunctionDefinition]: 'function',
  [Node.Schedule]: 'table',
};

/** What a cell defines and checks, in order. */
export function documentSymbols({ program }: EditedSheet, cell: string): SheetSymbol[] {
  const tree = program.tree(cell);
  const results = new Map(program.results(cell).map((result) => [result.index, result]));
  return (tree?.statements ?? []).flatMap((node, index) => symbolsOf(tree!, node, results.get(index)));
}

function symbolsOf(tree: SyntaxTree, node: number, result: StatementResult | undefined): SheetSymbol[] {
  const [first, ...rest] = children(tree, node);
  const span = spanOf(tree, node);
  const made = (name: number, kind: SymbolKind, detail: string, fields: SheetSymbol[] = []): SheetSymbol => ({
    name: textOf(tree, name),
    detail,
    kind,
    span,
    nameSpan: spanOf(tree, name),
    fields,
  });
  switch (tree.kinds[node]) {
    case Node.Solve:
      return [first, ...rest]
        .filter((child) => tree.kinds[child] === Node.Unknown)
        .map((child) => made(tree.firstChildren[child], 'value', 'solved'));
    case Node.Check: {
      const label = rest.find((child) => tree.kinds[child] === Node.Text);
      const name = label === undefined ? textOf(tree, first) : textContent(tree, label);
      const nameSpan = spanOf(tree, label ?? first);
      return [{ name: name || 'check', detail: result?.verdict ?? '', kind: 'check', span, nameSpan, fields: [] }];
    }
    default: {
      const kind = kinds[tree.kinds[node] as Node];
      return kind === undefined || first === undefined || tree.kinds[first] !== Node.Name
        ? []
        : [
            made(
              first,
              kind,
              detailOf(result),
              rest.flatMap((child) => fieldOf(tree, child)),
            ),
          ];
    }
  }
}

const detailOf = (result: StatementResult | undefined): string =>
  result?.value && result.value.kind !== 'record' && result.value.kind !== 'list' ? showValue(result.value) : '';

/** A field of a form or a computed column of a schedule. */
function fieldOf(tree: SyntaxTree, node: number): SheetSymbol[] {
  const [name, value] = children(tree, node);
  const kind = tree.kinds[node];
  return (kind === Node.Field || kind === Node.Column) && name !== undefined && tree.kinds[name] === Node.Name
    ? [
        {
          name: textOf(tree, name),
          detail: value === undefined ? '' : textOf(tree, value),
          kind: 'field',
          span: spanOf(tree, node),
          nameSpan: spanOf(tree, name),
          fields: [],
        },
      ]
    : [];
}
