import { Absent, defineFunction, Failure } from '../../language';
import * as shared from '../parameters';
import { deviceWords, motorConductorAmpacity, motorDevice, motorOverload, rotorWords } from '../rules/motor-circuit';
import { motorCurrent } from '../rules/motor-current';
import { notPhases } from '../rules/whole-number';
import { amperes } from '../step-values';

export const motor_circuit = defineFunction({
  name: 'motor_circuit',
  summary: 'What a single motor asks of its conductors, short-circuit device and overload.',
  parameters: {
    power: { unit: 'W', named: true, symbol: 'P', above: 0, meaning: 'rated output, usually in hp' },
    voltage: {
      unit: 'V',
      named: true,
      symbol: 'U',
      above: 0,
      meaning: 'rated voltage of the motor, or nominal voltage of the system',
    },
    phases: { ...shared.phases, default: 3 },
    device: { choice: deviceWords, named: true, default: 'breaker', meaning: 'type of the short-circuit device' },
    rotor: {
      choice: rotorWords,
      named: true,
      default: 'squirrel_cage',
      meaning: 'what the motor turns: a wound rotor takes a smaller device',
    },
    nameplate_current: {
      unit: 'A',
      named: true,
      optional: true,
      above: 0,
      meaning: 'full-load current of the nameplate',
    },
    service_factor: { unit: '', named: true, default: 1, atLeast: 1, meaning: 'service factor of the nameplate' },
  },
  result: {
    record: {
      table_current: { unit: 'A', meaning: 'full-load current of the code’s table' },
      conductor_ampacity: { unit: 'A', meaning: 'least ampacity of the conductors' },
      ocpd: { unit: 'A', meaning: 'largest standard rating of the device as a first choice' },
      overload: { unit: 'A', meaning: 'highest first setting of the overload' },
    },
  },
  assumptions: [
    'continuous duty',
    'not of design B energy-efficient type with an instantaneous-trip breaker',
    'one motor alone, no drive ahead of it',
  ],
  sources: [
    'NEC 430.6',
    'NEC 430.22',
    'NEC 430.32(A)(1) (memory)',
    'NEC Table 430.52',
    'NEC Tables 430.248 and 430.250',
  ],
  examples: [
    { text: 'pump = motor_circuit(power: 7.5 hp, voltage: 230 V)\npump.conductor_ampacity', gives: '27.5 A' },
    { text: 'pump = motor_circuit(power: 7.5 hp, voltage: 230 V)\npump.ocpd', gives: '60 A' },
    {
      text: 'saw = motor_circuit(power: 3 hp, voltage: 115 V, phases: 1, device: time_delay_fuse, nameplate_current: 31 A)\nsaw.overload',
      gives: '35.65 A',
    },
  ],
  evaluate: (args, call) => {
    const { phases, device, rotor, nameplate_current, service_factor } = args;
    const tableCurrent = notPhases(phases) ?? motorCurrent(call, args);
    if (tableCurrent instanceof Failure) {
      return tableCurrent;
    }
    const ampacity = motorConductorAmpacity(call, tableCurrent);
    const ocpd = motorDevice(call, { tableCurrent, phases, device, rotor });
    if (typeof ocpd === 'number') {
      call.choose({
        symbol: { base: 'I', subscript: 'n' },
        result: amperes(ocpd),
        because: 'standard rating at or next above that percentage',
        rule: '430.52(C)(1)',
      });
    }
    const overload =
      nameplate_current === undefined
        ? new Absent('the nameplate current is not given, and overloads go by it')
        : motorOverload(call, nameplate_current, service_factor);
    return ampacity instanceof Failure
      ? ampacity
      : ocpd instanceof Failure
        ? ocpd
        : overload instanceof Failure
          ? overload
          : { table_current: tableCurrent, conductor_ampacity: ampacity, ocpd, overload };
  },
});
