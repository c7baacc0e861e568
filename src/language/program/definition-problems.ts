import type { Diagnostic, RelatedPlace } from '../../text';
import type { Name, Statement } from '../checking/binding';
import { spanOf, textOf } from '../syntax/tree';

/** The place of the name that a statement defines, or of the statement where it defines none. */
function placeOf(statement: Statement, name?: Name) {
  const { tree } = statement.cell;
  const nodes = statement.nameNodes;
  return spanOf(tree, nodes.find((node) => !name || textOf(tree, node) === name.text) ?? nodes[0] ?? statement.node);
}

const related = (from: Statement, statement: Statement, message: string, name?: Name): RelatedPlace => ({
  ...(statement.cell === from.cell ? {} : { cell: statement.cell.id }),
  span: placeOf(statement, name),
  message,
});

/** Of many that go together, the first ones are told. */
const toldMembers = 6;

/** In an order that does not hang on the history of edits. */
export const inOrder = (statements: Iterable<Statement>): Statement[] =>
  [...statements].sort((a, b) =>
    a.cell.id < b.cell.id ? -1 : a.cell.id > b.cell.id ? 1 : a.index - b.index || a.node - b.node,
  );

/** One report for each name that other statements define, too. */
export function duplicates(statement: Statement): Diagnostic[] {
  return statement.defines
    .filter((name, i) => name.definitions.length > 1 && statement.defines.indexOf(name) === i)
    .map((name) => ({
      code: 'duplicate-name',
      severity: 'error',
      span: placeOf(statement, name),
      message: `\`${name.text}\` is defined more than once, so it is not clear which one counts. Rename or remove all but one.`,
      related: name
        .ordered(inOrder)
        .slice(0, toldMembers + 1)
        .filter((other) => other !== statement)
        .slice(0, toldMembers)
        .map((other) => related(statement, other, `\`${name.text}\` is defined here, too.`, name)),
    }));
}

/** The report that a statement needs its own result, with the way round. `circle` is in order. */
export function circular(statement: Statement, circle: readonly Statement[]): Diagnostic {
  const own = statement.defines.map((name) => `\`${name.text}\``).join(', ');
  const others = circle.slice(0, toldMembers + 1).filter((member) => member !== statement);
  const through = others.flatMap((member) => member.defines.map((name) => `\`${name.text}\``));
  const more = circle.length - 1 - others.length;
  const way = `${through.join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
  return {
    code: 'cycle',
    severity: 'error',
    span: placeOf(statement),
    message: `${own} is needed to work out ${own}${through.length > 0 ? `, by way of ${way}` : ''}. Break the circle: give one of them a value of its own.`,
    related: others.map((member) => related(statement, member, 'Part of the circle.')),
  };
}
