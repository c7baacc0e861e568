import type { FunctionDefinition, Library, ResultType } from '../library';
import type { Type } from './type';
import { booleanType, listOf, ownUnit, textType, writtenIn } from './types';

const results = { US: new WeakMap<FunctionDefinition, Type>(), SI: new WeakMap<FunctionDefinition, Type>() };

/** What a library function gives; one object for each function, so that dependants see whether it changed. */
export function resultTypeOf(definition: FunctionDefinition, system: Library['system']): Type {
  let type = results[system].get(definition);
  if (!type) {
    const { result } = definition;
    type =
      'record' in result
        ? {
            kind: 'record',
            name: definition.name,
            fields: new Map(Object.entries(result.record).map(([name, field]) => [name, typeOfResult(field, system)])),
          }
        : typeOfResult(result, system);
    results[system].set(definition, type);
  }
  return type;
}

function typeOfResult(result: ResultType, system: Library['system']): Type {
  if ('unit' in result) {
    return writtenIn(ownUnit(system === 'SI' ? (result.unitSI ?? result.unit) : result.unit));
  }
  if ('choice' in result) {
    return { kind: 'choice', words: result.choice };
  }
  if ('object' in result) {
    return { kind: 'object', object: result.object };
  }
  return 'listOf' in result ? listOf(typeOfResult(result.listOf, system)) : 'text' in result ? textType : booleanType;
}
