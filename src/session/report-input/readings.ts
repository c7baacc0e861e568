import { showValue } from '../../display';
import {
  children,
  Node,
  nodesBelow,
  type Program,
  type StatementResult,
  type SyntaxTree,
  spanOf,
  textOf,
  type Value,
} from '../../language';
import type { ReportGiven, ReportReading } from '../../report';
import type { Span } from '../../text';
import { dimensionOf } from '../../units';
import type { LineAt } from './index';

/** Every reading that states its limits, then what somebody read without stating them. */
export function readingsOf(program: Program, cells: readonly string[], lineAt: LineAt): ReportReading[] {
  const limited = cells.flatMap((cell) => {
    const tree = program.tree(cell);
    return tree ? program.results(cell).flatMap((result) => readingsIn({ program, cell, tree, result, lineAt })) : [];
  });
  const bare = figuresOf(program, cells, lineAt).filter(({ wasRead }) => wasRead);
  return [
    ...limited,
    ...bare.map(({ name, value, remark, line }) => {
      const temperature = temperatureIn(usersOf(program, name));
      return { what: name, value, meter: '', limits: '', temperature, remark, line };
    }),
  ];
}

interface Place {
  readonly program: Program;
  readonly cell: string;
  readonly tree: SyntaxTree;
  readonly result: StatementResult;
  readonly lineAt: LineAt;
}

function readingsIn(place: Place): ReportReading[] {
  const { program, cell, tree, result, lineAt } = place;
  const statement = tree.statements[result.index];
  const readings: ReportReading[] = [];
  if (tree.kinds[statement] === Node.Use) {
    return readings; // A long list of names, and a result for each of them.
  }
  let inside = -1;
  for (const node of nodesBelow(tree, statement)) {
    const isReading =
      tree.kinds[node] === Node.Reading || tree.kinds[node] === Node.PlusMinus || isMeasured(tree, node);
    if (!isReading || tree.starts[node] < inside) {
      continue;
    }
    inside = tree.ends[node];
    const value = program.valueAt(cell, node);
    readings.push({
      what: nameOf(place, statement, node),
      value: writtenValue(tree, node),
      meter: meterOf(program, cell, tree, node),
      limits: limitsText(value),
      temperature: temperatureIn([result, ...usersOf(program, result.name)]),
      remark: result.remark ?? '',
      line: lineAt(cell, tree.starts[node]),
    });
  }
  return readings;
}

const isMeasured = (tree: SyntaxTree, node: number): boolean =>
  tree.kinds[node] === Node.Call && textOf(tree, [...children(tree, node)][0]) === 'measured';

/** The name it is defined as, else the statement's name and the argument that it stands for. */
function nameOf({ result, tree }: Place, statement: number, node: number): string {
  const parts = [...children(tree, statement)];
  if (parts.at(-1) === node || result.name === undefined) {
    return result.name ?? 'reading';
  }
  const argument = [...nodesBelow(tree, statement)].find(
    (candidate) =>
      (tree.kinds[candidate] === Node.Argument || tree.kinds[candidate] === Node.Field) &&
      tree.ends[candidate] === tree.ends[node] &&
      [...children(tree, candidate)].length === 2,
  );
  return argument === undefined
    ? `reading in ${result.name}`
    : `${textOf(tree, [...children(tree, argument)][0])} in ${result.name}`;
}

function writtenValue(tree: SyntaxTree, node: number): string {
  const [first, second] = [...children(tree, node)];
  return tree.kinds[node] === Node.Call ? textOf(tree, [...children(tree, second)].at(-1)!) : textOf(tree, first);
}

function meterOf(program: Program, cell: string, tree: SyntaxTree, node: number): string {
  if (tree.kinds[node] !== Node.Reading) {
    return tree.kinds[node] === Node.Call ? 'stated standard uncertainty' : 'stated limits';
  }
  const name = [...children(tree, node)][1];
  const meter = name === undefined ? undefined : program.valueAt(cell, name);
  return name === undefined
    ? ''
    : textOf(tree, name) + (meter?.kind === 'meter' ? `: ${showValue(meter).replace(/^meter /, '')}` : '');
}

function limitsText(value: Value | undefined): string {
  if (value?.kind !== 'quantity' || value.uncertainty === undefined) {
    return '';
  }
  const { limits, standard, low, high } = value.uncertainty;
  if (!Number.isFinite(low) || !Number.isFinite(high)) {
    return showValue(value);
  }
  const { uncertainty: _, ...plain } = value;
  const half = { ...plain, base: limits ?? 2 * standard };
  return `± ${showValue(half, 2)}`;
}

/** The temperature that a call took for the part that was read; empty when no call uses the reading. */
function temperatureIn(results: readonly StatementResult[]): string {
  const calls = results.flatMap((result) => result.calls());
  for (const { arguments: given } of calls.filter((call) => call.arguments.has('resistance'))) {
    const found = given.get('temperature') ?? given.get('from');
    if (found?.value.kind === 'quantity') {
      return showValue(found.value) + (found.given ? '' : ', assumed');
    }
  }
  return '';
}

function usersOf(program: Program, name: string | undefined): StatementResult[] {
  const info = name === undefined ? undefined : program.name(name);
  return (info?.references ?? []).flatMap(({ cell, span }) => resultsAround(program.results(cell), span));
}

/** The results of the statement around a stretch; results lie in order, and those of one statement beside one another. */
function resultsAround(results: readonly StatementResult[], span: Span): StatementResult[] {
  let low = 0;
  let high = results.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (results[middle].span.end < span.end) {
      low = middle + 1;
    } else {
      high = middle;
    }
  }
  const around: StatementResult[] = [];
  for (let i = low; i < results.length && results[i].span.start <= span.start; i++) {
    around.push(results[i]);
  }
  return around;
}

interface Figure extends ReportGiven {
  /** True for a resistance, and for what its remark calls measured: somebody read it, though no meter is named. */
  readonly wasRead: boolean;
}

/** Names that are defined as a figure and nothing else. */
export const givenValues = (program: Program, cells: readonly string[], lineAt: LineAt): ReportGiven[] =>
  figuresOf(program, cells, lineAt)
    .filter(({ wasRead }) => !wasRead)
    .map(({ wasRead: _, ...given }) => given);

function figuresOf(program: Program, cells: readonly string[], lineAt: LineAt): Figure[] {
  return cells.flatMap((cell) => {
    const tree = program.tree(cell);
    return tree ? program.results(cell).flatMap((result) => figureOf(tree, result, lineAt)) : [];
  });
}

function figureOf(
  tree: SyntaxTree,
  { cell, index, name, remark = '', value }: StatementResult,
  lineAt: LineAt,
): Figure[] {
  const node = tree.statements[index];
  const expression = tree.nextSiblings[tree.firstChildren[node]] ?? -1;
  if (name === undefined || value === undefined || expression < 0 || !isFigure(tree, node, expression)) {
    return [];
  }
  const isResistance = value.kind === 'quantity' && value.type.dimension === ohm;
  const wasRead = isResistance || (value.kind === 'quantity' && /\b(measured|meter|readings?)\b/i.test(remark));
  return [{ name, value: textOf(tree, expression), remark, line: lineAt(cell, spanOf(tree, node).start), wasRead }];
}

/** kg·m²·s⁻³·A⁻² */
const ohm = dimensionOf({ mass: 1, length: 2, time: -3, current: -2 });

const isFigure = (tree: SyntaxTree, statement: number, expression: number): boolean =>
  (tree.kinds[statement] === Node.Definition || tree.kinds[statement] === Node.Input) &&
  figures.has(tree.kinds[expression]);

const figures: ReadonlySet<Node> = new Set([
  Node.Number,
  Node.Quantity,
  Node.Designation,
  Node.Text,
  Node.Yes,
  Node.No,
]);
