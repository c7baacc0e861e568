import { type PictureFiles, pictureSources } from '../../report';
import type { SheetEvaluation } from '../evaluate-sheet';
import { type FolderFiles, pathInTree } from '../folder-files';

/** The pictures that a sheet's prose shows: files of its folder tree; nothing is fetched from elsewhere. */
export function picturesOf({ cells }: SheetEvaluation, files: FolderFiles | undefined): PictureFiles {
  const sources = cells.flatMap(({ cell }) => (cell.kind === 'prose' ? pictureSources(cell.text) : []));
  return new Map(sources.map((source) => [source, fileOf(source, files)]));
}

function fileOf(source: string, files: FolderFiles | undefined): Uint8Array | { readonly problem: string } {
  if (/^([a-z][a-z0-9+.-]*:|\/\/)/i.test(source)) {
    return { problem: 'is no file of the sheet’s folder, and nothing is fetched from elsewhere.' };
  }
  if (!files) {
    return { problem: 'cannot be read here: the sheet lies in no folder.' };
  }
  const name = decoded(source.replace(/[?#].*$/, ''));
  const place = pathInTree(name, files.path);
  return 'problem' in place ? { problem: 'lies outside the sheet’s folder tree.' } : files.read(place.path);
}

/** In Markdown a space of a file's name is written %20. */
function decoded(name: string): string {
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
}
