import { type DesignationReader, type DesignationResult, nearest } from '../language';
import { knownSizes, type Material, nearestSizes, parseSize, type Size, type Stranding, type Tables } from '../tables';
import { type Conductor, conductorType } from './conductor';
import {
  bareWord,
  coatingWords,
  designationWords,
  insulationWords,
  materialWords,
  strandingWords,
} from './conductor-words';
import { resistanceReference } from './rules/resistance-reference';

/** What the words after a size say, each with the index of the word that said it. */
interface Said {
  material?: Word<Material>;
  stranding?: Word<Stranding>;
  coated?: Word<true>;
  bare?: Word<true>;
  insulation?: Word<string>;
}

interface Word<T> {
  readonly value: T;
  readonly word: number;
}

type Problem = Extract<DesignationResult, { problem: string }>;

/** Reads `12 AWG` and its words into a conductor. Metal and insulation are never guessed. */
export const designationReader = (tables: Tables): DesignationReader => ({
  type: conductorType,
  read: (text, words) => {
    const size = parseSize(text);
    if (!size) {
      return {
        problem: `“${text}” is not a conductor size. Sizes read like 12 AWG, 1/0 AWG or 250 kcmil.`,
        code: 'unknown-size',
      };
    }
    const said = readWords(words);
    return 'problem' in said ? said : (missingSize(tables, size, words) ?? conductorOf(tables, size, said, words));
  },
});

function readWords(words: readonly string[]): Said | Problem {
  const said: Said = {};
  for (let word = 0; word < words.length; word++) {
    const meaning = meaningOf(words[word], word);
    if (!meaning) {
      return unknownWord(words[word], word);
    }
    for (const part of Object.keys(meaning) as (keyof Said)[]) {
      const before = said[part];
      if (before) {
        return contradiction(words, before.word, word, before.value === meaning[part]?.value);
      }
    }
    Object.assign(said, meaning);
  }
  if (said.bare && said.insulation) {
    return contradiction(words, said.bare.word, said.insulation.word, false);
  }
  if (said.coated && said.material?.value === 'Al') {
    return contradiction(words, said.material.word, said.coated.word, false);
  }
  return said;
}

/** Hard-service and light cords as they are marked: SOOW, SJT, SVT, STW, SEOOW. */
const cordTypes = /^S[JV]?[TPE]?O{0,2}W?(-A)?$/;

function unknownWord(text: string, word: number): Problem {
  if (cordTypes.test(text)) {
    return {
      problem: `“${text}” is a flexible cord: leave its type out, and say \`kind: cord\` in a \`circuit\`, which has a table of its own for it.`,
      code: 'unknown-conductor-word',
      word,
    };
  }
  const meant = nearest(text, designationWords);
  return {
    problem: `“${text}” is not a metal, a stranding or an insulation type.${meant ? ` Did you mean ${meant}?` : ''}`,
    code: 'unknown-conductor-word',
    word,
    ...(meant ? { replacements: [meant] } : {}),
  };
}

/** Own keys only, so that `constructor` is an ordinary unknown word. */
const lookUp = <T>(table: Readonly<Record<string, T>>, key: string): T | undefined =>
  Object.hasOwn(table, key) ? table[key] : undefined;

function meaningOf(text: string, word: number): Said | undefined {
  const material = lookUp(materialWords, text);
  const stranding = lookUp(strandingWords, text);
  if (material) {
    return { material: { value: material, word } };
  }
  if (stranding) {
    return { stranding: { value: stranding, word } };
  }
  if (coatingWords.includes(text)) {
    return { coated: { value: true, word } };
  }
  if (text === bareWord) {
    return { bare: { value: true, word } };
  }
  return insulationWords.some((known) => known === text) ? { insulation: { value: text, word } } : undefined;
}

const contradiction = (words: readonly string[], first: number, second: number, same: boolean): Problem => ({
  problem: same
    ? `“${words[second]}” is said twice: once is enough.`
    : `“${words[first]}” and “${words[second]}” cannot both hold for one conductor: keep one.`,
  code: 'contradictory-conductor-words',
  word: Math.max(first, second),
});

/** A designation as it would be written again. */
const designationText = (size: string, words: readonly string[]): string => [size, ...words].join(' ');

/**
 * True when some table of the edition has a row for the size. Odd gauges such as 13 AWG stand in the wire table alone and
 * are not made as building wire; below the ampacity table's smallest size that table counts.
 */
const isListed = (tables: Tables, size: Size): boolean =>
  tables.sizes.some((known) => known.text === size.text) ||
  ((size.unit === 'mm²' || size.mm2 < tables.sizes[0].mm2) &&
    strandingsOf(tables, { size, material: 'Cu', coated: false }).length > 0);

/** The ways in which a conductor of that size and metal can be made, by the tables; the usual one last. */
const strandingsOf = (tables: Tables, made: Pick<Conductor, 'size' | 'material' | 'coated'>) =>
  (['solid', 'stranded'] as const).flatMap((stranding) => {
    const reference = resistanceReference(tables, { ...made, stranding });
    return reference ? [{ stranding, table: reference.source.table }] : [];
  });

function missingSize(tables: Tables, size: Size, words: readonly string[]): Problem | undefined {
  if (isListed(tables, size)) {
    return undefined;
  }
  const listed = knownSizes().filter((known) => isListed(tables, known));
  const near = nearestSizes(size, listed).map((known) => known.text);
  const named = near.length > 0 ? ` The nearest are ${near.join(' and ')}.` : '';
  return {
    problem: `The tables of ${tables.edition} have no ${size.text} conductor.${named}`,
    code: 'size-not-listed',
    replacements: near.map((other) => designationText(other, words)),
  };
}

function conductorOf(tables: Tables, size: Size, said: Said, words: readonly string[]): DesignationResult {
  if (!said.material) {
    return {
      problem: `${designationText(size.text, words)} names no metal: add Cu or Al. It is never assumed, since resistance and ampacity hang on it.`,
      code: 'conductor-metal-missing',
      replacements: ['Cu', 'Al'].map((metal) => designationText(size.text, [metal, ...words])),
    };
  }
  const material = said.material.value;
  const coated = said.coated !== undefined;
  const made = strandingsOf(tables, { size, material, coated });
  if (made.length === 0) {
    return {
      problem: `The tables of ${tables.edition} have no ${size.text} in ${coated ? 'coated ' : ''}${material}.`,
      code: 'size-not-listed',
      word: (said.coated ?? said.material).word,
    };
  }
  const wanted = said.stranding?.value;
  if (said.stranding && !made.some(({ stranding }) => stranding === wanted)) {
    return {
      problem: `The tables of ${tables.edition} have no ${wanted} ${size.text} ${material}, only ${made[0].stranding}.`,
      code: 'size-not-listed',
      word: said.stranding.word,
    };
  }
  const conductor: Conductor = {
    size,
    material,
    stranding: wanted ?? made[made.length - 1].stranding,
    strandingGiven: said.stranding !== undefined,
    coated,
    bare: said.bare !== undefined,
    ...(said.insulation ? { insulation: said.insulation.value } : {}),
  };
  const bothListed = made.length === 2 && made[0].table === made[1].table;
  return {
    value: conductor,
    assumptions:
      bothListed && !said.stranding
        ? [`${size.text}: stranded taken, the higher resistance; solid or stranded not said`]
        : [],
  };
}
