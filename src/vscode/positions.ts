import * as vscode from 'vscode';
import { type Edit, LineIndex, type Span } from '../text';

/**
 * One document's text with the way between core's offsets and the editor's lines. The only place where that way is
 * gone. Core counts one character for every line end; the editor may keep two, so offsets are never the editor's own.
 */
export class Positions {
  readonly text: string;
  private readonly lines: LineIndex;

  /** A document, or a text with `\n` line ends that is in none. */
  constructor(source: vscode.TextDocument | string) {
    this.text = typeof source === 'string' ? source : coreText(source);
    this.lines = new LineIndex(this.text);
  }

  offset(position: vscode.Position): number {
    return this.lines.offset({ line: position.line + 1, column: position.character + 1 });
  }

  range(span: Span): vscode.Range {
    return new vscode.Range(this.position(span.start), this.position(span.end));
  }

  span(range: vscode.Range): Span {
    return { start: this.offset(range.start), end: this.offset(range.end) };
  }

  textEdits(edits: readonly Edit[]): vscode.TextEdit[] {
    return edits.map((edit) => vscode.TextEdit.replace(this.range(edit.span), edit.newText));
  }

  private position(offset: number): vscode.Position {
    const { line, column } = this.lines.at(offset);
    return new vscode.Position(line - 1, column - 1);
  }
}

/** A document's text as core reads it. */
export const coreText = (document: vscode.TextDocument): string => document.getText().replaceAll('\r\n', '\n');
