import { Columns } from '../columns';
import type { Machine } from '../machine';
import { ColumnLoop, isLoopable, type Piece } from './column-loop';
import { type Host, host, moduleOf, pageSize, type WasmFunction } from './wasm-module';

/** Cases that are taken together: enough to make light of each step, few enough to stay in the cache. */
const blockSize = 1024;

/** Statements in one loop: their results are written side by side, and a processor follows only so many places at once. */
const piecesInLoop = 12;

/** Works some pieces out for the cases from `from` to before `to`. */
type Step = (from: number, to: number) => void;

/**
 * Results of a sheet's statements for many cases, one column each. What is arithmetic runs as WebAssembly, two cases at a
 * time; the rest, and everything where the host allows none, column by column in JavaScript, with the same bits.
 */
export class CaseColumns {
  private readonly kept = new Map<number, Float64Array>();
  private readonly steps: Step[] = [];
  private readonly plain: Columns;
  private isMixed = false;

  constructor(
    machine: Machine,
    /** Slots whose columns are written before a run. */
    inputs: readonly number[],
    pieces: readonly Piece[],
    size: number,
    /** null for a host without WebAssembly. */
    allowed: Host | null = host(),
  ) {
    const slots = [...new Set([...inputs, ...pieces.map(({ slot }) => slot)])];
    // A loop takes two cases at once and so may write one more than it is asked for.
    const stride = 8 * (size + (size % 2));
    const offsets = new Map(slots.map((slot, i) => [slot, i * stride]));
    const memory = memoryOf(slots.length * stride, allowed);
    const buffer = memory?.buffer ?? new ArrayBuffer(slots.length * stride);
    for (const [slot, offset] of offsets) {
      this.kept.set(slot, new Float64Array(buffer, offset, size));
    }
    this.plain = new Columns(machine, blockSize);
    const groups = groupsOf(machine, pieces);
    const loops = groups.filter(({ isLoop }) => isLoop);
    const run = loopsIn(
      loops.map((group) => new ColumnLoop(machine, group.pieces, offsets)),
      memory,
      allowed,
    );
    for (const group of groups) {
      this.steps.push(group.isLoop && run ? run[loops.indexOf(group)] : this.plainly(group.pieces));
    }
  }

  /** The column of an input or of a piece's result. */
  column(slot: number): Float64Array {
    return this.kept.get(slot)!;
  }

  run(count: number): void {
    for (let from = 0; from < count; from += blockSize) {
      const to = Math.min(count, from + blockSize);
      if (this.isMixed) {
        for (const [slot, column] of this.kept) {
          this.plain.lay(slot, column.subarray(from, to));
        }
      }
      for (const step of this.steps) {
        step(from, to);
      }
    }
  }

  private plainly(pieces: readonly Piece[]): Step {
    this.isMixed = true;
    return (from, to) => {
      for (const { start, end } of pieces) {
        this.plain.run(start, end, to - from);
      }
    };
  }
}

/** null where the host has none to give. */
function memoryOf(size: number, allowed: Host | null) {
  try {
    return allowed && new allowed.Memory({ initial: Math.ceil(size / pageSize) });
  } catch {
    return null;
  }
}

/** The pieces in order, those that make one loop together. */
function groupsOf(machine: Machine, pieces: readonly Piece[]) {
  const groups: { readonly isLoop: boolean; readonly pieces: Piece[] }[] = [];
  for (const piece of pieces) {
    const isLoop = isLoopable(machine, piece);
    const last = groups.at(-1);
    if (last?.isLoop === isLoop && last.pieces.length < piecesInLoop) {
      last.pieces.push(piece);
    } else {
      groups.push({ isLoop, pieces: [piece] });
    }
  }
  return groups;
}

/** The loops ready to run; undefined where the host allows none, or knows no instructions for two numbers at once. */
function loopsIn(loops: readonly WasmFunction[], memory: object | null, allowed: Host | null) {
  if (!memory || !allowed) {
    return undefined;
  }
  try {
    const { exports } = new allowed.Instance(new allowed.Module(moduleOf(loops)), { given: { memory } });
    return loops.map((_, i): Step => {
      const run = exports[String(i)] as Step;
      return (from, to) => run(8 * from, 8 * to);
    });
  } catch {
    return undefined;
  }
}
