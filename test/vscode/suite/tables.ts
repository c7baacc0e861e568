import * as vscode from 'vscode';
import { localAmendment } from '../../local-amendment';
import { equal, until } from './expect';
import { fileInWorkspace, show, shown, writeFile } from './sheets';

describe('a table file of the workspace', () => {
  const name = 'amended/town.kft-table.json';
  const cell = '```kft\na = ampacity(12 AWG Cu THHN, terminals: 75 °C, bundled: 8)\n```\n';

  it('holds for the sheets of its folder, and results name it', async () => {
    await writeFile(name, localAmendment('60'));
    const notebook = await show(await writeFile('amended/a.kft.md', cell));
    await until('the amended result', () => shown(notebook.cellAt(0), 'text/plain').includes('a = 18 A'));
    await until('its source', () => shown(notebook.cellAt(0), 'text/plain').includes('local amendment 12'));
  });

  it('shows what is wrong with it in Problems and is not taken', async () => {
    await writeFile('broken/town.kft-table.json', localAmendment('sixty'));
    const notebook = await show(await writeFile('broken/a.kft.md', cell));
    const uri = fileInWorkspace('broken/town.kft-table.json');
    await until('the problem', () => vscode.languages.getDiagnostics(uri).length > 0);
    equal(shown(notebook.cellAt(0), 'text/plain').includes('a = 21 A'), true, 'the shipped table holds');
  });
});
