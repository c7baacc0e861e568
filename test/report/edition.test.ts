import assert from 'node:assert/strict';
import { reportOf, saying, section, sheetOf } from './report-of';

describe('the code edition of a report', () => {
  it('is told to be an assumption where the sheet names none: in the title block, the basis and the assumptions', () => {
    const document = reportOf(sheetOf('title: Any', 'a = 1 V'));
    assert.match(document.fields.find(([label]) => label === 'Code')![1], /^NEC \d{4}, assumed: /);
    assert.match(saying(section(document, 'Basis')), /NEC \d{4}, assumed because the sheet names none/);
    assert.match(saying(section(document, 'Assumptions')), /code edition NEC \d{4}: the sheet names none/);
  });

  it('is stated as it stands where the sheet names one', () => {
    const document = reportOf(sheetOf('title: Any\ncode: NEC 2020', 'a = 1 V'));
    assert.equal(document.fields.find(([label]) => label === 'Code')![1], 'NEC 2020');
    assert.doesNotMatch(saying(document.sections), /assumed because|code edition/);
  });
});
