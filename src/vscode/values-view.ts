import * as vscode from 'vscode';
import { checksOf, hoverAt, type ListedCheck, type ListedValue, originWords, type Verdict, valuesOf } from '../core';
import { verdictWords } from '../display';
import { type EditedSheet, locationOf } from './edited-sheet';
import { views } from './names';
import type { OpenSheets } from './open-sheets';
import { sheetInFront } from './sheet-in-front';

/** A line of the view. */
export type Entry =
  | { readonly kind: 'group'; readonly label: string; readonly entries: readonly Entry[] }
  | { readonly kind: 'value'; readonly sheet: EditedSheet; readonly value: ListedValue }
  | { readonly kind: 'field'; readonly name: string; readonly text: string }
  | { readonly kind: 'check'; readonly sheet: EditedSheet; readonly check: ListedCheck };

const originIcons: Readonly<Record<ListedValue['origin'], string>> = {
  input: 'edit',
  used: 'references',
  measured: 'dashboard',
  function: 'symbol-method',
  solved: 'symbol-operator',
  schedule: 'table',
  given: 'symbol-constant',
  computed: 'symbol-variable',
};

const verdictIcons: Readonly<Record<Verdict, vscode.ThemeIcon>> = {
  yes: new vscode.ThemeIcon('pass', new vscode.ThemeColor('testing.iconPassed')),
  no: new vscode.ThemeIcon('error', new vscode.ThemeColor('testing.iconFailed')),
  'cannot tell': new vscode.ThemeIcon('question', new vscode.ThemeColor('testing.iconQueued')),
};

/** The values and checks of the sheet in front. It shows what was evaluated for the sheet itself, and evaluates nothing. */
export class ValuesView implements vscode.TreeDataProvider<Entry>, vscode.Disposable {
  private readonly changed = new vscode.EventEmitter<void>();
  readonly onDidChangeTreeData = this.changed.event;
  private readonly disposables: vscode.Disposable[];
  private readonly view: vscode.TreeView<Entry>;
  /** The sheet that the editor was last told of as the one in front. */
  private told: EditedSheet | undefined;

  constructor(
    private readonly sheets: OpenSheets,
    evaluated: vscode.Event<void>,
  ) {
    this.view = vscode.window.createTreeView(views.values, { treeDataProvider: this, showCollapseAll: true });
    const follow = () => this.follow();
    const { window } = vscode;
    this.disposables = [
      this.changed,
      this.view,
      evaluated(follow),
      window.onDidChangeActiveNotebookEditor(follow),
      window.onDidChangeActiveTextEditor(follow),
    ];
    follow();
  }

  dispose(): void {
    for (const disposable of this.disposables) {
      disposable.dispose();
    }
  }

  getChildren(entry?: Entry): Entry[] {
    if (!entry) {
      const sheet = sheetInFront(this.sheets);
      return sheet ? entriesOf(sheet) : [];
    }
    switch (entry.kind) {
      case 'group':
        return [...entry.entries];
      case 'value':
        return entry.value.fields.map((field): Entry => ({ kind: 'field', ...field }));
      default:
        return [];
    }
  }

  getTreeItem(entry: Entry): vscode.TreeItem {
    switch (entry.kind) {
      case 'group': {
        const group = new vscode.TreeItem(entry.label, vscode.TreeItemCollapsibleState.Expanded);
        group.id = entry.label;
        return group;
      }
      case 'value':
        return valueItem(entry.sheet, entry.value);
      case 'field': {
        const field = new vscode.TreeItem(entry.name);
        field.description = entry.text;
        return field;
      }
      case 'check':
        return checkItem(entry.sheet, entry.check);
    }
  }

  resolveTreeItem(item: vscode.TreeItem, entry: Entry): vscode.TreeItem {
    if (entry.kind === 'value') {
      const { sheet, value } = entry;
      const page = hoverAt(sheet.session, value.cell, value.span.start);
      item.tooltip = new vscode.MarkdownString(page?.markdown ?? '');
    } else if (entry.kind === 'check') {
      item.tooltip = entry.check.detail();
    }
    return item;
  }

  private follow(): void {
    const sheet = sheetInFront(this.sheets);
    if (sheet !== this.told) {
      this.told = sheet;
      void vscode.commands.executeCommand('setContext', views.sheetInFront, sheet !== undefined);
      this.view.description = sheet?.uri.path.split('/').at(-1);
    }
    this.changed.fire();
  }
}

function entriesOf(sheet: EditedSheet): Entry[] {
  const { session } = sheet;
  const cells = session.calculations();
  const checks = cells
    .flatMap((cell) => checksOf(session, cell))
    .map((check): Entry => ({ kind: 'check', sheet, check }));
  const values = cells
    .flatMap((cell) => valuesOf(session, cell))
    .map((value): Entry => ({ kind: 'value', sheet, value }));
  const groups: Entry[] = [
    { kind: 'group', label: vscode.l10n.t('Checks'), entries: checks },
    { kind: 'group', label: vscode.l10n.t('Values'), entries: values },
  ];
  return groups.filter((group) => group.kind === 'group' && group.entries.length > 0);
}

function valueItem(sheet: EditedSheet, value: ListedValue): vscode.TreeItem {
  const { Collapsed, None } = vscode.TreeItemCollapsibleState;
  const { name, text, fields, isThere, origin } = value;
  const item = new vscode.TreeItem(name, fields.length > 0 ? Collapsed : None);
  item.id = `${value.cell} ${name}`;
  item.description = text;
  item.iconPath = new vscode.ThemeIcon(isThere ? originIcons[origin] : 'warning');
  item.contextValue = origin === 'input' ? 'input' : 'value';
  const shown = text || vscode.l10n.t('a record');
  item.accessibilityInformation = { label: `${name}, ${shown}, ${vscode.l10n.t(originWords[origin])}` };
  item.command = revealing(sheet, value);
  return item;
}

function checkItem(sheet: EditedSheet, check: ListedCheck): vscode.TreeItem {
  // The verdict stands first: a view is narrow, and what is cut off is the end of a line.
  const item = new vscode.TreeItem(`${verdictWords[check.verdict]}: ${check.label}`);
  item.id = `${check.cell} ${check.index}`;
  item.description = check.isEvaluated ? undefined : vscode.l10n.t('because of an error');
  item.iconPath = verdictIcons[check.verdict];
  item.contextValue = 'check';
  item.accessibilityInformation = { label: checkInWords(check) };
  item.command = revealing(sheet, check);
  return item;
}

/** What is read out: the same word first as is seen. */
const checkInWords = ({ verdict, label, isEvaluated }: ListedCheck): string =>
  isEvaluated
    ? vscode.l10n.t('{0}: check {1}', verdict, label)
    : vscode.l10n.t('{0}, because of an error: check {1}', verdict, label);

/** Shows where a value or check stands, in whichever editor its sheet is open in. */
function revealing(sheet: EditedSheet, { cell, span }: ListedValue | ListedCheck): vscode.Command | undefined {
  const [place] = locationOf(sheet, { cell, span });
  return (
    place && {
      command: 'vscode.open',
      title: vscode.l10n.t('Show'),
      arguments: [place.uri, { selection: place.range }],
    }
  );
}
