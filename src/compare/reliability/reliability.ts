import type { Metric } from "../../metrics/index.js";
import { mean } from "../../statistics/index.js";
import {
  contactsWith,
  LEAST_SHARE_OF_CONTACTS,
  type NotComputed,
  strideValues,
  type Trial,
} from "../../trial/index.js";
import { requireNumber, VERSION, withDefaults } from "../../units/index.js";
import { SAME } from "../obstacles.js";
import type { SourcedChange } from "../options.js";
import { requireEntries } from "../requireEntries.js";
import { sameData } from "../sameData.js";
import { NOT_ANALYSED } from "../whyAbsent.js";
import { listed } from "../wording.js";
import { type Cells, metricReliability } from "./metricReliability.js";
import { RELIABILITY_DEFAULTS, type ReliabilityOptions, type RunnerTrials } from "./options.js";
import type { MetricReliability, Reliability } from "./reliabilityResult.js";
import { degreesOfFreedom, repeatCautions } from "./repeatCautions.js";
import { requireRepeats, trialName } from "./requireRepeats.js";

/**
 * Tells how well every metric repeats, from trials between which nothing was changed, and so which difference counts.
 *
 * Formula: a cell is the mean of a metric over a trial's strides. One runner: standard error of measurement = standard deviation
 * between the trials. Several: {@link standardErrorOfMeasurement} of runners by trials, six forms of the
 * {@link intraclassCorrelation}, and Bland and Altman's limits of the first two trials (second − first). Smallest detectable
 * change 1.96 √2 × the standard error of agreement, its interval by the ends of that error's, from chi-square quantiles.
 * Units: each metric's own; correlations none.
 * Limits: for the mean of one trial against the mean of another. Trials minutes apart tell of minutes, trials days apart of
 * days: record them as those that will be compared. A correlation is not given for one runner, of whom there is no variance
 * between runners; the first trial of every runner is taken as the same occasion, the second likewise. In SI units heavier
 * runners have larger errors: for runners of very different mass take `percent`. Two trials give a very wide interval: with fewer
 * than {@link LEAST_DEGREES_OF_FREEDOM} degrees of freedom, runners × (trials − 1), {@link compareTrials} keeps what strides ask for where that is
 * larger. A metric that does not vary at all gets no smallest detectable change.
 * Source: Weir 2005, J. Strength Cond. Res. 19:231 (abstract); Shrout & Fleiss 1979, Psychol. Bull. 86:420; Bland & Altman 1986,
 * Lancet 327:307.
 * @param trials - Trials of one runner, two or more; or `{ runner, trials }` of several, as many trials each.
 * @param options - {@link RELIABILITY_DEFAULTS} where left out.
 * @returns What goes into {@link compareTrials} as it is: `compareTrials(a, b, { smallestDetectableChange:
 *   reliability(repeats).smallestDetectableChange })`.
 * @throws GaitKineticsError `wrong-type`: no trials, or metrics that are no catalogue entries; `too-short`: a runner with fewer than two; `unequal-lengths`: runners with
 *   different numbers of trials; `conflict`: a runner twice; `not-comparable`: different filters or gaits, or masses of one runner more than 10 % apart; `out-of-range`,
 *   `not-finite`, `unknown-option`: an option outside what it allows.
 * @example
 * reliability([baseline, baseline]).cautions[0].code // "same-data"
 */
export function reliability(
  trials: readonly Trial[] | readonly RunnerTrials[],
  options: ReliabilityOptions = {},
): Reliability {
  const { metrics, level, speedTolerance } = withDefaults<ReliabilityOptions>(RELIABILITY_DEFAULTS, options);
  requireEntries(metrics);
  requireNumber("level", level, { above: 0, below: 1 });
  requireNumber("speedTolerance", speedTolerance, { from: 0 });
  const runners = requireRepeats(trials);
  const found: MetricReliability[] = [];
  const notCompared: NotComputed[] = [];
  for (const metric of metrics) {
    const absence = absenceOf(metric, runners);
    if (absence === null) found.push(metricReliability(metric, cellsOf(metric, runners), level));
    else notCompared.push(absence);
  }
  const design = designOf(runners);
  return {
    schema: "gait-kinetics/reliability/1",
    settings: { version: VERSION, level, design: design.sentence },
    metrics: found,
    notCompared,
    smallestDetectableChange: Object.fromEntries(
      found
        .filter(({ mean: centre, smallestDetectableChange: { value } }) => value > SAME * Math.abs(centre))
        .map(({ id, unit, smallestDetectableChange: { value } }): [string, SourcedChange] => [
          id,
          {
            value,
            unit,
            source: `1.96 √2 × the standard error of measurement of ${design.brief}`,
            degreesOfFreedom: degreesOfFreedom(runners),
          },
        ]),
    ),
    cautions: [
      ...sameData(
        runners.flatMap((runner) =>
          runner.trials.map((trial, place) => ({ name: trialName(runner, place), trial })),
        ),
        metrics,
      ),
      ...repeatCautions(runners, speedTolerance),
    ],
  };
}

function cellsOf({ id }: Metric, runners: readonly RunnerTrials[]): Cells {
  return runners.map(({ trials }) => trials.map((trial) => mean(strideValues(trial.steps, id, trial))));
}

/** Why a metric has no table; `null` where every trial has it in nearly all of its contacts. */
function absenceOf(metric: Metric, runners: readonly RunnerTrials[]): NotComputed | null {
  const { id } = metric;
  const all = runners.flatMap((runner) =>
    runner.trials.map((trial, place) => ({ name: trialName(runner, place), trial })),
  );
  const without = all.filter(({ trial }) => strideValues(trial.steps, id, trial).length === 0);
  if (without.length > 0) {
    const reasons = without.map(
      ({ trial }) => trial.notComputed.find((entry) => entry.id === id)?.message ?? NOT_ANALYSED,
    );
    const which =
      without.length === all.length ? "no trial has it" : `not in ${listed(without.map(({ name }) => name))}`;
    return { id, code: "not-in-all", message: `${which} (${[...new Set(reasons)].join("; ")})` };
  }
  const few = all.filter(({ trial }) => contactsWith(trial.steps, metric).share < LEAST_SHARE_OF_CONTACTS);
  if (few.length === 0) return null;
  return {
    id,
    code: "too-few-contacts",
    message: `fewer than ${100 * LEAST_SHARE_OF_CONTACTS} % of the contacts have it in ${listed(few.map(({ name }) => name))}`,
  };
}

function designOf(runners: readonly RunnerTrials[]): { readonly brief: string; readonly sentence: string } {
  const trials = (runners[0] as RunnerTrials).trials.length;
  if (runners.length === 1) {
    const brief = `${trials} trials of one runner`;
    return {
      brief,
      sentence: `${brief}: the error is the standard deviation between the trials; there is no intraclass correlation, which is the share of the variance that lies between runners, and no limits of agreement`,
    };
  }
  const brief = `${trials} trials of each of ${runners.length} runners`;
  return {
    brief,
    sentence: `${brief}: the error by the mean squares of runners by trials, counting what all runners of a trial share`,
  };
}
