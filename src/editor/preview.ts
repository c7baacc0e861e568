import {
  contextWords,
  Node,
  nodesBelow,
  reservedWords,
  type SyntaxTree,
  spanOf,
  statementWords,
  unitSpanOf,
} from '../language';
import type { Span } from '../text';
import type { EditedSheet } from './contract';
import { semanticTokens } from './semantic-tokens';

/** The classes that Markdown previews colour code by, for each kind of token. */
const classes = {
  variable: 'hljs-variable',
  function: 'hljs-title function_',
  property: 'hljs-attr',
  unit: 'hljs-type',
  conductor: 'hljs-symbol',
  lint: 'hljs-symbol',
  comment: 'hljs-comment',
  text: 'hljs-string',
  number: 'hljs-number',
  word: 'hljs-keyword',
} as const;

interface Stretch {
  readonly span: Span;
  readonly kind: keyof typeof classes;
}

/** A cell's text as HTML, coloured as a Markdown preview colours code. Everything in it is escaped. */
export function previewHtml(sheet: EditedSheet, cell: string): string {
  const tree = sheet.program.tree(cell);
  if (!tree) {
    return '';
  }
  const { text } = tree;
  const stretches = [
    ...tree.comments.map(({ span }): Stretch => ({ span, kind: 'comment' })),
    ...tree.statements.flatMap((statement) => literalsIn(tree, statement)),
    ...semanticTokens(sheet, cell).map(({ span, type }): Stretch => ({ span, kind: type })),
  ].sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
  let html = '';
  let at = 0;
  for (const { span, kind } of stretches) {
    if (span.start >= at && span.end > span.start) {
      html += plain(text.slice(at, span.start)) + coloured(text.slice(span.start, span.end), kind);
      at = span.end;
    }
  }
  return html + plain(text.slice(at));
}

/** Texts, numbers, and the numbers in front of units. */
function literalsIn(tree: SyntaxTree, statement: number): Stretch[] {
  return [...nodesBelow(tree, statement)].flatMap((node): Stretch[] => {
    const span = spanOf(tree, node);
    switch (tree.kinds[node]) {
      case Node.Text:
        return [{ span, kind: 'text' }];
      case Node.Number:
        return [{ span, kind: 'number' }];
      case Node.Quantity:
        return [{ span: { start: span.start, end: unitSpanOf(tree, node).start }, kind: 'number' }];
      default:
        return [];
    }
  });
}

const words = new RegExp(`\\b(?:${[...statementWords, ...reservedWords.keys(), ...contextWords].join('|')})\\b`, 'g');

/** Text between tokens: the words of the language stand there. */
function plain(text: string): string {
  let html = '';
  let at = 0;
  for (const found of text.matchAll(words)) {
    html += escaped(text.slice(at, found.index)) + coloured(found[0], 'word');
    at = found.index + found[0].length;
  }
  return html + escaped(text.slice(at));
}

const coloured = (text: string, kind: Stretch['kind']): string =>
  `<span class="${classes[kind]}">${escaped(text)}</span>`;

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

const escaped = (text: string): string => text.replace(/[&<>"]/g, (character) => entities[character]);
