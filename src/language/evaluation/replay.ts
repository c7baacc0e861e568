import type { Statement } from '../checking/binding';
import type { Type } from '../checking/type';
import type { Watcher } from './call-site';
import { Compiler } from './compiler';
import type { Frame } from './frame';
import { sizeOf } from './layout';
import type { Machine } from './machine';
import { hasValue, readValue } from './read-value';
import type { Runner } from './runner';
import type { Value } from './value';

/** A statement run again so that every intermediate result can be looked at. */
export class Replay {
  constructor(
    readonly machine: Machine,
    readonly frame: Frame,
  ) {}

  /** The value of an expression; undefined when it has none. */
  value(node: number, frame = this.frame): Value | undefined {
    const slot = frame.slots?.get(node);
    const type: Type | undefined = frame.meaning.types[node];
    return slot !== undefined && type && hasValue(this.machine, type, slot)
      ? readValue(this.machine, type, slot)
      : undefined;
  }
}

/** Runs a statement beside the sheet's own slots, hands what came of it to `use`, and forgets it. */
export function replay<T>(runner: Runner, statement: Statement, use: (replay: Replay) => T, watcher?: Watcher): T {
  const { machine } = runner;
  const mark = machine.mark();
  try {
    const compiler = new Compiler(machine, true, watcher, statement.succeeded ? statement.slot : -1);
    const frame: Frame = { meaning: statement.cell.meaning, slots: new Map(), inner: new Map() };
    const target = machine.extend(sizeOf(statement.type));
    compiler.statement(frame, statement.expression, target);
    runner.execute(statement, mark.codeLength, machine.codeLength);
    return use(new Replay(machine, frame));
  } finally {
    machine.forget(mark);
  }
}
