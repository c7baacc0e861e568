import type { FunctionDefinition } from '../library';
import { namesInSolution } from '../solving/solution-parts';
import { children, Node, nameOf, type SyntaxTree, textOf } from '../syntax/tree';
import { argumentNodes } from './arguments';
import type { Cell, Name, Statement } from './binding';
import type { NameTable } from './name-table';
import { expressionsIn } from './schedules/expressions-in';

/** Finds what each statement of one cell defines and needs, and enters it in the table of names. */
export class CellBinder {
  /** By the number of a name's text in the tree, so that the table is asked once for each text. */
  private readonly known: (Name | undefined)[] = [];
  private statement!: Statement;

  constructor(
    private readonly names: NameTable,
    private readonly functions: ReadonlyMap<string, FunctionDefinition>,
    private readonly cell: Cell,
  ) {}

  bind(): void {
    const { tree, statements, meaning } = this.cell;
    for (const statement of statements) {
      const { node } = statement;
      this.statement = statement;
      if (tree.kinds[node] === Node.Solve) {
        for (const unknown of statement.nameNodes) {
          meaning.names[unknown] = this.nameAt(unknown); // Defined by the statement that finds it.
        }
      } else if (statement.nameNode >= 0) {
        const name = this.nameAt(statement.nameNode);
        meaning.names[statement.nameNode] = name;
        name.addDefinition(statement);
        statement.defines = name;
      }
      statement.usesFrom = this.cell.uses.length;
      this.collect(node, parametersOf(tree, node));
      statement.usesEnd = this.cell.uses.length;
    }
  }

  private nameAt(node: number): Name {
    const { tree } = this.cell;
    const number = tree.names[node];
    if (number < 0) {
      return this.names.get(textOf(tree, node));
    }
    this.known[number] ??= this.names.get(tree.nameTexts[number]);
    return this.known[number];
  }

  private collect(node: number, locals: ReadonlySet<string>): void {
    const { tree, meaning } = this.cell;
    const { kinds, firstChildren, nextSiblings } = tree;
    switch (kinds[node]) {
      case Node.Number:
      case Node.Quantity:
        return;
      case Node.Name:
        if (locals.size === 0 || !locals.has(nameOf(tree, node))) {
          const name = this.nameAt(node);
          meaning.names[node] = name;
          if (name.addUser(this.statement)) {
            this.cell.uses.push(name);
          }
        }
        return;
      case Node.Member:
        this.collect(firstChildren[node], locals);
        return;
      case Node.Call:
      case Node.BlockCall:
        this.collectCall(node, locals);
        return;
      case Node.Definition:
      case Node.Input:
        this.collectAll(nextSiblings[firstChildren[node]], locals);
        return;
      case Node.FunctionDefinition:
        this.collectAll(nextSiblings[nextSiblings[firstChildren[node]]], locals);
        return;
      case Node.Designation:
      case Node.Allow:
      case Node.Use:
        return;
      case Node.Schedule:
        for (const { expression, columns } of expressionsIn(meaning, node)) {
          this.collect(expression, columns);
        }
        return;
      case Node.Unknown:
        this.collectAll(nextSiblings[firstChildren[node]], locals);
        return;
      case Node.Solution:
      case Node.Together: {
        const { needs, own } = namesInSolution(tree, node);
        for (const name of needs) {
          this.collect(name, locals);
        }
        this.collectAll(nextSiblings[firstChildren[node]], own);
        return;
      }
      default:
        this.collectAll(firstChildren[node], locals);
    }
  }

  private collectAll(first: number, locals: ReadonlySet<string>): void {
    for (let node = first; node >= 0; node = this.cell.tree.nextSiblings[node]) {
      this.collect(node, locals);
    }
  }

  private collectCall(node: number, locals: ReadonlySet<string>): void {
    const { tree } = this.cell;
    const { callee, items } = argumentNodes(tree, node);
    const definition = this.functions.get(nameOf(tree, callee));
    if (!definition) {
      this.collect(callee, locals);
    }
    const positional = definition
      ? Object.keys(definition.parameters).filter((p) => !definition.parameters[p].named)
      : [];
    let position = 0;
    for (const { name, expression } of items) {
      const parameter = name >= 0 ? textOf(tree, name) : positional[position++];
      const spec =
        definition && parameter !== undefined && Object.hasOwn(definition.parameters, parameter)
          ? definition.parameters[parameter]
          : undefined;
      // The words of a choice are not names.
      if (!(spec && 'choice' in spec && spec.choice.includes(textOf(tree, expression)))) {
        this.collect(expression, locals);
      }
    }
  }
}

const noLocals: ReadonlySet<string> = new Set();

/** The parameter names of a function definition. */
function parametersOf(tree: SyntaxTree, node: number): ReadonlySet<string> {
  if (tree.kinds[node] !== Node.FunctionDefinition) {
    return noLocals;
  }
  const parameters = tree.nextSiblings[tree.firstChildren[node]];
  return new Set([...children(tree, parameters)].map((child) => textOf(tree, child)));
}
