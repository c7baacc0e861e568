import { isMap, isScalar, type Pair, parseDocument, type Scalar } from 'yaml';
import type { Diagnostic, Span } from '../text';
import { type FrontMatter, reportShapes } from './contract';
import { newerFormat } from './format-version';
import { readSeverities, type SeverityLine } from './severities';

const textKeys = ['title', 'project', 'prepared_by', 'checked_by', 'date', 'revision', 'code'] as const;
/** Keys with a fixed choice of values, and what they mean. */
const choices = {
  units: { words: ['US', 'SI'], code: 'unknown-unit-system', meaning: 'US (feet, inches) or SI (metres, millimetres)' },
  report: {
    words: reportShapes,
    code: 'unknown-report',
    meaning: `${reportShapes.slice(0, -1).join(', ')} or ${reportShapes.at(-1)}`,
  },
  cautions: {
    words: ['acknowledged'],
    code: 'front-matter-value',
    meaning: '`acknowledged`, by one who has read them,',
  },
} as const;

export interface ReadFrontMatter {
  readonly frontMatter: FrontMatter;
  /** Where the value of each key stands that has one, for diagnostics about it. */
  readonly places: ReadonlyMap<keyof FrontMatter, Span>;
  /** Every other key that holds one text, in order: what a report prints in its title block. */
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
 * matter gives an empty one. Spans are offsets in `text`. Keys it does not know are nobody's business.
 */
export function readFrontMatter(text: string): ReadFrontMatter {
  const block = /^---[ \t]*\n([\s\S]*?)(?:^---[ \t]*$|(?![\s\S]))/m.exec(text);
  if (!block || !text.startsWith('---')) {
    return noFrontMatter;
  }
  const from = block[0].indexOf('\n') + 1;
  const document = parseDocument(block[1], { schema: 'core', logLevel: 'silent', uniqueKeys: true });
  const diagnostics: Diagnostic[] = document.errors.map(({ pos, message }) => ({
    code: 'front-matter-syntax',
    severity: 'error',
    span: { start: from + pos[0], end: from + Math.max(pos[0], pos[1]) },
    message: `The front matter cannot be read here: ${firstSentence(message)}. Write one \`key: value\` a line.`,
  }));
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
    const newer = name === 'format' && isScalar(value) ? newerFormat(textOf(value), spanOf(value)) : undefined;
    if (newer) {
      diagnostics.push(newer);
    } else if (!isKnown(name)) {
      if (isScalar(value) && name !== '') {
        details.push([name, textOf(value)]);
      }
    } else if (name === 'severities') {
      const read = readSeverities(value, from);
      severities = read.lines;
      diagnostics.push(...read.diagnostics);
    } else {
      takeKnown(name, value);
    }
  };
  const takeKnown = (name: keyof FrontMatter, value: unknown) => {
    const span = spanOf(value);
    // The source is taken, not the parsed value: a date or a revision `01` stays as its author wrote it.
    const written = isScalar(value) ? textOf(value) : undefined;
    if (written === undefined) {
      const message = `\`${name}\` holds a list or a block; a text on one line is expected, such as \`${name}: text\`.`;
      diagnostics.push({ code: 'front-matter-value', severity: 'error', span, message });
    } else if (isChoice(name) && !(choices[name].words as readonly string[]).includes(written)) {
      const { words, code, meaning } = choices[name];
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

const isKnown = (name: string): name is keyof FrontMatter | 'severities' =>
  name === 'severities' || isChoice(name) || textKeys.includes(name as (typeof textKeys)[number]);

const isChoice = (name: string): name is keyof typeof choices => Object.hasOwn(choices, name);

const textOf = (scalar: Scalar): string =>
  typeof scalar.value === 'string' ? scalar.value : (scalar.source ?? String(scalar.value));

/** The reader's message without its own excerpt of the source. */
const firstSentence = (message: string): string => message.split('\n')[0].replace(/ at line.*$|:$|\.$/, '');
