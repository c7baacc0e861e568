import type { Diagnostic } from '../text';
import { rules } from './rule-list';

const codes: ReadonlySet<string> = new Set(rules.filter((rule) => rule.once).map((rule) => rule.id));

/** True for a question about the whole sheet, which is put once. */
const isQuestion = ({ code, severity }: Diagnostic): boolean => severity === 'hint' && codes.has(code);

/** Questions about the whole sheet: of the cells that would put one, the first does. */
export class AskedOnce {
  private readonly askers = new Map<string, Set<string>>([...codes].map((code) => [code, new Set()]));
  private readonly first = new Map<string, string | undefined>();
  /** Questions for which another cell may be the first now. */
  private readonly open = new Set<string>();

  enter(cell: string, findings: readonly Diagnostic[]): void {
    this.note(findings, (askers) => askers.add(cell));
  }

  leave(cell: string, findings: readonly Diagnostic[]): void {
    this.note(findings, (askers) => askers.delete(cell));
  }

  /** To be told when cells moved. */
  moved(): void {
    for (const code of codes) {
      this.open.add(code);
    }
  }

  /** Finds the first cell of each question anew where it may be another one; returns the cells that now ask more or less. */
  settle(placeOf: (cell: string) => number): string[] {
    const changed: string[] = [];
    for (const code of this.open) {
      const before = this.first.get(code);
      let now: string | undefined;
      for (const cell of this.askers.get(code)!) {
        now = now === undefined || placeOf(cell) < placeOf(now) ? cell : now;
      }
      if (now !== before) {
        this.first.set(code, now);
        changed.push(...(before === undefined ? [] : [before]), ...(now === undefined ? [] : [now]));
      }
    }
    this.open.clear();
    return changed;
  }

  /** A cell's findings without the questions that are put elsewhere or before. */
  told(cell: string, findings: readonly Diagnostic[]): readonly Diagnostic[] {
    const put = new Set<string>();
    const isTold = (finding: Diagnostic): boolean => {
      if (!isQuestion(finding)) {
        return true;
      }
      const isRepeated = put.has(finding.code);
      put.add(finding.code);
      return !isRepeated && this.first.get(finding.code) === cell;
    };
    return findings.some(isQuestion) ? findings.filter(isTold) : findings;
  }

  private note(findings: readonly Diagnostic[], change: (askers: Set<string>) => void): void {
    for (const finding of findings) {
      if (isQuestion(finding)) {
        change(this.askers.get(finding.code)!);
        this.open.add(finding.code);
      }
    }
  }
}
