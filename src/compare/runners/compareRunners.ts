import { type Caution, requireNumber, VERSION, withDefaults } from "../../units/index.js";
import type { ComponentName } from "../comparison.js";
import { type CalledTrial, sameData } from "../sameData.js";
import { settingsOf } from "../settingsOf.js";
import { sentence } from "../wording.js";
import {
  COMPARE_RUNNERS_DEFAULTS,
  type CompareRunnersOptions,
  type PairedRunner,
  type RunnerGroups,
} from "./options.js";
import { readRunners } from "./readRunners.js";
import { type Runners, requireRunners } from "./requireRunners.js";
import { metricCautions, ownCautions, pairCautions, runnersObstacle } from "./runnersCautions.js";
import type { RunnersComparison } from "./runnersComparison.js";
import { runnersMetric } from "./runnersMetric.js";
import { runnersOverall } from "./runnersOverall.js";

const COMPONENTS: readonly ComponentName[] = ["vertical", "anteroposterior", "mediolateral"];

/**
 * Compares two conditions over many runners: what a change did to the load of the average runner, component by component,
 * and how much runners differ in it. The runner is the unit: strides and trials tell of their runner alone.
 *
 * Formula: each runner's mean in a condition is that of the trial means. Pairs: the mean of the runners' changes by
 * {@link randomEffectsMean}, each change with the variance that strides (effective number) and, where a runner has two trials of a
 * condition, trials leave (their variance pooled over runners); Student's t with runners − 1 degrees of freedom.
 * Independent groups: the same mean of each group, their difference with Welch's degrees of freedom. A
 * component's primary metric reads `lower` or `higher` where the 99 % interval leaves zero, `similar` where it lies within the margin,
 * 10 % of the baseline's mean whatever strides vary by, unless one is given, else `unsettled`; the load as a whole by the rule of
 * {@link compareTrials}, of which `reduced` needs proof for every recorded component, per kilometre too. How many
 * runners moved the other way is said.
 * Units: `unit` of each metric: the normalised one (body weights, per mass), which is what averages over runners of different mass,
 * where every trial has what it is divided by; else its own, with a `Caution`.
 * Limits: without any true difference about 1 component in 100 reads lower or higher: measured 0 to 1.5 with 8, 12 and 20 pairs, and 0.5 to 1.2 with
 * 8 + 8, 12 + 12 and 20 + 20 independent runners, whose changes differ by 0, 1 and 2 standard deviations of strides (1500 components a cell). Where they
 * differ by one and trials by half, a mean change of 5 % is found in peak vertical force, braking and mediolateral impulse (stride SD 2.4, 5.6 and 10 %) in
 * 80, 12 and 6 of 100 with 8 pairs, 99, 24 and 9 with 12, 100, 66 and 13 with 20; of 10 % in 100, 66 and 21, 100, 94 and 39, 100, 100 and 80. With 20 + 20
 * independent runners of levels 10, 18 and 25 % apart 10 % is found in 69, 19 and 7 only; what sets groups apart beside the technique is in their difference as well. Runners are taken as drawn at random from those that the answer is for.
 * Source: restricted likelihood and the interval of Hartung, Knapp, Sidik and Jonkman, Welch 1947, Biometrika 34:28, from memory; that the
 * runner is the unit is common practice; the limits of a reading are judgements, exported one by one.
 * @param runners - A list of `{ runner, baseline, changed }`, or `{ baseline, changed }` with lists of `{ runner, trials }`; one
 *   trial or several each, all analysed with one filter.
 * @param options - {@link COMPARE_RUNNERS_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no runners, or no trial; `too-short`: a runner without a trial; `conflict`: a name or a
 *   trial that is there twice; `not-comparable`: different filters; `out-of-range`, `not-finite`, `unit-mismatch`,
 *   `missing-value`, `unknown-option`: an option outside what it allows.
 * @example
 * compareRunners([{ runner: "Ida", baseline, changed }]).overall.reading // "unsettled"
 */
export function compareRunners(
  runners: readonly PairedRunner[] | RunnerGroups,
  options: CompareRunnersOptions = {},
): RunnersComparison {
  const settings = withDefaults<CompareRunnersOptions>(COMPARE_RUNNERS_DEFAULTS, options);
  const { minimumRunners, ...shared } = settings;
  requireNumber("minimumRunners", minimumRunners, { from: 2, whole: true });
  const ofTrials = settingsOf(shared);
  const known = requireRunners(runners);
  const compared = settings.metrics.map((metric) => runnersMetric(metric, known, settings));
  const obstacle = runnersObstacle(known, ofTrials);
  const states = COMPONENTS.map((component) => {
    const primary = compared.find(({ metric }) => metric.primary === true && metric.component === component);
    return readRunners(component, primary ?? null, isRecorded(component, known), obstacle, settings);
  });
  const same = sameData(calledTrials(known), settings.metrics);
  const cautions: Caution[] = [
    ...same,
    ...pairCautions(known, ofTrials),
    ...metricCautions(compared),
    ...ownCautions(known),
  ];
  return {
    schema: "gait-kinetics/runners/1",
    settings: {
      version: VERSION,
      design: known.design,
      shownLevel: settings.shownLevel,
      readingLevel: settings.readingLevel,
      similarMargin: settings.similarMargin,
      minimumRunners,
      speedTolerance: settings.speedTolerance,
      interval: INTERVALS[known.design],
      filter: known.baseline[0]?.trials[0]?.trial.settings.filter ?? null,
    },
    runners: { baseline: known.baseline.length, changed: known.changed.length },
    metrics: compared.flatMap(({ found }) => found ?? []),
    notCompared: compared.flatMap(({ reason }) => reason ?? []),
    components: states.map(({ component, metric, reading, perKilometre, sentence }) => {
      return { component, metric, reading, perKilometre, sentence };
    }),
    overall: runnersOverall(
      states,
      known.design,
      [...same.map(({ message }) => sentence(message)), asideOf(cautions)]
        .filter((words) => words !== "")
        .join(" "),
    ),
    cautions,
  };
}

const INTERVALS = {
  paired:
    "Student's t of the runners' changes, weighted by restricted maximum likelihood, runners less one degrees of freedom (Hartung, Knapp, Sidik and Jonkman), nowhere narrower than strides and trials make it",
  independent:
    "Student's t of the difference of the groups' means over runners, each weighted by restricted maximum likelihood, Welch's degrees of freedom from runners, nowhere narrower than strides and trials make it",
} as const;

/** In all trials. */
function isRecorded(component: ComponentName, { baseline, changed }: Runners): boolean {
  if (component === "vertical") return true;
  return [...baseline, ...changed].every(({ trials }) =>
    trials.every(
      ({ trial: { curves } }) =>
        (component === "anteroposterior" ? curves.forward : curves.right) !== undefined,
    ),
  );
}

/** "Ida, changed, trial 2". */
function calledTrials({ baseline, changed }: Runners): CalledTrial[] {
  const called = (condition: string, cells: Runners["baseline"]) =>
    cells.flatMap(({ runner, trials }) =>
      trials.map(({ trial }, k) => ({
        name: `${runner}, ${condition}${trials.length === 1 ? "" : `, trial ${k + 1}`}`,
        trial,
      })),
    );
  return [...called("baseline", baseline), ...called("changed", changed)];
}

/** What the answer itself must say. */
const ASIDES = ["surfaces-differ", "grades-differ", "masses-differ", "speeds-differ", "footwear-differs"];

function asideOf(cautions: readonly Caution[]): string {
  const said = cautions.filter(({ code }) => ASIDES.includes(code)).map(({ message }) => message);
  return said.length === 0 ? "" : `Beside the technique: ${said.join("; ")}.`;
}
