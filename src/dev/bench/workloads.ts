/** Invented work for the benchmark: the same sums as a sheet, as lines for mathjs, as closures and as typed arrays. */

/** Formulas in fours: a voltage, a current, a power, an energy; each four hangs on the four before it. */
export function formulas(count: number): { readonly sheet: string; readonly mathjs: string[] } {
  const sheet: string[] = [];
  const mathjs: string[] = [];
  for (let k = 0; k * 4 < count; k++) {
    const before = k === 0 ? '0 A' : `i${k - 1} / 50`;
    const lines = (to: string) => [
      `v${k} = 208.${k % 10} V + ${before} * (0.3 ohm + 0.01 ohm)`,
      `i${k} = v${k} / (11.${k % 9} ohm + 0.03 ohm)`,
      `p${k} = v${k} * i${k} ${to} kW`,
      `e${k} = p${k} * ${1 + (k % 7)} h + v${k} * i${k} * 0.5 h`,
    ];
    sheet.push(...lines('in'));
    mathjs.push(...lines('to'));
  }
  return { sheet: `${sheet.slice(0, count).join('\n')}\n`, mathjs: mathjs.slice(0, count) };
}

/** The same sums by hand, on floats in SI units, as one closure a formula. */
export function closures(count: number): { readonly run: () => void; readonly values: Float64Array } {
  const values = new Float64Array(count);
  const steps: (() => void)[] = [];
  for (let k = 0; k * 4 < count; k++) {
    const at = k * 4;
    const [volts, ohms, hours] = [Number(`208.${k % 10}`), Number(`11.${k % 9}`), (1 + (k % 7)) * 3600];
    steps.push(
      k === 0
        ? () => {
            values[at] = volts + 0 * (0.3 + 0.01);
          }
        : () => {
            values[at] = volts + (values[at - 3] / 50) * (0.3 + 0.01);
          },
      () => {
        values[at + 1] = values[at] / (ohms + 0.03);
      },
      () => {
        values[at + 2] = values[at] * values[at + 1];
      },
      () => {
        values[at + 3] = values[at + 2] * hours + values[at] * values[at + 1] * 1800;
      },
    );
  }
  const kept = steps.slice(0, count);
  return {
    values,
    run: () => {
      for (const step of kept) {
        step();
      }
    },
  };
}

/** Formulas over readings, each reading its own source; `shared` draws every formula from the same few readings. */
export function uncertain(count: number, readings: number, shared: boolean) {
  const sheet = Array.from({ length: readings }, (_, k) => `r${k} = ${10 + (k % 9)}.${k % 10} ohm +- 0.05 ohm`);
  const python = Array.from({ length: readings }, (_, k) => `r${k} = ufloat(${10 + (k % 9)}.${k % 10}, 0.05 / 3**0.5)`);
  for (let k = 0; k < count; k++) {
    const [a, b] = [k % readings, (k * 7 + 3) % readings];
    const earlier = shared && k > 0 ? `q${k - 1}` : `r${(k + 1) % readings}`;
    const line = `(r${a} * r${b} / (r${a} + r${b}) + ${earlier}) / 2`;
    sheet.push(`q${k} = ${line}`);
    python.push(`q${k} = ${line}`);
  }
  return { sheet: `${sheet.join('\n')}\n`, python, names: Array.from({ length: count }, (_, k) => `q${k}`) };
}

/** A sheet in `cells` cells of three statements with a check; only the first few hang on one another. */
export function cells(count: number): { readonly id: string; readonly text: string }[] {
  return Array.from({ length: count }, (_, k) => ({
    id: String(k),
    text: [
      `supply_${k} = ${k === 0 || k > 5 ? `${200 + (k % 40)} V` : `supply_${k - 1} + 1 V`}`,
      `drawn_${k} = supply_${k} / 11.9 ohm`,
      `check drawn_${k} <= 25 A "circuit ${k}"`,
      '',
    ].join('\n'),
  }));
}

/** Sixty formulas over two inputs, in threes that hang on one another: as a sheet, for mathjs, and as a loop by hand. */
export function overCases(cases: number) {
  const groups = 20;
  const volts = Float64Array.from({ length: cases }, (_, i) => 200 + (i % 50));
  const ohms = Float64Array.from({ length: cases }, (_, i) => 10 + (i % 37) / 10);
  const lines = Array.from({ length: groups }, (_, k) => [
    `i${k} = ${k === 0 ? 'volts' : `x${k - 1}`} / (ohms + 0.${k + 10} ohm)`,
    `p${k} = i${k} * i${k} * ohms`,
    `x${k} = volts - i${k} * 0.2 ohm + p${k} / (i${k} * 100)`,
  ]).flat();
  const columns = Array.from({ length: groups * 3 }, () => new Float64Array(cases));
  const byHand = () => {
    for (let k = 0; k < groups; k++) {
      const before = k === 0 ? volts : columns[3 * k - 1];
      const [i, p, x] = [columns[3 * k], columns[3 * k + 1], columns[3 * k + 2]];
      const more = Number(`0.${k + 10}`);
      for (let at = 0; at < cases; at++) {
        i[at] = before[at] / (ohms[at] + more);
        p[at] = i[at] * i[at] * ohms[at];
        x[at] = volts[at] - i[at] * 0.2 + p[at] / (i[at] * 100);
      }
    }
  };
  const inputs = 'input volts = 208 V from 1 V to 999 V\ninput ohms = 12 ohm from 1 ohm to 99 ohm\n';
  return { sheet: `${inputs}${lines.join('\n')}\n`, mathjs: lines, volts, ohms, columns, byHand };
}
