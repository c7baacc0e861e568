import type { Statement, Taken } from '../checking/binding';
import type { OtherSheets, SheetProblem } from '../program';
import { textContent } from '../syntax/navigation';
import { children, Node, type SyntaxTree } from '../syntax/tree';
import { type Edited, Sheet } from './sheet';

/** A `use` that leads to a sheet. */
interface Lead {
  readonly statement: Statement;
  readonly file: string;
  readonly from: string;
  readonly to: string;
}

/**
 * The sheets that a sheet takes names from, and those that they take names from in turn. They are part of its program:
 * one order of evaluation, and one source of doubt for one reading, by whichever way it comes.
 */
export class UsedSheets {
  private sheets = new Map<string, Sheet>();

  constructor(
    private readonly main: Sheet,
    private readonly others: OtherSheets,
  ) {}

  /** The sheets in use, without the one that is worked on. */
  [Symbol.iterator](): Iterator<Sheet> {
    return this.sheets.values();
  }

  /**
   * Opens what is named now, lets go of what no longer is, and notes in `edited` the cells that come and go. Returns what
   * each statement that takes a name takes.
   */
  follow(edited: Edited): ReadonlyMap<Statement, Taken> {
    const own = this.others.path;
    const before = this.sheets;
    this.sheets = new Map();
    const leads: Lead[] = [];
    const taken = new Map<Statement, Taken>();
    const waiting: [path: string, sheet: Sheet][] = [[own, this.main]];
    for (let next = waiting.pop(); next; next = waiting.pop()) {
      const [from, sheet] = next;
      for (const { statement, file } of takersWithFiles(sheet)) {
        if (file === undefined) {
          continue; // The parser has spoken.
        }
        const found = this.others.find(file, from);
        if ('problem' in found) {
          taken.set(statement, { file, problem: found.problem });
          continue;
        }
        const { path } = found;
        const opened = path === own || this.sheets.has(path) ? undefined : this.others.open(path);
        if (opened && 'problem' in opened) {
          taken.set(statement, { file, problem: opened.problem });
          continue;
        }
        leads.push({ statement, file, from, to: path });
        if (opened) {
          const old = before.get(path);
          const sheetThere = old?.library === opened.library ? old : new Sheet(opened.library, this.others, path);
          sheetThere.takeGiven(opened, edited);
          this.sheets.set(path, sheetThere);
          waiting.push([path, sheetThere]);
        }
      }
    }
    for (const [path, old] of before) {
      if (this.sheets.get(path) !== old) {
        edited.gone.push(...old.cells);
      }
    }
    const ways = waysOf(leads);
    for (const { statement, file, from, to } of leads) {
      const back = wayBetween(to, from, ways);
      const sheet = to === own ? this.main : this.sheets.get(to)!;
      taken.set(statement, back ? { file, problem: circle([from, ...back]) } : { file, names: sheet.names });
    }
    return taken;
  }
}

const nothingBeside: SheetProblem = {
  problem: {
    code: 'no-other-sheets',
    message: 'This sheet is in no folder yet, so there is no other sheet beside it. Save it beside the other one.',
  },
};

/** For a sheet that stands alone. */
export const noOtherSheets: OtherSheets = {
  path: '',
  find: () => nothingBeside,
  open: () => nothingBeside,
  rows: () => ({
    problem: {
      code: 'no-other-sheets',
      message: 'This sheet is in no folder yet, so there is no file beside it. Save it beside the file with the rows.',
    },
  }),
};

/** The file that a `use` names; undefined when it could not be read, which the parser has told. */
function fileOf(tree: SyntaxTree, use: number): string | undefined {
  const file = [...children(tree, use)].at(-1)!;
  return tree.kinds[file] === Node.Text ? textContent(tree, file) : undefined;
}

/** The statements of a sheet that take a name, each with the file that its line names; the line is read once. */
function* takersWithFiles(sheet: Sheet): Generator<{ readonly statement: Statement; readonly file?: string }> {
  for (const { takers, tree } of sheet.cellsNamingFiles) {
    let line = -1;
    let file: string | undefined;
    for (const statement of takers) {
      if (statement.node !== line) {
        line = statement.node;
        file = fileOf(tree, line);
      }
      yield { statement, file };
    }
  }
}

/** Which sheets each sheet takes names from. */
function waysOf(leads: readonly Lead[]): ReadonlyMap<string, ReadonlySet<string>> {
  const ways = new Map<string, Set<string>>();
  for (const { from, to } of leads) {
    ways.set(from, (ways.get(from) ?? new Set()).add(to));
  }
  return ways;
}

/** The shortest way from sheet to sheet, both ends included; undefined when there is none. */
function wayBetween(start: string, end: string, ways: ReadonlyMap<string, ReadonlySet<string>>): string[] | undefined {
  const cameFrom = new Map<string, string | undefined>([[start, undefined]]);
  for (const path of cameFrom.keys()) {
    if (path === end) {
      const way = [path];
      for (let at = cameFrom.get(path); at !== undefined; at = cameFrom.get(at)) {
        way.unshift(at);
      }
      return way;
    }
    for (const next of ways.get(path) ?? []) {
      if (!cameFrom.has(next)) {
        cameFrom.set(next, path);
      }
    }
  }
  return undefined;
}

const circle = (way: readonly string[]): NonNullable<Taken['problem']> => ({
  code: 'sheet-cycle',
  message:
    way.length === 2
      ? 'A sheet cannot take names from itself: they are there already. Remove this line.'
      : `These sheets take names from one another in a circle: ${way.join(' → ')}. Move what they share to a sheet of its own.`,
});
