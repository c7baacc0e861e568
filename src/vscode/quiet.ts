import * as vscode from 'vscode';

/** What is told after an edit may wait so long for a pause in the typing; results never do. */
const pause = 250;

/**
 * Tells that something has happened once nothing more happens for a moment. For what the editor asks anew for every
 * cell in view, such as colours, which must not stand in the way of results.
 */
export class Quiet implements vscode.Disposable {
  private readonly emitter = new vscode.EventEmitter<void>();
  readonly event = this.emitter.event;
  private waiting: ReturnType<typeof setTimeout> | undefined;

  hasHappened(): void {
    clearTimeout(this.waiting);
    this.waiting = setTimeout(() => this.emitter.fire(), pause);
  }

  dispose(): void {
    clearTimeout(this.waiting);
    this.emitter.dispose();
  }
}
