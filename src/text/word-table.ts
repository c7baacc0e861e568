import { type Codes, codesOf } from './codes';

/**
 * Distinct words of one text by number, looked up where they stand: to cut each out of the text first would cost more
 * than the look-up itself. Open addressing; `slots` is never more than half full.
 */
export class WordTable {
  /** The words in the order they came. */
  words: string[] = [];
  private text = '';
  private codes: Codes = codesOf('');
  /** Of each word, one behind the other: its hash, where it stood first, its end there and its slot. */
  private entries = new Int32Array(32 * entryLength);
  /** The word in each slot, -1 for none. */
  private slots = new Int32Array(64).fill(-1);

  /** A table of words that stand in no text. */
  static of(words: Iterable<string>): WordTable {
    const table = new WordTable();
    const all = [...words];
    const text = all.join(' ');
    table.begin(text, codesOf(text));
    let start = 0;
    for (const word of all) {
      table.add(start, start + word.length);
      start += word.length + 1;
    }
    return table;
  }

  /**
   * Forgets all words and takes those of another text from now on; `words` is a new array then. `codes` are the text's,
   * and stay so as long as words of it are added or looked for.
   */
  begin(text: string, codes: Codes): void {
    for (let word = this.words.length - 1; word >= 0; word--) {
      this.slots[this.entries[word * entryLength + 3]] = -1;
    }
    this.words = [];
    this.text = text;
    this.codes = codes;
  }

  /** The number of the word at `start` … `end` of any text; -1 when it is not among them. */
  find(codes: Codes, start: number, end: number, hash?: number): number {
    return this.look(codes, start, end, hash, false);
  }

  /** The number of the word at `start` … `end` of the table's own text, a new one where it is not among them yet. */
  add(start: number, end: number, hash?: number): number {
    return this.look(this.codes, start, end, hash, true);
  }

  /** In one piece, so that it is not compiled into each of its many callers, for which a cold start would wait. */
  private look(codes: Codes, start: number, end: number, known: number | undefined, adds: boolean): number {
    const { slots, entries, words, codes: own } = this;
    let hash = known ?? 0;
    for (let at = start; known === undefined && at < end; at++) {
      hash = Math.imul(hash ^ codes[at], hashFactor);
    }
    const last = slots.length - 1;
    let slot = (hash ^ (hash >>> 15)) & last; // The last codes have moved the upper bits most.
    for (let word = slots[slot]; word >= 0; word = slots[slot]) {
      const entry = word * entryLength;
      let at = entries[entry + 1];
      if (entries[entry] === hash && entries[entry + 2] - at === end - start) {
        let other = start;
        while (other < end && own[at] === codes[other]) {
          at++;
          other++;
        }
        if (other === end) {
          return word;
        }
      }
      slot = (slot + 1) & last;
    }
    if (!adds) {
      return -1;
    }
    const word = words.length;
    const entry = word * entryLength;
    words.push(this.text.slice(start, end));
    entries[entry] = hash;
    entries[entry + 1] = start;
    entries[entry + 2] = end;
    entries[entry + 3] = slot;
    slots[slot] = word;
    if (words.length * 2 === slots.length) {
      this.slots = new Int32Array(slots.length * 2).fill(-1);
      this.entries = new Int32Array(entries.length * 2);
      this.entries.set(entries);
      for (let moved = 0; moved < entries.length; moved += entryLength) {
        let free = (entries[moved] ^ (entries[moved] >>> 15)) & (this.slots.length - 1);
        while (this.slots[free] >= 0) {
          free = (free + 1) & (this.slots.length - 1);
        }
        this.entries[moved + 3] = free;
        this.slots[free] = moved / entryLength;
      }
    }
    return word;
  }
}

const entryLength = 4;

/** The hash of no code is 0; with each code it becomes `Math.imul(hash ^ code, hashFactor)`. */
export const hashFactor = 0x01000193;
