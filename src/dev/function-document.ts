import { functionPage } from '../display';
import { tradeFunctions } from '../functions';

/** The pages of all trade functions as one document. */
export function functionDocument(): string {
  const head = [
    '# The trade functions',
    'Generated from the definitions by `npm run generate`. Every example is executed by a test.',
    tradeFunctions.map(({ name, summary }) => `- [\`${name}\`](#${name}): ${summary}`).join('\n'),
  ];
  return `${[...head, ...tradeFunctions.map((definition) => functionPage(definition).trimEnd())].join('\n\n')}\n`;
}
