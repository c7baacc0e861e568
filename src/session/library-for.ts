import { createLibrary } from '../library';
import type { FrontMatter } from '../notebook';
import { createTables, type TableFile } from '../tables';

/** The library that a sheet's front matter asks for, with the tables of its folder. */
export function libraryFor(
  { code: edition, units: system }: Pick<FrontMatter, 'code' | 'units'>,
  overrides: readonly TableFile[],
): ReturnType<typeof createLibrary> {
  const tables = overrides.length > 0 ? createTables({ edition, overrides }) : undefined;
  return tables && 'problem' in tables ? tables : createLibrary({ edition, system, tables });
}
