import { nearest, setInputs } from '../../core';
import type { Source } from '../files';
import { WrongCommandLine } from '../wrong-command-line';

/** The sources with inputs set. A name that none of them declares, or a value that does not fit, is a slip on the command line. */
export function withInputs(sources: readonly Source[], values: ReadonlyMap<string, string>): readonly Source[] {
  if (values.size === 0) {
    return sources;
  }
  const declared = new Set<string>();
  const set = sources.map((source) => {
    if ('problem' in source) {
      return source;
    }
    const { bytes, inputs, problems } = setInputs(source.bytes, values);
    for (const name of inputs) {
      declared.add(name);
    }
    for (const [name, problem] of problems) {
      throw new WrongCommandLine(`--set ${name}: ${problem}`);
    }
    return { name: source.name, bytes };
  });
  const unknown = [...values.keys()].find((name) => !declared.has(name));
  if (unknown !== undefined && sources.some((source) => 'bytes' in source)) {
    const near = nearest(unknown, declared);
    const known =
      declared.size > 0 ? `Inputs are: ${[...declared].join(', ')}.` : 'No `input` line is in these sheets.';
    throw new WrongCommandLine(
      `--set ${unknown}: no input of that name. ${near ? `Did you mean \`${near}\`?` : known}`,
    );
  }
  return set;
}
