import * as vscode from 'vscode';
import { checksOf, type ListedCheck } from '../core';
import { type EditedSheet, locationOf } from './edited-sheet';
import type { OpenSheets } from './open-sheets';

/** A check among the tests, and the sheet it stands in. */
interface Listed {
  readonly sheet: EditedSheet;
  readonly check: ListedCheck;
}

/**
 * The checks of open sheets as tests. To run one is to bring its sheet up to date and read the verdict that the cell
 * shows. As on the command line only a plain yes passes.
 */
export class CheckTests implements vscode.Disposable {
  readonly controller = vscode.tests.createTestController('kilofoot', vscode.l10n.t('Kilofoot Checks'));
  private readonly listening: vscode.Disposable[];
  /** What each sheet's tests were last listed as; the editor is told only of what changed. */
  private readonly told = new Map<string, string>();

  constructor(
    private readonly sheets: OpenSheets,
    evaluated: vscode.Event<void>,
  ) {
    const evaluate = vscode.l10n.t('Evaluate');
    this.controller.createRunProfile(evaluate, vscode.TestRunProfileKind.Run, (request) => this.run(request), true);
    this.controller.refreshHandler = () => this.list();
    const soon = () => setTimeout(() => this.list()); // The sheet itself is forgotten on the same event.
    this.listening = [
      evaluated(() => this.list()),
      vscode.workspace.onDidCloseNotebookDocument(soon),
      vscode.workspace.onDidCloseTextDocument((document) => {
        if (this.told.has(document.uri.toString())) {
          soon();
        }
      }),
    ];
  }

  dispose(): void {
    for (const listening of this.listening) {
      listening.dispose();
    }
    this.controller.dispose();
  }

  /** The open sheets by address; one that is open both ways is listed as the notebook. */
  private open(): Map<string, EditedSheet> {
    const all: EditedSheet[] = [...this.sheets.allTexts(), ...this.sheets.all()];
    return new Map(all.map((sheet) => [sheet.uri.toString(), sheet]));
  }

  private list(): void {
    const open = this.open();
    for (const [id, sheet] of open) {
      this.listSheet(id, sheet);
    }
    for (const id of [...this.told.keys()].filter((known) => !open.has(known))) {
      this.told.delete(id);
      this.controller.items.delete(id);
    }
  }

  private listSheet(id: string, sheet: EditedSheet): void {
    const checks = checksIn(sheet);
    const now = JSON.stringify(checks.map(([key, { check }]) => [key, check.label, check.words, check.span]));
    if (this.told.get(id) === now) {
      return;
    }
    this.told.set(id, now);
    if (checks.length === 0) {
      this.controller.items.delete(id);
      return;
    }
    const known = this.controller.items.get(id);
    const item = known ?? this.controller.createTestItem(id, vscode.workspace.asRelativePath(sheet.uri), sheet.uri);
    const outdated: vscode.TestItem[] = [];
    item.children.replace(
      checks.map(([key, { check }]) => {
        const [place] = locationOf(sheet, check);
        const before = item.children.get(key);
        const made = this.controller.createTestItem(key, check.label, place?.uri ?? sheet.uri);
        made.range = place?.range;
        made.description = check.words;
        if (before && before.description !== check.words) {
          outdated.push(made);
        }
        return made;
      }),
    );
    if (!known) {
      this.controller.items.add(item);
    }
    if (outdated.length > 0) {
      this.controller.invalidateTestResults(outdated);
    }
  }

  private run({ include, exclude = [] }: vscode.TestRunRequest): void {
    for (const sheet of this.open().values()) {
      sheet.update();
    }
    this.list();
    const run = this.controller.createTestRun({ include, exclude } as vscode.TestRunRequest);
    for (const [id, sheet] of this.open()) {
      const item = this.controller.items.get(id);
      for (const [key, { check }] of item ? checksIn(sheet) : []) {
        const test = item!.children.get(key);
        const isWanted = !include || include.some(({ id: wanted }) => wanted === id || wanted === key);
        if (test && isWanted && !exclude.some(({ id: left }) => left === id || left === key)) {
          tell(run, test, check);
        }
      }
    }
    run.end();
  }
}

/** The checks of a sheet with a key that stays while others come and go: the label and which one of that label. */
function checksIn(sheet: EditedSheet): [string, Listed][] {
  const seen = new Map<string, number>();
  return sheet.session.calculations().flatMap((cell) =>
    checksOf(sheet.session, cell).map((check): [string, Listed] => {
      const count = (seen.get(check.label) ?? 0) + 1;
      seen.set(check.label, count);
      return [`${sheet.uri} ${check.label} ${count}`, { sheet, check }];
    }),
  );
}

function tell(run: vscode.TestRun, test: vscode.TestItem, check: ListedCheck): void {
  run.appendOutput(`${check.label}\n${check.detail()}\n\n`.replaceAll('\n', '\r\n'), undefined, test);
  if (check.verdict === 'yes') {
    run.passed(test);
    return;
  }
  const message = new vscode.TestMessage(check.isEvaluated ? check.detail() : `${check.words}. ${check.detail()}`);
  if (test.uri && test.range) {
    message.location = new vscode.Location(test.uri, test.range);
  }
  if (check.isEvaluated) {
    run.failed(test, message);
  } else {
    run.errored(test, message);
  }
}
