import { type Call, defineFormula } from '../../language';

const realUnits = { P: 'W', U: 'V', cos_phi: '', eta: '' } as const;
const apparentUnits = { S: 'VA', U: 'V' } as const;
const realSingle = defineFormula({ symbol: 'I', text: 'P / (U * cos_phi * eta)', units: realUnits, result: 'A' });
const realThree = defineFormula({
  symbol: 'I',
  text: 'P / (sqrt(3) * U * cos_phi * eta)',
  units: realUnits,
  result: 'A',
});
const apparentSingle = defineFormula({ symbol: 'I', text: 'S / U', units: apparentUnits, result: 'A' });
const apparentThree = defineFormula({ symbol: 'I', text: 'S / (sqrt(3) * U)', units: apparentUnits, result: 'A' });

export interface Load {
  readonly power: { readonly value: number; readonly unit: 'W' | 'VA' };
  readonly voltage: number;
  readonly phases: number;
  readonly powerFactor: number;
  readonly efficiency: number;
}

/** Line current in amperes; apparent power already holds power factor and efficiency. */
export function lineCurrent(call: Call, load: Load): number {
  const three = load.phases === 3;
  const { value, unit } = load.power;
  return unit === 'VA'
    ? (three ? apparentThree : apparentSingle)(call, { S: value, U: load.voltage })
    : (three ? realThree : realSingle)(call, {
        P: value,
        U: load.voltage,
        cos_phi: load.powerFactor,
        eta: load.efficiency,
      });
}
