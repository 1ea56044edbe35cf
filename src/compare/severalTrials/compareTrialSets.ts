import { groupedDifference } from "../../statistics/index.js";
import { contactsWith, type Trial } from "../../trial/index.js";
import { fail } from "../../units/index.js";
import type { MetricPair } from "../compareMetric.js";
import type { Comparison } from "../comparison.js";
import { comparisonOf } from "../comparisonOf.js";
import { type Obstacle, together } from "../obstacles.js";
import type { CompareTrialsOptions, Settings } from "../options.js";
import { tooFewStrides } from "../readComponent.js";
import { requireComparable } from "../requireComparable.js";
import { settingsOf } from "../settingsOf.js";
import { type OfBoth, type PairedTrial, paired, type StrideSeries, strideSeries } from "../strideSeries.js";
import type { TrialDifference } from "../trialDifferences.js";
import { change, digits, listed } from "../wording.js";
import { mergedTrial } from "./mergedTrial.js";
import { type RepeatCheck, repeatCheck } from "./repeatCheck.js";
import { repeatRule } from "./repeatRule.js";
import { setDifferences } from "./setDifferences.js";
import { setObstacles } from "./setObstacles.js";
import { type TrialGroups, trialGroups } from "./trialGroups.js";
import { trialsRule } from "./trialsRule.js";

/**
 * Compares two conditions of one runner that were recorded in several trials, three or more in all.
 *
 * With two of one and one of the other (meant for the baseline before and after the change) {@link repeatRule} holds, and a component of which
 * the two trials of one condition already differ by what counts, in the direction of the change, is not read. With more trials
 * {@link trialsRule} holds.
 *
 * @param baseline - Trials of the usual technique, in the order recorded.
 * @param changed - Trials of the changed one.
 */
export function compareTrialSets(
  baseline: readonly Trial[],
  changed: readonly Trial[],
  options: CompareTrialsOptions = {},
): Comparison {
  const settings = settingsOf(options);
  requireSets(baseline, changed);
  const sets = { baseline: baseline.map(paired), changed: changed.map(paired) };
  const merged = { baseline: paired(mergedTrial(baseline)), changed: paired(mergedTrial(changed)) };
  const groups = trialGroups(sets);
  const repeated = baseline.length + changed.length === 3;
  if (!repeated && settings.method === "bootstrap") {
    fail(
      "out-of-range",
      'method is "bootstrap"; with several trials of each condition readings rest on the trial means, of which there are too few to resample: "student" is needed',
      { argument: "method", values: { given: "bootstrap", allowed: ["student"] } },
    );
  }
  const checks = repeated ? checksOf(sets, settings) : [];
  return comparisonOf(
    {
      trials: merged,
      recorded: { baseline, changed },
      seriesOf: (metric) => ({
        baseline: seriesOf(merged.baseline, sets.baseline, metric),
        changed: seriesOf(merged.changed, sets.changed, metric),
      }),
      rule: repeated ? repeatRule(groups, settings) : trialsRule(groups, settings),
      design: {
        kind: repeated && baseline.length === 2 ? "baseline again" : "several trials",
        baselineTrials: baseline.length,
        changedTrials: changed.length,
        variation: repeated ? repeatWords(checks, twice(sets)) : trialsWords(groups, settings),
      },
      interval: repeated ? REPEAT_INTERVAL : TRIALS_INTERVAL,
      differences: [
        ...(repeated ? [FEW_TRIALS] : []),
        ...setDifferences({ baseline, changed }, settings),
        ...repeatDifferences(checks, twice(sets)),
      ],
      obstacleOf: (pair) =>
        together([
          ...setObstacles({ baseline, changed }, settings, pair),
          ...(repeated ? [fewStrides(sets, pair, settings), repeatObstacle(checks, pair, twice(sets))] : []),
        ]),
    },
    settings,
  );
}

const REPEAT_INTERVAL =
  "over both differences of the single trial from the two of the other condition, each by Student's t with Welch's degrees of freedom and the effective number of strides; for readings, their correlation freed of its bias in short series, the larger of both trials for both";
const TRIALS_INTERVAL =
  "Student's t of the trial means, their variance pooled over both conditions, trials less two degrees of freedom; nowhere narrower than the strides within trials make it (effective number of strides, Satterthwaite's degrees of freedom)";

function requireSets(baseline: readonly Trial[], changed: readonly Trial[]): void {
  for (const [argument, trials] of [
    ["baseline", baseline],
    ["changed", changed],
  ] as const) {
    if (!Array.isArray(trials)) {
      fail("wrong-type", `${argument} is no list of trials`, { argument });
    }
    if (trials.length === 0) {
      fail("too-short", `${argument} holds no trial; at least one is needed`, { argument });
    }
    const twiceAt = trials.findIndex((trial, i) => trials.indexOf(trial) !== i);
    if (twiceAt >= 0) {
      fail("conflict", `${argument}[${twiceAt}] is the same trial as another of its condition`, {
        argument,
        where: `${argument}[${twiceAt}]`,
      });
    }
  }
  if (baseline.length + changed.length < 3) {
    fail("too-short", "one trial of each condition are no sets; three trials in all are needed", {
      argument: "baseline",
    });
  }
  for (const one of baseline) for (const other of changed) requireComparable(one, other);
}

/** Strides of all trials behind one another; of contacts those of the trial that has the smallest share. */
function seriesOf(
  merged: PairedTrial,
  trials: readonly PairedTrial[],
  metric: MetricPair["metric"],
): StrideSeries {
  const contacts = trials
    .map(({ trial }) => contactsWith(trial.steps, metric))
    .reduce((least, own) => (own.share < least.share ? own : least));
  return { ...strideSeries(merged, metric), contacts };
}

/** What one difference between trials cannot tell; the figures are those of {@link compareTrials}. */
const FEW_TRIALS: TrialDifference = {
  caution: {
    code: "few-trials",
    message:
      "three recordings tell little of how trials vary: without a true change, of 100 components 2 read lower or higher where trials vary by half a standard deviation of strides, and 9 where they vary by a whole one; record each condition three times or more",
  },
  aside: null,
};

interface Twice {
  /** Behind "the two". */
  readonly name: "baselines" | "changed trials";
  readonly first: PairedTrial;
  readonly second: PairedTrial;
}

/** The condition of three trials that was recorded twice. */
function twice({ baseline, changed }: OfBoth<readonly PairedTrial[]>): Twice {
  const [first, second] = (baseline.length === 2 ? baseline : changed) as [PairedTrial, PairedTrial];
  return { name: baseline.length === 2 ? "baselines" : "changed trials", first, second };
}

function checksOf(sets: OfBoth<readonly PairedTrial[]>, settings: Settings): RepeatCheck[] {
  const { first, second } = twice(sets);
  return repeatCheck(first, second, settings);
}

function said({ metric, comparison }: RepeatCheck): string {
  return `${metric.name} ${change(comparison, metric.unit)}`;
}

function repeatWords(checks: readonly RepeatCheck[], { name }: Twice): string {
  const numbers = checks.length === 0 ? "" : ` (second less first: ${listed(checks.map(said))})`;
  return `the difference of the two ${name}${numbers}; one difference tells little of how trials vary`;
}

/** The standard deviation from trial to trial of every metric that speaks. */
function trialsWords(groups: TrialGroups, settings: Settings): string {
  const numbers = settings.metrics.flatMap((metric) => {
    if (metric.primary !== true) return [];
    const { baseline, changed } = groups({ metric, per: "step" });
    if ([...baseline, ...changed].some((values) => values.length < 2)) return [];
    const { betweenGroups } = groupedDifference(changed, baseline, 0.95);
    return betweenGroups === null ? [] : [`${metric.name} ${digits(betweenGroups)} ${metric.unit}`];
  });
  const list = numbers.length === 0 ? "" : ` (standard deviation from trial to trial: ${listed(numbers)})`;
  return `the spread of the trial means about their condition's${list}`;
}

/** Said aloud: what moved between two trials of one condition. */
function repeatDifferences(checks: readonly RepeatCheck[], { name }: Twice): TrialDifference[] {
  const counted = checks.filter(({ counts }) => counts);
  if (counted.length === 0) return [];
  const words = listed(counted.map(said));
  return [
    {
      caution: {
        code: "repeats-differ",
        message: `the two ${name} differ from each other by what would count as a change (second less first: ${words}): what moved them may have moved the other trial as well`,
        where: counted.map(({ metric }) => metric.id).join(", "),
        values: Object.fromEntries(
          counted.map(({ metric, comparison }) => [metric.id, comparison.difference]),
        ),
      },
      aside: `the two ${name} differ from each other by what would count as a change (second less first: ${words})`,
    },
  ];
}

/** A difference that two trials of one condition already show in its direction is not read. */
function repeatObstacle(
  checks: readonly RepeatCheck[],
  pair: MetricPair | null,
  { name }: Twice,
): Obstacle | null {
  const own = checks.find(({ metric }) =>
    pair === null ? metric.family === "work" : metric.id === pair.metric.id,
  );
  if (own?.counts !== true) return null;
  const difference = pair?.comparison?.difference;
  if (difference !== undefined && difference > 0 !== own.comparison.difference > 0) return null;
  return {
    brief: `${name} apart`,
    reason: `the two ${name} already differ that way (${said(own)} from the first to the second)`,
    toSettle: [
      "each condition recorded three times or more, so that the trials themselves tell how they vary",
    ],
  };
}

/** The rule of the strides holds for every trial. */
function fewStrides(
  { baseline, changed }: OfBoth<readonly PairedTrial[]>,
  pair: MetricPair | null,
  settings: Settings,
): Obstacle | null {
  const metric = pair?.metric;
  if (metric === undefined) return null;
  const values = (trials: readonly PairedTrial[]) =>
    trials.map((trial) => strideSeries(trial, metric).values);
  for (const one of values(baseline)) {
    for (const other of values(changed)) {
      const short = tooFewStrides({ baseline: one, changed: other }, settings);
      if (short !== null) return short;
    }
  }
  return null;
}
