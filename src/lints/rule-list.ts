import type { Lint } from './contract';
import { allowWithoutEffect } from './rules/allow-without-effect';
import { aluminumTooSmall } from './rules/aluminum-too-small';
import { applianceOcpdTooLarge } from './rules/appliance-ocpd-too-large';
import { circuitNotIsolated } from './rules/circuit-not-isolated';
import { coldElementPower } from './rules/cold-element-power';
import { coldFilament } from './rules/cold-filament';
import { columnAsAmpacity } from './rules/column-as-ampacity';
import { continuousLoad } from './rules/continuous-load';
import { deratedFromTerminals } from './rules/derated-from-terminals';
import { doubleContinuousFactor } from './rules/double-continuous-factor';
import { dwellingRuleDerated } from './rules/dwelling-rule-derated';
import { egcNotUpsized } from './rules/egc-not-upsized';
import { elementOver48Amps } from './rules/element-over-48-amps';
import { fahrenheitSlip } from './rules/fahrenheit-slip';
import { fuseNotGood } from './rules/fuse-not-good';
import { harmonicsNotCounted } from './rules/harmonics-not-counted';
import { interruptingRating } from './rules/interrupting-rating';
import { leadsNotRemoved } from './rules/leads-not-removed';
import { loopNotSaid } from './rules/loop-not-said';
import { measuredDemandUnraised } from './rules/measured-demand-unraised';
import { meterNotStated } from './rules/meter-not-stated';
import { meterTooCoarse } from './rules/meter-too-coarse';
import { mismatchedCoefficient } from './rules/mismatched-coefficient';
import { mixedPowerKinds } from './rules/mixed-power-kinds';
import { nonresistiveLoad } from './rules/nonresistive-load';
import { ocpdOverAmpacity } from './rules/ocpd-over-ampacity';
import { ocpdOverKindLimit } from './rules/ocpd-over-kind-limit';
import { ocpdOverNameplate } from './rules/ocpd-over-nameplate';
import { ocpdUnderLoad } from './rules/ocpd-under-load';
import { openNeutral } from './rules/open-neutral';
import { otherThanRatedVoltage } from './rules/other-than-rated-voltage';
import { overPreciseResult } from './rules/over-precise-result';
import { parallelTooSmall } from './rules/parallel-too-small';
import { prefixSlip } from './rules/prefix-slip';
import { racewayOverfilled } from './rules/raceway-overfilled';
import { rowNotJudged } from './rules/row-not-judged';
import { sharedHeatingBranch } from './rules/shared-heating-branch';
import { smallConductorLimit } from './rules/small-conductor-limit';
import { staleResult } from './rules/stale-result';
import { tableTemperature } from './rules/table-temperature';
import { terminalTemperature } from './rules/terminal-temperature';
import { twoVoltages } from './rules/two-voltages';
import { undersizedConductor } from './rules/undersized-conductor';
import { undersizedEgc } from './rules/undersized-egc';
import { unknownLint } from './rules/unknown-lint';
import { unusedName } from './rules/unused-name';
import { voltageDrop } from './rules/voltage-drop';

/** Every lint, the weightiest first: the order of the reference page. */
export const rules: readonly Lint[] = [
  undersizedConductor,
  ocpdOverAmpacity,
  smallConductorLimit,
  ocpdOverKindLimit,
  ocpdOverNameplate,
  ocpdUnderLoad,
  undersizedEgc,
  egcNotUpsized,
  parallelTooSmall,
  aluminumTooSmall,
  racewayOverfilled,
  interruptingRating,
  mixedPowerKinds,
  terminalTemperature,
  columnAsAmpacity,
  deratedFromTerminals,
  harmonicsNotCounted,
  continuousLoad,
  doubleContinuousFactor,
  measuredDemandUnraised,
  elementOver48Amps,
  sharedHeatingBranch,
  applianceOcpdTooLarge,
  dwellingRuleDerated,
  otherThanRatedVoltage,
  coldElementPower,
  coldFilament,
  nonresistiveLoad,
  voltageDrop,
  tableTemperature,
  mismatchedCoefficient,
  leadsNotRemoved,
  loopNotSaid,
  circuitNotIsolated,
  meterTooCoarse,
  meterNotStated,
  fuseNotGood,
  openNeutral,
  prefixSlip,
  twoVoltages,
  fahrenheitSlip,
  overPreciseResult,
  rowNotJudged,
  unusedName,
  allowWithoutEffect,
  unknownLint,
  staleResult,
];

export const ruleById: ReadonlyMap<string, Lint> = new Map(rules.map((rule) => [rule.id, rule]));
