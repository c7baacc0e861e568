import {
  children,
  Node,
  nodesBelow,
  type Program,
  type SyntaxTree,
  spanOf,
  type Type,
  textOf,
  unitSpanOf,
} from '../language';
import type { Span } from '../text';
import type { EditedSheet } from './contract';
import { type Origin, originOf } from './origin';

/** What a stretch of text is, as themes colour it. The order is the editor's legend. */
export const tokenTypes = ['variable', 'function', 'property', 'unit', 'conductor', 'lint'] as const;
/** Where a name comes from. */
export const tokenModifiers = ['declaration', 'measured', 'input', 'conductor', 'parameter', 'used'] as const;

export interface SemanticToken {
  readonly span: Span;
  readonly type: (typeof tokenTypes)[number];
  readonly modifiers: readonly (typeof tokenModifiers)[number][];
}

/** The names, units and conductors of a cell, in order; none reaches past the end of its line. */
export function semanticTokens({ program }: EditedSheet, cell: string): SemanticToken[] {
  const tree = program.tree(cell);
  if (!tree) {
    return [];
  }
  const tokens = tree.statements.flatMap((statement) => tokensOf(program, tree, statement));
  return tokens
    .filter(({ span }) => span.end > span.start && !tree.text.slice(span.start, span.end).includes('\n'))
    .sort((a, b) => a.span.start - b.span.start);
}

function tokensOf(program: Program, tree: SyntaxTree, statement: number): SemanticToken[] {
  const tokens: SemanticToken[] = [];
  const roles = new Map<number, Role>();
  const defined = new Set<number>();
  const parameters = new Set<string>();
  const add = (span: Span, type: SemanticToken['type'], modifiers: SemanticToken['modifiers'] = []) =>
    tokens.push({ span, type, modifiers });
  for (const node of nodesBelow(tree, statement)) {
    assignRoles(tree, node, roles, defined, parameters);
    const span = spanOf(tree, node);
    switch (tree.kinds[node]) {
      case Node.Designation:
        add(span, 'conductor');
        break;
      case Node.Quantity:
      case Node.Convert:
        if (tree.units[node] >= 0) {
          add(unitSpanOf(tree, node), 'unit');
        }
        break;
      case Node.Name: {
        const role = roles.get(node);
        const name = textOf(tree, node);
        const declares = defined.has(node) ? (['declaration'] as const) : [];
        if (role !== undefined) {
          add(span, role, declares);
        } else if (parameters.has(name)) {
          add(span, 'variable', [...declares, 'parameter']);
        } else {
          const info = program.name(name); // Without one it is the word of a choice, or nothing yet.
          if (info) {
            const origin = originOf(program, info);
            add(span, origin === 'function' ? 'function' : 'variable', [
              ...declares,
              ...modifiersOf(origin, info.type),
            ]);
          }
        }
      }
    }
  }
  return tokens;
}

function modifiersOf(origin: Origin, type: Type): SemanticToken['modifiers'] {
  const own = origin === 'measured' || origin === 'input' || origin === 'used' ? [origin] : [];
  return type.kind === 'object' && type.object.name === 'conductor' ? [...own, 'conductor'] : own;
}

type Role = 'property' | 'function' | 'lint';

/** What the names right below a node are by where they stand. Parents are visited before their children. */
function assignRoles(
  tree: SyntaxTree,
  node: number,
  roles: Map<number, Role>,
  defined: Set<number>,
  parameters: Set<string>,
): void {
  const [first, second] = children(tree, node);
  switch (tree.kinds[node]) {
    case Node.Definition:
    case Node.Input:
    case Node.Schedule:
    case Node.Unknown:
      defined.add(first);
      break;
    case Node.BlockCall:
      defined.add(first);
      roles.set(second, 'function');
      break;
    case Node.FunctionDefinition:
      defined.add(first);
      roles.set(first, 'function');
      break;
    case Node.Parameters:
      for (const parameter of children(tree, node)) {
        parameters.add(textOf(tree, parameter));
        defined.add(parameter);
      }
      break;
    case Node.Call:
      roles.set(first, 'function');
      break;
    case Node.Member:
      roles.set(second, 'property');
      break;
    case Node.Argument:
    case Node.Field:
    case Node.Column:
      if (second !== undefined) {
        roles.set(first, 'property');
      }
      break;
    case Node.HeaderRow:
      for (const column of children(tree, node)) {
        roles.set(column, 'property');
      }
      break;
    case Node.Use:
      for (const name of children(tree, node)) {
        defined.add(name);
      }
      break;
    case Node.Allow:
      roles.set(first, 'lint');
  }
}
