import { type CircuitFact, figure } from '../../functions';
import { type CallRecord, children, Node, Operator, spanOf, textOf } from '../../language';
import type { Fix, Span } from '../../text';
import { argumentNode } from '../argument-places';
import { continuousFactor } from '../continuous-factor';
import { defineLint, type LintedStatement } from '../contract';
import { type Place, resolved } from '../readings';
import { callNodes } from '../statement-kinds';
import { wordsBehind } from '../words';

/** Arguments that functions multiply by 125 % themselves when the load is continuous. */
const multiplied = ['load', 'current'];

/** The 125 % of a continuous load counted twice. */
export const doubleContinuousFactor = defineLint({
  id: 'double-continuous-factor',
  summary: 'The 125 % of a continuous load is applied twice.',
  why:
    'With `continuous: yes` the function adds the 25 % itself, and a nameplate minimum circuit ampacity (MCA) already holds ' +
    'it. Multiplied once more, the conductor and device come out larger than any rule asks.',
  sources: ['NEC 210.19, 210.20; 440.4 for the nameplate'],
  severity: 'warning',
  silent: [
    'The load is said to be not continuous and is multiplied in the sheet.',
    'The nameplate’s minimum is made of 125 % of a rated-load or full-load current, and the name or remark says so.',
    'The load is multiplied by something other than 1.25 or 125 %.',
  ],
  fix: 'Takes the factor out of the sheet, on a person’s word.',
  examples: {
    bad: [
      'sign = circuit(load: 16 A * 1.25, kind: general, continuous: yes, voltage: 120 V)\n',
      'condenser = circuit(mca: 28 A * 125 %, mocp: 50 A, kind: hvac, voltage: 240 V)\n',
    ],
    good: [
      'sign = circuit(load: 16 A, kind: general, continuous: yes, voltage: 120 V)\n',
      'sign = circuit(load: 16 A * 1.25, kind: general, continuous: no, voltage: 120 V)\n',
    ],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const call of statement.calls) {
      const parameters = [...(isContinuous(call) ? multiplied : []), 'mca'];
      for (const parameter of parameters) {
        const argument = argumentNode(statement, call, parameter);
        const found =
          argument === undefined ? undefined : factorIn({ ...statement, node: argument }, parameter !== 'mca');
        if (argument === undefined || !found || (parameter === 'mca' && isRatedCurrent(found.place, found.kept))) {
          continue;
        }
        const inPlace = found.place.cell === statement.cell && found.place.tree === statement.tree;
        const removal =
          inPlace && isInside(found.place, argument, statement) ? removalFix(found.place, found.kept) : [];
        report({
          span: spanOf(statement.tree, argument),
          message:
            parameter === 'mca'
              ? 'This nameplate current is multiplied by 125 %; a minimum circuit ampacity already holds it. Give it as the nameplate states it.'
              : `This ${parameter} ${found.isPart ? 'holds a part that is already' : 'is already'} multiplied by 125 %, and a continuous load is multiplied again: ${figure(continuousFactor ** 2 * 100)} % in all. ${found.isPart ? 'Say `continuous: no`, or give' : 'Give'} the ${parameter} without the factor.`,
          fixes: removal,
        });
      }
    }
  },
});

/** Currents that a minimum circuit ampacity is made of, by 125 % of the largest. */
const ratedCurrent = /\b(rla|flc|fla|bcsc|rated|full[- ]?load|compressor)\b/i;

const isRatedCurrent = (place: Place, kept: number): boolean => {
  const base = { ...place, node: kept };
  const written = place.tree.kinds[kept] === Node.Name ? textOf(place.tree, kept).replaceAll('_', ' ') : '';
  return ratedCurrent.test(`${written} ${wordsBehind(base)}`);
};

/** True when the function adds the 25 % itself. */
function isContinuous(call: CallRecord): boolean {
  const circuit = call.facts.find((fact) => fact.about === 'circuit') as CircuitFact | undefined;
  const value = call.arguments.get('continuous')?.value;
  return circuit ? circuit.continuous && circuit.mca === undefined : value?.kind === 'boolean' && value.value === true;
}

/** Sums of more terms, and names for them, are not looked through. */
const mostTerms = 20;

/** A product with 1.25 or 125 % as one side, and the side to keep; `inSums` also where it is a part of a sum. */
function factorIn(
  start: Place,
  inSums: boolean,
  depth = 0,
): { place: Place; kept: number; isPart: boolean } | undefined {
  const place = resolved(start);
  const { tree, node } = place;
  const operator = tree.kinds[node] === Node.Binary ? tree.operators[node] : undefined;
  if (operator === Operator.Add && inSums && depth < mostTerms) {
    const [left, right] = [...children(tree, node)];
    return factorIn({ ...place, node: left }, true, depth + 1) ?? factorIn({ ...place, node: right }, true, depth + 1);
  }
  if (operator !== Operator.Multiply) {
    return undefined;
  }
  const [left, right] = [...children(tree, node)];
  const isFactor = (side: number): boolean =>
    (tree.kinds[side] === Node.Number && tree.numbers[side] === continuousFactor) ||
    (tree.kinds[side] === Node.Quantity &&
      tree.unitTexts[tree.units[side]] === '%' &&
      tree.numbers[side] === continuousFactor * 100);
  const kept = isFactor(right) ? left : isFactor(left) ? right : undefined;
  return kept === undefined ? undefined : { place, kept, isPart: depth > 0 };
}

const isInside = (place: Place, argument: number, statement: LintedStatement): boolean =>
  place.tree.starts[place.node] >= statement.tree.starts[argument] &&
  place.tree.ends[place.node] <= statement.tree.ends[argument];

function removalFix({ tree, node }: Place, kept: number): Fix[] {
  const whole: Span = spanOf(tree, node);
  const side = spanOf(tree, kept);
  const edits = [
    { span: { start: whole.start, end: side.start }, newText: '' },
    { span: { start: side.end, end: whole.end }, newText: '' },
  ].filter(({ span }) => span.start < span.end);
  return [{ title: 'Take out the 125 %', edits, safe: false }];
}
