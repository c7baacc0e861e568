import type { Lint } from './contract';
import { allowWithoutEffect } from './rules/allow-without-effect';
import { aluminumTooSmall } from './rules/aluminum-too-small';
import { applianceOcpdTooLarge } from './rules/appliance-ocpd-too-large';
import { continuousLoad } from './rules/continuous-load';
import { doubleContinuousFactor } from './rules/double-continuous-factor';
import { dwellingRuleDerated } from './rules/dwelling-rule-derated';
import { egcNotUpsized } from './rules/egc-not-upsized';
import { elementOver48Amps } from './rules/element-over-48-amps';
import { interruptingRating } from './rules/interrupting-rating';
import { leadsNotRemoved } from './rules/leads-not-removed';
import { ocpdOverAmpacity } from './rules/ocpd-over-ampacity';
import { ocpdOverNameplate } from './rules/ocpd-over-nameplate';
import { ocpdUnderLoad } from './rules/ocpd-under-load';
import { otherThanRatedVoltage } from './rules/other-than-rated-voltage';
import { parallelTooSmall } from './rules/parallel-too-small';
import { racewayOverfilled } from './rules/raceway-overfilled';
import { sharedHeatingBranch } from './rules/shared-heating-branch';
import { smallConductorLimit } from './rules/small-conductor-limit';
import { tableTemperature } from './rules/table-temperature';
import { terminalTemperature } from './rules/terminal-temperature';
import { undersizedConductor } from './rules/undersized-conductor';
import { undersizedEgc } from './rules/undersized-egc';
import { voltageDrop } from './rules/voltage-drop';

/** Every lint, the weightiest first: the order of the reference page. */
export const rules: readonly Lint[] = [
  undersizedConductor,
  ocpdOverAmpacity,
  smallConductorLimit,
  ocpdOverNameplate,
  ocpdUnderLoad,
  undersizedEgc,
  egcNotUpsized,
  parallelTooSmall,
  aluminumTooSmall,
  racewayOverfilled,
  interruptingRating,
  terminalTemperature,
  continuousLoad,
  doubleContinuousFactor,
  elementOver48Amps,
  sharedHeatingBranch,
  applianceOcpdTooLarge,
  dwellingRuleDerated,
  otherThanRatedVoltage,
  voltageDrop,
  tableTemperature,
  leadsNotRemoved,
  allowWithoutEffect,
];

export const ruleById: ReadonlyMap<string, Lint> = new Map(rules.map((rule) => [rule.id, rule]));
