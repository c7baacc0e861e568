import { ruleById, unknownLint, unknownLintNamed } from '../lints';
import type { ReadFrontMatter } from '../notebook';
import type { Diagnostic, Severity } from '../text';

type Severities = Readonly<Record<string, Severity | 'off'>>;

/** How much each lint weighs in a sheet: as its front matter says, else as the settings do. */
export const severitiesInForce = (settings: Severities, { severities }: ReadFrontMatter): Severities =>
  severities.length === 0
    ? settings
    : { ...settings, ...Object.fromEntries(severities.map(({ id, severity }) => [id, severity])) };

/** Names below `severities:` that no lint has, each with the one that may have been meant. */
export function unknownLints({ severities }: ReadFrontMatter): Diagnostic[] {
  return severities.flatMap(({ id, idSpan }) => {
    return ruleById.has(id)
      ? []
      : [
          {
            code: unknownLint.id,
            severity: unknownLint.severity,
            span: idSpan,
            ...unknownLintNamed(id, idSpan, ruleById.keys()),
          },
        ];
  });
}
