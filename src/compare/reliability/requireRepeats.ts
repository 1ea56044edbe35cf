import type { Trial } from "../../trial/index.js";
import { fail } from "../../units/index.js";
import { relativeDifference, SAME } from "../obstacles.js";
import { requireTrial } from "../requireTrial.js";
import { digits } from "../wording.js";
import { massOf } from "./massOf.js";
import type { RunnerTrials } from "./options.js";

/** The name of a runner who was not named. */
export const UNNAMED = "the runner";

/** "trial 2 of Ida". */
export function trialName({ runner }: RunnerTrials, place: number): string {
  return `trial ${place + 1} of ${runner}`;
}

/**
 * Takes one runner's trials or several runners' and checks that they can be set against each other: as many trials each, two
 * or more, one filter and one gait.
 */
export function requireRepeats(given: readonly Trial[] | readonly RunnerTrials[]): readonly RunnerTrials[] {
  const list: unknown = given;
  if (!Array.isArray(list) || list.length === 0) {
    fail("wrong-type", "trials are no list; a runner's trials are needed, or { runner, trials } of several", {
      argument: "trials",
    });
  }
  const runners = (list as unknown[]).every(isTrial)
    ? [{ runner: UNNAMED, trials: list as readonly Trial[] }]
    : (list as unknown[]).map(requireRunner);
  for (const { runner, trials } of runners) {
    trials.forEach((trial, place) => {
      requireTrial(runner === UNNAMED ? `trials[${place}]` : `trials[${place}] of ${runner}`, trial);
    });
  }
  requireOnce(runners.map(({ runner }) => runner));
  requireAsMany(runners);
  requireAlike(runners);
  for (const runner of runners) requireOneMass(runner);
  return runners;
}

function isTrial(value: unknown): value is Trial {
  return (value as Trial | null)?.schema === "gait-kinetics/trial/1";
}

function requireRunner(value: unknown, place: number): RunnerTrials {
  const { runner, trials } = (value ?? {}) as Partial<RunnerTrials>;
  const known = typeof runner === "string" && runner.trim() !== "" && Array.isArray(trials);
  if (known && trials.every(isTrial)) return { runner, trials };
  return fail(
    "wrong-type",
    `trials[${place}] is ${known ? `of ${runner}, whose trials are not all trials` : "neither a trial nor { runner, trials }"}; trials are what analyseTrial returns, all of one runner or each with its runner's name`,
    { argument: "trials", where: `trials[${place}]` },
  );
}

function requireOnce(names: readonly string[]): void {
  const twice = names.find((name, place) => names.indexOf(name) !== place);
  if (twice === undefined) return;
  fail("conflict", `"${twice}" is there twice; give all trials of a runner in one entry`, {
    argument: "trials",
    values: { runner: twice },
  });
}

function requireAsMany(runners: readonly RunnerTrials[]): void {
  const counts = runners.map(({ trials }) => trials.length);
  const least = Math.min(...counts);
  if (least < 2) {
    const { runner } = runners[counts.indexOf(least)] as RunnerTrials;
    fail(
      "too-short",
      `${runner} has ${least} trial${least === 1 ? "" : "s"}; at least 2 are needed of every runner`,
      {
        argument: "trials",
        values: { runner, given: least, least: 2 },
      },
    );
  }
  const other = counts.findIndex((count) => count !== counts[0]);
  if (other === -1) return;
  const [first, second] = [runners[0], runners[other]] as [RunnerTrials, RunnerTrials];
  fail(
    "unequal-lengths",
    `${first.runner} has ${first.trials.length} trials and ${second.runner} ${second.trials.length}; the coefficients need as many of every runner: leave out the last ones, or the runner`,
    {
      argument: "trials",
      values: Object.fromEntries(runners.map(({ runner, trials }) => [runner, trials.length])),
    },
  );
}

/** Numbers of another filter or gait are other quantities. */
function requireAlike(runners: readonly RunnerTrials[]): void {
  const all = runners.flatMap((runner) =>
    runner.trials.map((trial, place) => ({ name: trialName(runner, place), trial })),
  );
  const [first] = all as [(typeof all)[number]];
  for (const { name, trial } of all) {
    const [one, other] = [filterOf(first.trial), filterOf(trial)];
    if (one !== other) {
      fail(
        "not-comparable",
        `${first.name} was analysed with ${one} and ${name} with ${other}; a filter moves peaks and rates by as much as a technique: analyse all with one`,
        { argument: "trials", where: name },
      );
    }
    const [gait, own] = [first.trial, trial].map(({ settings }) => settings.gait ?? "running");
    if (gait !== own) {
      fail("not-comparable", `${first.name} is ${gait} and ${name} is ${own}; give trials of one gait`, {
        argument: "trials",
        where: name,
      });
    }
  }
}

/**
 * Share by which a runner's masses may differ. A judgement: between trials without any change nobody gains or loses a tenth, so that it
 * is another runner, another load carried or a slip in typing, and the error would be made of that.
 */
const LARGEST_MASS_SHARE = 0.1;

function requireOneMass(runner: RunnerTrials): void {
  const masses = runner.trials.map(massOf);
  const known = masses.filter((mass) => mass !== null);
  const [least, most] = [Math.min(...known), Math.max(...known)];
  if (known.length < 2 || relativeDifference(least, most) <= LARGEST_MASS_SHARE + SAME) return;
  const [one, other] = [least, most].map((mass) => trialName(runner, masses.indexOf(mass)));
  fail(
    "not-comparable",
    `the mass is ${digits(least)} kg in ${one} and ${digits(most)} kg in ${other}, more than ${100 * LARGEST_MASS_SHARE} % apart: repeats without a change are of one runner at one mass; give each runner's trials as { runner, trials }`,
    { argument: "trials", where: runner.runner, values: { least, most } },
  );
}

function filterOf({ settings: { filter } }: Trial): string {
  return filter === null ? "no filter" : `a ${filter.cutoff} Hz filter of order ${filter.order}`;
}
