import { type LinkedSheet, pathInTree, readSheet, type SheetOffset, SheetSession } from '../../src/core';

/** Sheets by their paths, each evaluated, and the place in one of them that `¦` marks. */
export function linkedFiles(files: Readonly<Record<string, string>>): { sheets: LinkedSheet[]; at: SheetOffset } {
  let at: SheetOffset = { file: '', cell: '', offset: 0 };
  const sheets = Object.entries(files).map(([file, marked]) => {
    const session = new SheetSession();
    const read = readSheet(new TextEncoder().encode(marked)).cells.map((cell, i) => ({ ...cell, id: String(i) }));
    const own = read.map((cell) => ({ ...cell, text: cell.text.replace('¦', '') }));
    const marks = read.find((cell) => cell.text.includes('¦'));
    if (marks) {
      at = { file, cell: marks.id, offset: marks.text.indexOf('¦') };
    }
    session.update(own);
    const fileOf = (written: string) => {
      const way = pathInTree(written, file);
      return 'problem' in way ? undefined : way.path;
    };
    return { file, fileOf, program: session.program, cells: own };
  });
  return { sheets, at };
}

export const fenced = (text: string) => `\`\`\`kft\n${text}\n\`\`\`\n`;
