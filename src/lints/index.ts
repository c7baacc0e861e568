export { type Allowance, allowancesIn, allowancesOf } from './allowances';
export { type Caution, cautionsFor } from './cautions';
export type { Finding, Lint, LintedStatement, Report } from './contract';
export { lintPage } from './page';
export { ruleById, rules } from './rule-list';
export { type LintOptions, lint } from './runner';
