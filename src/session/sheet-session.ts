import type { Block } from '../display';
import { type Hover, shownBlocks } from '../editor';
import { createProgram, type Library, type Program, type StatementResult } from '../language';
import { createLibrary } from '../library';
import { type AllowedFinding, type Caution, cautionsFor, SheetLints, staleResultLint } from '../lints';
import {
  type FrontMatter,
  newerFormatIn,
  noFrontMatter,
  type ReadFrontMatter,
  readFrontMatter,
  resultWord,
  savedResultIn,
} from '../notebook';
import type { TableFile } from '../tables';
import type { Diagnostic, Severity } from '../text';
import type { FolderFiles } from './folder-files';
import { FolderSheets } from './folder-sheets';
import { libraryFor } from './library-for';
import type { LiveValue } from './live-prose';
import { staleResult } from './saved-results';
import { type CellsEdit, type SessionCell, SessionCells } from './session-cells';
import { severitiesInForce, unknownLints } from './severities';

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
  private readonly cells = new SessionCells(() => this.current.library.vocabulary);
  private lints = new SheetLints();
  private staleWeight: Severity | 'off' | undefined;
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

  /** The problem of a sheet in a later format than this one, in which only what a person types may change. */
  get newerFormat(): Diagnostic | undefined {
    return newerFormatIn(this.front);
  }

  /** Takes the cells as they are now, in order. Returns the ids of cells whose results or diagnostics changed. */
  update(cells: readonly SessionCell[]): ReadonlySet<string> {
    const changed = new Set<string>();
    const edit = this.cells.take(cells);
    this.noteKinds(edit, changed);
    this.readFront(cells[0], changed);
    this.others.files = this.files;
    const isNew = this.chooseLibrary();
    if (isNew) {
      this.lints = new SheetLints();
      for (const { id, kind, live } of this.cells.all) {
        if (kind === 'calculation' || live) {
          changed.add(id);
        }
      }
    }
    const ran = [...this.current.update(this.editionProblem === undefined ? this.cells.texts : [])];
    for (const id of ran) {
      changed.add(sheetCellOf(id));
    }
    this.lintAgain(ran, isNew ? { ...edit, entered: this.cells.all } : edit, changed);
    this.noteSaved(edit, changed);
    for (const id of changed) {
      this.shown.delete(id);
    }
    return changed;
  }

  /** Looks for findings again, after the program was run with other inputs; `ran` are the cells that this changed. */
  lintCase(ran: Iterable<string>): void {
    this.lintAgain(ran, { entered: [], left: [], moved: false }, new Set());
  }

  /** The ids of the calculation cells, in order; none while the front matter names an edition without tables. */
  calculations(): readonly string[] {
    return this.editionProblem === undefined
      ? this.cells.all.flatMap(({ id, kind }) => (kind === 'calculation' ? [id] : []))
      : [];
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
        this.cells.get(cell)?.live?.diagnostics(this.current) ?? [],
      );
    }
    if (!this.isCalculation(cell)) {
      return [...this.stale(cell), ...(this.cells.get(cell)?.live?.diagnostics(this.current) ?? [])];
    }
    const found = [...this.current.diagnostics(cell), ...(this.lints.findings.get(cell) ?? [])];
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
    return this.cells.get(cell)?.live?.values(this.current) ?? [];
  }

  /** What is to be told of a live value at an offset of a prose cell; undefined beside one. */
  proseHover(cell: string, offset: number): Hover | undefined {
    return this.cells.get(cell)?.live?.hover(this.current, offset);
  }

  /** A prose cell's Markdown with its live values in place, without results that were saved behind a calculation. */
  shownProse(cell: string): string {
    const text = this.cells.get(cell)?.live?.markdown(this.current) ?? this.cells.get(cell)?.text ?? '';
    const saved = savedResultIn(text);
    return saved ? text.slice(saved.span.end).replace(/^\s+/, '') : text;
  }

  /** The findings that `allow` statements silence, each with its reason: for a report. */
  allowed(): readonly AllowedFinding[] {
    return this.lints.allowed();
  }

  /** True when the sheet says that its cautions are read: then only a report still shows them. */
  get cautionsAcknowledged(): boolean {
    return this.front.frontMatter.cautions === 'acknowledged';
  }

  /** Advice about work that can hurt someone, for the whole sheet, acknowledged or not. */
  cautions(): readonly Caution[] {
    const found = [...this.lints.findings.values()].flat().map(({ code }) => code);
    return cautionsFor(this.current, this.calculations(), new Set(found));
  }

  /** Saved results at the beginning of a prose cell that are out of date. */
  private stale(cell: string): Diagnostic[] {
    const { place, text } = this.cells.get(cell) ?? { place: 0, text: '' };
    const before = this.cells.all[place - 1];
    const severity = this.staleWeight;
    if (before?.kind !== 'calculation' || severity === 'off' || !text.includes(resultWord)) {
      return [];
    }
    const found = staleResult(text, this.outputs(before.id));
    return found ? [severity ? { ...found, severity } : found] : [];
  }

  /** Notes the cells that are no more, and those that came or are of the other kind now. */
  private noteKinds({ entered, left }: CellsEdit, changed: Set<string>): void {
    const kinds = new Map(left.map(({ id, kind }) => [id, kind]));
    for (const { id, kind } of entered) {
      if (kinds.get(id) !== kind) {
        changed.add(id);
      }
      kinds.delete(id);
    }
    for (const id of kinds.keys()) {
      changed.add(id);
    }
  }

  /** Notes the prose cells whose saved results may be out of date now, or no longer so. */
  private noteSaved({ start, end }: CellsEdit, changed: Set<string>): void {
    const { all } = this.cells;
    const note = (place: number) => {
      if (all[place]?.kind === 'prose' && all[place].text.includes(resultWord)) {
        changed.add(all[place].id);
      }
    };
    for (const id of [...changed]) {
      note((this.cells.get(id)?.place ?? all.length) + 1);
    }
    const weight = severitiesInForce(this.severities, this.front)[staleResultLint.id];
    const [first, last] = weight === this.staleWeight ? [start, end] : [0, all.length];
    this.staleWeight = weight;
    for (let place = first; place <= last; place++) {
      note(place);
    }
  }

  private blocks(cell: string): readonly Block[] {
    return this.current.results(cell).flatMap((result) => shownBlocks(result));
  }

  private isCalculation(id: string): boolean {
    return this.cells.get(id)?.kind === 'calculation';
  }

  private readFront(first: SessionCell | undefined, changed: Set<string>): void {
    const cell = first?.kind === 'prose' ? first : undefined;
    if (cell?.text === this.frontText && cell?.id === this.frontCell) {
      return;
    }
    if (this.frontCell !== undefined) {
      changed.add(this.frontCell); // It may stand elsewhere now, and is then prose like any other.
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

  private lintAgain(
    ran: Iterable<string>,
    { entered, left, moved }: Pick<CellsEdit, 'entered' | 'left' | 'moved'>,
    changed: Set<string>,
  ): void {
    const prose = [...left.map(({ id }) => ({ id })), ...entered.filter(({ kind }) => kind === 'prose')];
    const found = this.lints.update({
      program: this.current,
      cells: [...ran].filter((id) => sheetCellOf(id) === id),
      prose,
      placeOf: (id) => this.cells.get(id)?.place ?? -1,
      moved,
      severities: severitiesInForce(this.severities, this.front),
    });
    for (const id of found) {
      changed.add(id);
    }
  }
}

const notEvaluated: Block = {
  kind: 'missing',
  text: 'Not evaluated: there are no tables for the code edition that the front matter names.',
};

/** The cell of the sheet that a cell of the program belongs to: itself, or the prose whose live value it is. */
const sheetCellOf = (id: string): string => (id.includes('\n') ? id.slice(0, id.indexOf('\n')) : id);

function defaultLibrary(): Library {
  const library = createLibrary();
  if ('problem' in library) {
    throw new Error(library.problem); // The edition that ships as the default is always there.
  }
  return library;
}
