/** What only the whole sheet tells. Each answer holds for one state of the sheet. */
export interface SheetView {
  /** True when the sheet states the accuracy of a meter: it is no mere sketch. */
  statesMeters(): boolean;
  /** True when a field, a remark or the prose says that what was measured was isolated or proved dead. */
  recordsIsolation(): boolean;
  /** True when these words stand anywhere in its cells: where they do not, there is nothing to look for. */
  mentions(words: RegExp): boolean;
  /** True when it works something out, and does not only state values for other sheets to take. */
  worksOut(): boolean;
  /** True when the language finds no error in it: what is unused or missing is then meant so. */
  isSound(): boolean;
  /** True when the name is used in a cell, in live prose, or by another statement. */
  uses(name: string): boolean;
  /** True when one place alone uses the name. */
  usesOnce(name: string): boolean;
}

/** The words that are looked for, or the question in words. */
export type QuestionKey = string | RegExp;

/** One question that was put to the sheet, and its answer then. */
export interface Asked {
  readonly again: (sheet: SheetView) => boolean;
  readonly answer: boolean;
  /** Tells this question from every other one. */
  readonly key: QuestionKey;
  /** For a question about the uses of a name: no edit that leaves those alone changes the answer. */
  readonly name?: string;
}

/** The same view, noting what is asked of it, each question once by its key. */
export function askedOf(sheet: SheetView, asked: Map<QuestionKey, Asked>): SheetView {
  const noting = (key: QuestionKey, again: Asked['again'], name?: string): boolean => {
    let known = asked.get(key);
    if (!known) {
      known = { again, answer: again(sheet), key, name };
      asked.set(key, known);
    }
    return known.answer;
  };
  return {
    statesMeters: () => noting('statesMeters', (view) => view.statesMeters()),
    recordsIsolation: () => noting('recordsIsolation', (view) => view.recordsIsolation()),
    mentions: (words) => noting(words, (view) => view.mentions(words)),
    worksOut: () => noting('worksOut', (view) => view.worksOut()),
    isSound: () => noting('isSound', (view) => view.isSound()),
    uses: (name) => noting(`uses ${name}`, (view) => view.uses(name), name),
    usesOnce: (name) => noting(`usesOnce ${name}`, (view) => view.usesOnce(name), name),
  };
}
