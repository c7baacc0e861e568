import type { Lint } from './contract';
import { allowWithoutEffect } from './rules/allow-without-effect';
import { continuousLoad } from './rules/continuous-load';
import { doubleContinuousFactor } from './rules/double-continuous-factor';
import { elementOver48Amps } from './rules/element-over-48-amps';
import { leadsNotRemoved } from './rules/leads-not-removed';
import { ocpdOverAmpacity } from './rules/ocpd-over-ampacity';
import { ocpdOverNameplate } from './rules/ocpd-over-nameplate';
import { ocpdUnderLoad } from './rules/ocpd-under-load';
import { smallConductorLimit } from './rules/small-conductor-limit';
import { tableTemperature } from './rules/table-temperature';
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
  continuousLoad,
  doubleContinuousFactor,
  elementOver48Amps,
  voltageDrop,
  tableTemperature,
  leadsNotRemoved,
  allowWithoutEffect,
];

export const ruleById: ReadonlyMap<string, Lint> = new Map(rules.map((rule) => [rule.id, rule]));
