/** More words are not looked through: a sheet of thousands of names, each misspelt, would take its time squared. */
const most = 1000;

/** The word most like `wanted`, or none when nothing is near. Of equally near ones the first in the alphabet. */
export function nearest(wanted: string, words: Iterable<string>): string | undefined {
  const limit = Math.max(1, Math.floor(wanted.length / 3));
  const folded = wanted.toLowerCase();
  let best: string | undefined;
  let least = limit + 1;
  let looked = 0;
  for (const word of words) {
    if (++looked > most) {
      break;
    }
    if (word === wanted || Math.abs(word.length - wanted.length) > limit) {
      continue;
    }
    const distance = word.toLowerCase() === folded ? 0 : editDistance(folded, word.toLowerCase(), limit);
    if (distance < least || (distance === least && distance <= limit && best !== undefined && word < best)) {
      best = word;
      least = distance;
    }
  }
  // One letter says too little about another one letter.
  return best !== undefined && (least === 0 || wanted.length > 1) ? best : undefined;
}

/** Insertions, deletions, replacements and swaps of neighbours; more than `limit` counts as `limit + 1`. */
function editDistance(a: string, b: string, limit: number): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const replaced = last[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1);
      row[j] = Math.min(replaced, last[j] + 1, row[j - 1] + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
      }
    }
    if (Math.min(...row) > limit) {
      return limit + 1;
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length];
}
