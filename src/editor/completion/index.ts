import { showValue } from '../../display';
import type { FunctionDefinition, Parameter, Program, Type } from '../../language';
import { rules } from '../../lints';
import { unitWords } from '../../units';
import type { Completion, CompletionKind, EditedSheet, Nearby, NearbyWanted } from '../contract';
import { accepted, functionDetailsOf } from '../hover/function';
import { fieldMeaning } from '../hover/name';
import { functionNamed, functionsOf } from '../known-functions';
import { verbatim } from '../markdown';
import { contextAt, type Wanted } from './context';
import { fileContextAt } from './file-context';
import { canBeginStatement, type Snippet, snippets } from './snippets';

/** What may stand at an offset of a cell, the likeliest first. */
export function completionsAt(
  { program }: EditedSheet,
  cell: string,
  offset: number,
  nearby: Nearby = {},
): Completion[] {
  const tree = program.tree(cell);
  if (tree === undefined) {
    return [];
  }
  const { wanted, replaces } = contextAt(tree.text, offset, program.library.vocabulary);
  const begins = wanted.kind === 'expression' && canBeginStatement(tree, offset);
  return [...offers(program, wanted, nearby), ...(begins ? snippets.map(asOffer) : [])].map((offer) => ({
    ...offer,
    text: offer.text ?? offer.label,
    replaces,
  }));
}

/** What a host is to find out before it asks for completions; undefined where the sheet itself tells all. */
export function nearbyWanted({ program }: EditedSheet, cell: string, offset: number): NearbyWanted | undefined {
  const wanted = fileContextAt(program.tree(cell)?.text ?? '', offset)?.wanted;
  return wanted && (wanted.kind === 'file' ? { what: wanted.what } : { namesIn: wanted.file });
}

type Offer = Omit<Completion, 'text' | 'replaces'> & { readonly text?: string };

function* offers(program: Program, wanted: Wanted, nearby: Nearby): Generator<Offer> {
  switch (wanted.kind) {
    case 'nothing':
      return;
    case 'file':
      yield* [...(nearby.files ?? [])].sort(byDepth).map((file) => offer('file', file));
      return;
    case 'name of sheet':
      yield* (nearby.names ?? [])
        .filter(({ name }) => !wanted.said.includes(name))
        .map(({ name, text }) => offer('name', name, text));
      return;
    case 'lint':
      yield* rules.map((rule) => offer('word', rule.id, rule.summary));
      return;
    case 'conductor word': {
      const words = [...program.library.vocabulary.designationWords];
      yield* words.filter((word) => !wanted.said.includes(word)).map((word) => offer('word', word));
      return;
    }
    case 'unit':
      yield* units();
      return;
    case 'member':
      yield* fields(program, wanted.of);
      return;
    case 'parameter':
      yield* parameters(functionNamed(program, wanted.function), wanted.said);
      if (!wanted.form) {
        yield* names(program);
        yield* functions(program);
      }
      return;
    case 'argument': {
      const definition = functionNamed(program, wanted.function);
      yield* choices(own(definition?.parameters, wanted.parameter));
      yield* names(program);
      yield* functions(program);
      return;
    }
    case 'expression':
      yield* names(program);
      yield* functions(program);
      yield* (wanted.startsLine ? statementWords : expressionWords).map((word) => offer('keyword', word));
  }
}

const asOffer = ({ prefix, description, body }: Snippet): Offer => ({
  ...offer('snippet', prefix, description),
  page: verbatim(
    body.join('\n').replace(/\$\{\d+(?::([^}]*)|\|([^,|]*)[^}]*)\}/g, (_, text = '', first = '') => text || first),
  ),
  text: body.join('\n'),
});

const statementWords = ['check', 'solve', 'input', 'use', 'allow'];

/** Files of the sheet's own folder stand first. */
const byDepth = (a: string, b: string): number => a.split('/').length - b.split('/').length || a.localeCompare(b);
const expressionWords = ['in', 'if', 'yes', 'no', 'and', 'or', 'not'];

const offer = (kind: CompletionKind, label: string, detail?: string): Offer => ({ kind, label, detail });

function* names(program: Program): Generator<Offer> {
  for (const { name, result } of program.names().values()) {
    const value = result?.value;
    yield offer('name', name, value && value.kind !== 'record' ? showValue(value) : undefined);
  }
}

function* functions(program: Program): Generator<Offer> {
  for (const { name, summary } of functionsOf(program)) {
    yield { ...offer('function', name, summary), page: functionDetailsOf(program, name) };
  }
}

function* parameters(definition: FunctionDefinition | undefined, said: readonly string[]): Generator<Offer> {
  for (const [name, parameter] of Object.entries(definition?.parameters ?? {})) {
    if (!said.includes(name)) {
      const { meaning } = parameter;
      yield { kind: 'parameter', label: name, detail: meaning, page: accepted(parameter), text: `${name}: ` };
    }
  }
}

function choices(parameter: Parameter | undefined): Offer[] {
  if (parameter && 'choice' in parameter) {
    return parameter.choice.map((word) => offer('word', word, parameter.meaning));
  }
  return parameter && 'yesNo' in parameter
    ? ['yes', 'no'].map((word) => offer('keyword', word, parameter.meaning))
    : [];
}

function* fields(program: Program, name: string): Generator<Offer> {
  const type: Type | undefined = program.name(name)?.type;
  if (type?.kind === 'record') {
    for (const field of type.fields.keys()) {
      yield offer('field', field, fieldMeaning(program, name, field));
    }
  }
  if (type?.kind === 'schedule') {
    for (const column of type.columns.keys()) {
      yield offer('field', column, `all values of the column ${column}`);
    }
  }
}

/** Units as they are shown, each once; those of the trade's daily work before the rest. */
function* units(): Generator<Offer> {
  const seen = new Set<string>();
  for (const symbol of [...daily, ...[...unitWords.values()].map((word) => word.symbol)]) {
    const word = unitWords.get(symbol);
    if (!seen.has(symbol)) {
      seen.add(symbol);
      yield offer('unit', symbol, word?.powerOfTen === 0 ? word.unit.name : undefined);
    }
  }
}

const daily = ['V', 'A', 'Ω', 'W', 'kW', 'VA', 'kVA', 'ft', 'm', '%', '°C', 'AWG', 'kcmil', 'mm²', 'hp', 'Ω/kft'];

/** A parameter by its name, and nothing that every object has. */
const own = (parameters: FunctionDefinition['parameters'] | undefined, name: string): Parameter | undefined =>
  parameters && Object.hasOwn(parameters, name) ? parameters[name] : undefined;
