/// <reference lib="dom" />
import { type MarkdownEngine, metadataOf } from './markdown-engine';
import { nextOrder, rowOrder, type SortOrder } from './row-order';

/** The class of a heading's button, by which a click is known again. */
const buttonClass = 'kf-sort';
/** The class of the row of totals, which stays last. */
const totalsClass = 'kf-totals';

/** Makes the headings of the tables that an output calls sortable into buttons; tables of prose stay as they are. */
export function makeTablesSortable(engine: MarkdownEngine): void {
  const { rules } = engine.renderer;
  /** How many tables of a text were begun; each text comes with an environment of its own. */
  const begun = new WeakMap<object, number>();
  const tableOf = (env: object = {}) =>
    metadataOf(env).extras?.tables[(begun.get(env) ?? 0) - 1] ?? { sortable: false, totalled: false };
  rules.table_open = (tokens, index, options, env = {}, self) => {
    begun.set(env, (begun.get(env) ?? 0) + 1);
    return self.renderToken(tokens, index, options);
  };
  rules.th_open = (tokens, index, options, env, self) => {
    const cell = self.renderToken(tokens, index, options);
    return tableOf(env).sortable ? `${cell}<button type="button" class="${buttonClass}">` : cell;
  };
  rules.th_close = (tokens, index, options, env, self) =>
    `${tableOf(env).sortable ? '</button>' : ''}${self.renderToken(tokens, index, options)}`;
  rules.tr_open = (tokens, index, options, env, self) => {
    const end = tokens.findIndex(({ type }, at) => at > index && type === 'tr_close');
    if (tableOf(env).totalled && tokens[end + 1]?.type === 'tbody_close') {
      tokens[index].attrJoin('class', totalsClass);
    }
    return self.renderToken(tokens, index, options);
  };
}

/** Sorts a table when one of its headings is pressed, by pointer or keyboard. */
export function sortOnPress(page: Document): void {
  page.addEventListener('click', (event) => {
    // Outputs stand in trees of their own, and outside them a click seems to be on the tree's root.
    const [target] = event.composedPath();
    const button = target instanceof Element && target.closest(`button.${buttonClass}`);
    const heading = button ? button.closest('th') : null;
    const table = heading?.closest('table');
    if (heading && table) {
      sort(table, heading);
    }
  });
}

const asWritten = new WeakMap<Element, readonly HTMLTableRowElement[]>();

function sort(table: HTMLTableElement, heading: HTMLTableCellElement): void {
  const body = table.tBodies[0];
  const rows = asWritten.get(table) ?? Array.from(body.rows);
  asWritten.set(table, rows);
  const order = nextOrder[(heading.getAttribute('aria-sort') as SortOrder | null) ?? 'none'];
  for (const other of Array.from(heading.parentElement!.children)) {
    other.removeAttribute('aria-sort');
  }
  if (order !== 'none') {
    heading.setAttribute('aria-sort', order);
  }
  const [moving, staying] = [false, true].map((stays) =>
    rows.filter((row) => row.classList.contains(totalsClass) === stays),
  );
  const texts = moving.map((row) => row.cells[heading.cellIndex].textContent ?? '');
  body.append(...rowOrder(texts, order).map((row) => moving[row]), ...staying);
}

/** A heading that can be pressed looks like a heading, and says by an arrow which way its column is sorted. */
export const sortableStyle = `.${buttonClass} { all: unset; cursor: pointer; font: inherit; color: inherit; }
.${buttonClass}::after { content: '\\2195'; opacity: 0.5; margin-left: .4em; font-weight: normal; }
[aria-sort=ascending] > .${buttonClass}::after { content: '\\2191'; opacity: 1; }
[aria-sort=descending] > .${buttonClass}::after { content: '\\2193'; opacity: 1; }
.${buttonClass}:focus-visible { outline: 1px solid var(--vscode-focusBorder); outline-offset: 2px; }
.${totalsClass} { font-weight: 600; }`;
