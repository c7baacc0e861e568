import type { FunctionDefinition } from '../library';
import { namesInSolution } from '../solving/solution-parts';
import { children, Node, type SyntaxTree, textOf } from '../syntax/tree';
import { argumentNodes } from './arguments';
import { type Cell, Name, type Statement, type Taken } from './binding';
import { expressionsIn } from './schedules/expressions-in';

/** All names of a sheet. */
export class NameTable {
  private readonly names = new Map<string, Name>();

  constructor(private readonly functions: ReadonlyMap<string, FunctionDefinition>) {}

  get(text: string): Name {
    let name = this.names.get(text);
    if (!name) {
      name = new Name(text);
      this.names.set(text, name);
    }
    return name;
  }

  find(text: string): Name | undefined {
    return this.names.get(text);
  }

  /** Names that have a definition. */
  *defined(): Generator<Name> {
    for (const name of this.names.values()) {
      if (name.definitions.length > 0) {
        yield name;
      }
    }
  }

  /** Enters what a cell's statements define and need. */
  bind(cell: Cell): void {
    for (const statement of cell.statements) {
      for (const node of statement.nameNodes) {
        const name = this.get(textOf(cell.tree, node));
        cell.meaning.names[node] = name;
        if (cell.tree.kinds[statement.node] !== Node.Solve) {
          name.addDefinition(statement);
          statement.defines.push(name);
        }
      }
      this.collect(cell, statement, statement.node, parametersOf(cell.tree, statement.node));
    }
  }

  /** Enters what a statement takes from another sheet, in place of what it took before. */
  static take(statement: Statement, taken: Taken): void {
    const { cell, part, uses } = statement;
    for (const name of uses.splice(0)) {
      name.removeUser(statement);
    }
    const name = taken.names?.get(textOf(cell.tree, part));
    statement.taken = { ...taken, name };
    if (name) {
      uses.push(name);
      name.addUser(statement);
      cell.meaning.names[part] = name; // There it has its value; here it is no more than the name.
    }
  }

  /** Takes a cell's statements out again. */
  unbind(cell: Cell): void {
    for (const statement of cell.statements) {
      for (const name of statement.defines) {
        name.removeDefinition(statement);
        this.forget(name);
      }
      for (const name of statement.uses) {
        name.removeUser(statement);
        this.forget(name);
      }
    }
  }

  private forget(name: Name): void {
    // A name of another sheet is that sheet's to forget.
    if (name.definitions.length === 0 && name.users.size === 0 && this.names.get(name.text) === name) {
      this.names.delete(name.text);
    }
  }

  private collect(cell: Cell, statement: Statement, node: number, locals: ReadonlySet<string>): void {
    const { tree } = cell;
    const { kinds, firstChildren, nextSiblings } = tree;
    switch (kinds[node]) {
      case Node.Number:
      case Node.Quantity:
        return;
      case Node.Name: {
        const text = textOf(tree, node);
        if (!locals.has(text)) {
          const name = this.get(text);
          cell.meaning.names[node] = name;
          if (!statement.uses.includes(name)) {
            statement.uses.push(name);
            name.addUser(statement);
          }
        }
        return;
      }
      case Node.Member:
        this.collect(cell, statement, firstChildren[node], locals);
        return;
      case Node.Call:
      case Node.BlockCall:
        this.collectCall(cell, statement, node, locals);
        return;
      case Node.Definition:
      case Node.Input:
        this.collectAll(cell, statement, nextSiblings[firstChildren[node]], locals);
        return;
      case Node.FunctionDefinition:
        this.collectAll(cell, statement, nextSiblings[nextSiblings[firstChildren[node]]], locals);
        return;
      case Node.Designation:
      case Node.Allow:
      case Node.Use:
        return;
      case Node.Schedule:
        for (const { expression, columns } of expressionsIn(cell.meaning, node)) {
          this.collect(cell, statement, expression, columns);
        }
        return;
      case Node.Unknown:
        this.collectAll(cell, statement, nextSiblings[firstChildren[node]], locals);
        return;
      case Node.Solution:
      case Node.Together: {
        const { needs, own } = namesInSolution(tree, node);
        for (const name of needs) {
          this.collect(cell, statement, name, locals);
        }
        this.collectAll(cell, statement, nextSiblings[firstChildren[node]], own);
        return;
      }
      default:
        this.collectAll(cell, statement, firstChildren[node], locals);
    }
  }

  private collectAll(cell: Cell, statement: Statement, first: number, locals: ReadonlySet<string>): void {
    for (let node = first; node >= 0; node = cell.tree.nextSiblings[node]) {
      this.collect(cell, statement, node, locals);
    }
  }

  private collectCall(cell: Cell, statement: Statement, node: number, locals: ReadonlySet<string>): void {
    const { tree } = cell;
    const { callee, items } = argumentNodes(tree, node);
    const definition = this.functions.get(textOf(tree, callee));
    if (!definition) {
      this.collect(cell, statement, callee, locals);
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
        this.collect(cell, statement, expression, locals);
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
