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
  /** Where each word stood first. */
  private starts = new Int32Array(32);
  private ends = new Int32Array(32);
  private hashes = new Int32Array(32);
  /** The slot of each word. */
  private homes = new Int32Array(32);
  /** The word in each slot. One left from before `begin` is told by its word not being at home there. */
  private slots = new Int32Array(64);
  private free = 0;

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
   * Forgets all words, in a time that does not hang on how many there were, and takes those of another text from now on;
   * `words` is a new array then. `codes` are the text's, and stay so as long as words of it are added or looked for.
   */
  begin(text: string, codes: Codes): void {
    this.words = [];
    this.text = text;
    this.codes = codes;
  }

  /** The number of the word at `start` … `end` of any text; -1 when it is not among them, and `free` is its slot. */
  find(codes: Codes, start: number, end: number, hash = hashOf(codes, start, end)): number {
    const { slots, homes, hashes, starts, ends, codes: own } = this;
    const count = this.words.length;
    const last = slots.length - 1;
    let slot = (hash ^ (hash >>> 15)) & last; // The last codes have moved the upper bits most.
    for (;;) {
      const word = slots[slot];
      if (word >= count || homes[word] !== slot) {
        this.free = slot;
        return -1;
      }
      if (hashes[word] === hash) {
        let at = starts[word];
        let other = start;
        while (other < end && at < ends[word] && own[at] === codes[other]) {
          at++;
          other++;
        }
        if (other === end && at === ends[word]) {
          return word;
        }
      }
      slot = (slot + 1) & last;
    }
  }

  /** The number of the word at `start` … `end` of the table's own text, a new one where it is not among them yet. */
  add(start: number, end: number, hash = hashOf(this.codes, start, end)): number {
    if (this.words.length === this.homes.length) {
      this.grow();
    }
    const known = this.find(this.codes, start, end, hash);
    if (known >= 0) {
      return known;
    }
    const word = this.words.push(this.text.slice(start, end)) - 1;
    this.starts[word] = start;
    this.ends[word] = end;
    this.hashes[word] = hash;
    this.homes[word] = this.free;
    this.slots[this.free] = word;
    return word;
  }

  private grow(): void {
    const { length } = this.words;
    this.starts = longer(this.starts);
    this.ends = longer(this.ends);
    this.hashes = longer(this.hashes);
    this.homes = new Int32Array(length * 2).fill(-1); // None is at home until it is put there again.
    this.slots = new Int32Array(length * 4);
    const last = this.slots.length - 1;
    for (let word = 0; word < length; word++) {
      let slot = (this.hashes[word] ^ (this.hashes[word] >>> 15)) & last;
      while (this.homes[this.slots[slot]] === slot) {
        slot = (slot + 1) & last;
      }
      this.homes[word] = slot;
      this.slots[slot] = word;
    }
  }
}

function longer(array: Int32Array): Int32Array<ArrayBuffer> {
  const made = new Int32Array(array.length * 2);
  made.set(array);
  return made;
}

/** The hash of no code is 0; with each code it becomes `Math.imul(hash ^ code, hashFactor)`. */
export const hashFactor = 0x01000193;

function hashOf(codes: Codes, start: number, end: number): number {
  let hash = 0;
  for (let at = start; at < end; at++) {
    hash = Math.imul(hash ^ codes[at], hashFactor);
  }
  return hash;
}
