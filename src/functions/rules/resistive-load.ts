import { defineFormula } from '../../language';

const atSupply = { U: 'V', R: 'Ω' } as const;
const atRating = { U_rated: 'V', R: 'Ω' } as const;
const nameplate = { U_rated: 'V', P_rated: 'W' } as const;

const singlePhase = {
  current: defineFormula({ symbol: 'I', text: 'U / R', units: atSupply, result: 'A' }),
  power: defineFormula({ symbol: 'P', text: 'U^2 / R', units: atSupply, result: 'W' }),
  ratedPower: defineFormula({ symbol: 'P_rated', text: 'U_rated^2 / R', units: atRating, result: 'W' }),
  ratedResistance: defineFormula({ symbol: 'R', text: 'U_rated^2 / P_rated', units: nameplate, result: 'Ω' }),
};

/** Resistance between any two lines of a balanced element; wye and delta give the same. */
const threePhase: typeof singlePhase = {
  current: defineFormula({ symbol: 'I', text: '2 * U / (sqrt(3) * R)', units: atSupply, result: 'A' }),
  power: defineFormula({ symbol: 'P', text: '2 * U^2 / R', units: atSupply, result: 'W' }),
  ratedPower: defineFormula({ symbol: 'P_rated', text: '2 * U_rated^2 / R', units: atRating, result: 'W' }),
  ratedResistance: defineFormula({ symbol: 'R', text: '2 * U_rated^2 / P_rated', units: nameplate, result: 'Ω' }),
};

/** Ohm's and Joule's laws for a resistive load of one or three phases. */
export const heaterFormulas = (phases: number): typeof singlePhase => (phases === 3 ? threePhase : singlePhase);
