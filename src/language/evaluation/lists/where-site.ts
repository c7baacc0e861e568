import { type Machine, NoValue, type Site } from '../machine';
import { isMissing } from '../sites';
import { missingItem } from './holes';
import { movedHoles } from './map-site';

/** `list where answers`: the items for which the answer is yes. */
export class WhereSite implements Site {
  constructor(
    private readonly list: number,
    private readonly answers: number,
    private readonly target: number,
    /** The answers' node and text, for messages. */
    private readonly node: number,
    private readonly condition: string,
  ) {}

  run(machine: Machine): void {
    this.pick(machine);
  }

  runWithDoubt(machine: Machine): void {
    const { uncertain } = machine;
    const gradients = uncertain.items(this.list);
    const doubts = uncertain.itemDoubts(this.list);
    const kept = this.pick(machine);
    uncertain.clear(this.target, 1);
    if (kept && gradients) {
      uncertain.setItems(
        this.target,
        kept.map((index) => gradients[index]),
      );
    }
    if (kept && doubts) {
      uncertain.setItemDoubts(
        this.target,
        kept.map((index) => doubts[index]),
      );
    }
  }

  /** Writes the picked items and returns where they stood; undefined when it cannot be told which. */
  private pick(machine: Machine): number[] | undefined {
    const list = machine.objects[this.list];
    const answers = machine.objects[this.answers];
    const picked = isMissing(list) ? list : isMissing(answers) ? answers : this.kept(machine, list, answers);
    if (!Array.isArray(picked)) {
      machine.objects[this.target] = picked;
      return undefined;
    }
    const items = list as Float64Array | unknown[];
    const result =
      items instanceof Float64Array ? Float64Array.from(picked, (i) => items[i]) : picked.map((i) => items[i]);
    machine.objects[this.target] = result;
    const holes = movedHoles(machine.holes.get(items), picked);
    if (holes) {
      machine.holes.set(result, holes);
    }
    return picked;
  }

  private kept(machine: Machine, list: unknown, given: unknown): number[] | NoValue {
    const answers = given as Float64Array;
    const { length } = list as ArrayLike<unknown>;
    if (answers.length !== length) {
      const message = `The list has ${length} items and the condition ${answers.length} answers. Ask about the same schedule that the list is from.`;
      return new NoValue('unlike-lengths', message, this.node);
    }
    const kept: number[] = [];
    for (let i = 0; i < length; i++) {
      if (answers[i] === 1) {
        kept.push(i);
      } else if (answers[i] === 0.5) {
        const message = `The readings cannot tell whether \`${this.condition}\` for item ${i + 1}, so it can be neither taken nor left out.`;
        return new NoValue('cannot-tell', message, this.node);
      } else if (answers[i] !== 0) {
        return missingItem(`\`where ${this.condition}\``, machine.holes.get(answers), this.node);
      }
    }
    return kept;
  }
}
