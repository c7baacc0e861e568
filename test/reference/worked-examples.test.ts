import assert from 'node:assert/strict';
import { inUnit, near, textOf } from '../functions/sheet';
import examples from './worked-examples.json';

type Answer = { show: string; value: number; unit: string } | { show: string; text: string };

/** Published worked examples, each with its source: what their pages print against what a sheet gives. */
describe('published worked examples', () => {
  for (const { id, source, sheet, answers, tolerance } of examples) {
    describe(`${id}: ${source}`, () => {
      for (const answer of answers as readonly Answer[]) {
        const text = [...sheet, answer.show].join('\n');
        if ('text' in answer) {
          it(`${answer.show} gives ${answer.text}`, () => assert.equal(textOf(text), answer.text));
        } else {
          it(`${answer.show} gives ${answer.value} ${answer.unit}`, () =>
            near(inUnit(text, answer.unit), answer.value, tolerance, answer.show));
        }
      }
    });
  }
});
