/**
 * Distinct words by number, looked up where they stand in a longer text: to cut each out of the text first would cost
 * more than the look-up itself. Open addressing; `slots` is never more than half full.
 */
export class WordTable {
  /** The words in the order they came. */
  words: string[] = [];
  private hashes = new Int32Array(32);
  /** The slot of each word. */
  private homes = new Int32Array(32);
  /** The word in each slot. One left from before `clear` is told by its word not being at home there. */
  private slots = new Int32Array(64);

  constructor(words: Iterable<string> = []) {
    for (const word of words) {
      this.add(word, 0, word.length);
    }
  }

  /** Forgets all words, in a time that does not hang on how many there were; `words` is a new array from then on. */
  clear(): void {
    this.words = [];
  }

  /** The number of the word at `start` … `end`; -1 when it is not among them. */
  find(text: string, start: number, end: number): number {
    const slot = this.slotFor(text, start, end, hashOf(text, start, end));
    const word = this.slots[slot];
    return this.isAtHome(word, slot) ? word : -1;
  }

  /** The number of the word at `start` … `end`, a new one where it is not among them yet. */
  add(text: string, start: number, end: number): number {
    if (this.words.length === this.homes.length) {
      this.grow();
    }
    const hash = hashOf(text, start, end);
    const slot = this.slotFor(text, start, end, hash);
    const known = this.slots[slot];
    if (this.isAtHome(known, slot)) {
      return known;
    }
    const word = this.words.push(text.slice(start, end)) - 1;
    this.hashes[word] = hash;
    this.homes[word] = slot;
    this.slots[slot] = word;
    return word;
  }

  /** The slot that holds the word, or the free one where it belongs. */
  private slotFor(text: string, start: number, end: number, hash: number): number {
    const { slots, hashes, words } = this;
    const last = slots.length - 1;
    let slot = hash & last;
    for (;;) {
      const word = slots[slot];
      if (!this.isAtHome(word, slot) || (hashes[word] === hash && isSame(words[word], text, start, end))) {
        return slot;
      }
      slot = (slot + 1) & last;
    }
  }

  private isAtHome(word: number, slot: number): boolean {
    return word < this.words.length && this.homes[word] === slot;
  }

  private grow(): void {
    const { words, homes } = this;
    const hashes = new Int32Array(words.length * 2);
    hashes.set(this.hashes);
    this.hashes = hashes;
    this.homes = new Int32Array(words.length * 2).fill(-1); // None is at home until it is put there again.
    this.slots = new Int32Array(words.length * 4);
    const last = this.slots.length - 1;
    for (let word = 0; word < homes.length; word++) {
      let slot = hashes[word] & last;
      while (this.isAtHome(this.slots[slot], slot)) {
        slot = (slot + 1) & last;
      }
      this.homes[word] = slot;
      this.slots[slot] = word;
    }
  }
}

function hashOf(text: string, start: number, end: number): number {
  let hash = end - start;
  for (let at = start; at < end; at++) {
    hash = (Math.imul(hash, 31) + text.charCodeAt(at)) | 0;
  }
  // The low bits choose the slot; words that count up (`i1`, `i2`) would otherwise crowd neighbouring ones.
  return hash ^ (hash >>> 15);
}

function isSame(word: string, text: string, start: number, end: number): boolean {
  if (word.length !== end - start) {
    return false;
  }
  for (let i = 0; i < word.length; i++) {
    if (word.charCodeAt(i) !== text.charCodeAt(start + i)) {
      return false;
    }
  }
  return true;
}
