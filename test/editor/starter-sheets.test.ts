import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { starterSheet } from '../../src/vscode/starter-sheets';

const seeds = join(__dirname, '..', '..', 'seeds');
const sheets = readdirSync(seeds).map((name) => ({ name, text: readFileSync(join(seeds, name), 'utf8') }));

describe('the starter sheets', () => {
  it('are there for each job of the set', () => {
    assert.deepEqual(sheets.map(({ text }) => starterSheet(text).label).sort(), [
      'Branch-circuit schedule',
      'Commercial load memo',
      'Dwelling load',
      'Feeder and voltage drop',
      'Metric circuit',
      'Motor circuit',
      'Open-neutral diagnosis',
      'Reel check',
      'Service call, unmarked heater',
    ]);
  });

  for (const { name, text } of sheets) {
    it(`${name} says in one line what it is for`, () => {
      const { detail } = starterSheet(text);
      assert.match(detail, /^[A-Z].{20,83}[.?]$/); // More is cut off in the list.
    });

    it(`${name} leaves project, person and date to be filled in, and warns`, () => {
      for (const key of ['project', 'prepared_by', 'date']) {
        assert.match(text, new RegExp(`^${key}:$`, 'm'));
      }
      assert.match(text, /^> /m);
    });
  }
});

describe('what stands for a starter sheet in a list', () => {
  it('is its title and the first sentence below its heading', () => {
    const { label, detail } = starterSheet(
      '---\ntitle: Short\n---\n\n# Long\n\nOne thing, at\n20.5 ft. Another.\n\nThird.\n',
    );
    assert.deepEqual([label, detail], ['Short', 'One thing, at 20.5 ft.']);
  });

  it('is its heading where there is no title, and nothing more where no words follow', () => {
    const { label, detail } = starterSheet('# Heading\n\n```kft\na = 1\n```\n');
    assert.deepEqual([label, detail], ['Heading', '']);
  });
});
