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
    // Nothing that is further away than the best one so far can take its place.
    const bound = Math.min(limit, least);
    const distance = word.toLowerCase() === folded ? 0 : editDistance(folded, word.toLowerCase(), bound);
    if (distance < least || (distance === least && distance <= limit && best !== undefined && word < best)) {
      best = word;
      least = distance;
    }
  }
  // One letter says too little about another one letter.
  return best !== undefined && (least === 0 || wanted.length > 1) ? best : undefined;
}

/** The three last rows of distances, kept from call to call. */
let rows = [new Uint16Array(64), new Uint16Array(64), new Uint16Array(64)];

/** Insertions, deletions, replacements and swaps of neighbours; more than `limit` counts as `limit + 1`. */
function editDistance(one: string, other: string, limit: number): number {
  // What both begin and end with costs nothing; names of one sheet are often alike.
  let start = 0;
  let [n, m] = [one.length, other.length];
  while (n > 0 && m > 0 && one.charCodeAt(n - 1) === other.charCodeAt(m - 1)) {
    n--;
    m--;
  }
  while (start < n && start < m && one.charCodeAt(start) === other.charCodeAt(start)) {
    start++;
  }
  [n, m] = [n - start, m - start];
  if (m >= rows[0].length) {
    rows = rows.map(() => new Uint16Array(2 * m + 1));
  }
  let [beforeLast, last, row] = rows;
  for (let j = 0; j <= m; j++) {
    last[j] = j;
  }
  for (let i = 1; i <= n; i++) {
    const a = one.charCodeAt(start + i - 1);
    row[0] = i;
    let least = i;
    for (let j = 1; j <= m; j++) {
      const b = other.charCodeAt(start + j - 1);
      let distance = Math.min(last[j - 1] + (a === b ? 0 : 1), last[j] + 1, row[j - 1] + 1);
      const isSwap = i > 1 && j > 1 && a === other.charCodeAt(start + j - 2) && b === one.charCodeAt(start + i - 2);
      if (isSwap) {
        distance = Math.min(distance, beforeLast[j - 2] + 1);
      }
      row[j] = distance;
      least = Math.min(least, distance);
    }
    if (least > limit) {
      return limit + 1;
    }
    [beforeLast, last, row] = [last, row, beforeLast];
  }
  return last[m];
}
