import type { MathComponent } from 'docx';
import type { MathElement } from '../mathml';

type Library = typeof import('docx') & typeof import('docx/math');

/** Formulas as equations that a word processor edits. */
export class EquationMaker {
  constructor(private readonly library: Library) {}

  of(element: MathElement): MathComponent[] {
    const { MathFraction, MathRadical, MathSubScript, MathSubSuperScript, MathSuperScript } = this.library;
    const child = (i: number) => (element.children[i] ? this.of(element.children[i]) : []);
    switch (element.tag) {
      case 'mi':
      case 'mn':
      case 'mo':
      case 'mtext':
        return this.run(element);
      case 'mspace':
        return this.words('\u202f');
      case 'mfrac':
        return [new MathFraction({ numerator: child(0), denominator: child(1) })];
      case 'msqrt':
        return [new MathRadical({ children: this.all(element) })];
      case 'mroot':
        return [new MathRadical({ children: child(0), degree: child(1) })];
      case 'msub':
        return [new MathSubScript({ children: child(0), subScript: child(1) })];
      case 'msup':
        return isDegree(element)
          ? this.words('°')
          : [new MathSuperScript({ children: child(0), superScript: child(1) })];
      case 'msubsup':
        return [new MathSubSuperScript({ children: child(0), subScript: child(1), superScript: child(2) })];
      case 'mtable':
        return this.table(element);
      default:
        return this.all(element);
    }
  }

  /** Letters of one word or unit go into one run, so that they are edited as one. */
  private all({ children }: MathElement): MathComponent[] {
    const made: MathComponent[] = [];
    for (let i = 0; i < children.length; i++) {
      const bracketed = closingOf(children, i);
      if (bracketed !== undefined) {
        made.push(
          new this.library.MathRoundBrackets({
            children: children.slice(i + 1, bracketed).flatMap((one) => this.of(one)),
          }),
        );
        i = bracketed;
        continue;
      }
      let word = '';
      while (children[i]?.tag === 'mi' && children[i].attributes.get('mathvariant') === 'normal') {
        word += children[i].text;
        i++;
      }
      made.push(...(word === '' ? this.of(children[i]) : this.words(word)));
      i -= word === '' ? 0 : 1;
    }
    return made;
  }

  private run({ tag, text, attributes }: MathElement): MathComponent[] {
    const shown = text.replace(/\u2061/g, ''); // The sign for applying a function shows nothing.
    if (shown === '') {
      return [];
    }
    const letter = tag === 'mi' && [...shown].length === 1 && attributes.get('mathvariant') !== 'normal';
    if (letter) {
      return [new this.library.MathRun(shown)];
    }
    const isWords = tag === 'mtext' || tag === 'mi';
    return isWords ? this.words(shown.replace(/[\u2000-\u200b ]/g, '\u202f')) : this.upright(shown);
  }

  /** Words and units: upright in every word processor, with their spaces kept. */
  private words(text: string): MathComponent[] {
    return [new this.library.MathRun({ text, normalText: true })];
  }

  private upright(text: string): MathComponent[] {
    return [new this.library.MathRun({ text, style: 'plain' })];
  }

  private table({ children }: MathElement): MathComponent[] {
    const rows = children.map((row) => row.children.map((cell) => this.of(cell)));
    return [new this.library.MathMatrix({ rows }) as unknown as MathComponent];
  }
}

/** A small circle raised above nothing is the sign of a degree. */
const isDegree = ({ children: [base, raised] }: MathElement): boolean =>
  base.children.length === 0 && base.text === '' && raised?.text === '∘';

/** Where round brackets that open at `from` and hold the rest of their row close. */
function closingOf(children: readonly MathElement[], from: number): number | undefined {
  const isFence = (element: MathElement | undefined, text: string) =>
    element?.tag === 'mo' && element.attributes.get('fence') === 'true' && element.text === text;
  const last = children.length - 1;
  return from === 0 && last > 0 && isFence(children[0], '(') && isFence(children[last], ')') ? last : undefined;
}
