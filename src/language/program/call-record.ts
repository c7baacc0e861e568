import type { WatchedCall } from '../evaluation/watch';
import type { ArgumentRecord, CallRecord } from '../program';
import { spanOf } from '../syntax/tree';

/** A watched call as lints read it. */
export function callRecord({ site, facts, arguments: given, result }: WatchedCall): CallRecord {
  const { call, meaning } = site;
  const { tree, cell } = meaning;
  return {
    function: call.definition.name,
    cell,
    span: spanOf(tree, call.node),
    nameSpan: spanOf(tree, call.nameNode),
    arguments: new Map(
      given.map(({ name, value, given: written, node }): [string, ArgumentRecord] => [
        name,
        { value, given: written, span: spanOf(tree, node) },
      ]),
    ),
    result,
    facts,
    node: meaning.writtenNode(call.node),
  };
}
