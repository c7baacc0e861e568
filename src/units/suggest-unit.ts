import { isUnit } from './read-unit';
import { namedUnits } from './unit-table';
import { unitWords } from './unit-words';

/** What was probably meant by a text that is not a unit: `kW` for `Kw`, `kV·A` for `kV A`. */
export function suggestUnit(text: string): string | undefined {
  if (/^(?:ft|foot|feet)[\s·*-]*(?:lb|pound)s?$/i.test(text.trim())) {
    return 'ft·lbf'; // A torque, although the words name a mass.
  }
  const tidy = text
    .trim()
    .replace(/\s*(?:\/|\bper\b)\s*/g, '/')
    .replace(/\s*[*·⋅×-]\s*|\s+/g, '·')
    .replace(/([^/·]+)/g, (word) => {
      const [, base, exponent] = /^(.*?)(\^?-?[0-9]|[²³])?$/.exec(word) as RegExpExecArray;
      return unitWords.has(word) || isUnit(word) ? word : (suggestWord(base) ?? base) + (exponent ?? '');
    });
  return tidy !== '' && tidy !== text && isUnit(tidy) ? tidy : undefined;
}

/** Words that people write for units and that are no change of case or number away from one. */
const everyday: ReadonlyMap<string, string> = new Map(
  Object.entries({
    amp: 'A',
    celsius: '°C',
    fahrenheit: '°F',
    feet: 'ft',
    inches: 'in',
    percent: '%',
    sqft: 'ft²',
    sqin: 'in²',
    sqmm: 'mm²',
    ton: 'ton_r',
    tr: 'ton_r',
    gauge: 'AWG',
    ga: 'AWG',
    megohm: 'MΩ',
    megaohm: 'MΩ',
    kiloohm: 'kΩ',
    kilohm: 'kΩ',
    milliohm: 'mΩ',
    ohms: 'Ω',
    sec: 's',
    hr: 'h',
    hour: 'h',
    day: 'd',
    nm: 'N·m',
    lbs: 'lb',
    btuh: 'Btu/h',
    kbtu: 'MBH',
    vac: 'V',
    vdc: 'V',
    aac: 'A',
    adc: 'A',
    kvar: 'kvar',
    pct: '%',
    '℧': 'S',
    mho: 'S',
  }),
);

const byFullName = new Map(
  namedUnits.filter((unit) => !unit.name.includes(' ')).map((unit) => [unit.name, unit.symbol] as const),
);

/** Spelled otherwise, in capitals or small letters: the known words by their lower case. */
const byLowerCase = new Map<string, string[]>();
for (const word of unitWords.keys()) {
  const key = word.toLowerCase();
  byLowerCase.set(key, [...(byLowerCase.get(key) ?? []), word]);
}

function suggestWord(word: string): string | undefined {
  const lower = word.toLowerCase();
  for (const singular of [lower, lower.replace(/s$/, '')]) {
    const known = everyday.get(singular) ?? byFullName.get(singular);
    if (known) {
      return known;
    }
  }
  for (const singular of [word, word.replace(/s$/, '')]) {
    const alike = byLowerCase.get(singular.toLowerCase());
    if (alike) {
      const nearest = [...alike].sort((a, b) => changes(a, singular) - changes(b, singular))[0];
      return unitWords.get(nearest)?.symbol;
    }
  }
  return undefined;
}

/** How many letters differ; the words are equal but for their case. */
const changes = (a: string, b: string): number => [...a].filter((c, i) => c !== b.charAt(i)).length;
