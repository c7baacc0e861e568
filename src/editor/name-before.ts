const partOfName = /[\p{L}\p{N}_]/u;
const startOfName = /[\p{L}_]/u;

/** The name that ends at an offset; undefined where none does. Looks at no more of the text than that name. */
export function nameBefore(text: string, end: number): string | undefined {
  let start = end;
  while (start > 0 && partOfName.test(characterBefore(text, start))) {
    start -= characterBefore(text, start).length;
  }
  const name = text.slice(start, end);
  const from = name.search(startOfName);
  return from < 0 ? undefined : name.slice(from);
}

/** Two codes for one beyond the basic plane. */
function characterBefore(text: string, end: number): string {
  const code = text.charCodeAt(end - 1);
  return code >= 0xdc00 && code < 0xe000 ? text.slice(end - 2, end) : text[end - 1];
}
