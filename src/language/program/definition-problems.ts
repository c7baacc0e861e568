import type { Diagnostic, RelatedPlace } from '../../text';
import type { Name, Statement } from '../checking/binding';
import { spanOf } from '../syntax/tree';

/** The place of the name that a statement defines, or of the statement where it defines none. */
function placeOf(statement: Statement) {
  const { tree } = statement.cell;
  const { nameNode } = statement;
  return spanOf(tree, nameNode < 0 ? statement.node : nameNode);
}

const related = (from: Statement, statement: Statement, message: string): RelatedPlace => ({
  ...(statement.cell === from.cell ? {} : { cell: statement.cell.id }),
  span: placeOf(statement),
  message,
});

/** Of many that go together, the first ones are told. */
const toldMembers = 6;

/** In an order that does not hang on the history of edits. */
export const inOrder = (statements: Iterable<Statement>): Statement[] =>
  [...statements].sort((a, b) =>
    a.cell.id < b.cell.id ? -1 : a.cell.id > b.cell.id ? 1 : a.index - b.index || a.node - b.node,
  );

/** The report that other statements define the name of one, too. */
export function duplicate(statement: Statement, name: Name): Diagnostic {
  return {
    code: 'duplicate-name',
    severity: 'error',
    span: placeOf(statement),
    message: `\`${name.text}\` is defined more than once, so it is not clear which one counts. Rename or remove all but one.`,
    related: name
      .ordered(inOrder)
      .slice(0, toldMembers + 1)
      .filter((other) => other !== statement)
      .slice(0, toldMembers)
      .map((other) => related(statement, other, `\`${name.text}\` is defined here, too.`)),
  };
}

const nameIn = ({ defines }: Statement): string[] => (defines ? [`\`${defines.text}\``] : []);

/** The report that a statement needs its own result, with the way round. `circle` is in order. */
export function circular(statement: Statement, circle: readonly Statement[]): Diagnostic {
  const own = nameIn(statement).join();
  const others = circle.slice(0, toldMembers + 1).filter((member) => member !== statement);
  const through = others.flatMap(nameIn);
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
