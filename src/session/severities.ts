import { nearest } from '../language';
import { ruleById } from '../lints';
import type { ReadFrontMatter } from '../notebook';
import type { Diagnostic, Severity } from '../text';

/** Saved results that are out of date: found beside the lints, because results are text by then. */
export const staleResultCode = 'stale-result';

type Severities = Readonly<Record<string, Severity | 'off'>>;

/** How much each lint weighs in a sheet: as its front matter says, else as the settings do. */
export const severitiesInForce = (settings: Severities, { severities }: ReadFrontMatter): Severities =>
  severities.length === 0
    ? settings
    : { ...settings, ...Object.fromEntries(severities.map(({ id, severity }) => [id, severity])) };

/** Names below `severities:` that no lint has, each with the one that may have been meant. */
export function unknownLints({ severities }: ReadFrontMatter): Diagnostic[] {
  return severities.flatMap(({ id, idSpan }) => {
    if (ruleById.has(id) || id === staleResultCode) {
      return [];
    }
    const near = nearest(id, [...ruleById.keys()]);
    const message = `No warning is called \`${id}\`${near ? `; \`${near}\` comes near` : ''}. It has no effect here.`;
    const fixes = near ? [{ title: `Write ${near}`, edits: [{ span: idSpan, newText: near }], safe: false }] : [];
    return [{ code: 'unknown-lint', severity: 'warning' as const, span: idSpan, message, fixes }];
  });
}
