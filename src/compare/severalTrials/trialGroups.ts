import type { IntervalUse } from "../differenceRule.js";
import { type OfBoth, type PairedTrial, strideSeries } from "../strideSeries.js";

type Use = Omit<IntervalUse, "purpose">;

/** Stride values of a metric, one list a trial, and how many trials there are. */
export interface TrialGroups {
  (use: Use): OfBoth<readonly (readonly number[])[]>;
  readonly trials: OfBoth<number>;
}

/** Gives the stride values of both conditions trial by trial. */
export function trialGroups(sets: OfBoth<readonly PairedTrial[]>): TrialGroups {
  const groups = (use: Use) => ({
    baseline: sets.baseline.map((trial) => valuesOf(trial, use)),
    changed: sets.changed.map((trial) => valuesOf(trial, use)),
  });
  return Object.assign(groups, {
    trials: { baseline: sets.baseline.length, changed: sets.changed.length },
  });
}

function valuesOf(trial: PairedTrial, { metric, per }: Use): readonly number[] {
  const { values, perMetre, normalised } = strideSeries(trial, metric);
  switch (per) {
    case "step":
      return values;
    case "kilometre":
      return perMetre.map((value) => 1000 * value);
    case "normalised":
      return normalised;
    case "metre": {
      const { mass } = trial.trial.settings;
      return mass === null ? [] : perMetre.map((value) => value / mass);
    }
  }
}
