import { type Call, defineFormula } from '../../language';

const units = { I: 'A', r_T: 'Ω/kft', L: 'ft', n: '' } as const;
const twoWire = defineFormula({ symbol: 'U_drop', text: '2 * I * r_T * L / n', units, result: 'V' });
const threePhase = defineFormula({ symbol: 'U_drop', text: 'sqrt(3) * I * r_T * L / n', units, result: 'V' });

export interface Run {
  readonly phases: number;
  /** Amperes in each line, ohms (DC resistance or effective impedance) per thousand feet of one conductor, feet one way, conductors in parallel. */
  readonly current: number;
  readonly ohmPerKft: number;
  readonly length: number;
  readonly sets: number;
}

/** Drop in volts by the resistance or impedance of one conductor: out and back for two wires, line to line for three-phase. */
export const voltageDrop = (call: Call, run: Run): number =>
  (run.phases === 3 ? threePhase : twoWire)(call, {
    I: run.current,
    r_T: run.ohmPerKft,
    L: run.length,
    n: run.sets,
  });
