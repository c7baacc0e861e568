import { greekLatex } from './letter-symbol';

const superscripts: Readonly<Record<string, string>> = {
  '⁻': '-',
  '⁰': '0',
  '¹': '1',
  '²': '2',
  '³': '3',
  '⁴': '4',
  '⁵': '5',
  '⁶': '6',
  '⁷': '7',
  '⁸': '8',
  '⁹': '9',
};

/** A unit's symbol as upright LaTeX: `\mathrm{\Omega/kft}`. */
export function unitLatex(symbol: string): string {
  const body = symbol
    .replace(/[⁻⁰¹²³⁴-⁹]+/g, (run) => `^{${[...run].map((c) => superscripts[c]).join('')}}`)
    .replace(/\^\(([^)]*)\)/g, '^{$1}')
    .replace(/°/g, '{{}^{\\circ}}')
    .replace(/[·⋅]/g, '\\cdot ')
    .replace(/[%_]/g, (c) => `\\${c}`)
    .replace(/[\u0370-\u03ffµ\u2126]/g, (letter) => `${greekLatex(letter) ?? letter} `);
  return `\\mathrm{${body}}`;
}
