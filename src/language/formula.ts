import { fromBase, readUnit, toBase, type Unit } from '../units';
import { Arithmetic, misfit } from './checking/arithmetic';
import { Checker } from './checking/checker';
import { describe } from './checking/describe';
import { check } from './checking/expressions';
import { Meaning } from './checking/meaning';
import { NameTable } from './checking/name-table';
import { ownUnit, writtenIn } from './checking/types';
import { Compiler } from './evaluation/compiler';
import type { Frame } from './evaluation/frame';
import { Machine } from './evaluation/machine';
import { build } from './evaluation/maths-tree';
import { quantityValue } from './evaluation/read-value';
import { Replay } from './evaluation/replay';
import type { FormulaStep } from './evaluation/trace';
import { letterSymbol } from './evaluation/watch';
import type { Call, FunctionDefinition, Library } from './library';
import { mathematics } from './mathematics';
import { parse } from './syntax/parser';
import { Node, textOf } from './syntax/tree';

export interface FormulaDeclaration<Name extends string> {
  /** Letter symbol of the result: `U_drop`. */
  readonly symbol: string;
  /** In the cell language: `2 * I * r * L`. */
  readonly text: string;
  /** Unit of each name in the text; values are handed in so. */
  readonly units: Readonly<Record<Name, string>>;
  /** How a name is shown, where not as itself: `{ r: 'R_75' }`. */
  readonly symbols?: Readonly<Partial<Record<Name, string>>>;
  /** Unit of the result. */
  readonly result: string;
  /** True where one kind of power defines another, by a power factor; nothing else turns W, VA and var into each other. */
  readonly turnsPowerKind?: true;
}

/**
 * A formula in the cell language as a function: what is shown is what ran. Names are handed in and the result comes
 * back in the declared units. Not a finite number where the formula has no value; the caller tests for that.
 * Throws when first used if the text does not fit its units: a mistake in the program, which its tests find.
 */
export function defineFormula<Name extends string>(
  declaration: FormulaDeclaration<Name>,
): (call: Call, values: Readonly<Record<Name, number>>, remark?: string) => number {
  let compiled: CompiledFormula | undefined;
  return (call, values, remark) => {
    compiled ??= new CompiledFormula(declaration);
    const result = compiled.run(values);
    if (call.shown) {
      call.step(compiled.step(values, remark, call.system));
    }
    return result;
  };
}

/** What a formula's US units are shown in where a sheet's units are SI; the numbers that ran are the same. */
const metricUnits: Readonly<Record<string, string>> = {
  ft: 'm',
  kft: 'km',
  'ft²': 'm²',
  'Ω/kft': 'Ω/km',
  'VA/ft²': 'VA/m²',
  in: 'mm',
  'in²': 'mm²',
};

const shownUnit = (unit: Unit, system: Library['system']): Unit =>
  system === 'SI' && Object.hasOwn(metricUnits, unit.symbol) ? ownUnit(metricUnits[unit.symbol]) : unit;

/** All formulas share one machine; each has its own slots. */
const machine = new Machine();

const library: Library = {
  vocabulary: {
    sizeUnits: new Set(),
    alwaysSizeUnits: new Set(),
    designationWords: new Set(),
    hyphenatedWords: new Set(),
  },
  functions: new Map<string, FunctionDefinition>(),
  designation: {
    type: { name: 'size', described: 'a size', text: String },
    read: () => ({ problem: 'A formula holds no sizes.', code: 'unknown-size' }),
  },
  system: 'US',
  settings: undefined,
};
const functions = new Map<string, FunctionDefinition>(mathematics.map((one) => [one.name, one]));
const context = {
  library,
  functions,
  arithmetic: new Arithmetic('US'),
  names: new NameTable(functions),
  place: () => undefined,
  rows: () => ({ problem: { code: 'no-other-sheets' as const, message: 'A formula reads no files.' } }),
};

class CompiledFormula {
  private readonly names: readonly { name: string; unit: Unit; slot: number }[];
  private readonly frame: Frame;
  private readonly expression: number;
  private readonly start: number;
  private readonly end: number;
  private readonly target: number;
  private readonly result: Unit;

  constructor(private readonly declaration: FormulaDeclaration<string>) {
    const { text, units, result } = declaration;
    const tree = parse(text, library.vocabulary, { readUnit });
    const meaning = new Meaning(tree, '', library);
    const [statement] = tree.statements;
    this.expression = tree.firstChildren[statement];
    this.names = Object.entries<string>(units).map(([name, unit]) => ({
      name,
      unit: ownUnit(unit),
      slot: machine.extend(1),
    }));
    const checker = new Checker(context, meaning, new Map(this.names.map(({ name, unit }) => [name, writtenIn(unit)])));
    const type = check(checker, this.expression);
    const [problem] = [...tree.diagnostics, ...checker.diagnostics];
    this.result = ownUnit(result);
    if (problem || tree.kinds[statement] !== Node.Show || tree.statements.length !== 1) {
      throw new Error(`The formula ${text}: ${problem?.message ?? 'it must be one expression.'}`);
    }
    // The formula may be the very rule that leads from one kind of power to another, so dimensions are compared alone.
    if (type.kind !== 'quantity' || misfit(type.quantity, this.result.type) === 'dimension') {
      throw new Error(`The formula ${text} gives ${describe(type)}, not ${describe(writtenIn(this.result))}.`);
    }
    this.target = machine.extend(1);
    this.frame = { meaning, locals: new Map(this.names.map(({ name, slot }) => [name, slot])) };
    this.start = machine.codeLength;
    new Compiler(machine).statement(this.frame, this.expression, this.target);
    this.end = machine.codeLength;
  }

  run(values: Readonly<Record<string, number>>): number {
    for (const { name, unit, slot } of this.names) {
      machine.numbers[slot] = toBase(values[name], unit);
    }
    machine.run(this.start, this.end);
    return fromBase(machine.numbers[this.target], this.result);
  }

  /** The step that shows what just ran. */
  step(
    values: Readonly<Record<string, number>>,
    remark: string | undefined,
    system: Library['system'] = 'US',
  ): FormulaStep {
    const { symbol, symbols = {} } = this.declaration;
    const { tree } = this.frame.meaning;
    const replay = new Replay(machine, this.frame);
    const units = new Map(this.names.map(({ name, unit }) => [name, unit]));
    const formula = build(replay, this.expression, (node, written) => {
      const name = textOf(tree, node);
      return units.has(name)
        ? { kind: 'symbol', symbol: letterSymbol(symbols[name] ?? name) }
        : { kind: 'name', name: written };
    });
    const substituted = build(replay, this.expression, (_, name) => {
      const unit = units.get(name);
      return unit
        ? { kind: 'value', value: quantityValue(writtenIn(shownUnit(unit, system)), toBase(values[name], unit)) }
        : { kind: 'name', name };
    });
    return {
      kind: 'formula',
      symbol: letterSymbol(symbol),
      formula,
      substituted,
      result: quantityValue(writtenIn(shownUnit(this.result, system)), machine.numbers[this.target]),
      remark,
    };
  }
}
