import assert from 'node:assert/strict';
import { inputEdit, SheetSession, setInputs, sheetInputs } from '../../src/core';
import { applyEdits } from '../../src/text';

const text =
  'input run = 85 ft from 5 ft to 400 ft "one-way length"\ninput amps = 16 A\ninput wire = 12 AWG Cu\n' +
  'input tag = "north"\ndouble = run * 2\ncheck double <= 300 ft "short"';

function opened(cell = text): SheetSession {
  const session = new SheetSession();
  session.update([
    { id: 'p', kind: 'prose', text: '# T' },
    { id: 'c', kind: 'calculation', text: cell },
  ]);
  return session;
}

describe('the inputs of a sheet', () => {
  it('come with their value, meaning and bounds', () => {
    assert.deepEqual(sheetInputs(opened()), [
      {
        name: 'run',
        cell: 'c',
        written: '85 ft',
        unit: 'ft',
        label: 'one-way length',
        bounds: { low: '5 ft', high: '400 ft' },
      },
      { name: 'amps', cell: 'c', written: '16 A', unit: 'A' },
      { name: 'wire', cell: 'c', written: '12 AWG Cu' },
      { name: 'tag', cell: 'c', written: '"north"' },
    ]);
  });

  it('are changed by one edit, and results are those of the sheet until then', () => {
    const session = opened();
    const changed = (name: string, value: string) => {
      const made = inputEdit(session, name, value);
      return 'problem' in made
        ? made.problem
        : applyEdits(text, [made.edit])
            .split('\n')
            .find((line) => line.includes(name));
    };
    assert.equal(changed('run', '90'), 'input run = 90 ft from 5 ft to 400 ft "one-way length"');
    assert.equal(changed('run', '30 m'), 'input run = 30 m from 5 ft to 400 ft "one-way length"');
    assert.equal(changed('wire', '10 AWG Al'), 'input wire = 10 AWG Al');
    assert.equal(changed('tag', 'south wall'), 'input tag = "south wall"');
    assert.match(changed('run', '500') ?? '', /500 ft is outside 5 ft to 400 ft/);
    assert.match(changed('run', '3 A') ?? '', /`run` is .*length/);
    assert.match(changed('amps', '16 A 3') ?? '', /cannot be read|no value/);
    assert.match(changed('gone', '1') ?? '', /no input of the sheet/);
    assert.equal(session.results('c').at(-1)?.verdict, 'yes');
  });

  it('take a bare number in their own unit, whatever stands there', () => {
    const readings = [
      'pocket = meter(reading: 1 %)',
      'input shell = 13.2 Ω by pocket',
      'input band = 13.2 Ω ± 0.1 Ω',
      'input rise = -5 V',
      'input far = 85 ft in m',
      'input pair = 2 * 30 ft',
      'input count = 3',
    ].join('\n');
    for (const [name, expected] of Object.entries({
      shell: '9 Ω',
      band: '9 Ω',
      rise: '9 V',
      far: '9 m',
      pair: '9 ft',
      count: '9',
    })) {
      const session = opened(readings);
      const made = inputEdit(session, name, '9');
      assert.equal('edit' in made ? made.edit.newText : made.problem, expected);
      const unit = sheetInputs(session).find((input) => input.name === name)?.unit ?? '';
      assert.equal(`9 ${unit}`.trim(), expected);
      const sheet = new TextEncoder().encode(`\`\`\`kft\n${readings}\n\`\`\`\n`);
      const { bytes } = setInputs(sheet, new Map([[name, '9']]));
      assert.match(new TextDecoder().decode(bytes), new RegExp(`input ${name} = ${expected}$`, 'm'));
    }
  });

  it('with an error in their line can still be mended', () => {
    const made = inputEdit(opened('input run = gone'), 'run', '85 ft');
    assert.ok('edit' in made && made.edit.newText === '85 ft');
  });
});
