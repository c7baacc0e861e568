import { insulationWords } from '../functions';
import { parseSize } from '../tables';

/** A conductor that a remark names. */
export interface NamedConductor {
  /** `6 AWG Cu THHN` */
  readonly text: string;
  readonly size: string;
  readonly mm2: number;
  readonly material: 'Cu' | 'Al';
}

const insulations = insulationWords.map((word) => word.replace(/[-/]/g, '\\$&')).sort((a, b) => b.length - a.length);
const pattern = new RegExp(
  `#?\\s?(\\d+(?:/0)?)\\s*(AWG|kcmil)?\\s+(?:(Cu|Al|copper|aluminum)\\s+)?(${insulations.join('|')})(?![\\w-])`,
  'i',
);

/** The first conductor with its insulation that the words name; copper where they do not say the metal. */
export function conductorNamedIn(words: string): NamedConductor | undefined {
  const found = pattern.exec(words);
  const [, number, unit = 'AWG', metal = 'Cu', insulation] = found ?? [];
  const size = found ? parseSize(`${number} ${/kcmil/i.test(unit) ? 'kcmil' : 'AWG'}`) : undefined;
  if (!size) {
    return undefined;
  }
  const material = /^al/i.test(metal) ? 'Al' : 'Cu';
  const text = `${size.text} ${material} ${insulation.toUpperCase()}`;
  return { text, size: size.text, mm2: size.mm2, material };
}
