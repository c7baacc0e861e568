import type { Program } from '../language';
import type { Diagnostic, Severity } from '../text';
import type { AllowedFinding } from './allowances';
import { AskedOnce } from './asked-once';
import { Dependence } from './dependence';
import { LintPass } from './lint-pass';
import { type LookedAtCell, lookAtCell } from './look-at-cell';
import { SheetTotals } from './sheet-totals';

/** What an edit did to a sheet, as far as findings hang on it. */
export interface LintedEdit {
  readonly program: Program;
  /** The calculation cells that came or went, and those whose text, results or problems changed. */
  readonly cells: Iterable<string>;
  /** The prose cells that came or went or read otherwise; without a text for one that is no more. */
  readonly prose: Iterable<{ readonly id: string; readonly text?: string }>;
  /** The place of a cell in the sheet. */
  readonly placeOf: (cell: string) => number;
  /** True where cells that stay follow one another otherwise than before. */
  readonly moved: boolean;
  /** Replaces the severity of a lint's findings, or switches the lint off; by id. */
  readonly severities: Readonly<Record<string, Severity | 'off'>>;
}

/**
 * What every lint finds in a sheet that is being edited; a pure function of the sheet, whatever the edits were. An update
 * looks again at the cells that the edit touched, and at those whose findings hang on one of them.
 */
export class SheetLints {
  private readonly totals = new SheetTotals();
  private readonly dependence = new Dependence();
  private readonly once = new AskedOnce();
  private readonly looked = new Map<string, LookedAtCell>();
  private readonly told = new Map<string, readonly Diagnostic[]>();
  private weights = '{}';
  private placeOf: LintedEdit['placeOf'] = () => 0;

  /** By cell; one without findings has no entry. */
  get findings(): ReadonlyMap<string, readonly Diagnostic[]> {
    return this.told;
  }

  /** What `allow` statements silence, in order of place. */
  allowed(): AllowedFinding[] {
    return [...this.looked]
      .filter(([, { allowed }]) => allowed.length > 0)
      .sort(([a], [b]) => this.placeOf(a) - this.placeOf(b))
      .flatMap(([, { allowed }]) => allowed);
  }

  /** Brings the findings up to date; returns the cells that have other ones than before. */
  update(edit: LintedEdit): ReadonlySet<string> {
    this.placeOf = edit.placeOf;
    const again = this.touched(edit);
    this.lookAgain(edit.program, again);
    if (edit.moved) {
      this.once.moved();
    }
    const first = this.once.settle(edit.placeOf);
    const weights = JSON.stringify(edit.severities);
    const all = weights === this.weights ? [] : this.looked.keys();
    this.weights = weights;
    return this.weigh(new Set([...again, ...first, ...all]), edit.severities);
  }

  /** The cells to look at again. */
  private touched({ program, cells, prose }: LintedEdit): ReadonlySet<string> {
    const again = new Set<string>();
    for (const { id, text } of prose) {
      this.totals.takeProse(id, text);
    }
    for (const cell of cells) {
      again.add(cell);
      const hasError = program.diagnostics(cell).some(({ severity }) => severity === 'error');
      if (this.totals.takeCell(cell, program.tree(cell), hasError)) {
        for (const other of this.dependence.onTextOf(cell)) {
          again.add(other);
        }
      }
    }
    for (const cell of this.dependence.misled(this.totals, this.totals.takeTouched())) {
      again.add(cell);
    }
    return again;
  }

  private lookAgain(program: Program, cells: ReadonlySet<string>): void {
    // All leave before one enters again: an answer that misled them is then forgotten, and the one entered holds.
    for (const cell of cells) {
      const before = this.looked.get(cell);
      if (before) {
        this.dependence.leave(cell, before);
        this.once.leave(cell, before.findings);
        this.looked.delete(cell);
      }
    }
    const pass = new LintPass(program, this.totals);
    for (const cell of cells) {
      const tree = program.tree(cell);
      if (tree) {
        const now = lookAtCell(pass, cell, tree);
        this.looked.set(cell, now);
        this.dependence.enter(cell, now);
        this.once.enter(cell, now.findings);
      }
    }
  }

  private weigh(cells: Iterable<string>, severities: LintedEdit['severities']): ReadonlySet<string> {
    const changed = new Set<string>();
    for (const cell of cells) {
      const before = this.told.get(cell) ?? none;
      const found = this.once.told(cell, this.looked.get(cell)?.findings ?? none);
      const now = found.flatMap((finding) => weighed(finding, severities[finding.code]));
      if (!areSame(before, now)) {
        changed.add(cell);
      }
      if (now.length > 0) {
        this.told.set(cell, now);
      } else {
        this.told.delete(cell);
      }
    }
    return changed;
  }
}

const none: readonly Diagnostic[] = [];

function weighed(finding: Diagnostic, severity: Severity | 'off' | undefined): Diagnostic[] {
  if (severity === 'off') {
    return [];
  }
  return [severity ? { ...finding, severity } : finding];
}

/** Findings of statements that were not looked at again are the same objects, so most comparisons end at once. */
const areSame = (a: readonly Diagnostic[], b: readonly Diagnostic[]): boolean =>
  a.length === b.length &&
  a.every((finding, i) => {
    const other = b[i];
    return (
      finding === other ||
      (finding.code === other.code &&
        finding.severity === other.severity &&
        finding.message === other.message &&
        finding.span.start === other.span.start &&
        finding.span.end === other.span.end)
    );
  });
