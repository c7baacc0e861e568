/** A key of the front matter as it stands in a title block: `make_safe` is `Make safe`. */
export function labelOf(key: string): string {
  const label = key.replace(/[_-]+/g, ' ').trim();
  return label.charAt(0).toUpperCase() + label.slice(1);
}

/** The key of the front matter that fills a section of this title. */
export const keyOf = (title: string): string => title.toLowerCase().replace(/[^a-z]+/g, '_');
