import { figure } from '../../functions';
import { type CallRecord, spanOf, unitSpanOf } from '../../language';
import type { Fix } from '../../text';
import { argumentNode, argumentSpan } from '../argument-places';
import { defineLint, type LintedStatement } from '../contract';
import { ohmDimension, resolved } from '../readings';
import { callNodes } from '../statement-kinds';
import { wattDimension, writtenBase, writtenNode } from '../written-values';

/** A written value that is of the wrong order for what it is given to. */
interface Slip {
  readonly parameters: readonly string[];
  readonly dimension: typeof ohmDimension;
  /** In the coherent SI unit. */
  readonly isOdd: (base: number) => boolean;
  /** The prefix that was written and the one that may have been meant. */
  readonly from: RegExp;
  readonly to: string;
  readonly because: string;
}

const conductorsAndElements: Slip = {
  parameters: ['resistance', 'leads'],
  dimension: ohmDimension,
  isOdd: (ohms) => ohms >= 1e5,
  from: /^[MGk]/,
  to: 'm',
  because: 'conductors and elements read milliohms to hundreds of ohms',
};
const insulation: Slip = {
  parameters: ['resistance', 'ten_minutes', 'one_minute'],
  dimension: ohmDimension,
  isOdd: (ohms) => ohms > 0 && ohms < 10,
  from: /^[mµμu]/,
  to: 'M',
  because: 'insulation reads kilohms to gigaohms',
};
const power: Slip = {
  parameters: ['power', 'load', 'rated_power'],
  dimension: wattDimension,
  isOdd: (watts) => watts >= 3e6,
  from: /^[kMG](?=[WV])/,
  to: '',
  because: 'it is more than any circuit of 600 V and less carries',
};

const slips: Readonly<Record<string, Slip | undefined>> = {
  conductor_length: conductorsAndElements,
  insulation_resistance_at: insulation,
  polarization_index: insulation,
  line_current: power,
  circuit: power,
};

/** Heaters take ohms and watts. */
const slipsOf = ({ function: name }: CallRecord): readonly Slip[] =>
  name === 'heater' ? [conductorsAndElements, power] : [slips[name] ?? []].flat();

/** A unit whose prefix makes the value thousands or millions too large or too small. */
export const prefixSlip = defineLint({
  id: 'prefix-slip',
  summary: 'A value is so far off that another prefix may have been meant: mΩ and MΩ, W and kW.',
  why:
    'Prefixes are told apart by capitals: mΩ and MΩ differ by a thousand million. A reading that no conductor, insulation or ' +
    'load can have is more likely a slip of the key.',
  sources: ['NIST SP 811: prefixes and their capitals', 'common practice, no source: what such readings are'],
  severity: 'warning',
  silent: ['The value is one that a conductor, an insulation or a load can have.', 'The value is worked out.'],
  fix: 'Writes the other prefix, on a person’s word.',
  examples: {
    bad: ['left = conductor_length(410 MΩ, 12 AWG Cu stranded, temperature: 20 °C, leads: 30 mΩ)\n'],
    good: ['left = conductor_length(410 mΩ, 12 AWG Cu stranded, temperature: 20 °C, leads: 30 mΩ)\n'],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const call of statement.calls) {
      for (const slip of slipsOf(call)) {
        for (const parameter of slip.parameters) {
          const found = oddValue(statement, call, parameter, slip);
          if (found) {
            report({
              span: argumentSpan(statement, call, parameter),
              message: `Is ${figure(found.number)} ${found.unit} meant, and not ${figure(found.number)} ${found.meant}? For \`${parameter}\` of \`${call.function}\`, ${slip.because}.`,
              fixes: found.fixes,
            });
          }
        }
      }
    }
  },
});

interface OddValue {
  readonly number: number;
  readonly unit: string;
  readonly meant: string;
  readonly fixes: readonly Fix[];
}

function oddValue(
  statement: LintedStatement,
  call: CallRecord,
  parameter: string,
  { dimension, isOdd, from, to }: Slip,
): OddValue | undefined {
  const argument = argumentNode(statement, call, parameter);
  if (argument === undefined) {
    return undefined;
  }
  const { tree, node } = resolved({ ...statement, node: argument });
  const literal = writtenNode(tree, node);
  const written = literal === undefined ? undefined : writtenBase(tree, literal);
  if (literal === undefined || written?.dimension !== dimension || !isOdd(written.base)) {
    return undefined;
  }
  const unit = tree.unitTexts[tree.units[literal]];
  const meant = unit.replace(from, to);
  if (meant === unit) {
    return undefined;
  }
  const span = unitSpanOf(tree, literal);
  const { start, end } = statement.result.span;
  const isHere = tree === statement.tree && span.start >= start && spanOf(tree, literal).end <= end;
  const fixes = isHere ? [{ title: `Write ${meant}`, edits: [{ span, newText: meant }], safe: false }] : [];
  return { number: tree.numbers[literal], unit, meant, fixes };
}
