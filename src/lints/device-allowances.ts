import type { CircuitFact, CircuitKind } from '../functions';
import { exceeds } from './circuit-facts';

interface Allowance {
  readonly rule: string;
  /** Of the conductor's ampacity. */
  readonly times?: number;
  /** Of the load's own current, where the rule goes by it. */
  readonly timesLoad?: number;
}

/**
 * How many times the conductor's ampacity an overcurrent device may be rated by the rule of its kind of load. A kind
 * without a row keeps to the general rule; `times` is absent where the rule sets no such bound.
 */
const allowances: { readonly [K in CircuitKind]?: Allowance } = {
  // At most 400 % of the full-load current where the motor would not start, on a conductor of at least 125 % of it.
  motor: { rule: '430.52', times: 4 / 1.25, timesLoad: 4 },
  // At most 225 % of the rated-load current, on a conductor of at least 125 % of it; a nameplate limit comes first.
  hvac: { rule: '440.22', times: 2.25 / 1.25 },
  // 300 % of the conductor's ampacity for resistance welders; 200 % of that or of the load for arc welders.
  welder: { rule: '630.12, 630.32', times: 3, timesLoad: 2 },
  // A tap of at most 10 ft carries at least a tenth of the device ahead of it.
  tap: { rule: '240.21(B)', times: 10 },
  // The conductor carries at least 83 % of the rating.
  dwelling_service: { rule: '310.12', times: 1 / 0.83 },
  // The device carries the locked-rotor current for as long as it lasts.
  fire_pump: { rule: '695.4' },
  // Cords and fixture wires have a table of their own.
  cord: { rule: '240.5' },
};

export interface DeviceAllowance {
  /** Section that sets it. */
  readonly rule: string;
  /** Largest device in amperes; absent where the rule sets no bound by ampacity. */
  readonly largest: number | undefined;
}

/** The largest device by the general rule, the limit for small conductors included. */
export const largestGeneralDevice = (fact: CircuitFact): number =>
  Math.min(fact.largestOcpd, fact.smallConductorLimit ?? fact.largestOcpd);

/** True when not even the next standard size up explains the device. */
export const isOverAmpacity = (fact: CircuitFact): boolean =>
  exceeds(fact.ocpd, Math.max(fact.totalAmpacity, fact.largestOcpd));

/** What the declared kind allows, and the general rule where it has none of its own or none is declared. */
export function deviceAllowance(fact: CircuitFact): DeviceAllowance {
  const own = fact.kind && allowances[fact.kind];
  if (!own) {
    return { rule: '240.4', largest: largestGeneralDevice(fact) };
  }
  if (fact.kind === 'hvac' && fact.mocp !== undefined) {
    return { rule: own.rule, largest: undefined };
  }
  const byAmpacity = own.times && own.times * fact.totalAmpacity;
  const byLoad = own.timesLoad && own.timesLoad * fact.loadCurrent;
  // A motor's rule goes by the load alone, a welder's by the conductor as well.
  const largest = fact.kind === 'motor' ? byLoad : byAmpacity && Math.max(byAmpacity, byLoad ?? 0);
  return { rule: own.rule, largest: largest && Math.max(largest, fact.largestOcpd) };
}

/** Kinds that would allow a device this far above the ampacity, for the question to the author. */
export const kindsThatAllow = (fact: CircuitFact): CircuitKind[] =>
  (Object.keys(allowances) as CircuitKind[]).filter((kind) => {
    const times = allowances[kind]?.times;
    return times !== undefined && !exceeds(fact.ocpd, times * fact.totalAmpacity);
  });

/** Kinds whose conductors the small-conductor rule leaves alone (NEC 240.4(E), 240.4(G), 240.5). */
export const exemptFromSmallConductorRule: ReadonlySet<CircuitKind> = new Set<CircuitKind>([
  'motor',
  'hvac',
  'welder',
  'tap',
  'fire_pump',
  'cord',
]);

/** True when the device is above what the small-conductor rule allows and the declared kind gives no leave. */
export const breaksSmallConductorRule = (fact: CircuitFact): boolean =>
  fact.smallConductorLimit !== undefined &&
  exceeds(fact.ocpd, fact.smallConductorLimit) &&
  !(fact.kind && exemptFromSmallConductorRule.has(fact.kind));
