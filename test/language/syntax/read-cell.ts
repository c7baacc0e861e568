import { parse } from '../../../src/language/syntax/parser';
import type { SyntaxTree } from '../../../src/language/syntax/tree';
import type { UnitReader } from '../../../src/language/syntax/unit-reader';
import type { Vocabulary } from '../../../src/language/syntax/vocabulary';

/** Units enough for the tests of the grammar: names, then `/`, `·` and `^` where they are written tight. */
const name =
  '(?:[kmMµμun]?(?:Ω|Ω|ohm|VA|var|V|A|W|Hz|m|g)|kft|ft|in|mil|mm2|mm²|m²|cmil|kcmil|MCM|AWG|h|s|min|hp|USD|°C|°F|degC|°|K|%)';
const power = '(?:\\^-?\\d|[²³])?';
const unit = new RegExp(`(?:1/)?${name}${power}(?:[/·]${name}${power})*(?![\\p{L}\\p{N}_])`, 'uy');

const stubUnits: UnitReader = {
  readUnit(codes, offset) {
    const text = String.fromCharCode(...codes.subarray(offset, offset + 200)); // Longer than any unit.
    unit.lastIndex = 0;
    return unit.test(text) ? offset + unit.lastIndex : offset;
  },
};

export const vocabulary: Vocabulary = {
  sizeUnits: new Set(['AWG', 'kcmil', 'MCM', 'mm²', 'mm2']),
  alwaysSizeUnits: new Set(['AWG']),
  designationWords: new Set(['Cu', 'Al', 'solid', 'stranded', 'coated', 'bare', 'THHN', 'THWN-2', 'XHHW', 'XHHW-2']),
  hyphenatedWords: new Set(['NM-B', 'UF-B']),
};

export const readCell = (text: string): SyntaxTree => parse(text, vocabulary, stubUnits);
