import assert from 'node:assert/strict';
import { createProgram, type Program } from '../../src/language';
import { SheetLints } from '../../src/lints';
import { library } from './lint-text';

/** The program, counting what is asked of it. */
function counting(program: Program): { readonly program: Program; asked: number } {
  const counted = {
    asked: 0,
    program: new Proxy(program, {
      get(target, member) {
        const value = Reflect.get(target, member);
        if (typeof value !== 'function') {
          return value;
        }
        return (...given: unknown[]) => {
          counted.asked++;
          return Reflect.apply(value, target, given);
        };
      },
    }),
  };
  return counted;
}

/** How much linting asks of the program after an edit of one cell among so many. */
function askedAfterEdit(count: number, replacement: string): number {
  const program = createProgram(library);
  const texts = Array.from({ length: count }, (_, k) => `supply_${k} = 208 V\ndrawn_${k} = supply_${k} / 11.9 Ω\n`);
  const cells = () => texts.map((text, k) => ({ id: String(k), text }));
  const lints = new SheetLints();
  const counted = counting(program);
  const update = () =>
    lints.update({
      program: counted.program,
      cells: program.update(cells()),
      prose: [],
      placeOf: Number,
      moved: false,
      severities: {},
    });
  update();
  counted.asked = 0;
  texts[7] = replacement;
  update();
  return counted.asked;
}

describe('linting after an edit', () => {
  it('takes as much work in a long sheet as in a short one', () => {
    for (const text of ['supply_7 = 209 V\ndrawn_7 = supply_7 / 11.9 Ω\n', 'supply_7 = 208 V\n', 'drawn = (1 +']) {
      assert.equal(askedAfterEdit(400, text), askedAfterEdit(20, text));
    }
  });
});
