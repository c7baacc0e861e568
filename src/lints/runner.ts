import type { Program } from '../language';
import type { Diagnostic, Severity } from '../text';
import type { AllowedFinding } from './allowances';
import { SheetLints } from './sheet-lints';

export interface LintOptions {
  /** Replaces the severity of a lint's findings, or switches the lint off; by id. */
  readonly severities?: Readonly<Record<string, Severity | 'off'>>;
  /** The prose between the cells: names may be used there, and work may be recorded. */
  readonly prose?: readonly string[];
}

export interface Linted {
  /** By cell; a cell without findings has no entry. */
  readonly findings: ReadonlyMap<string, readonly Diagnostic[]>;
  /** What `allow` statements silenced, in order of place. */
  readonly allowed: readonly AllowedFinding[];
}

/** What every lint finds in a program that stands still. */
export function lint(program: Program, cells: Iterable<string>, options: LintOptions = {}): Linted {
  const places = new Map([...cells].map((cell, place) => [cell, place]));
  const lints = new SheetLints();
  lints.update({
    program,
    cells: places.keys(),
    prose: (options.prose ?? []).map((text, i) => ({ id: `prose ${i}`, text })),
    placeOf: (cell) => places.get(cell) ?? -1,
    moved: false,
    severities: options.severities ?? {},
  });
  return { findings: lints.findings, allowed: lints.allowed() };
}
