import { inUnit } from '../../functions/sheet';
import { about, type Comparison, type CrossCheck, tables, within } from './cross-check';

/** The load's voltage for a known supply voltage, by the exact phasors: U_load² + 2 U_load I z_r + (I Z)² = U². */
function exactDrop(supply: number, current: number, r: number, x: number, cosPhi: number): number {
  const sinPhi = Math.sqrt(1 - cosPhi ** 2);
  const inPhase = current * (r * cosPhi + x * sinPhi);
  const across = current * (x * cosPhi - r * sinPhi);
  return supply - (Math.sqrt(supply ** 2 - across ** 2) - inPhase);
}

const impedance = (size: string, conduit: 'PVC' | 'steel') => {
  const row = tables.acImpedance(size)!.row;
  return { r: row.rOhmPerKft.Cu[conduit]!, x: row.xOhmPerKft[conduit === 'steel' ? 'steel' : 'nonmagnetic'] };
};

export const circuitChecks: readonly CrossCheck[] = [
  {
    title: 'voltage drop with a power factor',
    formula: 'U_drop = U − U_load, U² = (U_load + I (R cos φ + X sin φ))² + (I (X cos φ − R sin φ))²',
    source: 'phasor diagram of a short line; line to neutral, times √3',
    leeway: '2 % of the drop: the usual formula leaves out the part across, which is small for drops of a few per cent',
    functions: ['voltage_drop'],
    tables: ['ac-impedance'],
    compare: () =>
      (
        [
          ['2 AWG', 90, 'PVC'],
          ['4/0 AWG', 200, 'steel'],
          ['500 kcmil', 350, 'steel'],
        ] as const
      ).flatMap(([size, current, conduit]) =>
        [0.8, 0.9, 1].map((cosPhi) => {
          const { r, x } = impedance(size, conduit);
          const exact = exactDrop(480 / Math.sqrt(3), current, 0.2 * r, 0.2 * x, cosPhi) * Math.sqrt(3);
          const call = `voltage_drop(${size} Cu, ${current} A, 200 ft, phases: 3, raceway: ${conduit}, power_factor: ${cosPhi})`;
          return about(`${size}, ${current} A, power factor ${cosPhi}`, inUnit(call, 'V'), exact, 0.02);
        }),
      ),
  },
  {
    title: 'voltage drop by resistance',
    formula: 'U_drop = 2 I R L, √3 I R L for three-phase, over n for n sets',
    source: 'Ohm’s law; resistance of Chapter 9 Table 8 at 75 °C',
    leeway: 'last bits of a float',
    functions: ['voltage_drop', 'longest_run'],
    tables: ['conductor-properties'],
    compare: () =>
      ['12 AWG', '2 AWG', '3/0 AWG'].flatMap((size): Comparison[] => {
        const r = tables.conductorProperties(size, 'stranded')!.row.ohmPerKft.Cu;
        return [
          about(
            `${size}, single-phase`,
            inUnit(`voltage_drop(${size} Cu, 16 A, 85 ft)`, 'V'),
            2 * 16 * 0.085 * r,
            1e-12,
          ),
          about(
            `${size}, three-phase, two sets`,
            inUnit(`voltage_drop(${size} Cu, 160 A, 85 ft, phases: 3, sets: 2)`, 'V'),
            (Math.sqrt(3) * 160 * 0.085 * r) / 2,
            1e-12,
          ),
          about(
            `${size}, longest run`,
            inUnit(`longest_run(${size} Cu, 16 A, 3.6 V)`, 'kft'),
            3.6 / (2 * 16 * r),
            1e-12,
          ),
        ];
      }),
  },
  {
    title: 'conductor for a drop',
    formula: 'drop of the choice ≤ the limit < drop of the next smaller size',
    source: 'Ohm’s law; resistance of Chapter 9 Table 8 at 75 °C',
    leeway: 'none',
    functions: ['conductor_for_drop'],
    tables: ['conductor-properties'],
    compare: () =>
      [2, 3.6, 7.2, 12].map((limit) => {
        const drop = (size: string) => 2 * 20 * 0.1 * tables.conductorProperties(size, 'stranded')!.row.ohmPerKft.Cu;
        const chosen = inUnit(`voltage_drop(conductor_for_drop(20 A, 100 ft, ${limit} V), 20 A, 100 ft)`, 'V');
        const best = Math.max(
          ...tables.sizes
            .filter(({ mm2 }) => mm2 > 2)
            .map(({ text }) => drop(text))
            .filter((volts) => volts <= limit),
        );
        return within(`20 A, 100 ft, ${limit} V`, chosen, best, 1e-9);
      }),
  },
  {
    title: 'fault current along a run against complex impedances',
    formula: 'I = U / (√3 |Z_source + Z_run|), Z_source = U / (√3 I_sc) at any angle from resistive to reactive',
    source: 'circuit theory',
    leeway: 'ours adds magnitudes, so it lies at or below; at most a third below, when the angles are 90° apart',
    functions: ['fault_current_at'],
    tables: ['ac-impedance'],
    compare: () =>
      [10, 20, 50, 100].flatMap((feet) =>
        [0, 30, 60, 90].map((degrees) => {
          const { r, x } = impedance('4/0 AWG', 'steel');
          const source = 480 / Math.sqrt(3) / 20_000;
          const angle = (degrees * Math.PI) / 180;
          const total = Math.hypot(
            source * Math.cos(angle) + (r * feet) / 1000,
            source * Math.sin(angle) + (x * feet) / 1000,
          );
          const exact = 480 / Math.sqrt(3) / total;
          const call = `fault_current_at(20 kA, 480 V, 4/0 AWG Cu, ${feet} ft, raceway: steel, temperature: 75 °C)`;
          return {
            what: `${feet} ft, source at ${degrees}°`,
            ours: inUnit(call, 'A'),
            low: 0.66 * exact,
            high: exact * (1 + 1e-9),
          };
        }),
      ),
  },
  {
    title: 'a transformer’s fault current',
    formula: 'I_sc = I_n / z',
    source: 'definition of per-cent impedance: the voltage that drives rated current through a shorted winding',
    leeway: 'last bits of a float',
    functions: ['fault_current', 'transformer_current'],
    compare: () =>
      [
        [75, 208, 3],
        [500, 480, 3],
        [50, 240, 1],
      ].map(([kVA, volts, phases]) =>
        about(
          `${kVA} kVA, ${volts} V`,
          inUnit(`fault_current(${kVA} kVA, ${volts} V, 4 %, phases: ${phases})`, 'A'),
          inUnit(`transformer_current(${kVA} kVA, ${volts} V, phases: ${phases})`, 'A') / 0.04,
          1e-12,
        ),
      ),
  },
  {
    title: 'neutral current as a sum of phasors',
    formula: 'I_N = |I_A + I_B e^(−j120°) + I_C e^(j120°)|',
    source: 'circuit theory',
    leeway: 'last bits of a float',
    functions: ['neutral_current'],
    compare: () =>
      [
        [10, 8, 6],
        [30, 0, 0],
        [25, 25, 10],
        [7, 21, 14],
      ].map(([a, b, c]) =>
        about(
          `${a} A, ${b} A, ${c} A`,
          inUnit(`neutral_current(${a} A, ${b} A, ${c} A)`, 'A'),
          Math.hypot(a - b / 2 - c / 2, (Math.sqrt(3) / 2) * (c - b)),
          1e-12,
        ),
      ),
  },
  {
    title: 'reactive power after correction',
    formula: '(S_to)² = P² + (Q − Q_C)², P / S_to = cos φ wanted',
    source: 'power triangle',
    leeway: 'last bits of a float',
    functions: ['correction_kvar', 'reactive_power', 'apparent_power'],
    compare: () =>
      [
        [0.75, 0.9],
        [0.6, 0.95],
        [0.85, 1],
      ].map(([from, to]) => {
        const q =
          inUnit(`reactive_power(5 kW, ${from})`, 'kvar') -
          inUnit(`correction_kvar(5 kW, from: ${from}, to: ${to})`, 'kvar');
        return within(`${from} to ${to}`, 5 / Math.hypot(5, q), to, 1e-12);
      }),
  },
  {
    title: 'line current and real power are each other’s inverse',
    formula: 'P = √3 U I cos φ',
    source: 'circuit theory',
    leeway: 'last bits of a float',
    functions: ['line_current', 'real_power'],
    compare: () =>
      [0.8, 0.9, 1].map((cosPhi) => {
        const current = inUnit(`line_current(12 kW, 480 V, phases: 3, power_factor: ${cosPhi})`, 'A');
        return about(
          `power factor ${cosPhi}`,
          inUnit(`real_power(sqrt(3) * 480 V * ${current} A in VA, ${cosPhi})`, 'kW'),
          12,
          1e-12,
        );
      }),
  },
];
