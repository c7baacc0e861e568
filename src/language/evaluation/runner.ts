import type { Statement } from '../checking/binding';
import { Compiler } from './compiler';
import type { Frame } from './frame';
import { FusedCode } from './fused/fused-code';
import { sizeOf } from './layout';
import { Machine } from './machine';
import { runWithDoubt } from './propagation';
import { hasValue } from './read-value';
import { noSlots, plainStorage } from './storage';

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
    const keepsSlot = statement.isCompiled && statement.storage.size === size;
    const slot = keepsSlot ? statement.slot : machine.allocate(size);
    if (statement.isCompiled) {
      this.drop(statement, keepsSlot);
    }
    if (statement.defines) {
      statement.defines.slot = slot;
    }
    const start = machine.codeLength;
    const { meaning } = statement.cell;
    if (this.frame?.meaning !== meaning) {
      this.frame = { meaning }; // Most statements stand in the cell of the one before.
    }
    compiler.owned = noSlots;
    compiler.takesReadings = false;
    compiler.statement(this.frame, statement.expression, slot);
    statement.codeStart = start;
    statement.codeEnd = machine.codeLength;
    statement.slot = slot;
    const { owned, takesReadings } = compiler;
    statement.storage =
      size === 1 && owned.length === 0 && !takesReadings ? plainStorage : { size, owned, takesReadings };
  }

  /** Gives back what a statement used. */
  release(statement: Statement): void {
    if (statement.isCompiled) {
      this.drop(statement, false);
      statement.codeStart = statement.codeEnd = 0;
      statement.slot = -1;
      statement.storage = plainStorage;
    }
  }

  private drop({ slot, storage, codeStart, codeEnd }: Statement, keepsValue: boolean): void {
    const { machine } = this;
    if (!keepsValue) {
      machine.release(slot, storage.size);
    }
    for (let i = 0; i < storage.owned.length; i += 2) {
      machine.release(storage.owned[i], storage.owned[i + 1]);
    }
    this.abandoned += codeEnd - codeStart;
  }

  /** Runs one statement; true when it has a value. */
  run(statement: Statement): boolean {
    const { machine } = this;
    if (statement.isUncertain) {
      this.runWithDoubt(statement);
    } else {
      if (!machine.uncertain.isEmpty) {
        machine.uncertain.drop(statement.slot, statement.storage.size);
      }
      machine.run(statement.codeStart, statement.codeEnd);
    }
    return hasValue(machine, statement.type, statement.slot);
  }

  private runWithDoubt({ codeStart, codeEnd, slot, storage }: Statement): void {
    const { uncertain } = this.machine;
    uncertain.drop(slot, storage.size);
    runWithDoubt(this.machine, codeStart, codeEnd);
    uncertain.keep(slot, storage.size);
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
        this.order.filter(({ isCompiled }) => isCompiled).map(({ code }) => code),
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
    for (const statement of order) {
      if (statement.isUncertain && statement.isCompiled) {
        machine.run(from, statement.codeStart);
        this.runWithDoubt(statement);
        from = statement.codeEnd;
      }
    }
    machine.run(from, machine.codeLength);
  }

  /** Compiles these statements anew, one behind the other in the order given, and nothing else. */
  compileAll(statements: Iterable<Statement>): void {
    this.machine.clearCode();
    for (const statement of statements) {
      if (statement.isCompiled) {
        this.compile(statement);
      }
    }
    this.abandoned = 0;
  }
}
