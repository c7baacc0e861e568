import { figure } from '../../functions';
import { children, Node, nodesBelow, spanOf, textOf } from '../../language';
import { calledName } from '../argument-places';
import { defineLint } from '../contract';
import { definitionOf, ohmDimension, type Place } from '../readings';
import { remarkOn } from '../remarks';
import { ownWords } from '../words';
import { writtenBase, writtenNode } from '../written-values';

/** Fewer counts of the last digit than this say little. */
const fewestCounts = 20;

const fineMeter = /\b(4|four)[- ]?(wire|terminal)s?\b|\bkelvin\b|\b(milli|micro|low-?)[- ]?ohm/i;
const pathOnly = /\bcontinuity\b|\bbeep/i;

/** A resistance read on a display whose last digit is a large part of it. */
export const meterTooCoarse = defineLint({
  id: 'meter-too-coarse',
  summary: 'A resistance is only a few counts of the meter’s last digit.',
  why:
    'On low resistance the last digits decide: 0.4 Ω on a display of tenths is 4 counts, and a few counts are what a meter ' +
    'may be off. Below an ohm four wires or a low-resistance meter are worth fetching.',
  sources: ['hand-held meter manuals: ± (% of reading + counts of the last digit)', 'UL 2556 3.4: four wires to 1 Ω'],
  severity: 'warning',
  silent: [
    'The reading is 20 counts or more.',
    'Four wires or a low-resistance meter are stated.',
    'Only continuity is claimed.',
    'No meter is named: what its last digit is worth is then not known.',
  ],
  examples: {
    bad: ['pocket = meter(reading: 0.8 %, digits: 5)\nreel = 0.4 Ω by pocket\nwanted = reel * 2\n'],
    good: ['bench = meter(reading: 0.01 %, range: 4 mΩ) // four-wire\nreel = 0.403 Ω by bench\nwanted = reel * 2\n'],
  },
  looksAt: [Node.Reading],
  check(statement, report) {
    const { tree, node } = statement;
    for (const reading of nodesBelow(tree, node)) {
      if (tree.kinds[reading] !== Node.Reading) {
        continue;
      }
      const [, meter] = [...children(tree, reading)];
      const literal = writtenNode(tree, reading);
      const written = literal === undefined ? undefined : writtenBase(tree, literal);
      if (meter === undefined || literal === undefined || written?.dimension !== ohmDimension || written.base <= 0) {
        continue;
      }
      const stated = statedMeter({ ...statement, node: meter });
      const lastDigit = stated.resolution ?? 10 ** -tree.decimals[literal] * written.unit.factor;
      const counts = Math.round(written.base / lastDigit);
      const words = `${stated.words} ${ownWords(statement)}`;
      if (counts < fewestCounts && !fineMeter.test(words) && !pathOnly.test(words)) {
        report({
          span: spanOf(tree, reading),
          message: `${textOf(tree, literal)} is ${counts} ${counts === 1 ? 'count' : 'counts'} of a last digit of ${figure(lastDigit)} Ω: too coarse to decide by. Use a four-wire or low-resistance meter.`,
        });
      }
    }
  },
});

/** What the sheet says of a meter: its words, and the value of one count in Ω where it is stated. */
function statedMeter(place: Place): { readonly words: string; readonly resolution?: number } {
  const definition = definitionOf(place);
  const name = textOf(place.tree, place.node);
  if (!definition) {
    return { words: name };
  }
  const { tree, node, statement } = definition;
  const words = `${name} ${remarkOn(tree, statement)}`;
  const isMeter = tree.kinds[node] === Node.Call && calledName(tree, node) === 'meter';
  for (const argument of isMeter ? children(tree, node) : []) {
    const [label, value] = [...children(tree, argument)];
    if (label !== undefined && value !== undefined && textOf(tree, label) === 'resolution') {
      const written = tree.kinds[value] === Node.Quantity ? writtenBase(tree, value) : undefined;
      return written ? { words, resolution: written.base } : { words };
    }
  }
  return { words };
}
