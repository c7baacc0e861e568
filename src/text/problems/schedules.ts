import { defineProblems } from './contract';

const twoRows = (head: string, ...rows: string[]) =>
  ['panel = schedule', `  ${head}`, `  ${head.replace(/[^|]/g, '-')}`, ...rows.map((row) => `  ${row}`)].join('\n');

export const scheduleProblems = defineProblems('Schedules', {
  'bad-column-name': {
    means: 'The heading of a column is not one name.',
    why: 'Formulas name columns by their headings.',
    remedy: 'Write letters, digits and `_` without spaces.',
    example: twoRows('| load   | run length |', '| 9.2 kW | 85 ft      |'),
  },
  'duplicate-column': {
    means: 'Two columns have the same heading.',
    why: 'A formula could mean either.',
    remedy: 'Rename one of them.',
    example: twoRows('| load   | load |', '| 9.2 kW | 3 kW |'),
  },
  'unknown-column': {
    means: 'The schedule has no column of this name.',
    why: 'A column that is not there has no values.',
    remedy: 'Correct the spelling.',
    example: `${twoRows('| tag | load   |', '| P1  | 9.2 kW |')}\ntotal = sum(panel.laod)`,
  },
  'column-further-down': {
    means: 'A computed column uses one that is worked out below it.',
    why: 'The columns of a row are worked out from above to below.',
    remedy: 'Move the line of the other column above this one.',
    example: `${twoRows('| load   | voltage |', '| 9.2 kW | 240 V   |')}\n  drop = amps * 0.1 Ω\n  amps = load / voltage`,
  },
  'empty-column': {
    means: 'No row has a value that can be used in a column that is worked with.',
    why: 'Of what kind the column is cannot be known.',
    remedy: 'Fill the column in, or correct what the other messages name.',
    example: `${twoRows('| tag | load |', '| P1  |      |')}\n  twice = load * 2`,
  },
  'total-in-row': {
    means: 'A total of a column is asked within its own rows.',
    why: 'Within a row, the name of a column is that row’s value alone.',
    remedy: 'Work the total out below the schedule, on a line of its own.',
    example: `${twoRows('| tag | load   |', '| P1  | 9.2 kW |')}\n  share = load / sum(load)`,
  },
  'not-a-cell': {
    means: 'A column comes to something that no cell holds, such as a record.',
    why: 'A row has one value in each column.',
    remedy: 'Take a field of it.',
    example: `${twoRows('| load |', '| 17 A |')}\n  made = heater(resistance: 11.9 Ω, voltage: 208 V)`,
  },
  'unlike-cell': {
    means: 'A cell is of another kind than the rest of its column.',
    why: 'A column is worked on as one; a stray ampere among watts would spoil the total.',
    remedy: 'Correct the cell, or give it a column of its own.',
    example: twoRows('| load   |', '| 9.2 kW |', '| 3 kW   |', '| 12 A   |'),
  },
  'row-width': {
    means: 'A row has more or fewer cells than the heading.',
    why: 'Which value belongs to which column would be a guess.',
    remedy: 'Give the row one cell for each column.',
    example: twoRows('| tag | load   |', '| P1  | 9.2 kW | 3 |'),
  },
  'no-rows': {
    means: 'A file has no rows.',
    why: 'A total over no rows is no total.',
    remedy: 'Fill the file in: its first line names the columns.',
    example: { sheet: '```kft\npanel = schedule "loads.csv"\n```\n', beside: { 'loads.csv': 'tag,load\n' } },
  },
  'more-rows': {
    means: 'More rows have a problem than are told one by one.',
    why: 'Thousands of messages would hide the first ones.',
    remedy: 'Mend those that are told; the others show then.',
    example: {
      situation: '`load / voltage` in a schedule with 0 V in each of 200 rows',
      says: '160 more rows of `panel`, from row 41 on, come to nothing in some column.',
    },
  },
  'broken-rows': {
    means: 'A file of rows cannot be read as CSV.',
    why: 'From the broken place on, it is not known where a cell ends.',
    remedy: 'Mend the line that the message names; most often a quotation mark is missing.',
    example: {
      sheet: '```kft\npanel = schedule "loads.csv"\n```\n',
      beside: { 'loads.csv': 'tag,load\nP1,"9.2 kW\n' },
    },
  },
});
