import { type Document, isMap, isScalar, type Pair, parseDocument, type Scalar, visit } from 'yaml';
import type { Diagnostic, Span } from '../text';
import type { FrontMatter } from './contract';
import { isFormat, newerFormat } from './format-version';
import { type FrontMatterKey, otherKeys, sheetKeys } from './front-matter-keys';
import { readSeverities, type SeverityLine } from './severities';

export interface ReadFrontMatter {
  readonly frontMatter: FrontMatter;
  /** Where the value of each key stands that has one, for diagnostics about it. */
  readonly places: ReadonlyMap<keyof FrontMatter, Span>;
  /** Every other key that holds one text, in order: what a report reads or prints in its title block. */
  readonly details: readonly (readonly [key: string, text: string])[];
  /** What stands below `severities:`. */
  readonly severities: readonly SeverityLine[];
  readonly diagnostics: readonly Diagnostic[];
}

/** That of text without front matter. */
export const noFrontMatter: ReadFrontMatter = {
  frontMatter: {},
  places: new Map(),
  details: [],
  severities: [],
  diagnostics: [],
};

/**
 * Reads the front matter of a sheet from the text of its first prose cell, `---` lines and all. Text without front
 * matter gives an empty one. Spans are offsets in `text`. Keys that nothing reads are nobody's business.
 */
export function readFrontMatter(text: string): ReadFrontMatter {
  const block = /^---[ \t]*\n([\s\S]*?)(?:^---[ \t]*$|(?![\s\S]))/m.exec(text);
  if (!block || !text.startsWith('---')) {
    return noFrontMatter;
  }
  const from = block[0].indexOf('\n') + 1;
  const document = parseDocument(block[1], { schema: 'core', logLevel: 'silent', uniqueKeys: false });
  const problem = ([start, end]: readonly number[], message: string): Diagnostic => ({
    code: 'front-matter-syntax',
    severity: 'error',
    span: { start: from + start, end: from + Math.max(start, end) },
    message,
  });
  const diagnostics = document.errors.map(({ pos, message }) =>
    problem(pos, `The front matter cannot be read here: ${firstSentence(message)}. Write one \`key: value\` a line.`),
  );
  for (const { value, range } of repeatedKeys(document)) {
    diagnostics.push(
      problem(range ?? [0, 0], `The key \`${value}\` stands here twice, and only one can count. Take one out.`),
    );
  }
  const values: Partial<Record<keyof FrontMatter, string>> = {};
  const places = new Map<keyof FrontMatter, Span>();
  let severities: readonly SeverityLine[] = [];
  const details: [string, string][] = [];

  const spanOf = (value: unknown): Span => {
    const [start, end] = (value as Scalar).range ?? [0, 0];
    return { start: from + start, end: from + end };
  };
  const take = ({ key, value }: Pair<unknown, unknown>) => {
    const name = isScalar(key) ? String(key.value) : '';
    if (value === null || (isScalar(value) && value.value === null)) {
      return;
    }
    if (name === 'severities') {
      const read = readSeverities(value, from);
      severities = read.lines;
      diagnostics.push(...read.diagnostics);
    } else if (isOfSheet(name)) {
      takeKnown(name, value);
    } else if (isScalar(value) && name !== '') {
      takeOther(name, textOf(value), spanOf(value));
    }
  };
  const takeOther = (name: string, written: string, span: Span) => {
    const key: FrontMatterKey | undefined = isOther(name) ? otherKeys[name] : undefined;
    if (name === 'format' && isFormat(written)) {
      const newer = newerFormat(written, span);
      diagnostics.push(...(newer ? [newer] : []));
      return;
    }
    if (key?.written && !key.written.as.test(written.trim())) {
      const message = `\`${name}\` is \`${written}\`; ${key.written.meaning} is expected.`;
      diagnostics.push({ code: 'front-matter-value', severity: 'error', span, message });
    }
    details.push([name, written]);
  };
  const takeKnown = (name: keyof FrontMatter, value: unknown) => {
    const span = spanOf(value);
    // The source is taken, not the parsed value: a date or a revision `01` stays as its author wrote it.
    const written = isScalar(value) ? textOf(value) : undefined;
    if (written === undefined) {
      const message = `\`${name}\` holds a list or a block; a text on one line is expected, such as \`${name}: text\`.`;
      diagnostics.push({ code: 'front-matter-value', severity: 'error', span, message });
      return;
    }
    const { choice } = sheetKeys[name];
    if (choice && !choice.words.includes(written)) {
      const { words, code, meaning } = choice;
      const message = `\`${name}\` is \`${written}\`; ${meaning} is expected.`;
      const fixes = words.map((word) => ({ title: `Write ${word}`, edits: [{ span, newText: word }], safe: false }));
      diagnostics.push({ code, severity: 'error', span, message, fixes });
    } else {
      values[name] = written;
      places.set(name, span);
    }
  };

  if (isMap(document.contents)) {
    document.contents.items.forEach(take);
  } else if (document.contents !== null && document.errors.length === 0) {
    const message = 'The front matter holds no `key: value` lines. Write one a line, such as `title: Kiln circuit`.';
    const span = { start: from, end: from + block[1].trimEnd().length };
    diagnostics.push({ code: 'front-matter-syntax', severity: 'error', span, message });
  }
  return { frontMatter: values as FrontMatter, places, details, severities, diagnostics };
}

/** Keys that stand twice in one map. The reader's own look for them takes the square of how many keys there are. */
function repeatedKeys(document: Document): Scalar[] {
  const found: Scalar[] = [];
  visit(document, {
    Map: (_, { items }) => {
      const seen = new Set<unknown>();
      for (const { key } of items.filter((item) => isScalar(item.key))) {
        if (seen.has((key as Scalar).value)) {
          found.push(key as Scalar);
        }
        seen.add((key as Scalar).value);
      }
    },
  });
  return found;
}

const isOfSheet = (name: string): name is keyof FrontMatter => Object.hasOwn(sheetKeys, name);

const isOther = (name: string): name is keyof typeof otherKeys => Object.hasOwn(otherKeys, name);

const textOf = (scalar: Scalar): string =>
  typeof scalar.value === 'string' ? scalar.value : (scalar.source ?? String(scalar.value));

/** The reader's message without its own excerpt of the source. */
const firstSentence = (message: string): string => message.split('\n')[0].replace(/ at line.*$|:$|\.$/, '');
