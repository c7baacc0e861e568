import type * as vscode from 'vscode';
import { FilePositions, readSheet, type SheetFile, SheetSession } from '../core';
import type { Diagnostic, Span } from '../text';
import { type EditedSheet, PlacedCell } from './edited-sheet';
import { coreText, Positions } from './positions';
import type { Surroundings } from './surroundings';

/** A sheet that is shown as text, and its session. A cell's id in the session is its number in the file. */
export class TextSheet implements EditedSheet {
  readonly session = new SheetSession();
  private version = -1;
  private isEvaluated = false;
  private file!: SheetFile;
  private inFile!: FilePositions;
  private placedCells: readonly PlacedCell[] = [];

  constructor(
    readonly document: vscode.TextDocument,
    private readonly surroundings: Surroundings,
  ) {
    this.read();
  }

  get uri(): vscode.Uri {
    return this.document.uri;
  }

  get editable(): boolean {
    return this.file.editable;
  }

  update(): void {
    const isTouched = this.version !== this.document.version;
    if (isTouched) {
      this.read();
    }
    if (!this.surroundings.tell(this.session, this.uri) && !isTouched && this.isEvaluated) {
      return;
    }
    this.isEvaluated = true;
    const cells = this.file.editable ? this.file.cells : [];
    this.session.update(cells.map(({ kind, text }, index) => ({ id: String(index), kind, text })));
  }

  bytes(): Uint8Array | undefined {
    return this.editable ? new TextEncoder().encode(this.document.getText()) : undefined;
  }

  cellsIn(): readonly PlacedCell[] {
    return this.placedCells.filter((_, index) => this.file.cells[index].kind === 'calculation');
  }

  proseIn(): readonly PlacedCell[] {
    return this.placedCells.filter((_, index) => this.file.cells[index].kind === 'prose');
  }

  placed(cell: string): PlacedCell | undefined {
    return this.placedCells[Number(cell)];
  }

  /** True while a file that the sheet names is being read. */
  get isWaiting(): boolean {
    return this.surroundings.files.isAwaitedBy(this.uri);
  }

  /** Problems of the file and of its cells, told in offsets of the file. */
  problems(): readonly Diagnostic[] {
    return [
      ...this.file.notices,
      ...this.placedCells.flatMap(({ id }) =>
        this.session.diagnostics(id).map((problem) => this.inFile.inFile(Number(id), problem, Number)),
      ),
    ];
  }

  private read(): void {
    this.version = this.document.version;
    this.file = readSheet(new TextEncoder().encode(coreText(this.document)));
    this.inFile = new FilePositions(this.file);
    const positions = new Positions(this.document);
    this.placedCells = this.file.editable
      ? this.file.cells.map((_, index) => new StretchOfFile(index, this.document, positions, this.inFile))
      : [];
  }
}

/** A cell of a file that is shown as text. */
class StretchOfFile extends PlacedCell {
  constructor(
    private readonly index: number,
    document: vscode.TextDocument,
    positions: Positions,
    private readonly file: FilePositions,
  ) {
    super(String(index), document, positions);
  }

  offset(position: vscode.Position): number | undefined {
    return this.file.inCell(this.index, this.positions.offset(position));
  }

  within(range: vscode.Range): Span | undefined {
    const wanted = this.positions.span(range);
    const whole = this.file.extent(this.index);
    if (wanted.end < whole.start || whole.end < wanted.start) {
      return undefined;
    }
    return {
      start: this.file.inCell(this.index, Math.max(wanted.start, whole.start))!,
      end: this.file.inCell(this.index, Math.min(wanted.end, whole.end))!,
    };
  }

  protected inDocument(span: Span): Span {
    return this.file.span(this.index, span);
  }
}
