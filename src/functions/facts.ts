import type { Fact } from '../language';
import type { Conductor } from './conductor';

/** Which rules speak about a circuit. */
export const circuitKinds = [
  'general',
  'motor',
  'hvac',
  'welder',
  'space_heating',
  'water_heater',
  'dwelling_service',
  'tap',
  'transformer',
  'fire_pump',
  'evse',
  'cord',
] as const;
export type CircuitKind = (typeof circuitKinds)[number];

/** How an ampacity came about; amperes and °C throughout. Left by `ampacity`, `circuit` and whatever uses them. */
export interface AmpacityFact extends Fact {
  readonly about: 'ampacity';
  readonly conductor: Conductor;
  /** Column the derating starts from, by insulation, and its value. */
  readonly insulationColumn: 60 | 75 | 90;
  readonly base: number;
  readonly ambientC: number;
  readonly ambientFactor: number;
  readonly bundled: number;
  readonly bundlingFactor: number;
  readonly derated: number;
  /** Column that the terminals allow, its value, and where it comes from. */
  readonly terminalColumn: 60 | 75 | 90;
  readonly terminalBase: number;
  readonly terminalsFrom: 'given' | 'rule' | 'cable';
  readonly ampacity: number;
  /** What terminals marked 75 °C would allow, where the sheet does not say their marking and 60 °C is taken. */
  readonly ampacityAt75: number | undefined;
  readonly limitedBy: 'derating' | 'terminals';
  /** One line with numbers: `10 AWG Cu THHN: 40 A (90 °C column) × 0.91 × 1 = 36.4 A; terminals 60 °C allow 30 A`. */
  readonly chain: string;
}

/** What the rule of a kind of load says of the device's rating, whatever its conductor; amperes. */
export interface DeviceBounds {
  /** Section that sets them, and what they come from: `250 % of 22 A, next standard rating`. */
  readonly section: string;
  readonly because: string;
  /** Never below this. */
  readonly least?: number;
  /** Never above this. */
  readonly largest?: number;
  /** Above this only on a condition, and which: `the motor does not start on it`. */
  readonly usual?: number;
  readonly onlyWhere?: string;
}

/** All that a circuit's rules compare. Left once by each `circuit`. */
export interface CircuitFact extends Fact {
  readonly about: 'circuit';
  readonly kind: CircuitKind | undefined;
  readonly continuous: boolean;
  readonly continuousGiven: boolean;
  /** The load's own current, without the 25 % that a rule may add. */
  readonly loadCurrent: number;
  /**
   * What `totalAmpacity` must not fall below. With 125 % where that applies; but where a derated conductor passes that
   * comparison at the terminals, before derating, the code asks only for the load itself after derating.
   */
  readonly requiredAmpacity: number;
  /** How `requiredAmpacity` arose: `17.4 A × 125 % = 21.8 A`. */
  readonly requiredBecause: string;
  readonly conductor: Conductor;
  readonly conductorGiven: boolean;
  readonly sets: number;
  /** For one conductor of a set. */
  readonly ampacity: AmpacityFact;
  /** Of all sets together. */
  readonly totalAmpacity: number;
  /** The overcurrent device's limit by the small-conductor rule, where the size has one. */
  readonly smallConductorLimit: number | undefined;
  readonly ocpd: number;
  readonly ocpdGiven: boolean;
  /** The smallest standard rating that carries the required current. */
  readonly smallestOcpd: number;
  /** The largest device that the general rule allows on this conductor (next standard size up included). */
  readonly largestOcpd: number;
  /** The equipment grounding conductor, whether the sheet named it, and the smallest that the device asks for. */
  readonly egc: Conductor | undefined;
  readonly egcGiven: boolean;
  readonly smallestEgc: Conductor | undefined;
  /** What the device alone asks for, before it is raised in step with larger circuit conductors. */
  readonly tableEgc: Conductor | undefined;
  /** With terminals marked 75 °C, where their marking is not said and 60 °C is taken: all sets, and the general rule. */
  readonly at75: { readonly totalAmpacity: number; readonly largestOcpd: number } | undefined;
  /** What the rule of the declared kind says of the device itself. */
  readonly deviceBounds: DeviceBounds | undefined;
  /** The largest first choice if the load were a motor. */
  readonly largestMotorOcpd: number;
  /** The largest device for one appliance without a marked rating: 150 % of its current, next standard rating. */
  readonly largestApplianceOcpd: number;
  /** Nameplate minimum circuit ampacity and largest overcurrent device, where given. */
  readonly mca: number | undefined;
  readonly mocp: number | undefined;
  /** Sizes that satisfy every rule here, smallest first, at most three: for the message and the fixes. */
  readonly sufficient: readonly Conductor[];
  readonly drop:
    | {
        readonly volts: number;
        readonly percent: number;
        readonly limitPercent: number;
        readonly limitGiven: boolean;
      }
    | undefined;
  readonly edition: string;
}

/** A length worked out from a resistance. Left by `conductor_length`. */
export interface LengthFact extends Fact {
  readonly about: 'length';
  readonly conductor: Conductor;
  readonly resistanceOhm: number;
  readonly leadsOhm: number;
  readonly leadsGiven: boolean;
  readonly temperatureC: number;
  readonly temperatureGiven: boolean;
  readonly loop: boolean;
  readonly loopGiven: boolean;
  readonly lengthFt: number;
  /** The length that the table's own temperature, 75 °C, would have given. */
  readonly lengthAtTableTemperatureFt: number;
}

/** Current and power of a resistive element. Left by `heater`. */
export interface HeaterFact extends Fact {
  readonly about: 'heater';
  readonly resistanceOhm: number | undefined;
  readonly voltage: number | undefined;
  readonly ratedVoltage: number | undefined;
  readonly phases: number;
  readonly currentA: number;
  readonly powerW: number;
  readonly ratedPowerW: number | undefined;
  /** Whether the element was disconnected and proved dead when it was read; undefined where the sheet does not say. */
  readonly isolated: boolean | undefined;
}

/** Fault current that is available at equipment. Left by `fault_current` and `fault_current_at`. */
export interface FaultFact extends Fact {
  readonly about: 'fault';
  readonly currentA: number;
  /** Of the equipment there, where the sheet states it. */
  readonly interruptingRatingA: number | undefined;
  readonly edition: string;
}

/** A figure read per unit length. Left by `resistance_per_length` and `resistance`. */
export interface ResistancePerLengthFact extends Fact {
  readonly about: 'resistance per length';
  readonly conductor: Conductor;
  readonly temperatureC: number;
  readonly temperatureGiven: boolean;
  readonly ohmPerKft: number;
}

/** How full a raceway is. Left by `raceway_fill`, `raceway_for` and `circuit`. */
export interface RacewayFact extends Fact {
  readonly about: 'raceway';
  /** `EMT`, and the trade size: `1-1/4`. */
  readonly type: string;
  readonly tradeSize: string;
  readonly nipple: boolean;
  readonly conductors: number;
  /** Area of the conductors, and what the table allows them in that size; in². */
  readonly areaIn2: number;
  readonly allowedIn2: number;
  readonly fillPercent: number;
  readonly limitPercent: number;
  /** Bore over conductor diameter, for three conductors of one diameter: between 2.8 and 3.2 they may jam. */
  readonly jamRatio: number | undefined;
  readonly smallestTradeSize: string | undefined;
}

export type TradeFact =
  | AmpacityFact
  | CircuitFact
  | LengthFact
  | HeaterFact
  | FaultFact
  | ResistancePerLengthFact
  | RacewayFact;
