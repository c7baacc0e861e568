import { dataTables } from './data-tables';
import { bullets, type Part, paragraph, type ReportDocument, type Section } from './document';
import type { ReportInput } from './input';
import { labelOf } from './labels';
import {
  assumptionParts,
  bannersOf,
  basisParts,
  cautionParts,
  checksParts,
  circuitParts,
  findingsParts,
  givenParts,
  readingsParts,
  signatureParts,
  sourceParts,
} from './made-parts';
import { type MadePart, type Shape, type ShapeSection, shapeOf } from './shape';
import { detailPart, firstHeading, headed, type SheetSection, sheetSections } from './sheet-sections';
import { takeoffOf } from './takeoff';
import { takeoffParts } from './takeoff-parts';

/** Puts a sheet's report together: the sections of its shape, filled from the sheet's prose and results. */
export function buildReport(input: ReportInput): ReportDocument {
  const { frontMatter } = input;
  const shape = shapeOf(frontMatter.report);
  const title = frontMatter.title ?? firstHeading(input.cells) ?? shape.kind;
  const details = input.details.map(([key, text]) => ({ label: labelOf(key), text, used: false }));
  const written = sheetSections(input.cells, frontMatter.title, input.pictures).filter(
    ({ parts, title: name }) => parts.length > 0 || name,
  );
  const placed = placeSections(shape, written, details);
  const absent = shape.sections.filter((section) => section.expected && !placed.has(section));
  const takeoff = takeoffOf(input);
  const parts: Readonly<Record<MadePart, () => Part[]>> = {
    basis: () => basisParts(input),
    readings: () => readingsParts(input),
    given: () => givenParts(input),
    calculation: () => remaining(written, placed).flatMap(headed),
    circuits: () => circuitParts(input),
    takeoff: () => (isForOrdering(input) ? takeoffParts(takeoff) : []),
    checks: () => checksParts(input),
    findings: () => findingsParts(input),
    assumptions: () => assumptionParts(input),
    'not checked': () => notChecked(input, absent),
    cautions: () => cautionParts(input),
    sources: () => sourceParts(input),
    signatures: () => signatureParts(input),
  };
  const sections = shape.sections.flatMap((section): Section[] => {
    const filled = section.made ? parts[section.made]() : (placed.get(section) ?? []);
    return filled.length > 0 ? [{ title: section.title, parts: filled }] : [];
  });
  const { date, revision, prepared_by } = frontMatter;
  return {
    kind: shape.kind,
    title,
    fields: titleBlock(
      input,
      details.filter((detail) => !detail.used),
    ),
    ...(date && { date }),
    ...(revision && { revision }),
    ...(prepared_by && { author: prepared_by }),
    paper: frontMatter.units === 'SI' ? 'A4' : 'letter',
    banners: bannersOf(input),
    sections,
    data: dataTables(input, takeoff),
  };
}

/** A schedule is there to order by; other papers list quantities where the sheet asks for them. */
const isForOrdering = ({ frontMatter, details }: ReportInput): boolean =>
  frontMatter.report === 'circuit schedule' || details.some(([key]) => key === 'takeoff' || key === 'waste');

interface Detail {
  readonly label: string;
  readonly text: string;
  used: boolean;
}

/** What the sheet wrote for each section of the shape: text under a heading of its name, or a front matter key. */
function placeSections(
  shape: Shape,
  written: readonly SheetSection[],
  details: readonly Detail[],
): Map<ShapeSection, Part[]> {
  const placed = new Map<ShapeSection, Part[]>();
  const taken = new Set<SheetSection>();
  for (const section of shape.sections) {
    const { heading } = section;
    if (!heading) {
      continue;
    }
    const found = written.filter((candidate) => !taken.has(candidate) && heading.test(candidate.title));
    const stated = details.filter((detail) => !detail.used && heading.test(detail.label));
    const parts = [...stated.map(({ text }) => detailPart(text)), ...found.flatMap((one) => one.parts)];
    for (const one of found) {
      taken.add(one);
    }
    for (const detail of stated) {
      detail.used = true;
    }
    const opening = section.title === shape.opening && written[0]?.title === '' ? written[0] : undefined;
    if (opening) {
      parts.unshift(...openingText(opening));
    }
    if (parts.length > 0) {
      placed.set(section, parts);
    }
  }
  return placed;
}

/** The sheet's first words, up to its first calculation: they say what it is about. */
const openingText = ({ parts }: SheetSection): Part[] => parts.slice(0, proseEnd(parts));

const proseEnd = (parts: readonly Part[]): number => {
  const end = parts.findIndex(({ kind }) => !proseKinds.has(kind));
  return end < 0 ? parts.length : end;
};

const proseKinds: ReadonlySet<Part['kind']> = new Set(['paragraph', 'list', 'quote', 'picture']);

/** What no section of the shape took, in the sheet's order. */
function remaining(
  written: readonly SheetSection[],
  placed: ReadonlyMap<ShapeSection, readonly Part[]>,
): SheetSection[] {
  const taken = new Set([...placed.values()].flat());
  return written.flatMap((section) => {
    const parts = section.parts.filter((part) => !taken.has(part));
    return parts.length > 0 ? [{ ...section, parts }] : [];
  });
}

function titleBlock({ frontMatter, edition }: ReportInput, details: readonly Detail[]): [string, string][] {
  const { project, date, revision, prepared_by, checked_by, code } = frontMatter;
  return [
    ['Project', project ?? ''],
    ...details.map(({ label, text }): [string, string] => [label, text]),
    ['Date', date ?? ''],
    ['Revision', revision ?? ''],
    ['Prepared by', prepared_by ?? ''],
    ['Checked by', checked_by ?? ''],
    ['Code', code ?? `${edition}, assumed: the sheet names no edition`],
  ];
}

function notChecked({ open }: ReportInput, absent: readonly ShapeSection[]): Part[] {
  const items = [...open, ...absent.map(({ title }) => `Nothing is recorded under “${title}”.`)];
  return [
    paragraph(
      'Only what this sheet computes was looked at. Nobody checked by it: workmanship, working space, listing and labels, ' +
        'the condition of what is installed, arc flash, selective coordination, or loads that the sheet does not name.',
    ),
    ...(items.length > 0 ? [bullets(items)] : []),
  ];
}
