import assert from 'node:assert/strict';
import { drawBars, svgOf, svgText } from '../../src/drawing';

describe('a drawing as SVG', () => {
  const name = `<script>alert("1")</script> & 'co'`;
  const text = svgText(
    svgOf(drawBars({ title: name, description: `${name} 2`, bars: [{ name, figures: '1', value: 1 }] })),
  );

  it('is an image with a name and a description', () => {
    assert.match(text, /^<svg [^>]*role="img"/);
    assert.match(text, /<title>[^<]+<\/title><desc>[^<]+ 2<\/desc>/);
  });

  it('lets no text of the sheet become markup', () => {
    assert.equal(/<script/i.test(text), false);
    assert.ok(text.includes('&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp;'));
  });

  it('paints by class unless told otherwise, and asks for nothing from elsewhere', () => {
    assert.match(text, /class="kf-bar"/);
    assert.equal(/href|url\(|style=/.test(text), false);
  });
});
