import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { showValue } from '../../src/display';
import { tradeFunctions } from '../../src/functions';
import type { ParameterType, ResultType } from '../../src/language';
import { parseUnit } from '../../src/units';
import { valueOf } from './sheet';

const folder = join(__dirname, '..', '..', 'src', 'functions');
const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((file) => basename(file, '.ts'));

const unitsOf = (type: ParameterType | ResultType): readonly string[] =>
  'unit' in type ? [type.unit] : 'units' in type ? type.units : 'listOf' in type ? unitsOf(type.listOf) : [];

const resultsOf = (definition: (typeof tradeFunctions)[number]) =>
  'record' in definition.result ? Object.values(definition.result.record) : [definition.result];

describe('every trade function', () => {
  it('has a name of its own', () => {
    assert.equal(new Set(tradeFunctions.map((f) => f.name)).size, tradeFunctions.length);
  });

  for (const definition of tradeFunctions) {
    describe(definition.name, () => {
      it('stands in a file of its name', () => {
        assert.ok(files.includes(definition.name));
      });

      it('says what it gives, what it takes and where it comes from', () => {
        assert.match(definition.summary, /^[A-Z].*\.$/);
        assert.ok(definition.sources.length > 0 && definition.sources.every((source) => source.length > 3));
        assert.ok(definition.examples.length > 0);
        for (const { meaning } of [...Object.values(definition.parameters), ...resultsOf(definition)]) {
          assert.ok(meaning.length > 3);
        }
      });

      it('uses units that parse', () => {
        for (const type of [...Object.values(definition.parameters), ...resultsOf(definition)]) {
          for (const unit of unitsOf(type)) {
            assert.ok(!('problem' in parseUnit(unit)), `${definition.name}: ${unit}`);
          }
        }
      });

      for (const { text, gives } of definition.examples) {
        it(`${text.replaceAll('\n', '; ')} gives ${gives}`, () => {
          assert.equal(showValue(valueOf(text)), gives);
        });
      }
    });
  }
});
