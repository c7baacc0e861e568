import { createColors } from 'picocolors';
import { explain } from '../../core';
import type { Console } from '../console';
import { pageText } from '../page-text';
import { WrongCommandLine } from '../wrong-command-line';

/** Prints the page of a function, lint, problem, table, unit or conductor. A name that nothing has is a wrong command line. */
export function explainName(name: string, console: Console): number {
  const explanation = explain(name);
  if ('page' in explanation) {
    console.out(pageText(explanation.page, createColors(console.colour)));
    return 0;
  }
  const near = explanation.nearest.length > 0 ? ` Near it: ${explanation.nearest.join(', ')}.` : '';
  throw new WrongCommandLine(explanation.problem + near);
}
