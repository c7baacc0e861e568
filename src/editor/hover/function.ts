import { functionDetails, functionPage } from '../../display';
import type { Parameter, ParameterType, Program } from '../../language';
import { functionNamed } from '../known-functions';
import { escaped } from '../markdown';

/** A function's reference page. */
export function functionPageOf(program: Program, name: string): string | undefined {
  const definition = functionNamed(program, name);
  return definition && functionPage(definition);
}

/** The same without its name and summary, for where they stand beside it. */
export function functionDetailsOf(program: Program, name: string): string | undefined {
  const definition = functionNamed(program, name);
  return definition && functionDetails(definition);
}

/** What a function wants for one of its parameters. */
export function parameterPage(program: Program, name: string, parameter: string): string | undefined {
  const found = functionNamed(program, name)?.parameters;
  const wanted = found && Object.hasOwn(found, parameter) ? found[parameter] : undefined;
  return wanted && `**${escaped(parameter)}** of \`${name}\`: ${escaped(wanted.meaning)}\n\n${accepted(wanted)}`;
}

/** One sentence: what may be written, and what is taken when nothing is. */
export function accepted(parameter: Parameter): string {
  const left = parameter.default !== undefined ? ` Left out: ${shownDefault(parameter)}.` : '';
  const may = parameter.optional ? ' May be left out.' : '';
  return `Takes ${typeText(parameter)}.${left}${may}`;
}

function shownDefault(parameter: Parameter): string {
  if (typeof parameter.default === 'boolean') {
    return parameter.default ? 'yes' : 'no';
  }
  return 'unit' in parameter ? `${parameter.default} ${parameter.unit}`.trim() : String(parameter.default);
}

function typeText(type: ParameterType): string {
  if ('unit' in type) {
    return type.unit === '' ? 'a plain number' : `a quantity in ${type.unit} or any unit of its kind`;
  }
  if ('units' in type) {
    return `a quantity in ${type.units.join(' or ')}`;
  }
  if ('choice' in type) {
    return `one of ${type.choice.map((word) => `\`${word}\``).join(', ')}`;
  }
  if ('yesNo' in type) {
    return '`yes` or `no`';
  }
  if ('object' in type) {
    return type.object.described;
  }
  if ('items' in type) {
    return type.items === 'any' ? 'values or a list' : 'answers of yes or no';
  }
  return 'listOf' in type ? `a list, each item ${typeText(type.listOf)}` : 'a text in double quotes';
}
