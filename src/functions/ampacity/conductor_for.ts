import { defineFunction, Failure } from '../../language';
import { conductorText, conductorType } from '../conductor';
import { figure } from '../number-text';
import * as shared from '../parameters';
import { ampacityChain } from '../rules/ampacity-chain';
import { sufficientConductors } from '../rules/conductor-choice';
import { largestDeviceAllowed } from '../rules/device-on-conductor';
import { smallestDeviceFor } from '../rules/next-standard-size';
import { demandOf } from '../rules/required-current';
import { tablesOf } from '../settings';
import { conductorValue } from '../step-values';

export const conductor_for = defineFunction({
  name: 'conductor_for',
  summary: 'Smallest conductor that may carry a current, small-conductor limits included.',
  parameters: {
    current: shared.current,
    material: shared.material,
    insulation: { ...shared.insulation, optional: undefined, default: 'THHN', meaning: 'insulation or cable type' },
    terminals: shared.terminals,
    ambient: shared.ambient,
    bundled: shared.bundled,
    continuous: shared.continuous,
  },
  result: { object: conductorType, meaning: 'smallest sufficient size' },
  assumptions: [
    'terminals not given: 60 °C up to 100 A, 75 °C above',
    'the smallest standard device that carries the current must be allowed on the conductor',
    'voltage drop not considered: see conductor_for_drop',
  ],
  sources: ['NEC Table 310.16', 'NEC 110.14(C)', 'NEC 210.19 and 215.2', 'NEC 240.4(B) and (D)'],
  examples: [
    { text: 'conductor_for(18 A)', gives: '12 AWG Cu THHN' },
    { text: 'conductor_for(18 A, continuous: yes)', gives: '10 AWG Cu THHN' },
    { text: 'conductor_for(200 A, material: Al, insulation: XHHW-2)', gives: '250 kcmil Al XHHW-2' },
  ],
  evaluate: (args, call) => {
    const tables = tablesOf(call);
    const demand = demandOf(call, args.current, args.continuous);
    const device = smallestDeviceFor(tables, demand.required);
    if (!device) {
      return new Failure(
        `${figure(demand.required)} A is above the largest standard overcurrent device: split the load.`,
        'current',
        'no-standard-size',
      );
    }
    const rating = device.row.rating;
    const [smallest] = sufficientConductors(
      call,
      {
        ...args,
        rating,
        sets: 1,
        demand,
        also: (ampacity) => (largestDeviceAllowed(tables, ampacity, 1) ?? 0) >= rating,
      },
      1,
    );
    if (!smallest) {
      return new Failure(
        `No single ${args.material} ${args.insulation} conductor carries ${figure(demand.required)} A here: use sets in parallel, cooler surroundings or fewer conductors together.`,
        'current',
        'no-sufficient-size',
      );
    }
    const { conductor } = smallest;
    ampacityChain(call, { ...args, conductor, rating });
    call.choose({
      result: conductorValue(conductor),
      because: `smallest size that carries ${demand.because} and may stand behind a ${rating} A device (${conductorText(conductor)} is allowed ${figure(smallest.ampacity)} A)`,
    });
    return conductor;
  },
});
