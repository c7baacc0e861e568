import type { FunctionDefinition, Parameter, ParameterType, ResultType } from '../language';
import { escapeMarkdown } from './escape';
import { withUnit } from './value';

/** `resistance(conductor, length; temperature: 75 °C)`: named parameters stand behind the semicolon. */
export function functionSignature({ name, parameters }: FunctionDefinition): string {
  const entries = Object.entries(parameters);
  const positional = entries.filter(([, p]) => !p.named).map(([id, p]) => (p.optional ? `${id}?` : id));
  const named = entries.filter(([, p]) => p.named).map(([id, p]) => withDefault(id, p));
  return `${name}(${positional.join(', ')}${named.length > 0 ? `; ${named.join(', ')}` : ''})`;
}

const withDefault = (id: string, parameter: Parameter): string =>
  parameter.default === undefined ? id : `${id}: ${defaultText(parameter)}`;

/** A function's reference page as Markdown: for hovers, the command line and the documents. */
export function functionPage(definition: FunctionDefinition): string {
  const [signature, ...details] = detailsOf(definition);
  return page([`## ${definition.name}`, signature, sentence(definition.summary), ...details]);
}

/** The page without the function's name and summary: for where a host shows them already. */
export const functionDetails = (definition: FunctionDefinition): string => page(detailsOf(definition));

const page = (parts: readonly string[]): string => `${parts.join('\n\n')}\n`;

function detailsOf(definition: FunctionDefinition): string[] {
  const parts = [
    `\`${functionSignature(definition)}\``,
    parameterTable(definition),
    resultPart(definition),
    definition.formula && `Formula: \`${definition.formula}\``,
    bullets('Assumes', definition.assumptions ?? []),
    definition.examples.length > 0 && `Examples:\n\n${definition.examples.map(example).join('\n\n')}`,
    bullets('Sources', definition.sources),
  ];
  return parts.flatMap((part) => part || []);
}

function parameterTable({ parameters }: FunctionDefinition): string {
  const rows = Object.entries(parameters).map(([id, parameter]) => [
    `\`${id}\``,
    typeText(parameter),
    parameter.default !== undefined ? defaultText(parameter) : parameter.optional ? 'may be left out' : 'required',
    escapeMarkdown(parameter.meaning),
  ]);
  return rows.length === 0 ? '' : table(['parameter', 'takes', 'default', 'meaning'], rows);
}

function resultPart({ result }: FunctionDefinition): string {
  if (!('record' in result)) {
    return `Gives ${typeText(result)}: ${escapeMarkdown(result.meaning)}.`;
  }
  const rows = Object.entries(result.record).map(([field, type]) => [
    `\`${field}\``,
    typeText(type),
    escapeMarkdown(type.meaning),
  ]);
  return `Gives a record:\n\n${table(['field', 'is', 'meaning'], rows)}`;
}

function typeText(type: ParameterType | ResultType): string {
  if ('unit' in type) {
    return type.unit === '' ? 'number' : escapeMarkdown(type.unit);
  }
  if ('units' in type) {
    return escapeMarkdown(type.units.join(' or '));
  }
  if ('choice' in type) {
    return type.choice.map((word) => `\`${word}\``).join(', ');
  }
  if ('object' in type) {
    return type.object.described;
  }
  if ('items' in type) {
    return type.items === 'any' ? 'values or a list' : 'answers of yes or no';
  }
  if ('listOf' in type) {
    return `list of ${typeText(type.listOf)}`;
  }
  return 'yesNo' in type ? 'yes or no' : 'text';
}

function defaultText(parameter: Parameter): string {
  if (typeof parameter.default === 'boolean') {
    return parameter.default ? 'yes' : 'no';
  }
  return withUnit(String(parameter.default), { symbol: 'unit' in parameter ? parameter.unit : '' });
}

const example = ({ text, gives }: FunctionDefinition['examples'][number]): string =>
  `\`\`\`kft\n${text}\n\`\`\`\n\ngives ${escapeMarkdown(gives)}`;

const bullets = (title: string, lines: readonly string[]): string =>
  lines.length === 0 ? '' : `${title}:\n\n${lines.map((line) => `- ${escapeMarkdown(line)}`).join('\n')}`;

const sentence = (text: string): string => (/[.!?]$/.test(text) ? escapeMarkdown(text) : `${escapeMarkdown(text)}.`);

const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [head, head.map(() => '---'), ...rows].map((row) => `| ${row.join(' | ')} |`).join('\n');
