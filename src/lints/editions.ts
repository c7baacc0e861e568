import type { TradeSettings } from '../functions';

/** Sections of the NEC whose numbers moved: as numbered from an edition on, and before it. */
const moved: readonly { readonly from: number; readonly now: string; readonly before: string }[] = [
  { from: 2020, now: '310.16', before: '310.15(B)(16)' },
  { from: 2020, now: '310.12', before: '310.15(B)(7)' },
  { from: 2023, now: '424.4(B)', before: '424.3(B)' },
  { from: 2023, now: '424.4(A)', before: '424.3(A)' },
];

const yearOf = (edition: string): number => Number(/\d{4}/.exec(edition)?.[0] ?? Number.POSITIVE_INFINITY);

/** A text with NEC sections, each numbered as the edition in force does (`NEC 2020`). */
export function inEdition(text: string, edition: string): string {
  const year = yearOf(edition);
  return moved
    .filter(({ from }) => year < from)
    .reduce((numbered, { now, before }) => numbered.replaceAll(now, before), text);
}

/** `NEC 2023: 424.4(B)`, as messages cite a rule. */
export const cited = (edition: string, sections: string): string => `${edition}: ${inEdition(sections, edition)}`;

/** The code edition that a library was made with: `NEC 2023`. */
export const editionOf = (settings: unknown): string => (settings as TradeSettings).tables.edition;
