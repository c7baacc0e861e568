import type { LetterSymbol } from '../language';

/** Greek letters by name, in the order of the alphabet, so that `rho` is shown as ρ. */
const greekNames =
  'alpha beta gamma delta epsilon zeta eta theta iota kappa lambda mu nu xi omicron pi rho sigma tau upsilon phi chi psi omega';
const greekLetters = 'αβγδεζηθικλμνξοπρστυφχψω';
const capitals = 'Gamma Delta Theta Lambda Xi Pi Sigma Upsilon Phi Psi Omega';
const capitalLetters = 'ΓΔΘΛΞΠΣΥΦΨΩ';

const letterOf = new Map([
  ...greekNames.split(' ').map((name, i) => [name, greekLetters.charAt(i)] as const),
  ...capitals.split(' ').map((name, i) => [name, capitalLetters.charAt(i)] as const),
]);

const nameOf = new Map([...letterOf].map(([name, letter]) => [letter, name]));

/** The letter that a name such as `rho` stands for; other names as they are. */
export const greek = (name: string): string => letterOf.get(name) ?? name;

/** The LaTeX command of a Greek letter; omicron is a Latin o. */
export function greekLatex(letter: string): string | undefined {
  const name = nameOf.get(letter === 'µ' ? 'μ' : letter === '\u2126' ? 'Ω' : letter);
  return name === undefined ? undefined : name === 'omicron' ? 'o' : `\\${name}`;
}

/** Functions that stand before their argument without a subscript: the symbol `cos_phi` is cos φ. */
const functionBases = new Set(['sin', 'cos', 'tan']);

export const isFunctionOf = (symbol: LetterSymbol): boolean =>
  functionBases.has(symbol.base) && symbol.subscript !== undefined;

const subscriptDigits = '₀₁₂₃₄₅₆₇₈₉';

/** `I`, `I_load`, `R₇₅`, `cos φ`. */
export function symbolText(symbol: LetterSymbol): string {
  const { subscript } = symbol;
  const base = greek(symbol.base);
  if (subscript === undefined || subscript === '') {
    return base;
  }
  if (isFunctionOf(symbol)) {
    return `${base} ${greek(subscript)}`;
  }
  return /^\d+$/.test(subscript)
    ? base + [...subscript].map((digit) => subscriptDigits.charAt(Number(digit))).join('')
    : `${base}_${greek(subscript)}`;
}
