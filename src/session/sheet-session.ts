import { type Block, blocksOf } from '../display';
import type { Hover } from '../editor';
import { createProgram, type Library, type Program, type StatementResult } from '../language';
import { createLibrary } from '../library';
import { type AllowedFinding, type Caution, cautionsFor, type Linted, lint } from '../lints';
import {
  type FrontMatter,
  noFrontMatter,
  type ReadFrontMatter,
  readFrontMatter,
  resultWord,
  type SheetCell,
  savedResultIn,
} from '../notebook';
import type { TableFile } from '../tables';
import type { Diagnostic, Severity } from '../text';
import type { FolderFiles } from './folder-files';
import { FolderSheets } from './folder-sheets';
import { libraryFor } from './library-for';
import { LiveProse, type LiveValue } from './live-prose';
import { staleResult } from './saved-results';
import { severitiesInForce, staleResultCode, unknownLints } from './severities';

/** A cell as a session sees it; `id` is the host's own. */
export interface SessionCell {
  readonly id: string;
  readonly kind: SheetCell['kind'];
  readonly text: string;
}

/**
 * A sheet that is being worked on. What it tells is a pure function of the cells' texts, the severities and the
 * workspace's table files; an update does again only what the edit touched.
 */
export class SheetSession {
  /**
   * Replaces the severity of a lint's findings or switches the lint off, by id; taken into account by `update`. What the
   * sheet's own front matter says goes before it.
   */
  severities: Readonly<Record<string, Severity | 'off'>> = {};
  /** The workspace's own tables, which go before those that ship; taken into account by `update`. */
  tableFiles: readonly TableFile[];
  /** The files that this sheet may name; absent for one in no folder. Taken into account, and asked again, by `update`. */
  files?: FolderFiles;

  private readonly others = new FolderSheets();
  private front: ReadFrontMatter = noFrontMatter;
  private frontText: string | undefined;
  private frontCell: string | undefined;
  private settings: string | undefined;
  private tablesInUse: readonly TableFile[] = [];
  private editionProblem: string | undefined;
  private current!: Program;
  private cells: readonly SessionCell[] = [];
  private linted: Linted = { findings: new Map(), allowed: [] };
  private live = new Map<string, LiveProse>();
  private readonly shown = new Map<string, readonly Block[]>();

  constructor(options: { readonly tableFiles?: readonly TableFile[]; readonly files?: FolderFiles } = {}) {
    this.tableFiles = options.tableFiles ?? [];
    this.files = options.files;
    this.chooseLibrary();
  }

  /** The calculation cells as a program; it holds none while the front matter names an edition without tables. */
  get program(): Program {
    return this.current;
  }

  get frontMatter(): FrontMatter {
    return this.front.frontMatter;
  }

  /** Takes the cells as they are now, in order. Returns the ids of cells whose results or diagnostics changed. */
  update(cells: readonly SessionCell[]): ReadonlySet<string> {
    const changed = new Set<string>();
    const gone = new Set(this.cells.map((cell) => cell.id));
    for (const { id } of cells) {
      gone.delete(id);
    }
    const known = new Map(this.cells.map((cell) => [cell.id, cell.kind]));
    this.cells = cells;
    for (const { id, kind } of cells) {
      if (known.get(id) !== kind) {
        changed.add(id);
      }
    }
    this.readFront(cells[0], changed);
    this.others.files = this.files;
    if (this.chooseLibrary()) {
      add(changed, calculations(cells));
    }
    const evaluated = this.editionProblem === undefined ? calculations(cells) : [];
    this.readLive(cells);
    const asides = this.editionProblem === undefined ? [...this.live.values()].flatMap((live) => live.asides) : [];
    add(
      changed,
      [...this.current.update([...evaluated, ...asides])].map((id) => ({ id: id.split('\n')[0] })),
    );
    this.lintAgain(evaluated, cells, changed);
    add(changed, [...gone].map(withId));
    for (const [i, { id, text, kind }] of cells.entries()) {
      if (kind === 'prose' && i > 0 && changed.has(cells[i - 1].id) && text.includes(resultWord)) {
        changed.add(id); // Its saved results may be out of date now.
      }
    }
    for (const id of changed) {
      this.shown.delete(id);
    }
    return changed;
  }

  /** Looks for findings again, after the program was run with other inputs (`Program.vary`). */
  lintCase(): void {
    const evaluated = this.editionProblem === undefined ? calculations(this.cells) : [];
    this.lintAgain(evaluated, this.cells, new Set());
  }

  /** The ids of the calculation cells, in order; none while the front matter names an edition without tables. */
  calculations(): readonly string[] {
    return this.editionProblem === undefined ? calculations(this.cells).map(({ id }) => id) : [];
  }

  results(cell: string): readonly StatementResult[] {
    return this.current.results(cell);
  }

  /** Problems of a cell in order of place: what the language says, then what the lints find. */
  diagnostics(cell: string): readonly Diagnostic[] {
    if (cell === this.frontCell) {
      return this.front.diagnostics.concat(
        this.editionDiagnostics(),
        unknownLints(this.front),
        this.live.get(cell)?.diagnostics(this.current) ?? [],
      );
    }
    if (!this.isCalculation(cell)) {
      return [...this.stale(cell), ...(this.live.get(cell)?.diagnostics(this.current) ?? [])];
    }
    const found = [...this.current.diagnostics(cell), ...(this.linted.findings.get(cell) ?? [])];
    return found.sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
  }

  /** What a cell shows; the same object until it changes. */
  outputs(cell: string): readonly Block[] {
    let blocks = this.shown.get(cell);
    if (!blocks) {
      blocks = this.editionProblem !== undefined && this.isCalculation(cell) ? [notEvaluated] : this.blocks(cell);
      this.shown.set(cell, blocks);
    }
    return blocks;
  }

  /** The values that a prose cell shows, in order; none for one without code spans that begin with `=`. */
  liveValues(cell: string): readonly LiveValue[] {
    return this.live.get(cell)?.values(this.current) ?? [];
  }

  /** What is to be told of a live value at an offset of a prose cell; undefined beside one. */
  proseHover(cell: string, offset: number): Hover | undefined {
    return this.live.get(cell)?.hover(this.current, offset);
  }

  /** A prose cell's Markdown with its live values in place, without results that were saved behind a calculation. */
  shownProse(cell: string): string {
    const text = this.live.get(cell)?.markdown(this.current) ?? this.cells.find(({ id }) => id === cell)?.text ?? '';
    const saved = savedResultIn(text);
    return saved ? text.slice(saved.span.end).replace(/^\s+/, '') : text;
  }

  /** The findings that `allow` statements silence, each with its reason: for a report. */
  allowed(): readonly AllowedFinding[] {
    return this.linted.allowed;
  }

  /** True when the sheet says that its cautions are read: then only a report still shows them. */
  get cautionsAcknowledged(): boolean {
    return this.front.frontMatter.cautions === 'acknowledged';
  }

  /** Advice about work that can hurt someone, for the whole sheet, acknowledged or not. */
  cautions(): readonly Caution[] {
    const evaluated = this.editionProblem === undefined ? calculations(this.cells) : [];
    const found = [...this.linted.findings.values()].flat().map(({ code }) => code);
    return cautionsFor(
      this.current,
      evaluated.map((cell) => cell.id),
      new Set(found),
    );
  }

  /** Saved results at the beginning of a prose cell that are out of date. */
  private stale(cell: string): Diagnostic[] {
    const at = this.cells.findIndex(({ id }) => id === cell);
    const [before, { text }] = [this.cells[at - 1], this.cells[at] ?? { text: '' }];
    const severity = severitiesInForce(this.severities, this.front)[staleResultCode];
    if (before?.kind !== 'calculation' || severity === 'off' || !text.includes(resultWord)) {
      return [];
    }
    const found = staleResult(text, this.outputs(before.id));
    return found ? [severity ? { ...found, severity } : found] : [];
  }

  private readLive(cells: readonly SessionCell[]): void {
    const before = this.live;
    this.live = new Map();
    for (const { id, kind, text } of cells) {
      if (kind === 'prose' && text.includes('`')) {
        const known = before.get(id);
        this.live.set(id, known?.text === text ? known : new LiveProse(id, text, this.current.library.vocabulary));
      }
    }
  }

  private blocks(cell: string): readonly Block[] {
    return this.current.results(cell).flatMap((result) => blocksOf(result));
  }

  private isCalculation(id: string): boolean {
    return this.cells.some((cell) => cell.id === id && cell.kind === 'calculation');
  }

  private readFront(first: SessionCell | undefined, changed: Set<string>): void {
    const cell = first?.kind === 'prose' ? first : undefined;
    if (cell?.text === this.frontText && cell?.id === this.frontCell) {
      return;
    }
    this.frontText = cell?.text;
    this.frontCell = cell?.id;
    this.front = cell ? readFrontMatter(cell.text) : noFrontMatter;
    if (cell) {
      changed.add(cell.id);
    }
  }

  /** Makes a program for the edition, units and tables in force; true when they are others than before. */
  private chooseLibrary(): boolean {
    const { code, units } = this.front.frontMatter;
    const settings = `${code ?? ''}\n${units ?? ''}`;
    if (settings === this.settings && this.tableFiles === this.tablesInUse) {
      return false;
    }
    this.settings = settings;
    this.tablesInUse = this.tableFiles;
    const made = libraryFor({ code, units }, this.tableFiles);
    this.editionProblem = 'problem' in made ? made.problem : undefined;
    this.current = createProgram('problem' in made ? defaultLibrary() : made, this.others);
    this.shown.clear();
    return true;
  }

  private editionDiagnostics(): Diagnostic[] {
    const span = this.front.places.get('code');
    if (this.editionProblem === undefined || !span) {
      return [];
    }
    const message = `${this.editionProblem} Nothing in this sheet is evaluated until then.`;
    return [{ code: 'unknown-edition', severity: 'error', span, message }];
  }

  private lintAgain(evaluated: readonly SessionCell[], cells: readonly SessionCell[], changed: Set<string>): void {
    const before = this.linted.findings;
    const ids = evaluated.map((cell) => cell.id);
    const prose = cells.flatMap((cell) => (cell.kind === 'prose' ? [cell.text] : []));
    this.linted = lint(this.current, ids, { severities: severitiesInForce(this.severities, this.front), prose });
    for (const id of ids) {
      if (!sameFindings(before.get(id) ?? [], this.linted.findings.get(id) ?? [])) {
        changed.add(id);
      }
    }
  }
}

const notEvaluated: Block = {
  kind: 'missing',
  text: 'Not evaluated: there are no tables for the code edition that the front matter names.',
};

const calculations = (cells: readonly SessionCell[]) => cells.filter((cell) => cell.kind === 'calculation');

const withId = (id: string) => ({ id });

function add(changed: Set<string>, cells: readonly { readonly id: string }[]): void {
  for (const { id } of cells) {
    changed.add(id);
  }
}

function defaultLibrary(): Library {
  const library = createLibrary();
  if ('problem' in library) {
    throw new Error(library.problem); // The edition that ships as the default is always there.
  }
  return library;
}

/** Findings of statements that did not run again are the same objects, so most comparisons end at once. */
const sameFindings = (a: readonly Diagnostic[], b: readonly Diagnostic[]): boolean =>
  a.length === b.length &&
  a.every((finding, i) => {
    const other = b[i];
    return (
      finding === other ||
      (finding.code === other.code &&
        finding.severity === other.severity &&
        finding.message === other.message &&
        finding.span.start === other.span.start &&
        finding.span.end === other.span.end)
    );
  });
