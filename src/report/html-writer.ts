import { escapeHtml, verdictWords } from '../display';
import { svgOf, svgText } from '../drawing';
import { type Inline, message, type Part, type ReportDocument, type Table, type Verdict } from './document';
import { style } from './html-style';
import { dataAddress } from './picture';

/** The report as one web page that needs nothing else: maths as MathML, no scripts, set for paper when printed. */
export async function writeHtml(document: ReportDocument): Promise<string> {
  const { default: katex } = await import('katex');
  const settings = { output: 'mathml', throwOnError: false, strict: false, trust: false } as const;
  // A formula that cannot be read is shown as it was written. What surrounds the MathML is for the library's own fonts.
  const maths = (latex: string) =>
    katex
      .renderToString(`\\displaystyle ${latex}`, settings)
      .replace(/<annotation[\s\S]*?<\/annotation>/g, '')
      .replace(/^<span class="katex">|<\/span>$/g, '');
  return new Page(maths).of(document);
}

const classes: Readonly<Record<Verdict, string>> = { yes: 'yes', no: 'no', 'cannot tell': 'doubt' };

const tags = { strong: 'strong', emphasis: 'em', code: 'code' } as const;

class Page {
  constructor(private readonly maths: (latex: string) => string) {}

  of({ kind, title, fields, banners, sections, revision, date }: ReportDocument): string {
    const foot = [title, revision && `revision ${revision}`, date].filter(Boolean).join(' · ');
    const field = ([label, text]: readonly [string, string]) =>
      `<tr><th scope="row">${escapeHtml(label)}</th><td>${escapeHtml(text)}</td></tr>`;
    return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(`${title} – ${kind}`)}</title>
<style>${style}:root { --foot: "${cssText(foot)}"; }
</style>
</head>
<body>
<main>
<h1>${escapeHtml(title)}</h1>
<p class="kind">${escapeHtml(kind)}</p>
<table class="fields"><tbody>
${fields.map(field).join('\n')}
</tbody></table>
${banners.map((banner) => this.banner(banner)).join('\n')}
${sections.map((section) => `<section>\n<h2>${escapeHtml(section.title)}</h2>\n${this.parts(section.parts)}\n</section>`).join('\n')}
</main>
</body>
</html>
`;
  }

  private banner({ tone, title, items }: ReportDocument['banners'][number]): string {
    const lines = items.map((item) => `<li>${this.content(message(item))}</li>`).join('');
    return `<div class="banner ${tone}" role="note"><p>⚠ ${escapeHtml(title)}</p><ul>${lines}</ul></div>`;
  }

  private parts(parts: readonly Part[]): string {
    return parts.map((part) => this.part(part)).join('\n');
  }

  private part(part: Part): string {
    switch (part.kind) {
      case 'heading':
        return `<h${part.depth}>${this.content(part.content)}</h${part.depth}>`;
      case 'paragraph':
        return `<p>${this.content(part.content)}</p>`;
      case 'list': {
        const tag = part.ordered ? 'ol' : 'ul';
        return `<${tag}>${part.items.map((item) => `<li>${this.item(item)}</li>`).join('')}</${tag}>`;
      }
      case 'quote':
        return `<blockquote>${this.parts(part.parts)}</blockquote>`;
      case 'code':
        return `<pre tabindex="0"><code>${part.text.split('\n').map(escapeHtml).join('\n')}</code></pre>`;
      case 'table':
        return this.table(part);
      case 'step':
        return `<p class="step">${this.maths(part.latex)}${this.notes(part.note ? [part.note] : [])}</p>`;
      case 'verdict': {
        const label = part.label && `${escapeHtml(part.label)}: `;
        return `<p class="step">${verdict(part.verdict)} ${label}${this.maths(part.latex)}${this.notes(part.notes.map(message))}</p>`;
      }
      case 'drawing':
        return `<div class="drawing">${svgText(svgOf(part.drawing))}${caption(part.caption)}</div>`;
      case 'picture': {
        const { width, height } = part.file;
        const size = `width="${Math.round(width)}" height="${Math.round(height)}"`;
        return `<p class="picture"><img src="${dataAddress(part.file)}" alt="${escapeHtml(part.alt)}" ${size}></p>`;
      }
      case 'group':
        return `<div class="group"><p class="title">${this.content(part.title)}</p>\n${this.parts(part.parts)}</div>`;
      case 'signatures':
        return signatures(part);
    }
  }

  /** One paragraph alone stands in a list's item without a paragraph's space. */
  private item(parts: readonly Part[]): string {
    const [only] = parts;
    return parts.length === 1 && only.kind === 'paragraph' ? this.content(only.content) : this.parts(parts);
  }

  private table({ caption, columns, rows, totals = [] }: Table): string {
    const right = (i: number) => (columns[i]?.align === 'right' ? ' class="right"' : '');
    const row = (cells: readonly (readonly Inline[])[]) =>
      `<tr>${cells.map((cell, i) => `<td${right(i)}>${this.content(cell)}</td>`).join('')}</tr>`;
    const head = columns.map(({ title }, i) =>
      title === '' ? `<td${right(i)}></td>` : `<th scope="col"${right(i)}>${escapeHtml(title)}</th>`,
    );
    const name = caption ?? columns.map(({ title }) => title).join(', ');
    return [
      `<div class="wide" tabindex="0" role="group" aria-label="${escapeHtml(name)}"><table>`,
      caption === undefined ? '' : `<caption>${escapeHtml(caption)}</caption>`,
      `<thead><tr>${head.join('')}</tr></thead>`,
      `<tbody>${rows.map(row).join('\n')}</tbody>`,
      totals.length > 0 ? `<tfoot>${totals.map(row).join('')}</tfoot>` : '',
      '</table></div>',
    ].join('');
  }

  private notes(notes: readonly (readonly Inline[])[]): string {
    return notes.map((note) => ` <span class="note">${this.content(note)}</span>`).join('');
  }

  private content(content: readonly Inline[]): string {
    return content.map((inline) => this.inline(inline)).join('');
  }

  private inline(inline: Inline): string {
    switch (inline.kind) {
      case 'break':
        return '<br>';
      case 'maths':
        return this.maths(inline.latex);
      case 'verdict':
        return verdict(inline.verdict);
      case 'link':
        return /^(https?:|mailto:)/i.test(inline.target)
          ? `<a href="${escapeHtml(inline.target)}">${escapeHtml(inline.text)}</a>`
          : escapeHtml(inline.text);
      case 'file':
        return `<a href="${escapeHtml(inline.target)}">${escapeHtml(inline.text)}</a>`;
      case 'text': {
        const tag = inline.style && tags[inline.style];
        return tag ? `<${tag}>${escapeHtml(inline.text)}</${tag}>` : escapeHtml(inline.text);
      }
    }
  }
}

const verdict = (given: Verdict): string => `<span class="${classes[given]}">${verdictWords[given]}</span>`;

function signatures({ lines }: Part & { kind: 'signatures' }): string {
  const head = ['Role', 'Name', 'Signature', 'Date'].map((title) => `<th scope="col">${title}</th>`).join('');
  const rows = lines.map(
    ({ role, name }) =>
      `<tr><th scope="row">${escapeHtml(role)}</th><td>${escapeHtml(name)}</td><td></td><td></td></tr>`,
  );
  return `<table class="signatures"><thead><tr>${head}</tr></thead><tbody>${rows.join('')}</tbody></table>`;
}

/** Text for a string in a style sheet. */
const cssText = (text: string): string => text.replace(/[\\"<>\n\r\f]/g, (c) => `\\${c.codePointAt(0)!.toString(16)} `);

const caption = (text: string | undefined): string =>
  text === undefined ? '' : `<p class="note">${escapeHtml(text)}</p>`;
