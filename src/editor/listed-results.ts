import { blocksOf, showValue, toText, verdictWords } from '../display';
import type { StatementResult, Verdict } from '../language';
import type { Span } from '../text';
import type { EditedSheet } from './contract';
import { type Origin, originOf } from './origin';

/** What stands in a cell and can be listed, with the statement that gives it. */
interface Listed {
  readonly cell: string;
  /** Index of its statement in the cell. */
  readonly index: number;
  /** Where a click leads. */
  readonly span: Span;
}

/** A named value of a sheet on one line. */
export interface ListedValue extends Listed {
  readonly name: string;
  /** The value with its unit; why there is none, where there is none. */
  readonly text: string;
  readonly isThere: boolean;
  readonly origin: Origin;
  /** Of a record, each on one line. */
  readonly fields: readonly { readonly name: string; readonly text: string }[];
}

/** A check of a sheet on one line. */
export interface ListedCheck extends Listed {
  readonly label: string;
  /** `cannot tell` also where an error kept the check from being evaluated. */
  readonly verdict: Verdict;
  /** The verdict by a sign and a word. */
  readonly words: string;
  /** False where an error kept it from being evaluated. */
  readonly isEvaluated: boolean;
  /** Both sides, what is to spare, and what would settle it; built when asked. */
  detail(): string;
}

/** The named values of a cell, in order of place. */
export const valuesOf = ({ program }: EditedSheet, cell: string): ListedValue[] =>
  program.results(cell).flatMap((result) => {
    const { name, value, index, missing } = result;
    const info = name === undefined ? undefined : program.name(name);
    if (name === undefined || !info) {
      return [];
    }
    const fields =
      value?.kind === 'record'
        ? [...value.fields].map(([field, inner]) => ({ name: field, text: showValue(inner) }))
        : [];
    const lacking = missing?.length ? `no value: needs ${missing.join(' and ')}` : 'no value: its line has an error';
    return [
      {
        cell,
        index,
        name,
        fields,
        span: result.nameSpan ?? result.span,
        isThere: value !== undefined,
        origin: originOf(program, info),
        text: value === undefined ? lacking : value.kind === 'record' ? '' : showValue(value),
      },
    ];
  });

/** The checks of a cell, in order of place. */
export const checksOf = ({ program }: EditedSheet, cell: string): ListedCheck[] =>
  program
    .results(cell)
    .filter(({ kind }) => kind === 'check')
    .map((result) => {
      const { index, span, verdict, label = '' } = result;
      const words = verdict ? verdictWords[verdict] : `${verdictWords['cannot tell']}, because of an error`;
      const isEvaluated = verdict !== undefined;
      return {
        cell,
        index,
        span,
        label,
        verdict: verdict ?? 'cannot tell',
        words,
        isEvaluated,
        detail: () => told(result),
      };
    });

/** The lines that answer; the steps on the way there are left out. */
function told(result: StatementResult): string {
  const blocks = blocksOf(result);
  const answers = blocks.filter(({ kind }) => kind === 'verdict' || kind === 'missing');
  return toText(answers.length > 0 ? answers : blocks);
}
