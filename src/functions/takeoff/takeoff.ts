import { Absent, defineFormula, defineFunction, Failure, type Type } from '../../language';
import { parseUnit, type Unit } from '../../units';
import { type Conductor, conductorText, conductorType } from '../conductor';

const currencies = ['USD', 'CAD', 'MXN', 'EUR', 'GBP'] as const;
const prices = currencies.map((currency) => `${currency}/kft` as const);

const metresPerFoot = 0.3048;

/** A unit of our own, which parses. */
function unitOf(text: string): Unit {
  const unit = parseUnit(text);
  if ('problem' in unit) {
    throw new Error(`${text}: ${unit.problem}`);
  }
  return unit;
}

const quantity = (unit: Unit): Type => ({ kind: 'quantity', quantity: unit.type, unit });
const list = (element: Type): Type => ({ kind: 'list', element });

/** Lengths are shown in the unit that the runs are written in, costs in the currency of the prices. */
function resultType(types: readonly Type[]): Type {
  const written = types.flatMap((type) =>
    type.kind === 'list' && type.element.kind === 'quantity' ? [type.element.unit] : [],
  );
  const length = written.find((unit) => unit.type === unitOf('ft').type) ?? unitOf('ft');
  const price = prices.find((text) => written.some((unit) => unit.type === unitOf(text).type)) ?? prices[0];
  const currency = quantity(unitOf(price.replace('/kft', '')));
  const number = quantity(unitOf(''));
  return {
    kind: 'record',
    name: 'takeoff',
    fields: new Map<string, Type>([
      ['conductors', list({ kind: 'object', object: conductorType })],
      ['lengths', list(quantity(length))],
      ['length', quantity(length)],
      ['costs', list(currency)],
      ['cost', currency],
      ['reels', list(number)],
    ]),
  };
}

const withWaste = defineFormula({
  symbol: 'L',
  text: '(1 + w) * L_net',
  units: { w: '%', L_net: 'ft' },
  result: 'ft',
});

/** What the runs take of one conductor, in feet, without waste. */
interface Line {
  readonly conductor: Conductor;
  feet: number;
}

export const takeoff = defineFunction({
  name: 'takeoff',
  summary: 'Pull list: length of each conductor over all runs with make-up and waste, whole reels, and cost.',
  parameters: {
    conductors: { listOf: { object: conductorType }, meaning: 'conductor of each run' },
    lengths: { listOf: { unit: 'ft' }, meaning: 'one-way length of each run' },
    counts: { listOf: { unit: '' }, named: true, optional: true, meaning: 'conductors of each run; one if not said' },
    make_up: {
      unit: 'ft',
      named: true,
      default: 0,
      atLeast: 0,
      meaning: 'added to each conductor of each run, for both its ends together',
    },
    waste: { unit: '%', named: true, default: 0, atLeast: 0, atMost: 50, meaning: 'added to each total' },
    priced: {
      listOf: { object: conductorType },
      named: true,
      optional: true,
      meaning: 'conductors of the price list',
    },
    prices: {
      listOf: { units: prices },
      named: true,
      optional: true,
      meaning: 'price of each of them for its length',
    },
    reel: { unit: 'ft', named: true, optional: true, above: 0, meaning: 'length of a full reel, to count reels' },
  },
  result: {
    record: {
      conductors: { listOf: { object: conductorType }, meaning: 'each conductor once, smallest size first' },
      lengths: { listOf: { unit: 'ft' }, meaning: 'length of each, waste included' },
      length: { unit: 'ft', meaning: 'all lengths together' },
      costs: { listOf: { unit: 'USD' }, meaning: 'cost of each, in the currency of the prices' },
      cost: { unit: 'USD', meaning: 'all costs together' },
      reels: { listOf: { unit: '' }, meaning: 'full reels to buy of each' },
    },
  },
  formula: 'L = (1 + waste) * sum(n * (L_run + make_up))',
  assumptions: [
    'waste is 0 unless it is given; 5 to 10 % is common practice, no source',
    'whole reels are counted by length alone: a reel may not divide into the pulls, which cut_plan tells',
  ],
  sources: ['common practice, no source'],
  examples: [
    {
      text: 'job = takeoff([12 AWG Cu THHN, 10 AWG Cu THHN, 12 AWG Cu THHN], [85 ft, 60 ft, 40 ft], counts: [3, 4, 3], waste: 10 %)\njob.lengths',
      gives: '[412.5 ft, 264 ft]',
    },
    {
      text: 'job = takeoff([12 AWG Cu THHN], [500 ft], counts: [3], priced: [12 AWG Cu THHN], prices: [120 USD/kft])\njob.cost',
      gives: '180 USD',
    },
  ],
  infer: resultType,
  evaluate: (args, call) => {
    const { conductors, lengths, counts, make_up, waste, priced, prices: priceList, reel } = args;
    const wrong = misfit(args);
    if (wrong) {
      return wrong;
    }
    if (!counts) {
      call.assume('one conductor in each run: counts not given');
    }
    if (waste === 0 && !call.given('waste')) {
      call.assume('no waste added: waste not given');
    }
    const lines = new Map<string, Line>();
    for (const [i, conductor] of conductors.entries()) {
      const key = conductorText(conductor);
      const line = lines.get(key) ?? { conductor, feet: 0 };
      line.feet += (counts?.[i] ?? 1) * (lengths[i] + make_up);
      lines.set(key, line);
    }
    const sorted = [...lines.values()].sort((a, b) => a.conductor.size.mm2 - b.conductor.size.mm2);
    const feet = sorted.map((line) => withWaste(call, { w: waste, L_net: line.feet }, conductorText(line.conductor)));
    const sum = (values: readonly number[]) => values.reduce((all, one) => all + one, 0);
    const costs = costsOf(sorted, feet, priced, priceList);
    return costs instanceof Failure
      ? costs
      : {
          conductors: sorted.map(({ conductor }) => conductor),
          lengths: feet,
          // With `infer` a single number is in the coherent SI unit, a list in its declared one.
          length: sum(feet) * metresPerFoot,
          costs,
          cost: costs instanceof Absent ? costs : sum(costs),
          reels:
            reel === undefined
              ? new Absent('the length of a full reel is not given')
              : feet.map((length) => Math.ceil((length / reel) * (1 - 1e-9))),
        };
  },
});

function misfit(args: {
  readonly conductors: readonly Conductor[];
  readonly lengths: readonly number[];
  readonly counts?: readonly number[];
  readonly priced?: readonly Conductor[];
  readonly prices?: readonly unknown[];
}): Failure | undefined {
  const { conductors, lengths, counts, priced, prices: priceList } = args;
  const unlike = (parameter: string, number: number, wanted: number, of: string) =>
    new Failure(`${parameter} has ${number} items for ${wanted} ${of}: one for each.`, parameter, 'unlike-lengths');
  if (lengths.length !== conductors.length) {
    return unlike('lengths', lengths.length, conductors.length, 'conductors');
  }
  if (counts && counts.length !== conductors.length) {
    return unlike('counts', counts.length, conductors.length, 'conductors');
  }
  if ((priced === undefined) !== (priceList === undefined)) {
    return new Failure(
      'A price list needs both: the conductors as priced, and prices for each of them.',
      priced ? 'priced' : 'prices',
      'too-few-givens',
    );
  }
  if (priced && priceList && priced.length !== priceList.length) {
    return unlike('prices', priceList.length, priced.length, 'priced conductors');
  }
  const short = lengths.findIndex((length) => !(length >= 0));
  const odd = counts?.findIndex((count) => !Number.isInteger(count) || count < 0) ?? -1;
  return short >= 0
    ? new Failure(`Run ${short + 1} has a length below 0 ft.`, 'lengths', 'out-of-bounds')
    : odd >= 0
      ? new Failure(`Run ${odd + 1} has ${counts?.[odd]} conductors: write a whole number.`, 'counts', 'not-a-count')
      : undefined;
}

/** Cost of each line by the price list; nothing is bought at a price that the list does not have. */
function costsOf(
  lines: readonly Line[],
  feet: readonly number[],
  priced: readonly Conductor[] | undefined,
  priceList: readonly { readonly value: number }[] | undefined,
): number[] | Absent | Failure {
  if (!priced || !priceList) {
    return new Absent('no prices are given');
  }
  const perKft = new Map(priced.map((conductor, i) => [conductorText(conductor), priceList[i].value]));
  const missing = lines.find(({ conductor }) => !perKft.has(conductorText(conductor)));
  return missing
    ? new Failure(`The price list has no ${conductorText(missing.conductor)}: add it.`, 'priced', 'price-missing')
    : lines.map(({ conductor }, i) => ((perKft.get(conductorText(conductor)) ?? 0) * feet[i]) / 1000);
}
