import { subjects } from './subjects';
import { editionLabel, type TableFile } from './table-file';

/** What is served when neither the sheet nor the settings name an edition. */
export const defaultEdition = 'NEC 2023';

/** `NEC 2023`, `nec2023`, `2023` and `NFPA 70-2023` all mean the same; anything else is taken as written. */
export function canonicalEdition(text: string): string {
  const year = /^(?:NEC|NFPA\s*70)?[\s:-]*(\d{4})$/i.exec(text.trim());
  return year ? `NEC ${year[1]}` : text.trim().replace(/\s+/g, ' ');
}

const labels = new WeakMap<TableFile, readonly string[]>();

/** The editions of a file as sheets name them; every sheet that is opened asks for those of all files. */
function labelsOf(file: TableFile): readonly string[] {
  let known = labels.get(file);
  if (!known) {
    known = file.editions.map((edition) => editionLabel(file.standard, edition));
    labels.set(file, known);
  }
  return known;
}

let shippedEditions: readonly string[] | undefined;

/** Those for which every table that a code edition needs ships; the same as long as the program runs. */
function editionsShipped(): readonly string[] {
  if (!shippedEditions) {
    const all = subjects.flatMap((subject) => subject.files.filter((file) => !file.anyCode).flatMap(labelsOf));
    shippedEditions = [...new Set(all)].filter((label) =>
      subjects.every((subject) => !subject.needed || filesInForce(subject.files, label).length > 0),
    );
  }
  return shippedEditions;
}

/** Labels of the editions for which every table that a code edition needs is there, oldest first. */
export function editionsAvailable(overrides: readonly TableFile[] = []): string[] {
  const whole = editionsShipped();
  const based = overrides.filter((file) => file.base !== undefined && whole.includes(canonicalEdition(file.base)));
  return [...new Set([...whole, ...based.flatMap(labelsOf)])].sort();
}

/** The files that hold under an edition, the later ones laid over the earlier. */
export function filesInForce(files: readonly TableFile[], edition: string): TableFile[] {
  return files.filter((file) => file.anyCode || labelsOf(file).includes(edition));
}

/** The edition whose tables a workspace's new edition rests on, or the edition itself. */
export function baseOf(edition: string, overrides: readonly TableFile[]): string {
  const file = overrides.find((candidate) => candidate.base !== undefined && labelsOf(candidate).includes(edition));
  return file?.base === undefined ? edition : canonicalEdition(file.base);
}
