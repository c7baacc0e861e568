import { lusolve } from 'mathjs';
import { inUnit, near } from '../functions/sheet';

describe('equations solved, against published figures', () => {
  // Source: fire-alarm panel technical manual, length of a notification circuit's cable (phys-mr-2): 20 appliances of
  // 0.1 A on 22.4 V that work down to 16 V, cable of 0.002 Ω/ft each way: 2 A, 6.4 V, 3.2 Ω, 800 ft.
  it('the longest run of a two-wire circuit: 800 ft', () => {
    const text =
      'total = 20 * 0.1 A\nsolve loop, length\n  22.4 V - total * loop == 16 V\n  loop == 2 * length * 0.002 Ω/ft\n';
    near(inUnit(`${text}loop`, 'Ω'), 3.2, 1e-9);
    near(inUnit(`${text}length`, 'ft'), 800, 1e-9);
  });

  // The same question put to the library's own inverse, which has its own tests against published tables.
  it('the longest run within a drop agrees with `longest_run`, found through `voltage_drop` itself', () => {
    for (const [conductor, amps, more] of [
      ['10 AWG Cu', 20, ''],
      ['12 AWG Cu solid', 16, ', temperature: 60 °C'],
      ['1/0 AWG Al', 130, ', phases: 3'],
    ] as const) {
      const found = inUnit(
        `solve run in 1 ft .. 2000 ft\n  voltage_drop(${conductor}, ${amps} A, run${more}) == 3 % * 208 V\nrun`,
        'ft',
      );
      near(found, inUnit(`longest_run(${conductor}, ${amps} A, 3 % * 208 V${more})`, 'ft'), 1e-12, conductor);
    }
  });

  // Source: open-neutral training slides (phys-on-1): 100 W and 200 W lamps for 120 V on 240 V, the neutral open: 144 Ω,
  // 72 Ω, 1.111 A, 160 V, 80 V. Given to a tenth of a percent.
  it('an open neutral leaves two loads in series: 160 V and 80 V', () => {
    const text = [
      'solve first, second, amps, upper, lower',
      '  100 W == (120 V)^2 / first',
      '  200 W == (120 V)^2 / second',
      '  upper == amps * first',
      '  lower == amps * second',
      '  upper + lower == 240 V',
      '',
    ].join('\n');
    for (const [name, unit, published] of [
      ['first', 'Ω', 144],
      ['second', 'Ω', 72],
      ['amps', 'A', 1.111],
      ['upper', 'V', 160],
      ['lower', 'V', 80],
    ] as const) {
      near(inUnit(text + name, unit), published, 1e-3, name);
    }
  });

  // Common practice, no source: two unlike loads and the voltage across one of them give the other's resistance.
  it('the divider of an open neutral, turned round for a resistance', () => {
    near(inUnit('solve other\n  48 V == 240 V * 12 Ω / (12 Ω + other)\nother', 'Ω'), 48, 1e-12);
  });

  // Source: Lessons in Electric Circuits (open textbook), vol. I, chapter on network analysis, branch current method:
  // 28 V and 7 V through 4 Ω, 2 Ω and 1 Ω: 5 A, 4 A and, against the direction assumed for it, -1 A.
  const branches = [
    'solve left, middle, right',
    '  left - middle + right == 0 A',
    '  28 V - left * 4 Ω - middle * 2 Ω == 0 V',
    '  middle * 2 Ω + right * 1 Ω == 7 V',
    '',
  ].join('\n');

  it('three branch currents from three equations: 5 A, 4 A and -1 A', () => {
    near(inUnit(`${branches}left`, 'A'), 5, 1e-12);
    near(inUnit(`${branches}middle`, 'A'), 4, 1e-12);
    near(inUnit(`${branches}right`, 'A'), -1, 1e-12);
  });
});

describe('equations solved, against an independent engine', () => {
  // mathjs lusolve, on matrices of numbers drawn once by hand.
  const systems: readonly (readonly (readonly number[])[])[] = [
    [
      [2, 3, -1],
      [1, -1, 2],
      [3, 1, 1],
    ],
    [
      [4, -2, 0.5],
      [-2, 7, -1],
      [0.5, -1, 3],
    ],
    [
      [1e-3, 2, 3],
      [4, 5e4, 6],
      [7, 8, 9e-2],
    ],
    [
      [12, -3, 0, -2],
      [-3, 9, -4, 0],
      [0, -4, 15, -6],
      [-2, 0, -6, 11],
    ],
  ];

  for (const [index, matrix] of systems.entries()) {
    it(`linear equations ${index + 1}`, () => {
      const right = matrix.map((_, i) => 10 - 7 * i);
      const names = ['a', 'b', 'c', 'd'].slice(0, matrix.length);
      const equations = matrix.map(
        (row, i) =>
          `  ${row.map((r, j) => `(${r}) Ω * ${names[j]}`.replace(/\((.*)\) Ω/, '($1 Ω)')).join(' + ')} == ${right[i] < 0 ? `(0 V - ${-right[i]} V)` : `${right[i]} V`}`,
      );
      const expected = lusolve(
        matrix.map((row) => [...row]),
        right,
      ) as number[][];
      for (const [i, name] of names.entries()) {
        const text = [`solve ${names.join(', ')}`, ...equations, name].join('\n');
        near(inUnit(text, 'A'), expected[i][0], 1e-10, text);
      }
    });
  }
});
