import { type GivenSheet, noOtherSheets, type OtherSheets } from '../../../src/language';
import { smallLibrary } from '../small-library';

/** Other sheets of one cell each, by name. The sheet worked on is `main`. */
export class GivenSheets implements OtherSheets {
  readonly path = 'main';
  private readonly texts = new Map<string, string>();
  private readonly made = new Map<string, GivenSheet>();

  constructor(texts: Readonly<Record<string, string>>) {
    for (const [name, text] of Object.entries(texts)) {
      this.set(name, text);
    }
  }

  set(name: string, text: string): void {
    if (this.texts.get(name) !== text) {
      this.texts.set(name, text);
      this.made.delete(name);
    }
  }

  rows = noOtherSheets.rows;

  find = (file: string) => ({ path: file });

  open(path: string): ReturnType<OtherSheets['open']> {
    const text = this.texts.get(path);
    if (text === undefined) {
      return { problem: { code: 'missing-file', message: `"${path}" is not there.` } };
    }
    const known = this.made.get(path);
    const sheet: GivenSheet = known ?? {
      path,
      library: smallLibrary,
      cells: [{ id: `${path}#0`, text }],
      place: (_, { start }) => ({ path, line: text.slice(0, start).split('\n').length }),
    };
    this.made.set(path, sheet);
    return sheet;
  }
}
