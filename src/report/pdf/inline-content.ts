import { verdictWords } from '../../display';
import type { Inline, Verdict } from '../document';

/** A node of the library's document definition. */
export type Content = Readonly<Record<string, unknown>>;

export const colours = {
  faint: '#555555',
  line: '#b5b5b5',
  head: '#eef1f4',
  yes: '#14632a',
  no: '#a4161a',
  doubt: '#7a4b00',
};

const verdictColours: Readonly<Record<Verdict, string>> = {
  yes: colours.yes,
  no: colours.no,
  'cannot tell': colours.doubt,
};

export const verdictText = (verdict: Verdict): Content => ({
  text: verdictWords[verdict],
  bold: true,
  color: verdictColours[verdict],
});

/** Content as the library's text. */
export const texts = (content: readonly Inline[]): (string | Content)[] => content.map(inlineText);

function inlineText(inline: Inline): string | Content {
  switch (inline.kind) {
    case 'break':
      return '\n';
    case 'maths':
      return inline.text;
    case 'verdict':
      return verdictText(inline.verdict);
    case 'link':
      return /^(https?:|mailto:)/i.test(inline.target) ? { text: inline.text, link: inline.target } : inline.text;
    case 'file':
      return { text: inline.text, link: inline.target, decoration: 'underline' };
    case 'text':
      return inline.style === 'strong'
        ? { text: inline.text, bold: true }
        : inline.style === 'emphasis'
          ? { text: inline.text, italics: true }
          : inline.style === 'code'
            ? { text: inline.text, font: 'Mono', fontSize: 8.5 }
            : inline.text;
  }
}
