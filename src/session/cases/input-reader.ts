import { commonType, createProgram, describe, type InputValue, type Library, type VariedInput } from '../../language';
import { toBase, type Unit } from '../../units';

/** What a text given for an input comes to. `expression` is one that needs the sheet: its names, or a doubt of its own. */
export type ReadInput = { readonly value: InputValue } | { readonly expression: string } | { readonly problem: string };

/** True for a number without unit. */
export const isBareNumber = (text: string): boolean => /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text);

/** So many different texts are remembered; a column of as many conductors or readings is read once each. */
const mostKnown = 10_000;

/** Reads values for one input, written as in the language or as bare numbers in a unit. */
export class InputReader {
  private readonly known = new Map<string, ReadInput>();
  /** What a bare number is in. */
  readonly unit: Unit | undefined;

  constructor(
    private readonly input: VariedInput,
    private readonly library: Library,
    /** Of bare numbers; the input's own where none is given. */
    unit?: Unit,
  ) {
    this.unit = unit ?? (input.type.kind === 'quantity' ? input.type.unit : undefined);
  }

  read(written: string): ReadInput {
    const text = written.trim();
    if (this.unit && isBareNumber(text)) {
      return this.within(toBase(Number(text), this.unit), `${text} ${this.unit.symbol}`.trim());
    }
    let read = this.known.get(text);
    if (!read) {
      read = this.evaluated(text);
      if (this.known.size < mostKnown) {
        this.known.set(text, read);
      }
    }
    return read;
  }

  private within(number: number, text: string): ReadInput {
    const { name, bounds } = this.input;
    if (!Number.isFinite(number)) {
      return { problem: `\`${name}\`: ${text} is too large to compute with.` };
    }
    return bounds && this.input.isOutside(number)
      ? { problem: `\`${name}\`: ${text} is outside ${bounds.low} to ${bounds.high}, the bounds of this input.` }
      : { value: number };
  }

  private evaluated(text: string): ReadInput {
    const { name, type } = this.input;
    if (text === '') {
      return { problem: `\`${name}\` has no value here.` };
    }
    if (/[\r\n]|\/\//.test(text)) {
      return { problem: `\`${name}\`: a value stands on one line and has no comment.` };
    }
    if (type.kind === 'text' && !/^["“„]/.test(text)) {
      return { value: { object: text } }; // A text needs no quotation marks in a table.
    }
    const program = createProgram(this.library);
    program.update([{ id: 'value', text: `value = ${text}` }]);
    const [problem] = program.diagnostics('value').filter(({ severity }) => severity === 'error');
    if (problem && /^unknown-(name|function)$/.test(problem.code) && program.tree('value')?.diagnostics.length === 0) {
      return { expression: text };
    }
    if (problem) {
      return { problem: `\`${name}\`: ${text} cannot be read. ${problem.message}` };
    }
    const [result, ...more] = program.results('value');
    const found = program.name('value')?.type;
    if (!result?.value || !found || more.length > 0) {
      return { problem: `\`${name}\`: ${text} is no value.` };
    }
    if (!commonType(type, found)) {
      return { problem: `\`${name}\` is ${describe(type)}; ${text} is ${describe(found)}.` };
    }
    const { value } = result;
    switch (value.kind) {
      case 'quantity':
        return value.uncertainty ? { expression: text } : this.within(value.base, text);
      case 'boolean':
        return { value: value.value === true ? 1 : 0 };
      case 'text':
      case 'choice':
        return { value: { object: value.value } };
      case 'object':
        return { value: { object: value.value } };
      default:
        return { expression: text };
    }
  }
}
