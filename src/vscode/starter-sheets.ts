/** What stands for a starter sheet in a list. */
export interface StarterSheet {
  readonly label: string;
  /** One line: the first sentence below the sheet's heading. */
  readonly detail: string;
  readonly text: string;
}

/** A starter sheet's title, and the first sentence of its first paragraph, which says what it is for. */
export function starterSheet(text: string): StarterSheet {
  const label = /^title: *(.+)$/m.exec(text)?.[1] ?? /^# (.+)$/m.exec(text)?.[1] ?? '';
  const paragraph = /^# .+\n\n((?:[^\n`#].*\n)+)/m.exec(text)?.[1] ?? '';
  const line = paragraph.replaceAll('\n', ' ').trim();
  return { label, detail: /^.*?[.?!](?= |$)/.exec(line)?.[0] ?? line, text };
}
