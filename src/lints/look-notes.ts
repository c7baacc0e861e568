import type { Program, SyntaxTree } from '../language';
import type { LintPass } from './lint-pass';
import { type Asked, askedOf, type QuestionKey, type SheetView } from './sheet-view';

/** The program and the sheet as lints see them while they look at one statement; what they look into is noted. */
export class LookNotes {
  /** The cells that were looked into, as they are. */
  readonly consulted: Map<string, SyntaxTree | undefined>;
  readonly asked = new Map<QuestionKey, Asked>();
  private watched: Program | undefined;
  private asking: SheetView | undefined;

  constructor(
    private readonly pass: Pick<LintPass, 'program' | 'sheet'>,
    cell: string,
    tree: SyntaxTree,
  ) {
    this.consulted = new Map([[cell, tree]]);
  }

  get program(): Program {
    this.watched ??= watching(this.pass.program, this.consulted);
    return this.watched;
  }

  get sheet(): SheetView {
    this.asking ??= askedOf(this.pass.sheet, this.asked);
    return this.asking;
  }
}

/** The same program, noting which cells' trees are asked for. */
function watching(program: Program, consulted: Map<string, SyntaxTree | undefined>): Program {
  return {
    library: program.library,
    update: (cells) => program.update(cells),
    tree(cell) {
      const tree = program.tree(cell);
      consulted.set(cell, tree);
      return tree;
    },
    results: (cell) => program.results(cell),
    diagnostics: (cell) => program.diagnostics(cell),
    names: () => program.names(),
    name: (text) => program.name(text),
    vary: (inputs) => program.vary(inputs),
    typeAt: (cell, node) => program.typeAt(cell, node),
    valueAt: (cell, node) => program.valueAt(cell, node),
  };
}
