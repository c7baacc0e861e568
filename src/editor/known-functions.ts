import { type FunctionDefinition, mathematics, measurement, type Program } from '../language';

/** The functions that every sheet has. */
const plain: ReadonlyMap<string, FunctionDefinition> = new Map(
  [...mathematics, ...measurement].map((definition): [string, FunctionDefinition] => [definition.name, definition]),
);

/** A function that a cell can call by this name, of the trade or of plain mathematics. */
export const functionNamed = ({ library }: Program, name: string): FunctionDefinition | undefined =>
  library.functions.get(name) ?? plain.get(name);

/** Every function that a cell can call, those of the trade first. */
export const functionsOf = ({ library }: Program): FunctionDefinition[] => [
  ...library.functions.values(),
  ...[...plain.values()].filter(({ name }) => !library.functions.has(name)),
];
