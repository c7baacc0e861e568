import type { Block } from '../display';
import type { FrontMatter } from '../notebook';
import type { Verdict } from './document';
import type { PictureFiles } from './picture';

/** All that a report is made of: a sheet with its results, as plain data. Lines count from 1 in the sheet's file. */
export interface ReportInput {
  readonly frontMatter: FrontMatter;
  /** The front matter's other keys with one text each, in order: site, technician, limits of an agreement. */
  readonly details: readonly (readonly [key: string, text: string])[];
  /** The code edition that the tables are of, such as `NEC 2023`. */
  readonly edition: string;
  readonly cells: readonly ReportCell[];
  readonly readings: readonly ReportReading[];
  /** Figures that the sheet states without a meter. */
  readonly given: readonly ReportGiven[];
  readonly values: readonly ReportValue[];
  readonly circuits: readonly ReportCircuit[];
  /** What is pulled and installed, for the takeoff. */
  readonly runs: readonly ReportRun[];
  readonly prices: readonly ReportPrice[];
  readonly checks: readonly ReportCheck[];
  readonly findings: readonly ReportFinding[];
  readonly allowed: readonly ReportAllowance[];
  readonly missing: readonly ReportMissing[];
  /** What the sheet left open, so that a rule could not be applied; a sentence each. */
  readonly open: readonly string[];
  readonly sources: readonly { readonly source: string; readonly fromMemory: boolean }[];
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
  /** The pictures of the prose. */
  readonly pictures: PictureFiles;
}

export type ReportCell =
  | { readonly kind: 'prose'; readonly text: string }
  | { readonly kind: 'calculation'; readonly blocks: readonly Block[] };

export interface ReportReading {
  /** The name it has in the sheet, or where it stands. */
  readonly what: string;
  /** As written. */
  readonly value: string;
  /** The meter by name with its accuracy; empty when none is stated. */
  readonly meter: string;
  /** `± 0.12 Ω`; empty when nothing is known. */
  readonly limits: string;
  /** Of the part that was read; empty when not stated. */
  readonly temperature: string;
  readonly remark: string;
  readonly line: number;
}

export interface ReportGiven {
  readonly name: string;
  readonly value: string;
  readonly remark: string;
  readonly line: number;
}

/** A named result; `value`, `low` and `high` are full-precision numbers in `unit`, absent where it is no number. */
export interface ReportValue {
  readonly name: string;
  readonly text: string;
  readonly unit?: string;
  readonly value?: number;
  readonly low?: number;
  readonly high?: number;
}

/** One circuit as schedules list it. Texts are for people; the numbers are in the unit their name ends in. */
export interface ReportCircuit {
  readonly tag: string;
  readonly kind: string;
  readonly phases: number | undefined;
  readonly volts: number | undefined;
  readonly loadAmps: number;
  readonly continuous: boolean | undefined;
  readonly ampacityAmps: number;
  readonly requiredAmps: number;
  readonly ocpdAmps: number;
  readonly sets: number;
  readonly conductor: string;
  /** The size with its metal alone, as it is ordered: `10 AWG Cu`. */
  readonly conductorSize: string;
  readonly egc: string;
  readonly raceway: string;
  /** One way, in feet. */
  readonly lengthFeet: number | undefined;
  readonly dropPercent: number | undefined;
  readonly dropLimitPercent: number | undefined;
}

export interface ReportRun {
  readonly tag: string;
  readonly phases: number | undefined;
  readonly sets: number;
  /** The size with its metal, as it is ordered: `10 AWG Cu`. */
  readonly conductorSize: string;
  /** The same of the equipment grounding conductor; empty when none is known. */
  readonly egc: string;
  /** Trade size and type; empty when none is known. */
  readonly raceway: string;
  /** One way, in feet. */
  readonly lengthFeet: number | undefined;
  /** `25 A, 2 pole` */
  readonly device?: string;
}

/** What the sheet says that something costs. */
export interface ReportPrice {
  readonly name: string;
  readonly currency: string;
  readonly perFoot?: number;
  readonly each?: number;
}

export interface ReportCheck {
  readonly label: string;
  readonly verdict: Verdict;
  /** The comparison with its numbers; absent when it could not be made. */
  readonly comparison?: { readonly latex: string; readonly text: string };
  readonly margin?: string;
  readonly advice?: string;
  readonly line: number;
}

export interface ReportFinding {
  readonly code: string;
  readonly severity: 'error' | 'warning' | 'information' | 'hint';
  readonly message: string;
  readonly line: number;
}

export interface ReportAllowance {
  readonly lint: string;
  /** What the rule found here. */
  readonly message: string;
  readonly reason: string;
  readonly line: number;
}

export interface ReportMissing {
  /** What has no value: a name, or `check: its text`. */
  readonly what: string;
  readonly why: string;
  readonly line: number;
}
