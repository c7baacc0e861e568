import * as vscode from 'vscode';
import { equal } from './expect';
import { heardWhile } from './hear';
import { fileInWorkspace, show, writeFile } from './sheets';

const sheet = '---\ntitle: Export\ndate: 2026-11-12\n---\n\n# Export\n\n```kft\na = 2 V\nb = 3 * a\n```\n';

describe('a report of the sheet in front', () => {
  let file: vscode.Uri;
  before(async () => {
    file = await writeFile('export.kft.md', sheet); // Once: the editor reads a file that is written anew.
  });

  const written = async (format: string): Promise<Uint8Array> => {
    await show(file);
    const target = fileInWorkspace(`export-out.${format}`);
    await vscode.commands.executeCommand('kilofoot.exportReport', { format, target });
    return vscode.workspace.fs.readFile(target);
  };

  it('is written as a web page, as Markdown, as CSV and as a workbook in every host', async () => {
    for (const [format, start] of [
      ['html', '<!DOCTYPE html>'],
      ['md', '# Export'],
      ['csv', 'Results'],
      ['xlsx', 'PK'],
    ]) {
      equal(new TextDecoder().decode((await written(format)).slice(0, start.length)), start, format);
    }
  });

  it('is written as PDF and as a document in Node.js; the web worker host says that it makes neither', async () => {
    const inNode = typeof process !== 'undefined' && process.versions?.node !== undefined;
    for (const [format, start] of [
      ['pdf', '%PDF-'],
      ['docx', 'PK'],
    ]) {
      const begins = await written(format).then(
        (bytes) => new TextDecoder('latin1').decode(bytes.slice(0, start.length)),
        () => 'nothing',
      );
      equal(begins, inNode ? start : 'nothing', format);
    }
  });

  it('is written from a file that is open as text, and from one that is open nowhere, with the same bytes', async () => {
    const target = fileInWorkspace('export-out.md');
    const fromNotebook = new TextDecoder().decode(await written('md'));
    await vscode.commands.executeCommand('workbench.action.closeAllEditors');
    await vscode.window.showTextDocument(await vscode.workspace.openTextDocument(file));
    await vscode.commands.executeCommand('kilofoot.exportReport', { format: 'md', target });
    equal(new TextDecoder().decode(await vscode.workspace.fs.readFile(target)), fromNotebook, 'from text');
    await vscode.commands.executeCommand('workbench.action.closeAllEditors');
    await vscode.commands.executeCommand('kilofoot.exportReport', file, { format: 'md', target });
    equal(new TextDecoder().decode(await vscode.workspace.fs.readFile(target)), fromNotebook, 'from the explorer');
  });

  it('is shown in the Explorer, to be downloaded, where it is on a server and no text; text is opened', async () => {
    await show(file);
    const { showSaveDialog } = vscode.window;
    const { executeCommand } = vscode.commands;
    const isHere = file.scheme === 'file' && !vscode.env.remoteName; // There a program of the machine's would open.
    const asked: string[] = [];
    const watched = (command: string, ...rest: unknown[]) => {
      asked.push(command);
      return executeCommand(command, ...rest);
    };
    try {
      for (const [format, button] of [...(isHere ? [] : [['xlsx', 'Show in Explorer']]), ['csv', 'Open']]) {
        const target = fileInWorkspace(`export-shown.${format}`);
        Object.assign(vscode.window, { showSaveDialog: () => Promise.resolve(target) });
        Object.assign(vscode.commands, { executeCommand: watched });
        await heardWhile(() => executeCommand('kilofoot.exportReport', { format }), button);
      }
    } finally {
      Object.assign(vscode.window, { showSaveDialog });
      Object.assign(vscode.commands, { executeCommand });
    }
    equal(
      asked.filter((command) => command === 'revealInExplorer' || command === 'vscode.open'),
      isHere ? ['vscode.open'] : ['revealInExplorer', 'vscode.open'],
      'commands',
    );
    await executeCommand('workbench.action.closeAllEditors');
  });

  it('gives the same bytes again', async () => {
    equal((await written('xlsx')).join(), (await written('xlsx')).join(), 'bytes');
  });
});
