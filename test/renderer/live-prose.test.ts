import assert from 'node:assert/strict';
import { SheetSession } from '../../src/core';
import { type LiveMetadata, liveExpression } from '../../src/renderer';
import { rendered } from './rendered';

const withLive = (prose: string, live?: LiveMetadata): string => rendered(prose, { origin: 1, live });

describe('live values in rendered prose', () => {
  it('stand in place of their code spans, with the expression on hover', async () => {
    assert.equal(
      withLive('It draws ``= i\nin mA`` and `code`.', [['i in mA', '3,000 mA']]),
      '<p>It draws <span class="kilofoot-live" title="= i in mA">3,000 mA</span> and <code>code</code>.</p>',
    );
  });

  it('say where there is no value, and leave alone what was not evaluated yet', async () => {
    assert.equal(withLive('`= x`, `= y`', [['x']]), '<p><code>= x</code> (no value), <code>= y</code></p>');
    assert.equal(withLive('`= x`'), '<p><code>= x</code></p>');
  });

  it('are text, never markup', async () => {
    const html = withLive('`= "<b>"`', [['"<b>"', '<b>&']]);
    assert.equal(html, '<p><span class="kilofoot-live" title="= &quot;&lt;b&gt;&quot;">&lt;b&gt;&amp;</span></p>');
  });

  it('are found under the expression that the session tells, however it is spaced', async () => {
    const session = new SheetSession();
    const prose = 'It draws ` =  i  in mA ` or\n`= i\nin A`.';
    session.update([
      { id: 'code', kind: 'calculation', text: 'i = 3 A' },
      { id: 'prose', kind: 'prose', text: prose },
    ]);
    const live = session
      .liveValues('prose')
      .map(({ expression, text }): LiveMetadata[number] => [liveExpression(`=${expression}`)!, text]);
    const html = withLive(prose, live);
    assert.match(html, />3000 mA<\/span> or\n<span [^>]*>3 A</);
  });
});
