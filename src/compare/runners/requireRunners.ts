import type { Trial } from "../../trial/index.js";
import { fail } from "../../units/index.js";
import { type OfBoth, type PairedTrial, paired } from "../strideSeries.js";
import type { PairedRunner, RunnerGroups } from "./options.js";

/** A runner's trials of one condition. */
export interface RunnerCell {
  readonly runner: string;
  readonly trials: readonly PairedTrial[];
}

/** Both conditions; of pairs entry k of one is the runner of entry k of the other. */
export interface Runners extends OfBoth<readonly RunnerCell[]> {
  readonly design: "paired" | "independent";
}

/** Takes runners in either design and checks that they can be set against each other: named once, real trials, one filter. */
export function requireRunners(given: readonly PairedRunner[] | RunnerGroups): Runners {
  const runners = Array.isArray(given) ? pairsOf(given) : groupsOf(given as RunnerGroups);
  requireNamesOnce(runners);
  requireTrialsOnce(runners);
  requireOneFilter(runners);
  return runners;
}

const SHAPES =
  "either a list of { runner, baseline, changed } or { baseline, changed } with lists of { runner, trials } is needed";

function pairsOf(given: readonly unknown[]): Runners {
  const cells = (which: "baseline" | "changed") =>
    given.map((entry, k): RunnerCell => {
      const one = (entry ?? {}) as Partial<PairedRunner>;
      const where = `runners[${k}]`;
      return { runner: nameOf(one.runner, where), trials: trialsOf(one[which], `${where}.${which}`) };
    });
  return { design: "paired", baseline: cells("baseline"), changed: cells("changed") };
}

function groupsOf(given: RunnerGroups): Runners {
  const cells = (which: "baseline" | "changed") => {
    const group: unknown = (given as RunnerGroups | null | undefined)?.[which];
    if (!Array.isArray(group))
      fail("wrong-type", `runners are no such thing; ${SHAPES}`, { argument: "runners" });
    return (group as unknown[]).map((entry, k): RunnerCell => {
      const one = (entry ?? {}) as Partial<RunnerGroups["baseline"][number]>;
      const where = `runners.${which}[${k}]`;
      return { runner: nameOf(one.runner, where), trials: trialsOf(one.trials, `${where}.trials`) };
    });
  };
  return { design: "independent", baseline: cells("baseline"), changed: cells("changed") };
}

function nameOf(name: unknown, where: string): string {
  if (typeof name === "string" && name.trim() !== "") return name;
  return fail("wrong-type", `${where} names no runner; ${SHAPES}`, { argument: "runners", where });
}

function trialsOf(given: unknown, where: string): readonly PairedTrial[] {
  const trials: readonly unknown[] = Array.isArray(given) ? given : [given];
  if (trials.length === 0)
    fail("too-short", `${where} holds no trial; at least one is needed`, { argument: "runners", where });
  return trials.map((trial) => {
    if ((trial as Trial | null | undefined)?.schema === "gait-kinetics/trial/1")
      return paired(trial as Trial);
    return fail(
      "wrong-type",
      `${where} is no trial, nor a list of trials; what analyseTrial returns is needed`,
      {
        argument: "runners",
        where,
      },
    );
  });
}

function requireNamesOnce({ design, baseline, changed }: Runners): void {
  const names = [...baseline, ...(design === "independent" ? changed : [])].map(({ runner }) => runner);
  const twice = names.find((name, k) => names.indexOf(name) !== k);
  if (twice === undefined) return;
  const how =
    design === "paired"
      ? "give all trials of a runner in one entry"
      : "a runner in both groups is a pair: give { runner, baseline, changed }";
  fail("conflict", `"${twice}" is there twice; ${how}`, { argument: "runners", values: { runner: twice } });
}

/** A trial that stands in two places would be held against itself, or count twice. */
function requireTrialsOnce({ baseline, changed }: Runners): void {
  const seen = new Map<Trial, string>();
  for (const { runner, trials } of [...baseline, ...changed]) {
    for (const { trial } of trials) {
      const before = seen.get(trial);
      if (before !== undefined) {
        fail("conflict", `one and the same trial is there twice, of ${before} and of ${runner}`, {
          argument: "runners",
          where: runner,
        });
      }
      seen.set(trial, runner);
    }
  }
}

function requireOneFilter({ baseline, changed }: Runners): void {
  const all = [...baseline, ...changed].flatMap(({ runner, trials }) =>
    trials.map(({ trial }) => ({ runner, filter: words(trial) })),
  );
  const [first] = all;
  const odd = all.find(({ filter }) => filter !== first?.filter);
  if (first === undefined || odd === undefined) return;
  fail(
    "not-comparable",
    `a trial of ${first.runner} was analysed with ${first.filter} and one of ${odd.runner} with ${odd.filter}; a filter moves peaks and rates by as much as a technique: analyse all with one`,
    { argument: "runners", where: odd.runner },
  );
}

function words({ settings: { filter } }: Trial): string {
  return filter === null ? "no filter" : `a ${filter.cutoff} Hz filter of order ${filter.order}`;
}
