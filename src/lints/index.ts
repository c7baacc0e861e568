export { type Allowance, type AllowedFinding, allowancesIn, allowancesOf } from './allowances';
export { type Caution, cautionsFor } from './cautions';
export type { Finding, Lint, LintedStatement, Report } from './contract';
export { editionOf } from './editions';
export { lintPage } from './page';
export { ruleById, rules } from './rule-list';
export { type Linted, type LintOptions, lint } from './runner';
export { SheetLints } from './sheet-lints';
