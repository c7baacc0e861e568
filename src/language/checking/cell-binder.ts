import type { FunctionDefinition } from '../library';
import { namesInSolution } from '../solving/solution-parts';
import { children, Node, nameOf, type SyntaxTree, textOf } from '../syntax/tree';
import { argumentNodes } from './arguments';
import type { Cell } from './binding';
import type { NameTable } from './name-table';
import { expressionsIn } from './schedules/expressions-in';

/** Finds what each statement of one cell defines and needs, and enters it in the table of names. */
export class CellBinder {
  /** The number in the cell's meaning of each name's text in the tree, so that the table is asked once for each; else 0. */
  private readonly known: number[];
  /** The numbers of the texts, for the nodes that solving made. */
  private readonly texts: Map<string, number>;
  /** By the same number: how many statements were begun when one used it last. */
  private readonly usedIn: number[] = [0];
  private begun = 0;

  constructor(
    private readonly names: NameTable,
    private readonly functions: ReadonlyMap<string, FunctionDefinition>,
    private readonly cell: Cell,
  ) {
    const { nameTexts } = cell.tree;
    this.known = new Array<number>(nameTexts.length).fill(0);
    this.texts = new Map(cell.solved.size === 0 ? [] : nameTexts.map((text, number) => [text, number]));
  }

  bind(): void {
    const { tree, statements, meaning, uses } = this.cell;
    for (const statement of statements) {
      const { node, nameNode } = statement;
      this.begun++;
      if (tree.kinds[node] === Node.Solve) {
        for (const unknown of statement.nameNodes) {
          this.mean(unknown); // Defined by the statement that finds it.
        }
      } else if (nameNode >= 0) {
        this.mean(nameNode);
        const name = meaning.nameAt(nameNode)!;
        name.addDefinition(statement);
        statement.defines = name;
      }
      statement.usesFrom = uses.length;
      this.collect(node, parametersOf(tree, node));
      statement.usesEnd = uses.length;
    }
  }

  /** Has a node mean the name that is its text, and returns the name's number. */
  private mean(node: number): number {
    const { tree, meaning } = this.cell;
    const text = tree.names[node] >= 0 ? tree.names[node] : this.numberOf(textOf(tree, node));
    if (this.known[text] === 0) {
      this.known[text] = meaning.addName(this.names.get(nameOf(tree, node)));
      this.usedIn.push(0);
    }
    meaning.setName(node, this.known[text]);
    return this.known[text];
  }

  private numberOf(text: string): number {
    let number = this.texts.get(text);
    if (number === undefined) {
      number = this.known.push(0) - 1;
      this.texts.set(text, number);
    }
    return number;
  }

  private collect(node: number, locals: ReadonlySet<string>): void {
    const { tree } = this.cell;
    switch (tree.kinds[node]) {
      case Node.Number:
      case Node.Quantity:
        return;
      case Node.Name:
        this.collectName(node, locals);
        return;
      case Node.Binary:
      case Node.Group:
      case Node.Convert:
        for (let child = tree.firstChildren[node]; child >= 0; child = tree.nextSiblings[child]) {
          this.collect(child, locals);
        }
        return;
      case Node.Definition: // Behind the name stands the value alone.
        this.collect(tree.nextSiblings[tree.firstChildren[node]], locals);
        return;
      default:
        this.collectOther(node, locals);
    }
  }

  private collectName(node: number, locals: ReadonlySet<string>): void {
    if (locals.size > 0 && locals.has(nameOf(this.cell.tree, node))) {
      return;
    }
    const name = this.mean(node);
    if (this.usedIn[name] !== this.begun) {
      this.usedIn[name] = this.begun;
      this.cell.uses.push(this.cell.meaning.nameAt(node)!);
    }
  }

  /** What fewer expressions and statements are made of. */
  private collectOther(node: number, locals: ReadonlySet<string>): void {
    const { tree, meaning } = this.cell;
    const { firstChildren, nextSiblings } = tree;
    switch (tree.kinds[node]) {
      case Node.Member:
        this.collect(firstChildren[node], locals);
        return;
      case Node.Call:
      case Node.BlockCall:
        this.collectCall(node, locals);
        return;
      case Node.Unknown:
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
