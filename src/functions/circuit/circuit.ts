import { Absent, defineFunction, Failure } from '../../language';
import { conductorType } from '../conductor';
import { leaveFact } from '../leave-fact';
import { figure } from '../number-text';
import { largestDeviceOn, smallestDeviceFor } from '../rules/next-standard-size';
import { governingRequirement } from '../rules/required-current';
import { smallConductorLimit } from '../rules/small-conductor';
import { unwatched } from '../rules/unwatched';
import { notPhases, notWhole } from '../rules/whole-number';
import { tablesOf } from '../settings';
import { amperes } from '../step-values';
import { circuitBounds } from './bounds';
import { circuitConductor } from './choose-conductor';
import { currentOf } from './current';
import { circuitDrop, operatingTemperatureC } from './drop';
import { circuitGroundingConductor } from './egc';
import { kindOfCircuit } from './kinds/kinds';
import { atLeastNameplate, onlyForWelders, terminalsOf } from './nameplate';
import { circuitParameters } from './parameters';
import { circuitRaceway } from './raceway';

/** Drop, in percent, that the code's notes advise for a branch circuit; not a rule. */
const advisedDropPercent = 3;

export const circuit = defineFunction({
  name: 'circuit',
  summary: 'A branch circuit or feeder: conductor, overcurrent device, grounding conductor and voltage drop.',
  parameters: circuitParameters,
  result: {
    record: {
      design_current: {
        unit: 'A',
        meaning: 'what conductor and device are chosen for: the load with 125 % where a rule adds it',
      },
      load_current: { unit: 'A', meaning: 'the load’s own current' },
      ampacity: { unit: 'A', meaning: 'allowed current of all sets together' },
      conductor: { object: conductorType, meaning: 'as given, or the smallest that does' },
      ocpd: { unit: 'A', meaning: 'rating as given, or the standard rating chosen' },
      egc: { object: conductorType, meaning: 'as given, or the smallest that does' },
      drop: { unit: 'V', meaning: 'voltage drop at the load' },
      drop_percent: { unit: '%', meaning: 'drop over supply voltage' },
      raceway: { text: true, meaning: 'trade size that holds one set and its grounding conductor' },
    },
  },
  assumptions: [
    'terminals not given: 60 °C up to 100 A, 75 °C above',
    'drop at 75 °C and the load’s own current: by AC impedance where the raceway is given, by direct-current resistance otherwise',
    'grounding conductor of wire, raised with circuit conductors that are larger than they need be',
  ],
  sources: [
    'NEC 210.19 and 210.20, 215.2 and 215.3',
    'NEC 240.4 and 240.6(A)',
    'NEC 310.15 and Table 310.16',
    'NEC 110.14(C)',
    'NEC Table 250.122',
    'NEC 422.13, 424.4(B), 440.4, Article 625',
    'NEC 240.5 and Table 400.5(A)(1) for cords, 240.21(B) for taps, 450.3(B), 695.4 to 695.7',
    'NEC 630.12 and 630.32: 200 % and 300 % of a welder’s primary current and of its conductors’ ampacity',
  ],
  examples: [
    {
      text: 'kiln = circuit(load: 15.7 A, continuous: yes, voltage: 208 V, length: 62 ft, conductor: 10 AWG Cu THHN, ocpd: 25 A)\nkiln.drop_percent',
      gives: '1.161 %',
    },
    {
      text: 'tank = circuit(load: 4.5 kW, voltage: 240 V, kind: water_heater)\ntank.conductor',
      gives: '10 AWG Cu THHN',
    },
    {
      text: 'tank = circuit(load: 4.5 kW, voltage: 240 V, kind: water_heater)\ntank.design_current',
      gives: '23.44 A',
    },
    {
      text: 'unit = circuit(kind: hvac, mca: 44 A, mocp: 60 A, terminals: 75 °C)\nunit.conductor',
      gives: '8 AWG Cu THHN',
    },
  ],
  evaluate: (args, call) => {
    const tables = tablesOf(call);
    const { phases, sets, voltage, mca, mocp, drop_limit: dropLimit } = args;
    const wrong = notPhases(phases) ?? notWhole(sets, 'sets', 'sets');
    if (wrong) {
      return wrong;
    }
    const rules = kindOfCircuit(args.kind);
    const misplaced = onlyForWelders(args);
    if (misplaced) {
      return misplaced;
    }
    const stated = currentOf(call, args, rules);
    if (stated instanceof Failure) {
      return stated;
    }
    const continuous = args.continuous ?? rules.continuousBy !== undefined;
    if (rules.askedIfContinuous && args.continuous === undefined) {
      call.assume(
        rules.continuousBy
          ? `load taken as continuous: ${args.kind} is, by ${rules.continuousBy}`
          : 'load taken as not continuous: under three hours',
      );
    }

    const { ampacityOf } = rules;
    const power = args.load && args.load.unit !== 'A' ? { value: args.load.value, unit: args.load.unit } : undefined;
    const load = { ...args, load: stated, power, continuous };
    const demand = atLeastNameplate(rules.demand(call, load), mca);
    if (demand instanceof Failure) {
      return demand;
    }
    const device = args.ocpd === undefined ? rules.device(call, load, demand) : { rating: args.ocpd, because: 'given' };
    if (device instanceof Failure) {
      return device;
    }
    if (args.ocpd === undefined) {
      call.choose({
        symbol: { base: 'I', subscript: 'n' },
        result: amperes(device.rating),
        because: device.because,
        rule: '240.6(A)',
      });
    }

    const loadCurrent = stated ?? demand.load;
    const run = {
      current: loadCurrent,
      length: args.length,
      voltage,
      phases,
      sets,
      raceway: args.raceway,
      powerFactor: args.power_factor,
    };
    const silent = unwatched(call);
    const chosen = circuitConductor(call, {
      given: args.conductor,
      material: args.material,
      insulation: args.insulation,
      ambient: args.ambient,
      bundled: args.bundled,
      sets,
      terminals: terminalsOf(call, args.terminals, rules),
      rating: device.rating,
      terminalRating: rules.terminalsByDemand ? demand.required : device.rating,
      demand,
      ampacityOf: ampacityOf && ((by, question) => ampacityOf(by, question, load)),
      allowed: (ampacity) => rules.allows(silent, load, device.rating, ampacity, sets),
      withinDrop:
        dropLimit === undefined
          ? undefined
          : ({ conductor }) => (circuitDrop(silent, run, conductor)?.percent ?? 0) <= dropLimit,
    });
    if (chosen instanceof Failure) {
      return chosen;
    }
    const { ampacity } = chosen;
    const conductor = args.conductor ?? ampacity.conductor;
    const total = ampacity.ampacity * sets;
    const small = rules.smallConductorLimits ? smallConductorLimit(tables, conductor) : undefined;
    if (small) {
      call.table({
        value: small.row.maxOcpd,
        unit: 'A',
        source: small.source,
        row: small.shown,
        remark: 'limit of the small-conductor rule',
      });
    }
    const { material } = args.egc ?? conductor;
    const smallestEgc = circuitGroundingConductor(call, {
      ocpd: device.rating,
      material,
      conductor,
      smallest: chosen.smallestByAmpacity,
    });
    const egc = args.egc ?? smallestEgc;
    if (args.length !== undefined) {
      call.assume(`temperature ${operatingTemperatureC} °C taken for the drop: operating temperature of the table`);
    }
    const drop = circuitDrop(call, run, conductor);
    const raceway = circuitRaceway(call, {
      kind: args.kind,
      given: args.raceway,
      conductor: ampacity.conductor,
      egc,
      phases,
      sets,
      bundled: call.given('bundled') ? args.bundled : undefined,
    });

    if (call.watched) {
      const requirement = governingRequirement(ampacity, sets, demand);
      leaveFact(call, {
        about: 'circuit',
        kind: args.kind,
        continuous,
        continuousGiven: args.continuous !== undefined,
        loadCurrent,
        requiredAmpacity: requirement.required,
        requiredBecause: requirement.because,
        conductor,
        conductorGiven: args.conductor !== undefined,
        sets,
        ampacity,
        totalAmpacity: total,
        smallConductorLimit: small?.row.maxOcpd,
        ocpd: device.rating,
        ocpdGiven: args.ocpd !== undefined,
        smallestOcpd:
          rules.smallestDevice?.(silent, load) ??
          smallestDeviceFor(tables, demand.required)?.row.rating ??
          device.rating,
        largestOcpd: largestDeviceOn(tables, total)?.row.rating ?? 0,
        deviceBounds: rules.deviceBounds?.(silent, load, ampacity, sets),
        egc,
        egcGiven: args.egc !== undefined,
        smallestEgc,
        ...circuitBounds(silent, { conductor, material, ampacity, sets, ocpd: device.rating, load, loadCurrent }),
        mca,
        mocp,
        sufficient: chosen.sufficient,
        drop:
          drop?.percent === undefined
            ? undefined
            : {
                volts: drop.volts,
                percent: drop.percent,
                limitPercent: dropLimit ?? advisedDropPercent,
                limitGiven: dropLimit !== undefined,
              },
        edition: tables.edition,
      });
    }
    return {
      design_current: demand.required,
      load_current: loadCurrent,
      ampacity: total,
      conductor,
      ocpd: device.rating,
      egc: egc ?? new Absent(`the grounding table has no size for ${figure(device.rating)} A`),
      drop:
        drop?.volts ??
        new Absent(
          args.length === undefined ? 'the length is not given' : 'the tables have no resistance for the conductor',
        ),
      drop_percent:
        drop?.percent ??
        new Absent(args.length === undefined ? 'the length is not given' : 'the supply voltage is not given'),
      raceway,
    };
  },
});
