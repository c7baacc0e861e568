import type { CircuitFact, CircuitKind } from '../functions';
import { exceeds } from './circuit-facts';

/**
 * Kinds with a rule of their own for the device, and how many times the conductor's ampacity it may let that be; absent
 * where the rule sets no such bound. A kind without a row keeps to the general rule.
 */
const allowances: { readonly [K in CircuitKind]?: { readonly times?: number } } = {
  // At most 400 % of the full-load current where the motor would not start, on a conductor of at least 125 % of it.
  motor: { times: 4 / 1.25 },
  // At most 225 % of the rated-load current, on a conductor of at least 125 % of it; a nameplate limit comes first.
  hvac: { times: 2.25 / 1.25 },
  // 300 % of the conductor's ampacity for resistance welders.
  welder: { times: 3 },
  // A tap of at most 10 ft carries at least a tenth of the device ahead of it.
  tap: { times: 10 },
  // The conductor carries at least 83 % of the rating.
  dwelling_service: { times: 1 / 0.83 },
  // The device carries the locked-rotor current for as long as it lasts.
  fire_pump: {},
  // Cords and fixture wires have a table of their own.
  cord: {},
};

/** True where the declared kind sets the device by a rule of its own, so that the conductor's ampacity does not. */
export const hasRuleOfItsOwn = (fact: CircuitFact): boolean => fact.kind !== undefined && fact.kind in allowances;

/** The largest device by the general rule, the limit for small conductors included. */
export const largestGeneralDevice = (fact: CircuitFact): number =>
  Math.min(fact.largestOcpd, fact.smallConductorLimit ?? fact.largestOcpd);

/** True when not even the next standard size up explains the device. */
export const isOverAmpacity = (fact: CircuitFact): boolean =>
  exceeds(fact.ocpd, Math.max(fact.totalAmpacity, fact.largestOcpd));

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
