import type { Lint } from './contract';

/** A lint's reference page in Markdown, made from the lint alone. */
export function lintPage(lint: Lint): string {
  return [
    `# ${lint.id}`,
    lint.summary,
    `**Severity:** ${lint.severity}, less where the message asks or advises.`,
    '## Why',
    lint.why,
    '## When it is silent',
    bullets(lint.silent),
    '## It speaks',
    ...lint.examples.bad.map(cell),
    '## It is silent',
    ...lint.examples.good.map(cell),
    '## To accept a finding',
    cell(`allow ${lint.id} "the reason, which the report prints"`),
    'stands on the line before the statement.',
    '## Sources',
    bullets(lint.sources),
  ]
    .join('\n\n')
    .concat('\n');
}

const bullets = (lines: readonly string[]): string => lines.map((line) => `- ${line}`).join('\n');

const cell = (text: string): string => `\`\`\`kft\n${text.trimEnd()}\n\`\`\``;
