import assert from 'node:assert/strict';
import { type Conductor, conductorText, designationReader, insulationWords } from '../../src/functions';
import { createTables } from '../../src/tables';

const tables = createTables({ edition: 'NEC 2023' });
assert.ok(!('problem' in tables));
const reader = designationReader(tables);

/** `12 AWG | Cu THHN`: the size, then the words. */
function read(text: string) {
  const [size, words = ''] = text.split('|').map((part) => part.trim());
  return reader.read(size, words.split(/\s+/).filter(Boolean));
}

describe('conductors as a sheet names them', () => {
  const good: readonly (readonly [string, string])[] = [
    ['12 AWG | Cu', '12 AWG Cu'],
    ['12 AWG | copper', '12 AWG Cu'],
    ['#12 | Cu solid', '12 AWG Cu solid'],
    ['12 AWG | THHN stranded Cu', '12 AWG Cu stranded THHN'],
    ['1/0 AWG | Al XHHW-2', '1/0 AWG Al XHHW-2'],
    ['250 MCM | aluminum', '250 kcmil Al'],
    ['8 AWG | tinned Cu', '8 AWG Cu coated'],
    ['4 AWG | bare Cu', '4 AWG Cu bare'],
    ['24 AWG | Cu', '24 AWG Cu'],
    ['6 AWG | Cu solid bare', '6 AWG Cu solid bare'],
    ['2.5 mm2 | Cu', '2.5 mm² Cu'],
    ['16 mm² | Al solid', '16 mm² Al solid'],
  ];
  for (const [text, canonical] of good) {
    it(`${text} reads as ${canonical}, and that reads back as the same`, () => {
      const first = read(text);
      assert.ok('value' in first, 'problem' in first ? first.problem : '');
      assert.equal(conductorText(first.value as Conductor), canonical);
      const [number, unit, ...words] = canonical.split(' ');
      const again = reader.read(`${number} ${unit}`, words);
      assert.ok('value' in again);
      assert.deepEqual(again.value, first.value);
    });
  }

  const bad: readonly (readonly [text: string, code: string, word: number | undefined, replacements: string[]])[] = [
    ['12 AWG |', 'conductor-metal-missing', undefined, ['12 AWG Cu', '12 AWG Al']],
    ['12 AWG | THHN', 'conductor-metal-missing', undefined, ['12 AWG Cu THHN', '12 AWG Al THHN']],
    ['13 AWG | Cu THHN', 'size-not-listed', undefined, ['14 AWG Cu THHN', '12 AWG Cu THHN']],
    ['260 kcmil | Al', 'size-not-listed', undefined, ['250 kcmil Al', '300 kcmil Al']],
    ['12 AWG | Cu THNN', 'unknown-conductor-word', 1, ['THHN']],
    ['12 AWG | cu', 'unknown-conductor-word', 0, ['Cu']],
    ['12 AWG | Cu constructor', 'unknown-conductor-word', 1, []],
    ['12 AWG | Cu Al', 'contradictory-conductor-words', 1, []],
    ['12 AWG | Cu THHN THHN', 'contradictory-conductor-words', 2, []],
    ['12 AWG | solid Cu stranded', 'contradictory-conductor-words', 2, []],
    ['12 AWG | bare Cu THHN', 'contradictory-conductor-words', 2, []],
    ['12 AWG | tinned Al', 'contradictory-conductor-words', 1, []],
    ['250 kcmil | Al solid', 'size-not-listed', 1, []],
    ['24 AWG | Cu stranded', 'size-not-listed', 1, []],
    ['24 AWG | Al', 'size-not-listed', 0, []],
    ['2.7 mm² | Cu', 'size-not-listed', undefined, ['2.5 mm² Cu', '4 mm² Cu']],
  ];
  for (const [text, code, word, replacements] of bad) {
    it(`${text} is refused: ${code}`, () => {
      const result = read(text);
      assert.ok('problem' in result);
      assert.equal(result.code, code);
      assert.equal(result.word, word);
      assert.deepEqual(result.replacements ?? [], replacements);
      for (const replacement of result.word === undefined ? (result.replacements ?? []) : []) {
        const [number, unit, ...words] = replacement.split(' ');
        assert.ok('value' in reader.read(`${number} ${unit}`, words), replacement);
      }
    });
  }

  it('states that stranded is taken where both exist and neither is said', () => {
    const open = read('12 AWG | Cu');
    const said = read('12 AWG | Cu solid');
    const only = read('4 AWG | Cu');
    assert.ok('value' in open && 'value' in said && 'value' in only);
    assert.equal(open.assumptions.length, 1);
    assert.match(open.assumptions[0], /stranded/);
    assert.deepEqual([...said.assumptions, ...only.assumptions], []);
  });

  it('knows the insulation table’s types, all of them and no others', () => {
    assert.deepEqual([...insulationWords].sort(), [...tables.insulationTypes].sort());
  });
});
