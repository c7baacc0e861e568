import type { Lint } from './contract';
import { inEdition } from './editions';

/** A lint's reference page in Markdown, made from the lint alone; sections as the edition in force numbers them. */
export function lintPage(lint: Lint, edition: string): string {
  const cite = (source: string) =>
    inEdition(source.replace(/^NEC (?=\d|Table|Chapter|Article)/, `${edition} `), edition);
  return [
    `# ${lint.id}`,
    lint.summary,
    `**Severity:** ${lint.severity}, less where the message asks or advises.`,
    '## Why',
    lint.why,
    '## When it is silent',
    bullets(lint.silent),
    '## It speaks',
    ...lint.examples.bad.map((text) => example(lint, text)),
    '## It is silent',
    ...lint.examples.good.map((text) => example(lint, text)),
    '## Fix',
    lint.fix ?? 'None is offered: what to change is not for a program to say.',
    ...(lint.check ? accepting(lint) : lint.inFile ? weighing(lint) : [found]),
    '## Sources',
    bullets(lint.sources.map(cite)),
  ]
    .join('\n\n')
    .concat('\n');
}

const accepting = ({ id }: Lint): string[] => [
  '## To accept a finding',
  cell(`allow ${id} "the reason, which the report prints"`),
  'stands on the line before the statement. How much all its findings weigh is set by the setting `kilofoot.severities`, or ' +
    'for one sheet in its front matter:',
  weight(id),
];

const weighing = ({ id }: Lint): string[] => [
  '## How much it weighs',
  'is set by the setting `kilofoot.severities`, or for one sheet in its front matter:',
  weight(id),
];

const weight = (id: string): string => `\`\`\`yaml\nseverities:\n  ${id}: information\n\`\`\``;

/** A cell, or a whole sheet in a fence that its own fences do not end. */
const example = ({ inFile }: Lint, text: string): string =>
  inFile ? `\`\`\`\`markdown\n${text.trimEnd()}\n\`\`\`\`` : cell(text);

const found = 'It is found before anything runs, so there is nothing to allow.';

const bullets = (lines: readonly string[]): string => lines.map((line) => `- ${line}`).join('\n');

const cell = (text: string): string => `\`\`\`kft\n${text.trimEnd()}\n\`\`\``;
