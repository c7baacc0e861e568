import { crossChecks } from '../../test/reference/cross-checks';
import { type Example, examples, notYet } from '../../test/reference/example';
import gnuUnits from '../../test/reference/gnu-units.json';
import { expressions } from '../../test/reference/uncertainties.json';
import { type Coverage, collectionCounts, comparedBy, proofCoverage } from './proof-coverage';

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [head, head.map(() => '---'), ...rows].map((row) => `| ${row.map(cell).join(' | ')} |`).join('\n');

const count = (number: number): string => (number === 0 ? '–' : String(number));
const list = (names: readonly string[]): string => (names.length === 0 ? '–' : names.join(', '));

/** As many names as a cell holds with ease; the section of every example has them all. */
const mostNames = 8;
const shortList = (names: readonly string[]): string =>
  names.length <= mostNames
    ? list(names)
    : `${names.length}: ${names.slice(0, mostNames).join(', ')} and ${names.length - mostNames} more`;
const linked = ({ source, url }: { readonly source: string; readonly url?: string }): string =>
  url === undefined ? source : `[${source}](${url})`;

const outside = ({ read, recomputed, compared }: Coverage): boolean =>
  read.length + recomputed.length > 0 || compared > 0;

function summary(): string {
  const rows = collectionCounts().map(({ name, all, whole, inPart, notYet: open }) => [
    name,
    String(all),
    count(whole),
    count(inPart),
    count(open),
  ]);
  const expected = examples.flatMap(({ expect }) => expect);
  const published = expected.filter((each) => 'published' in each);
  const differing = published.filter((each) => 'ours' in each && each.ours !== undefined);
  return [
    table(['collection', 'answers', 'run whole', 'run in part', 'not yet'], rows),
    [
      `- ${published.length - differing.length} published figures agree to half a unit of their last printed digit.`,
      `- ${differing.length} do not, and each says why (below).`,
      `- ${expected.filter((each) => 'computed' in each).length} figures that a source leads to without printing them are worked out beside it.`,
      `- ${expected.filter((each) => 'text' in each).length} conductors and sizes and ${expected.filter((each) => 'check' in each).length} verdicts are as the source has them.`,
      `- ${crossChecks.reduce((sum, check) => sum + comparedBy(check), 0)} values stand between bounds of ${crossChecks.length} independent formulas and tables.`,
    ].join('\n'),
  ].join('\n\n');
}

const coverageRow = (each: Coverage): string[] => [
  `\`${each.name}\``,
  shortList(each.read),
  shortList(each.recomputed),
  each.compared === 0 ? '–' : `${each.compared} (${each.crossChecks.join('; ')})`,
];

function differences(): string {
  const rows = examples.flatMap(({ id, expect }) =>
    expect.flatMap((each) =>
      'published' in each && each.ours !== undefined
        ? [[id, `\`${each.name}\``, `${each.published} ${each.unit}`, `${each.ours} ${each.unit}`, each.why ?? '']]
        : [],
    ),
  );
  return table(['example', 'value', 'published', 'ours', 'why'], rows);
}

function lints(): string {
  const named = [...new Set(examples.flatMap(({ speaks = [], silent = [] }) => [...speaks, ...silent]))].sort();
  const where = (key: 'speaks' | 'silent', lint: string) =>
    list(examples.filter((example) => example[key]?.includes(lint)).map(({ id }) => id));
  return table(
    ['lint', 'must speak in', 'must be silent in'],
    named.map((lint) => [`\`${lint}\``, where('speaks', lint), where('silent', lint)]),
  );
}

function everyExample(): string {
  const topics = [...new Set(examples.map(({ topic }) => topic))];
  const seenWords = ({ seen, sound }: Example) => (sound === undefined ? seen : `${seen}; ${sound}`);
  return topics
    .map((topic) => {
      const rows = examples
        .filter((example) => example.topic === topic)
        .map((example) => [
          example.id,
          linked(example),
          seenWords(example),
          example.edition ?? '–',
          example.note ?? example.about ?? '–',
        ]);
      return `### ${topic}\n\n${table(['example', 'source', 'seen', 'edition', 'note'], rows)}`;
    })
    .join('\n\n');
}

const units = [
  `- Every unit and prefix, ${Object.keys(gnuUnits.factors).length} factors, against GNU units: as recorded, and anew where it is installed.`,
  '- Every unit that mathjs has against mathjs; the printed factors of NIST SP 811 (from memory).',
  '- Readings and their doubt against the GUM (JCGM 100: 4.3.4, 4.3.7, 5.1.5, example H.2), EA-4/02 example S9, and',
  `  ${expressions.length} expressions against a general-purpose uncertainty library.`,
].join('\n');

/** The page that tells what is proved against what; made by running all of it. */
export function proofsDocument(): string {
  const { functions, tables } = proofCoverage();
  const head = ['outside checks', 'read in the source', 'recalled or recomputed', 'values cross-checked'];
  const bare = tables.filter((each) => !outside(each)).map(({ title }) => title);
  return `${[
    '# What is proved against what',
    'Generated by `npm run generate` from `test/reference/`, by running every published example through the language and every cross-check through the tables. A published figure counts as reproduced when ours lies within half a unit of its last printed digit. “Read” means that the answer was seen in the source; a value from memory is never called published.',
    summary(),
    '## Functions',
    'Which published examples call a function, and what else it is held against. Each function also runs its own documented examples; those are ours and do not count here.',
    table(['function', ...head.slice(1)], functions.map(coverageRow)),
    `Without any outside check: ${list(functions.filter((each) => !outside(each)).map(({ name }) => `\`${name}\``))}.`,
    '## Tables',
    'Which published examples read a row of the table, and what else it is held against. Rows from memory were seen in no public reproduction; results that use them say so.',
    table(
      ['table', 'rows', 'from memory', ...head.slice(1)],
      tables.map((each) => {
        const [, ...rest] = coverageRow(each);
        return [each.title, String(each.rows), count(each.fromMemory), ...rest];
      }),
    ),
    `Without any outside check: ${list(bare)}.`,
    '## Where ours differs from what is published',
    differences(),
    '## Warnings',
    'Warnings that field questions ask for, and those that must not be heard.',
    lints(),
    '## Cross-checks',
    table(
      ['what', 'held against', 'source', 'room for', 'values'],
      crossChecks.map((check) => [check.title, check.formula, check.source, check.leeway, String(comparedBy(check))]),
    ),
    '## Units and doubt',
    units,
    '## Not yet proved',
    notYet.length === 0
      ? 'Nothing is left out.'
      : table(
          ['example', 'source', 'what', 'needs'],
          notYet.map((each) => [each.id, linked(each), each.part ?? 'the whole', each.needs]),
        ),
    '## Every example',
    everyExample(),
  ].join('\n\n')}\n`;
}
