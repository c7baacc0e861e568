import { toBase } from '../../units';
import type { SheetCall } from '../checking/meaning';
import { differenceWritten } from '../checking/readings';
import type { Type } from '../checking/type';
import { constants } from '../mathematics/constants';
import type { MathematicsFunction } from '../mathematics/operation';
import { measured } from '../measurement';
import { compileSolution, compileTogether, type Emitter } from '../solving/compile-solution';
import { textContent } from '../syntax/navigation';
import { children, Node, nameOf, Operator, textOf } from '../syntax/tree';
import { CallSite, type Watcher } from './call-site';
import { compileConditional } from './compile-conditional';
import { compileMathematics } from './compile-mathematics';
import { compileOverRange } from './compile-over-range';
import type { CorrelatedWith } from './correlation';
import { fold } from './fold';
import { type Frame, typeIn } from './frame';
import { offsetOf, sizeOf } from './layout';
import { compileBundle, compileList, compileOverItems, compileWhere, isOverItems } from './lists/compile-lists';
import type { Machine, Site } from './machine';
import { Operation, operationOf } from './operations';
import { readingSite } from './reading-site';
import { compileSchedule } from './schedules/compile-schedule';
import { SameSite } from './sites';

/**
 * Turns checked expressions into instructions. Names are slots already, conversions vanish (all numbers are in the
 * coherent SI unit), literals are slots that hold them.
 */
export class Compiler implements Emitter {
  /** Slots for intermediate results; every statement uses the same ones. */
  private readonly temporaries: number[] = [];
  inUse = 0;
  /** Slots that belong to the statement being compiled: pairs of slot and size. */
  owned: number[] = [];
  /** True once a statement compiled since this was reset takes a reading. */
  takesReadings = false;

  constructor(
    readonly machine: Machine,
    /** Gives every node a slot of its own, so that all intermediate results can be looked at afterwards. */
    readonly keep = false,
    private watcher?: Watcher,
    /** Slot of what the statement came to before, where it did, so that nothing is searched for again. */
    readonly found = -1,
  ) {}

  /** Compiles a whole expression; its value ends up in the slots from `target` on. */
  statement(frame: Frame, node: number, target: number): void {
    this.inUse = 0;
    this.expression(frame, node, target);
  }

  /**
   * Emits what an expression needs and returns where its value is; in `target` where one is given. What most expressions
   * are made of is in one piece here, so that it is not compiled into each caller, for which a cold start would wait.
   */
  expression(frame: Frame, node: number, target = -1): number {
    const { tree, types } = frame.meaning;
    const item = frame.items?.get(node);
    let slot: number;
    if (item !== undefined) {
      return this.place(item, 1, target);
    }
    if (!frame.items && types[node]?.kind === 'list' && isOverItems(frame.meaning, node)) {
      slot = compileOverItems(this, frame, node, target);
    } else {
      switch (tree.kinds[node] as Node) {
        case Node.Number:
          slot = this.place(this.constant(tree.numbers[node]), 1, target);
          break;
        case Node.Quantity:
          slot = this.place(this.constant(this.literal(frame, node, 1)), 1, target);
          break;
        case Node.Name:
          slot = this.name(frame, node, target);
          break;
        case Node.Group:
        case Node.Convert:
          slot = this.expression(frame, tree.firstChildren[node], target);
          break;
        case Node.Binary:
          slot = this.binary(frame, node, target);
          break;
        default:
          slot = this.translate(frame, node, target);
      }
    }
    frame.slots?.set(node, slot);
    return slot;
  }

  /** What expressions are made of less often. */
  private translate(frame: Frame, node: number, target: number): number {
    const { tree } = frame.meaning;
    switch (tree.kinds[node] as Node) {
      case Node.Yes:
        return this.place(this.constant(1), 1, target);
      case Node.No:
        return this.place(this.constant(0), 1, target);
      case Node.Unary:
        return this.unary(frame, node, target);
      case Node.Member:
        return this.member(frame, node, target);
      case Node.If:
        return compileConditional(this, frame, node, sizeOf(typeIn(frame, node)), target);
      case Node.List:
        return compileList(this, frame, node, target);
      case Node.Call:
      case Node.BlockCall:
        return this.call(frame, node, target);
      case Node.Schedule: {
        const slot = this.slotFor(sizeOf(typeIn(frame, node)), target);
        compileSchedule(this, frame, frame.meaning.schedules.get(node)!, slot);
        return slot;
      }
      case Node.Where:
        return compileWhere(this, frame, node, target);
      case Node.Designation:
        return this.place(this.object(frame.meaning.designations.get(node)?.value), 1, target);
      case Node.OverRange:
        return this.place(this.expression(frame, tree.firstChildren[node]), 1, target);
      case Node.PlusMinus:
      case Node.Reading:
        return this.reading(frame, node, target);
      case Node.Solution:
        return compileSolution(this, frame, node, target);
      case Node.Together:
        return compileTogether(this, frame, node, target);
      case Node.Text:
        return this.place(this.object(textContent(tree, node)), 1, target);
      default:
        return this.noValue(typeIn(frame, node), target);
    }
  }

  /** The value of a quantity as written, with its sign. */
  private literal({ meaning }: Frame, node: number, sign: number): number {
    const unit = meaning.unitAt(node);
    return 'problem' in unit ? Number.NaN : toBase(sign * meaning.tree.numbers[node], unit);
  }

  /** A value that lies in slots already; copied when it is wanted elsewhere. */
  private place(slot: number, size: number, target: number): number {
    if (target < 0) {
      return slot;
    }
    for (let i = 0; i < size; i++) {
      this.machine.emit(Operation.Copy, target + i, slot + i);
    }
    return target;
  }

  private noValue(type: Type, target: number): number {
    const size = type.kind === 'unknown' ? 1 : sizeOf(type);
    const slot = this.slotFor(size, target);
    this.machine.emit(Operation.NoValue, slot, size);
    return slot;
  }

  /** Where a result of `size` slots goes: the target, or slots of its own. */
  slotFor(size: number, target: number): number {
    if (target >= 0) {
      return target;
    }
    if (this.keep) {
      const slot = this.machine.extend(size);
      this.machine.numbers.fill(Number.NaN, slot, slot + size); // What is never run has no value.
      return slot;
    }
    if (size === 1) {
      const index = this.inUse++;
      this.temporaries[index] ??= this.machine.extend(1);
      return this.temporaries[index];
    }
    return this.own(size);
  }

  own(size: number): number {
    const slot = this.keep ? this.machine.extend(size) : this.machine.allocate(size);
    if (this.owned.length === 0) {
      this.owned = []; // Statements that own nothing share one empty list.
    }
    this.owned.push(slot, size);
    return slot;
  }

  constant(value: number): number {
    if (!this.keep) {
      return this.machine.constant(value);
    }
    const slot = this.machine.extend(1);
    this.machine.numbers[slot] = value;
    return slot;
  }

  private object(value: unknown): number {
    const slot = this.own(1);
    this.machine.objects[slot] = value;
    return slot;
  }

  private name(frame: Frame, node: number, target: number): number {
    const type = typeIn(frame, node);
    const local = frame.locals?.get(nameOf(frame.meaning.tree, node));
    if (local !== undefined) {
      return this.place(local, sizeOf(type), target);
    }
    const name = frame.meaning.nameAt(node);
    if (!name?.isDefined) {
      const text = nameOf(frame.meaning.tree, node);
      const constant = constants.get(text);
      // A bare word beside a choice stands for itself.
      return this.place(constant === undefined ? this.object(text) : this.constant(constant), 1, target);
    }
    return name.slot < 0 ? this.noValue(type, target) : this.place(name.slot, sizeOf(type), target);
  }

  private binary(frame: Frame, node: number, target: number): number {
    const { tree } = frame.meaning;
    const operator = tree.operators[node] as Operator;
    const leftNode = tree.firstChildren[node];
    const rightNode = tree.nextSiblings[leftNode];
    if (typeIn(frame, node).kind === 'list') {
      return compileBundle(this, frame, node, target);
    }
    const before = this.inUse;
    const left = this.expression(frame, leftNode);
    const right = this.expression(frame, rightNode);
    this.inUse = before;
    const type = typeIn(frame, leftNode);
    if (type.kind === 'bound' || typeIn(frame, rightNode).kind === 'bound') {
      return compileOverRange(this, frame, node, { left, right, target });
    }
    if (type.kind !== 'quantity' && type.kind !== 'boolean') {
      const slot = this.slotFor(1, target);
      const object = type.kind === 'object' ? type.object : undefined;
      this.site(new SameSite(object, left, right, operator === Operator.Equal, slot));
      return slot;
    }
    const { machine } = this;
    if (operator <= Operator.Power && !this.keep && machine.holdsConstant(left) && machine.holdsConstant(right)) {
      const value = fold(operator, machine.numbers[left], machine.numbers[right]);
      if (Number.isFinite(value)) {
        return this.place(machine.constant(value), 1, target);
      }
    }
    const slot = this.slotFor(1, target);
    const isSquare =
      operator === Operator.Power && tree.kinds[rightNode] === Node.Number && tree.numbers[rightNode] === 2;
    const operation = isSquare ? Operation.Multiply : (operationOf[operator] ?? Operation.NoValue);
    machine.emit(operation, slot, left, isSquare ? left : right);
    return slot;
  }

  private unary(frame: Frame, node: number, target: number): number {
    const { tree } = frame.meaning;
    const operand = tree.firstChildren[node];
    const operator = tree.operators[node] as Operator;
    if (operator === Operator.Negate && tree.kinds[operand] === Node.Quantity) {
      frame.slots?.set(operand, this.constant(this.literal(frame, operand, 1)));
      return this.place(this.constant(this.literal(frame, operand, -1)), 1, target);
    }
    if (operator === Operator.Negate && tree.kinds[operand] === Node.Number && !this.keep) {
      return this.place(this.constant(-tree.numbers[operand]), 1, target);
    }
    if (operator === Operator.Plus) {
      return this.expression(frame, operand, target);
    }
    const before = this.inUse;
    const value = this.expression(frame, operand);
    this.inUse = before;
    const slot = this.slotFor(1, target);
    this.machine.emit(operator === Operator.Not ? Operation.Not : Operation.Negate, slot, value);
    return slot;
  }

  private member(frame: Frame, node: number, target: number): number {
    const { tree } = frame.meaning;
    const owner = tree.firstChildren[node];
    const type = typeIn(frame, owner);
    const record = this.expression(frame, owner);
    if (type.kind !== 'record' && type.kind !== 'schedule') {
      return this.noValue(typeIn(frame, node), target);
    }
    const field = textOf(tree, tree.nextSiblings[owner]);
    return this.place(record + offsetOf(type, field), sizeOf(typeIn(frame, node)), target);
  }

  private call(frame: Frame, node: number, target: number): number {
    const call = frame.meaning.calls.get(node);
    if (!call) {
      return this.noValue(typeIn(frame, node), target);
    }
    if (call.kind === 'sheet') {
      return this.sheetCall(frame, call, target);
    }
    const before = this.inUse;
    const slots = call.arguments.map(({ nodes, word }) =>
      word === undefined ? nodes.map((argument) => this.expression(frame, argument)) : [],
    );
    this.inUse = before;
    const { definition } = call;
    if (definition === measured) {
      const [[value], [standard]] = call.arguments.map(({ nodes }) => nodes);
      const [, , others, coefficients] = slots;
      const correlatedWith = others.length > 0 ? { others, coefficients, node } : undefined;
      return this.source(frame, node, value, standard, target, correlatedWith);
    }
    if ('operation' in definition) {
      return compileMathematics(this, definition as MathematicsFunction, call, slots, target);
    }
    const slot = this.slotFor(sizeOf(call.result), target);
    this.site(new CallSite(call, frame.meaning, slots, slot, this.watcher));
    return slot;
  }

  private sheetCall(frame: Frame, call: SheetCall, target: number): number {
    const locals = new Map<string, number>();
    for (const [i, parameter] of call.parameters.entries()) {
      locals.set(parameter, this.expression(frame, call.argumentNodes[i]));
    }
    const inner: Frame = {
      meaning: call.meaning,
      locals,
      slots: frame.slots && new Map(),
      inner: frame.inner && new Map(),
    };
    frame.inner?.set(call.node, inner);
    return this.expression(inner, call.body, target);
  }

  /** `value ± limits` or `value by meter` */
  private reading(frame: Frame, node: number, target: number): number {
    const { tree } = frame.meaning;
    const [value, spread] = children(tree, node);
    return this.source(frame, node, value, spread, target);
  }

  /** A value that is a source of doubt: what it is off by follows from its limits, its meter or its uncertainty. */
  private source(
    frame: Frame,
    node: number,
    value: number,
    spread: number,
    target: number,
    correlatedWith?: CorrelatedWith,
  ): number {
    this.takesReadings = true;
    const degrees = differenceWritten(frame.meaning, spread);
    const spreadSlot = degrees === undefined ? this.expression(frame, spread) : this.constant(degrees);
    const valueSlot = this.expression(frame, value);
    const slot = this.slotFor(1, target);
    this.site(readingSite(frame.meaning, { node, value, spread }, valueSlot, spreadSlot, slot, correlatedWith));
    return slot;
  }

  unwatched(compile: () => void): void {
    const { watcher } = this;
    this.watcher = undefined;
    compile();
    this.watcher = watcher;
  }

  site(site: Site): void {
    this.machine.emit(Operation.Site, 0, this.machine.addSite(site));
  }
}
