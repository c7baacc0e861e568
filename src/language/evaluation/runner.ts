import type { Statement } from '../checking/binding';
import { Compiler } from './compiler';
import type { Frame } from './frame';
import { FusedCode } from './fused/fused-code';
import { sizeOf } from './layout';
import { Machine } from './machine';
import { runWithDoubt } from './propagation';
import { hasValue } from './read-value';

/** Where a statement's instructions and values lie. */
export interface CompiledStatement {
  /** Its instructions, from here to `end`. */
  readonly start: number;
  readonly end: number;
  /** First slot of its value. */
  readonly slot: number;
  readonly size: number;
  /** Slots it uses beside: pairs of slot and size. */
  readonly owned: readonly number[];
  /** True when it makes something uncertain: a reading, limits. */
  readonly takesReadings: boolean;
}

/** Shared, because most statements own no slots. */
const none: number[] = [];

/** Compiles statements and runs them, one at a time or all at once. */
export class Runner {
  readonly machine = new Machine();
  private readonly compiler = new Compiler(this.machine);
  private frame: Frame | undefined;
  /** Instructions of statements that were compiled anew or dropped since. */
  private abandoned = 0;
  /** The statements in the order that the code lies in; absent while edits have mixed it up. */
  private order: readonly Statement[] | undefined;
  /** The same code in a shorter form; made when all of it runs a second time, because that takes longer than to run it. */
  private fused: FusedCode | undefined;

  /** Compiles a statement whose type is known. Its names keep their slots where the size allows. */
  compile(statement: Statement): void {
    const { machine, compiler } = this;
    this.order = undefined;
    this.fused = undefined;
    const size = sizeOf(statement.type);
    const old = statement.compiled;
    const slot = old?.size === size ? old.slot : machine.allocate(size);
    if (old) {
      this.drop(old, old.size === size);
    }
    if (statement.defines) {
      statement.defines.slot = slot;
    }
    const start = machine.codeLength;
    const { meaning } = statement.cell;
    if (this.frame?.meaning !== meaning) {
      this.frame = { meaning }; // Most statements stand in the cell of the one before.
    }
    compiler.owned = none;
    compiler.takesReadings = false;
    compiler.statement(this.frame, statement.expression, slot);
    statement.compiled = {
      start,
      end: machine.codeLength,
      slot,
      size,
      owned: compiler.owned,
      takesReadings: compiler.takesReadings,
    };
  }

  /** Gives back what a statement used. */
  release(statement: Statement): void {
    if (statement.compiled) {
      this.drop(statement.compiled, false);
      statement.compiled = undefined;
    }
  }

  private drop(compiled: CompiledStatement, keepsValue: boolean): void {
    const { machine } = this;
    if (!keepsValue) {
      machine.release(compiled.slot, compiled.size);
    }
    for (let i = 0; i < compiled.owned.length; i += 2) {
      machine.release(compiled.owned[i], compiled.owned[i + 1]);
    }
    this.abandoned += compiled.end - compiled.start;
  }

  /** Runs one statement; true when it has a value. */
  run(statement: Statement): boolean {
    const { start, end, slot, size } = statement.compiled!;
    const { uncertain } = this.machine;
    if (statement.isUncertain) {
      this.runWithDoubt(statement.compiled!);
    } else {
      if (!uncertain.isEmpty) {
        uncertain.drop(slot, size);
      }
      this.machine.run(start, end);
    }
    return hasValue(this.machine, statement.type, slot);
  }

  private runWithDoubt({ start, end, slot, size }: CompiledStatement): void {
    const { uncertain } = this.machine;
    uncertain.drop(slot, size);
    runWithDoubt(this.machine, start, end);
    uncertain.keep(slot, size);
  }

  /** Runs instructions of a statement; with what is uncertain only where something is. */
  execute({ isUncertain }: Statement, start: number, end: number): void {
    if (isUncertain) {
      this.machine.uncertain.begin();
      runWithDoubt(this.machine, start, end);
    } else {
      this.machine.run(start, end);
    }
  }

  /** True when so much code was dropped that compiling everything again is cheaper than carrying it. */
  get isWasteful(): boolean {
    return this.abandoned > 4096 && this.abandoned * 2 > this.machine.codeLength;
  }

  /** Runs all code at once, laid out first in the order given if edits have mixed it up. */
  runAll(ordered: () => readonly Statement[]): void {
    const { machine } = this;
    if (!machine.uncertain.isEmpty) {
      this.runAllWithDoubt(this.order ?? this.layOut(ordered()));
    } else if (this.order) {
      this.fused ??= new FusedCode(
        machine,
        this.order.map(({ compiled }) => compiled).filter((code) => code !== undefined),
      );
      this.fused.run();
    } else {
      this.layOut(ordered());
      machine.run(0, machine.codeLength);
    }
  }

  private layOut(order: readonly Statement[]): readonly Statement[] {
    this.compileAll(order);
    this.order = order;
    return order;
  }

  private runAllWithDoubt(order: readonly Statement[]): void {
    const { machine } = this;
    let from = 0;
    for (const { isUncertain, compiled } of order) {
      if (isUncertain && compiled) {
        machine.run(from, compiled.start);
        this.runWithDoubt(compiled);
        from = compiled.end;
      }
    }
    machine.run(from, machine.codeLength);
  }

  /** Compiles these statements anew, one behind the other in the order given, and nothing else. */
  compileAll(statements: Iterable<Statement>): void {
    this.machine.clearCode();
    for (const statement of statements) {
      if (statement.compiled) {
        this.compile(statement);
      }
    }
    this.abandoned = 0;
  }
}
