import * as vscode from 'vscode';
import type { activate } from '../../../src/vscode/activate';
import { equal, includes, ok, until } from './expect';
import { extensionId, replace, show, writeFile } from './sheets';

const fenced = (text: string) => `\`\`\`kft\n${text}\n\`\`\`\n`;

/** What the extension gives to others, the view and the tests among it. */
async function parts(): Promise<ReturnType<typeof activate>> {
  const extension = vscode.extensions.getExtension<ReturnType<typeof activate>>(extensionId);
  ok(extension, 'the extension is not there');
  return extension.activate();
}

describe('values and checks', () => {
  const text = fenced('U = 240 V\nI = U / (12 Ω)\ncheck I <= 30 A "breaker holds"');

  it('are listed for the sheet in front, follow an edit, and lead to their cell', async () => {
    const { values } = await parts();
    const lines = () =>
      values.getChildren().map((group) =>
        values.getChildren(group).map((entry) => {
          const { label, description } = values.getTreeItem(entry);
          return description ? `${label} ${description}` : label;
        }),
      );
    const notebook = await show(await writeFile('values/a.kft.md', text));
    await until('the list', () => JSON.stringify(lines()).includes('20 A'));
    equal(lines(), [['✔ yes: breaker holds'], ['U 240 V', 'I 20 A']], 'the lines');
    await replace(notebook.cellAt(0), '240', '480');
    await until('the new verdict', () => JSON.stringify(lines()).includes('✘ no'));
    const [group] = values.getChildren();
    const { accessibilityInformation } = values.getTreeItem(values.getChildren(group)[0]);
    equal(accessibilityInformation?.label, 'no: check breaker holds', 'what is read out');
    const { command } = values.getTreeItem(values.getChildren(group)[0]);
    ok(command, 'a click does nothing');
    await vscode.commands.executeCommand(command.command, ...(command.arguments ?? []));
    // The host may tell of the editor first and of its selection later.
    const line = () => {
      const editor = vscode.window.activeTextEditor;
      return editor?.document === notebook.cellAt(0).document ? editor.selection.start.line : undefined;
    };
    await until('the line of the check in its cell', () => line() === 2);
    const plain = await vscode.workspace.openTextDocument({ content: 'nothing', language: 'plaintext' });
    await vscode.window.showTextDocument(plain);
    await until('an empty list', () => values.getChildren().length === 0);
  });

  it('are tests that answer as the cell does', async () => {
    const { checks } = await parts();
    const uri = await writeFile(
      'values/b.kft.md',
      fenced('I = 20 A ± 1 A\ncheck I <= 30 A "a"\ncheck I > 30 A "b"\ncheck I > 20 A "c"'),
    );
    await show(uri);
    const item = await until('the tests', () => checks.items.get(uri.toString()));
    const found: string[] = [];
    const { createTestRun } = checks;
    checks.createTestRun = (...given) => {
      const run = createTestRun.apply(checks, given);
      return Object.assign(Object.create(run), {
        passed: (test: vscode.TestItem) => found.push(`${test.label} passed`),
        failed: (test: vscode.TestItem, message: vscode.TestMessage) => {
          ok(message.location, 'the message has no place');
          found.push(`${test.label} failed: ${message.message}`);
        },
        end: () => run.end(),
      });
    };
    try {
      await vscode.commands.executeCommand('testing.runAll');
      await until('the run', () => found.some((line) => line.startsWith('c failed')));
    } finally {
      checks.createTestRun = createTestRun;
    }
    equal(item.children.size, 3, 'tests');
    ok(found.includes('a passed'), 'a passes');
    includes(found.find((line) => line.startsWith('b failed')) ?? '', '✘ no');
    includes(found.find((line) => line.startsWith('c failed')) ?? '', 'most of the doubt comes from');
  });

  it('are copied to the clipboard', async () => {
    const notebook = await show(await writeFile('values/c.kft.md', text));
    const table = 'U\t240\tV\nI\t20\tA\nbreaker holds\t✔ yes\n';
    const given = await vscode.commands.executeCommand<string>('kilofoot.copyResult', notebook.cellAt(0), 'table');
    equal(given, table, 'what was copied');
    // A page without focus may have no clipboard to read.
    const found = await vscode.env.clipboard.readText();
    equal(found === '' ? table : found, table, 'the clipboard');
  });
});
