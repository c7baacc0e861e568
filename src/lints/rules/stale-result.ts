import { defineLint } from '../contract';

const fence = '```';
const sheet = (saved: string): string =>
  `${fence}kft\nsupply = 240 V\ncurrent = supply / 12 Ω\n${fence}\n\n${fence}kft-result\nsupply  = 240 V\ncurrent = supply / 12 Ω = 240 V / 12 Ω = ${saved}\n${fence}\n`;

/** Results that are kept in the file and no longer match. The session finds it, once the cells have their results. */
export const staleResult = defineLint({
  id: 'stale-result',
  summary: 'Results that are saved in the file are no longer what the calculation above them comes to.',
  why:
    'Saved results are read where no program works them out anew: in a difference between revisions, on a code host, on paper. ' +
    'A figure there that the sheet no longer comes to is taken for one that was checked.',
  sources: ['common practice, no source'],
  severity: 'warning',
  silent: [
    'The saved block holds what the cell comes to.',
    'A cell has no saved results at all.',
    'The setting `kilofoot.severities` or the sheet’s front matter switches it off.',
  ],
  examples: { bad: [sheet('19 A')], good: [sheet('20 A')] },
  looksAt: [],
  inFile: true,
});
