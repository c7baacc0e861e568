import { knownSizes, type Size } from '../../../src/tables';
import { about, type CrossCheck, mm2PerCmil, tables, within } from './cross-check';

const gauges: readonly Size[] = knownSizes().filter(({ text }) => tables.wireTable(text) !== undefined);
const row = (size: Size) => tables.wireTable(size.text)!.row;

/** ASTM B258: 0.4600 in for 4/0, 0.0050 in for 36 AWG, and 39 equal steps between. */
const diameterMils = (gauge: number): number => 5 * 92 ** ((36 - gauge) / 39);
const gaugeNumber = ({ text }: Size): number => {
  const [, aught, number] = /^(?:(\d)\/0|(\d+)) AWG$/.exec(text)!;
  return aught === undefined ? Number(number) : 1 - Number(aught);
};

export const wireTableChecks: readonly CrossCheck[] = [
  {
    title: 'diameters of the wire gauge',
    formula: 'd = 5 mil · 92^((36 − n) / 39)',
    source: 'ASTM B258: the gauge is a geometric progression',
    leeway: '0.06 %: four figures printed',
    tables: ['wire-table'],
    compare: () =>
      gauges.map((size) => about(size.text, row(size).diameterMils, diameterMils(gaugeNumber(size)), 6e-4)),
  },
  {
    title: 'areas of the wire gauge',
    formula: 'A = d², in circular mils',
    source: 'definition of the circular mil',
    leeway: '0.08 %: four figures printed',
    tables: ['wire-table'],
    compare: () =>
      gauges.map((size) => about(size.text, row(size).areaCmil, diameterMils(gaugeNumber(size)) ** 2, 8e-4)),
  },
  {
    title: 'resistances of the wire table',
    formula: 'R = L / (58 A)',
    source: 'annealed copper, 1/58 Ω·mm²/m at 20 °C (IEC 60028)',
    leeway: '0.06 %: four figures printed',
    tables: ['wire-table'],
    compare: () => gauges.map((size) => about(size.text, row(size).ohmPerKft, 304.8 / 58 / size.mm2, 6e-4)),
  },
  {
    title: 'weights of the wire table',
    formula: 'm = 8.89 g/cm³ · A · L',
    source: 'density of copper (IEC 60028); 453.59237 g to the pound (agreement of 1959)',
    leeway: '0.08 %: four figures printed',
    tables: ['wire-table'],
    compare: () =>
      gauges.map((size) => about(size.text, row(size).poundsPerKft!, (size.mm2 * 304.8 * 8.89) / 453.59237, 8e-4)),
  },
  {
    title: 'circular mils of Table 8',
    formula: 'A = d², d rounded to 0.1 mil',
    source: 'ASTM B258 diameters, as the wire table gives them beside the exact progression',
    leeway: 'half of the last place that Table 8 prints',
    tables: ['conductor-properties'],
    compare: () =>
      gauges.flatMap((size) => {
        const code = tables.conductorProperties(size.text, 'stranded')?.row;
        const rounded = Number(tables.wireTable(size.text)!.shown.find(([label]) => label.includes('B258'))![1]);
        return code ? [within(size.text, code.areaCmil, rounded ** 2, code.areaCmil < 100_000 ? 5 : 50)] : [];
      }),
  },
  {
    title: 'three gauge numbers',
    formula: 'R(n + 3) = 2 R(n)',
    source: 'common practice, no source',
    leeway: '0.6 %: 92^(6/39) is 2.005',
    tables: ['wire-table'],
    compare: () =>
      gauges.flatMap((size) => {
        const thicker = gauges.find((other) => gaugeNumber(other) === gaugeNumber(size) - 3);
        return thicker ? [about(size.text, row(size).ohmPerKft / row(thicker).ohmPerKft, 2, 6e-3)] : [];
      }),
  },
  {
    title: 'areas of the circular-mil sizes',
    formula: '1 cmil = π/4 (0.0254 mm)²',
    source: 'definition of the circular mil and of the inch',
    leeway: 'last bits of a float',
    compare: () =>
      tables.sizes
        .filter(({ unit }) => unit === 'kcmil')
        .map((size) => about(size.text, size.mm2, Number.parseFloat(size.text) * 1000 * mm2PerCmil, 1e-12)),
  },
];
