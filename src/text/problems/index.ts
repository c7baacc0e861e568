import { conductorProblems } from './conductors';
import type { Problem } from './contract';
import { fileProblems } from './files';
import { habitProblems } from './habits';
import { lineProblems } from './lines';
import { nameProblems } from './names';
import { quantityProblems } from './quantities';
import { readingProblems } from './readings';
import { runningProblems } from './running';
import { scheduleProblems } from './schedules';
import { solvingProblems } from './solving';
import { tradeProblems } from './trade';

export type { Problem, ProblemExample } from './contract';

/** All problems but the findings of lints, which have pages of their own, in the order of the reference page. */
export const problemGroups = [
  lineProblems,
  habitProblems,
  nameProblems,
  quantityProblems,
  readingProblems,
  runningProblems,
  solvingProblems,
  scheduleProblems,
  conductorProblems,
  tradeProblems,
  fileProblems,
] as const;

/** Lints whose fault the language or a function finds itself: the lint's page is the page of the code. */
export const codesOfLints = ['mixed-power-kinds', 'cold-filament'] as const;

type CodesOf<Group> = Group extends { readonly problems: Readonly<Record<infer Code, Problem>> } ? Code : never;

/** Every code that something other than a lint may report. */
export type ProblemCode = CodesOf<(typeof problemGroups)[number]> | (typeof codesOfLints)[number];

/** A lint's id as the code of its findings. Only `defineLint` makes one. */
export type LintId = string & { readonly idOf: 'lint' };

const byCode: ReadonlyMap<string, Problem> = new Map(
  problemGroups.flatMap(({ problems }) => Object.entries<Problem>(problems)),
);

/** What a code stands for; undefined for what is no code, and for a lint's. */
export const problemCalled = (code: string): Problem | undefined => byCode.get(code);

/** Every declared code. */
export const problemCodes: readonly string[] = [...byCode.keys()];
