import { type Conductor, conductorText, conductorType, type TradeSettings } from '../../../functions';
import { children, Node, type Program, type SyntaxTree, textOf, type Value } from '../../../language';
import { escaped } from '../../markdown';
import { acTable } from './ac-table';
import { ampacityTable } from './ampacity-table';
import { nextSizes } from './next-sizes';
import { resistanceTable } from './resistance-table';
import { sizeLines } from './size-lines';

/** The conductor that a designation in the text names, whatever becomes of the line around it. */
export function conductorWritten({ library }: Program, tree: SyntaxTree, designation: number): Conductor | undefined {
  const [size, ...words] = children(tree, designation);
  if (size === undefined || tree.kinds[size] !== Node.Size) {
    return undefined;
  }
  const read = library.designation.read(
    textOf(tree, size),
    words.filter((word) => tree.kinds[word] === Node.Word).map((word) => textOf(tree, word)),
  );
  return 'problem' in read ? undefined : (read.value as Conductor);
}

/** The conductor that a value is; undefined for any other value. */
export const conductorOf = (value: Value | undefined): Conductor | undefined =>
  value?.kind === 'object' && value.object === conductorType ? (value.value as Conductor) : undefined;

/** All that the tables tell of a conductor, each part with the table that it stands in. */
export function conductorPage(program: Program, conductor: Conductor): string {
  const { tables } = program.library.settings as TradeSettings;
  const stranding = conductor.strandingGiven ? '' : `, taken as ${conductor.stranding}: solid or stranded is not said`;
  return [
    `**${escaped(conductorText(conductor))}**${stranding}`,
    resistanceTable(program, conductor),
    acTable(tables, conductor),
    ampacityTable(tables, conductor) || nextSizes(tables, conductor),
    ...sizeLines(tables, conductor),
  ]
    .filter((part) => part !== '')
    .join('\n\n');
}
