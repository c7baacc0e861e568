import type { Call, Failure } from '../../../language';
import type { TemperatureColumn } from '../../../tables';
import type { AmpacityFact, CircuitKind, DeviceBounds } from '../../facts';
import type { AmpacityQuestion } from '../../rules/ampacity-chain';
import type { DeviceWord } from '../../rules/motor-circuit';
import type { Demand } from '../../rules/required-current';
import type { WelderWord } from '../../rules/welder-duty';

/** What a sheet says of a circuit's load, in amperes and percent. */
export interface CircuitLoad {
  readonly load: number | undefined;
  readonly continuous: boolean;
  readonly mca: number | undefined;
  readonly mocp: number | undefined;
  readonly duty: number | undefined;
  readonly phases: number;
  readonly voltage: number | undefined;
  /** One way, in feet. */
  readonly length: number | undefined;
  readonly device: DeviceWord | undefined;
  readonly welder: WelderWord | undefined;
  /** The load as the sheet states it, where it is a power: a motor's output, a transformer's rating. */
  readonly power: { readonly value: number; readonly unit: 'W' | 'VA' } | undefined;
  /** Rating of the device where the sheet names one. */
  readonly ocpd: number | undefined;
}

/** A load that a sheet states as a power, with what turns it into a current. */
export interface PowerLoad {
  readonly power: { readonly value: number; readonly unit: 'W' | 'VA' };
  readonly voltage: number;
  readonly phases: number;
}

export interface DeviceChoice {
  readonly rating: number;
  readonly because: string;
}

/** How one kind of circuit is sized: what its conductor must carry, and which device may stand before it. */
export interface KindOfCircuit {
  readonly kinds: readonly (CircuitKind | undefined)[];
  /** True where a continuous load asks for more, so that a sheet should say whether it is one. */
  readonly askedIfContinuous: boolean;
  /** The section that makes such a load continuous whatever its hours. */
  readonly continuousBy?: string;
  /** False where NEC 240.4(G) takes the kind out of the small-conductor limits. */
  readonly smallConductorLimits: boolean;
  /** Replaces power over voltage where the kind has current tables of its own; amperes. */
  readonly currentOf?: (call: Call, load: PowerLoad) => number | Failure;
  /** Replaces the ampacity of building wire where the kind's conductors have a table of their own. */
  readonly ampacityOf?: (call: Call, question: AmpacityQuestion, load: CircuitLoad) => AmpacityFact | Failure;
  /** True where the terminals go by what the conductor must carry, since the device ahead is far larger. */
  readonly terminalsByDemand?: true;
  /** Rating in °C of terminals that are not marked, and who says so, where the kind’s own table takes one. */
  readonly unmarkedTerminals?: { readonly rating: TemperatureColumn; readonly by: string };
  readonly demand: (call: Call, load: CircuitLoad) => Demand | Failure;
  /** The smallest rating that the load itself asks for, where what the conductor must carry does not tell; amperes. */
  readonly smallestDevice?: (call: Call, load: CircuitLoad) => number | undefined;
  /** The device that is taken when the sheet names none. */
  readonly device: (call: Call, load: CircuitLoad, demand: Demand) => DeviceChoice | Failure;
  /** What the kind's rule says of the device itself; absent where it says nothing. */
  readonly deviceBounds?: (
    call: Call,
    load: CircuitLoad,
    ampacity: AmpacityFact,
    sets: number,
  ) => DeviceBounds | undefined;
  /** True when a device of that rating may stand before the conductor. */
  readonly allows: (call: Call, load: CircuitLoad, rating: number, ampacity: AmpacityFact, sets: number) => boolean;
}
