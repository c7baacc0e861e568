import { children, type NameInfo, Node, type Program, type SyntaxTree, textOf } from '../language';

/** Where the value of a name comes from, as far as the form of its definition tells. */
export type Origin = 'input' | 'used' | 'measured' | 'function' | 'solved' | 'schedule' | 'given' | 'computed';

/** The same in a few words. */
export const originWords: Readonly<Record<Origin, string>> = {
  input: 'an input',
  used: 'from another sheet',
  measured: 'measured',
  function: 'a function of the sheet',
  solved: 'found by solving',
  schedule: 'a schedule',
  given: 'given in the sheet',
  computed: 'computed',
};

export function originOf(program: Program, info: NameInfo): Origin {
  const tree = program.tree(info.cell);
  const statement = tree?.statements[info.statement];
  if (!tree || statement === undefined) {
    return 'computed';
  }
  switch (tree.kinds[statement]) {
    case Node.Input:
      return 'input';
    case Node.Use:
      return 'used';
    case Node.FunctionDefinition:
      return 'function';
    case Node.Solve:
      return 'solved';
    case Node.Schedule:
      return 'schedule';
    case Node.Definition: {
      const [, expression] = children(tree, statement);
      return expression === undefined ? 'computed' : byExpression(tree, expression);
    }
    default:
      return 'computed';
  }
}

function byExpression(tree: SyntaxTree, expression: number): Origin {
  switch (tree.kinds[expression]) {
    case Node.Reading:
    case Node.PlusMinus:
    case Node.OverRange:
      return 'measured';
    case Node.Call:
      return textOf(tree, tree.firstChildren[expression]) === 'measured' ? 'measured' : 'computed';
    case Node.Number:
    case Node.Quantity:
    case Node.Designation:
    case Node.Text:
    case Node.Yes:
    case Node.No:
      return 'given';
    default:
      return 'computed';
  }
}
