import { defineProblems } from './contract';

const cell = (text: string) => `\`\`\`kft\n${text}\n\`\`\`\n`;
const front = (text: string) => `---\n${text}\n---\n\n${cell('supply = 208 V')}`;

export const fileProblems = defineProblems('Sheets and the files beside them', {
  'unclosed-fence': {
    means: 'A fenced block of the sheet is never closed.',
    why: 'All that follows belongs to it, so nothing of that is evaluated.',
    remedy: 'Close it with a line that holds the same fence and nothing else.',
    example: { sheet: '```kft\nsupply = 208 V\n' },
  },
  'front-matter-syntax': {
    means: 'The front matter cannot be read, or has a key twice.',
    why: 'A code edition or a unit system that is not read would silently be another one.',
    remedy: 'Write one `key: value` on a line, and each key once.',
    example: { sheet: front('title: "Kiln') },
  },
  'front-matter-value': {
    means: 'A key of the front matter has a value that it does not take.',
    why: 'What it was to change stays as it was.',
    remedy: 'Write one of the values that the message names.',
    example: { sheet: front('cautions: read') },
  },
  'unknown-unit-system': {
    means: '`units:` names no unit system.',
    why: 'It decides in which units results are shown.',
    remedy: 'Write `US` or `SI`.',
    example: { sheet: front('units: metric') },
  },
  'unknown-report': {
    means: '`report:` names no kind of report.',
    why: 'It decides which sections the paper has.',
    remedy: 'Write one of the kinds that the message names.',
    example: { sheet: front('report: letter') },
  },
  'unknown-edition': {
    means: '`code:` names an edition whose tables are not here.',
    why: 'Another edition may have other figures, so nothing is evaluated until it is settled.',
    remedy: 'Write one of the editions that the message names, or bring its tables beside the sheet.',
    example: { sheet: front('code: NEC 1987') },
  },
  'newer-format': {
    means: 'The sheet says that it is in a later format than this version reads.',
    why: 'What is new may be missing here or mean something else.',
    remedy: 'Update Kilofoot. Until then nothing in the file is laid out anew.',
    example: { sheet: front('format: 2') },
  },
  'conflict-marker': {
    means: 'The file holds the marks of a merge that nobody settled.',
    why: 'Two versions stand in it at once, and neither is what was meant.',
    remedy: 'Settle the merge in a text editor and take the marks out.',
    example: { sheet: cell('<<<<<<< ours\nsupply = 208 V\n=======\nsupply = 240 V\n>>>>>>> theirs') },
  },
  'not-utf-8': {
    means: 'A file holds bytes that are no UTF-8 text.',
    why: 'Which sign such a byte stands for cannot be told: an Ω may have become something else.',
    remedy: 'Save the file as UTF-8.',
    example: {
      situation: 'a sheet that holds the byte FF',
      says: 'This file holds bytes that are not UTF-8 text. It is shown with a replacement sign in their place, not evaluated, and stays as it is. Save it as UTF-8, then open it again.',
    },
  },
  'binary-file': {
    means: 'A file holds zero bytes, as programs, pictures and workbooks do.',
    why: 'It is no text.',
    remedy: 'Open a sheet instead; save the sheet of a workbook as CSV in UTF-8.',
    example: {
      situation: 'a sheet that holds the byte 00',
      says: 'This file holds zero bytes, as programs and pictures do; a sheet is text in UTF-8. It is shown as text, not evaluated, and stays as it is. Open a sheet instead, or save this one as UTF-8.',
    },
  },
  'file-too-large': {
    means: 'A file is larger than is read.',
    why: 'The bound keeps the editor from standing still.',
    remedy: 'Part it into several files.',
    example: {
      situation: 'a sheet of 30 million bytes',
      says: 'This file holds 30000000 bytes; a sheet may hold 4194304. Its beginning is shown as text and nothing is evaluated. Part it into several sheets.',
    },
  },
  'unreadable-file': {
    means: 'A file named on the command line cannot be read.',
    why: 'It is told for that file, and the others are still worked on.',
    remedy: 'Check its name and whether you may read it.',
    example: {
      situation: '`kilofoot check absent.kft.md`, which is not there',
      says: 'absent.kft.md is not there. Check the name and the folder.',
    },
  },
  'missing-file': {
    means: 'A file that the sheet names is not there, or the name is missing.',
    why: 'What hangs on it has no value.',
    remedy: 'Correct the name, or put the file there; `use` says `from` and the file in quotes.',
    example: { sheet: cell('use element from "kilm.kft.md"'), beside: {} },
  },
  'file-out-of-reach': {
    means: 'A sheet names a file outside of its folder tree.',
    why: 'A sheet that someone sends must not read what else is on the disk.',
    remedy: 'Move the file into the tree, or open the folder above it.',
    example: { sheet: cell('use element from "../../kiln.kft.md"'), beside: {} },
  },
  'no-sheet': {
    means: 'A `use` names a file that is no sheet.',
    why: 'Only sheets have names to take.',
    remedy: 'Name a file `*.kft.md` or `*.kft`; rows of a CSV are read by `schedule`.',
    example: { sheet: cell('use element from "loads.csv"'), beside: {} },
  },
  'no-other-sheets': {
    means: 'A sheet that is in no folder yet names another file.',
    why: 'There is no place to look for it.',
    remedy: 'Save the sheet beside the other file.',
    example: 'use element from "kiln.kft.md"',
  },
  'broken-file': {
    means: 'A sheet that is used cannot be read as one.',
    why: 'None of its names has a value then.',
    remedy: 'Open it and mend what is told there.',
    example: {
      sheet: cell('use element from "kiln.kft.md"\ntwice = element * 2'),
      beside: { 'kiln.kft.md': cell('<<<<<<< ours\nelement = 11.9 Ω\n=======\nelement = 12 Ω\n>>>>>>> theirs') },
    },
  },
  'sheet-cycle': {
    means: 'Sheets take names from one another in a circle.',
    why: 'None of them could be worked out first.',
    remedy: 'Move what they share to a sheet of its own.',
    example: {
      sheet: cell('use b from "b.kft.md"\na = b * 2'),
      beside: { 'b.kft.md': cell('use a from "sheet.kft.md"\nb = 3 A') },
    },
  },
  'taken-name-failed': {
    means: 'A name is taken from another sheet, where it has no value.',
    why: 'The fault lies there, not here.',
    remedy: 'Open the other sheet at the line that the message names.',
    example: {
      sheet: cell('use element from "kiln.kft.md"\ntwice = element * 2'),
      beside: { 'kiln.kft.md': cell('element = 11.9 V + 1 A') },
    },
  },
  'live-value-missing': {
    means: 'A live value in prose shows nothing, because a name in it has no value.',
    why: 'Text with a hole is shown as such, not filled.',
    remedy: 'Mend the error at the name.',
    example: { sheet: `The kiln draws \`= current in A\`.\n\n${cell('current = 208 V / (1 Ω - 1 Ω)')}` },
  },
  'invalid-table-file': {
    means: 'A table file of the workspace does not have the shape of one.',
    why: 'It is taken whole or not at all, so that no half of an edition is in force.',
    remedy: 'Mend what is told at its place; the files under `src/tables/` show the shape.',
    example: { situation: 'a file `limits.kft-table.json` that holds `{}`', says: 'subject must be a text in quotes.' },
  },
  'implausible-table-value': {
    means: 'A figure of a table file breaks what the table promises, such as that larger conductors carry more.',
    why: 'A slip of the keyboard in a table would pass into every result.',
    remedy: 'Check the figure against the print.',
    example: {
      situation: 'a table file that lets 12 AWG copper have a 35 A device and leaves 10 AWG at 30 A',
      says: 'Row 1 (12 AWG | Cu), maxOcpd: 30 after 35. The table promises that maxOcpd rises from row to row. Check the figures against the print.',
    },
  },
});
