import { eachRow, rising } from '../checks';
import type { AmpacityRow, Material, TemperatureColumn } from '../contract';
import type { Column, Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

const metals: readonly Material[] = ['Cu', 'Al'];
const temperatures: readonly TemperatureColumn[] = [60, 75, 90];
const columns = metals.flatMap((metal) => temperatures.map((temperature) => ({ metal, temperature })));

const amperes = ({ metal, temperature }: (typeof columns)[number]): [string, Column] => [
  `amperes.${metal}.${temperature}`,
  { label: `A, ${metal}, ${temperature} °C`, type: 'number', blank: true, atLeast: 1, atMost: 2000 },
];

/** The 30 °C ampacity table, not more than three current-carrying conductors. Values before 2011 differ and are not here. */
export const ampacity: Subject<AmpacityRow> = {
  id: 'ampacity',
  needed: true,
  columns: { size: { label: 'size', type: 'size' }, ...Object.fromEntries(columns.map(amperes)) },
  key: ['size'],
  checks: [
    ...columns.map(({ metal, temperature }) =>
      rising<AmpacityRow>(`amperes.${metal}.${temperature}`, (row) => row.amperes[metal][temperature]),
    ),
    ...metals.map((metal) =>
      eachRow<AmpacityRow>('a hotter column carries more', `amperes.${metal}.75`, ({ amperes: of }) => {
        const known = temperatures.map((temperature) => of[metal][temperature]).filter((a) => a !== null);
        return known.every((a, i) => i === 0 || a > known[i - 1]) ? undefined : known.join(', ');
      }),
    ),
    ...temperatures.map((temperature) =>
      eachRow<AmpacityRow>('aluminum carries less than copper', `amperes.Al.${temperature}`, ({ amperes: of }) => {
        const [copper, aluminum] = [of.Cu[temperature], of.Al[temperature]];
        return copper === null || aluminum === null || aluminum < copper ? undefined : `${aluminum} against ${copper}`;
      }),
    ),
  ],
  files: [nec2023 as TableFile],
};
