/** A formula's stretches between equals signs that stand in no bracket, where a line may break. */
export function sidesOf(latex: string): string[] {
  const sides: string[] = [];
  let depth = 0;
  let from = 0;
  for (let i = 0; i < latex.length; i++) {
    if (latex[i] === '\\') {
      depth += latex.startsWith('\\left', i) && /^\\left[^a-z]/.test(latex.slice(i, i + 6)) ? 1 : 0;
      depth -= latex.startsWith('\\right', i) && /^\\right[^a-z]/.test(latex.slice(i, i + 7)) ? 1 : 0;
      i++; // An escaped brace holds nothing together.
    } else if (latex[i] === '{') {
      depth++;
    } else if (latex[i] === '}') {
      depth--;
    } else if (depth === 0 && latex.startsWith(' = ', i)) {
      sides.push(latex.slice(from, i));
      from = i + 3;
    }
  }
  return [...sides, latex.slice(from)];
}
