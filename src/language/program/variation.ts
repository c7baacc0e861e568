import { noDiagnostics, type Statement } from '../checking/binding';
import type { Type } from '../checking/type';
import { unknownType } from '../checking/types';
import { CallSite } from '../evaluation/call-site';
import { CaseColumns } from '../evaluation/cases/case-columns';
import { isArithmetic } from '../evaluation/columns';
import { inputBounds, isOutside } from '../evaluation/input-range';
import { sizeOf } from '../evaluation/layout';
import { instructionLength, Operation } from '../evaluation/operations';
import { hasValue, readValue } from '../evaluation/read-value';
import type { Runner } from '../evaluation/runner';
import type { Value } from '../evaluation/value';
import { Absent } from '../library';
import type { Variation as Contract, InputValue, NamedScalar, VariedColumns, VariedInput } from '../program';
import { Node, textOf } from '../syntax/tree';
import type { Settler } from './settler';
import type { Sheet } from './sheet';
import { Result } from './statement-result';

/** A named result with where it lies. */
interface Output extends NamedScalar {
  readonly statement: Statement;
  readonly slot: number;
}

/** A sheet's compiled code run for case after case. */
export class Variation implements Contract {
  readonly inputs: readonly VariedInput[];
  readonly outputs: readonly Output[];
  readonly cells: readonly string[];
  readonly columns?: VariedColumns;
  private readonly statements: readonly (Statement | undefined)[];
  private readonly dependants: readonly Statement[];

  constructor(
    names: readonly string[],
    sheet: Sheet,
    private readonly runner: Runner,
    private readonly settler: Settler,
    /** How many cases columns hold; by default so many that all of them stay in the cache. */
    private readonly casesAtOnce = 1024,
  ) {
    this.statements = names.map((name) => inputCalled(name, sheet));
    this.inputs = names.map((name, i) => variedInput(name, this.statements[i], runner));
    const varied = this.statements.filter((statement) => statement !== undefined);
    this.dependants = settler.dependantsOf(varied);
    const hanging = new Set(this.dependants);
    const ran = new Set([...varied, ...this.dependants].map(({ cell }) => cell));
    this.cells = sheet.cells.filter((cell) => ran.has(cell)).map(({ id }) => id);
    this.outputs = [...sheet.statements()]
      .filter((statement) => !varied.includes(statement))
      .flatMap((statement) => outputsOf(statement, hanging.has(statement)));
    this.columns = this.columnsOf(varied);
  }

  run(values: readonly InputValue[]): void {
    const { machine } = this.runner;
    for (const [i, statement] of this.statements.entries()) {
      if (statement?.isCompiled) {
        const { slot, storage } = statement;
        const value = values[i];
        machine.uncertain.clear(slot, storage.size);
        machine.numbers[slot] = typeof value === 'number' ? value : Number.NaN;
        machine.objects[slot] = typeof value === 'number' ? undefined : value.object;
        statement.succeeded = true;
        statement.isUncertain = false;
        statement.runDiagnostics = noDiagnostics;
        statement.result = new Result(statement, this.runner, undefined);
      }
    }
    this.settler.again(this.dependants);
  }

  number(output: number): number {
    const { statement, slot, type } = this.outputs[output];
    return statement.succeeded && (type.kind === 'quantity' || type.kind === 'boolean')
      ? this.runner.machine.numbers[slot]
      : Number.NaN;
  }

  value(output: number): Value | undefined {
    const { statement, slot, type } = this.outputs[output];
    const { machine } = this.runner;
    const isThere = statement.succeeded && hasValue(machine, type, slot) && !(machine.objects[slot] instanceof Absent);
    return isThere ? readValue(machine, type, slot) : undefined;
  }

  get callsLibrary(): boolean {
    const { code, sites } = this.runner.machine;
    return this.dependants.some(({ codeStart, codeEnd }) => {
      for (let at = codeStart; at < codeEnd; at += instructionLength) {
        if (code[at] === Operation.Site && sites[code[at + 2]] instanceof CallSite) {
          return true;
        }
      }
      return false;
    });
  }

  private columnsOf(varied: readonly Statement[]): VariedColumns | undefined {
    const { machine } = this.runner;
    const isPlain = ({ type, isUncertain, isCompiled, codeStart, codeEnd }: Statement) =>
      isCompiled &&
      !isUncertain &&
      (type.kind === 'quantity' || type.kind === 'boolean') &&
      isArithmetic(machine, codeStart, codeEnd);
    const isNumber = ({ type, isCompiled }: Statement) =>
      isCompiled && (type.kind === 'quantity' || type.kind === 'boolean');
    if (varied.length !== this.statements.length || !varied.every(isNumber) || !this.dependants.every(isPlain)) {
      return undefined;
    }
    const slotOf = ({ slot }: Statement) => slot;
    const pieces = this.dependants.map(({ code }) => code);
    let made: CaseColumns | undefined; // Once a case is run in columns: mostly only the inputs are asked for.
    const columns = () => (made ??= new CaseColumns(machine, varied.map(slotOf), pieces, this.casesAtOnce));
    const isCheck = ({ cell, node }: Statement) => cell.tree.kinds[node] === Node.Check;
    return {
      run: (inputs, count) => {
        for (const [i, statement] of varied.entries()) {
          columns().column(slotOf(statement)).set(inputs[i].subarray(0, count));
        }
        columns().run(count);
      },
      output: (output) => columns().column(this.outputs[output].slot),
      checks: this.dependants.filter(isCheck).map((statement) => ({
        label: statement.result?.label ?? '',
        get column() {
          return columns().column(slotOf(statement));
        },
      })),
    };
  }
}

/** The one statement that declares an input of this name. */
function inputCalled(name: string, sheet: Sheet): Statement | undefined {
  const definition = sheet.names.find(name)?.definition;
  return definition && definition.cell.tree.kinds[definition.node] === Node.Input ? definition : undefined;
}

function variedInput(name: string, statement: Statement | undefined, runner: Runner): VariedInput {
  const bounds = statement?.isCompiled ? inputBounds(runner, statement) : undefined;
  return {
    name,
    type: statement?.type ?? unknownType,
    bounds,
    isOutside: (number) => bounds !== undefined && isOutside(number, bounds),
  };
}

function outputsOf(statement: Statement, varies: boolean): Output[] {
  const node = statement.nameNode;
  if (node < 0 || !statement.isCompiled) {
    return [];
  }
  const outputs: Output[] = [];
  const add = (name: string, type: Type, slot: number): void => {
    if (type.kind === 'record') {
      let at = slot;
      for (const [field, fieldType] of type.fields) {
        add(`${name}.${field}`, fieldType, at);
        at += sizeOf(fieldType);
      }
    } else if (type.kind !== 'list' && type.kind !== 'meter' && type.kind !== 'unknown') {
      outputs.push({ name, type, varies, statement, slot });
    }
  };
  add(textOf(statement.cell.tree, node), statement.type, statement.slot);
  return outputs;
}
