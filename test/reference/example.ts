import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';

/** A figure as its source prints it: text, because the last digit says how precise it is. */
const figure = z.string().regex(/^-?\d+(\.\d+)?(e[+-]?\d+)?$/);

const expectation = z.union([
  /**
   * A number that the source prints. Where ours is another on purpose, `ours` holds it and `why` says why; the test then
   * also holds that the two do differ. `of` asks for a reading's guaranteed limits or its standard uncertainty instead.
   */
  z.strictObject({
    name: z.string(),
    of: z.enum(['limits', 'standard']).optional(),
    published: figure,
    unit: z.string(),
    ours: figure.optional(),
    why: z.string().optional(),
  }),
  /** A number that the source leads to but does not print, worked out beside it. */
  z.strictObject({
    name: z.string(),
    of: z.enum(['limits', 'standard']).optional(),
    computed: figure,
    unit: z.string(),
    why: z.string().optional(),
  }),
  /** A conductor or another thing that is written, not measured. */
  z.strictObject({ name: z.string(), text: z.string() }),
  /** The verdict of the check with that text. */
  z.strictObject({ check: z.string(), verdict: z.enum(['yes', 'no', 'cannot tell']) }),
]);

const exampleShape = z.strictObject({
  id: z.string(),
  /** As the collection that it comes from names it. */
  source: z.string(),
  url: z.string().optional(),
  /** Whether the answer was read in the source, read in part, or is recalled or recomputed. */
  seen: z.enum(['read', 'read in part', 'not read']),
  /** The edition that the source follows. */
  edition: z.string().optional(),
  /** How far the source's own answer holds; field questions only. */
  sound: z.enum(['sound', 'mixed', 'unsound', 'own figures on its method']).optional(),
  /** The situation in a few words, where the sheet does not tell it. */
  about: z.string().optional(),
  /** The edition that the sheet asks for; the newest otherwise. */
  code: z.string().optional(),
  sheet: z.array(z.string()),
  expect: z.array(expectation),
  /** Lints that must speak, and lints that must not. */
  speaks: z.array(z.string()).optional(),
  silent: z.array(z.string()).optional(),
  note: z.string().optional(),
});

const notYetShape = z.strictObject({
  id: z.string(),
  source: z.string(),
  url: z.string().optional(),
  /** The part of the example that is not proved; its other parts are. */
  part: z.string().optional(),
  /** What has to be there first. */
  needs: z.string(),
});

export type Example = z.infer<typeof exampleShape> & {
  /** Name of the file that holds it, without its ending. */
  readonly topic: string;
};
export type Expectation = z.infer<typeof expectation>;
export type NotYet = z.infer<typeof notYetShape>;

const folder = join(__dirname, 'examples');
const parsed = (path: string): unknown => JSON.parse(readFileSync(path, 'utf8'));

/** Every published example that runs, in the order of topics. */
export const examples: readonly Example[] = readdirSync(folder)
  .sort()
  .flatMap((file) => {
    const topic = file.replace(/\.json$/, '');
    return z
      .array(exampleShape)
      .parse(parsed(join(folder, file)))
      .map((example) => ({ ...example, topic }));
  });

/** Every published example, or part of one, that does not run yet. */
export const notYet: readonly NotYet[] = z.array(notYetShape).parse(parsed(join(__dirname, 'not-yet-proved.json')));

/** The collections of published answers, by what their ids look like, and how many answers each has. */
export const collections: readonly { readonly name: string; readonly id: RegExp; readonly answers: number }[] = [
  { name: 'worked examples, physics', id: /^phys-/, answers: 44 },
  { name: 'worked examples, code', id: /^code-/, answers: 54 },
  { name: 'worked examples, general', id: /^[A-Z0-9]{2,5}-\d\d$/, answers: 71 },
  { name: 'questions from the field', id: /^F\d\d$/, answers: 45 },
];
