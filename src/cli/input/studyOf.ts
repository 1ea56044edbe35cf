import type { GroupRunner, PairedRunner, RunnerGroups } from "../../compare/index.js";
import type { Trial } from "../../trial/index.js";
import { fail } from "../../units/index.js";
import type { RunnerRow } from "./readRunnersTable.js";

/** How runners were laid out over the conditions. */
export type StudyDesign = "paired" | "independent";

/** A runner's trials of each condition, in the order of the rows. */
interface RowsOfRunner {
  readonly runner: string;
  readonly baseline: readonly Trial[];
  readonly changed: readonly Trial[];
}

/**
 * Lays trials out by runner and condition.
 *
 * @param rows - Of the table.
 * @param trials - One for each row.
 * @param stated - What the design is meant to be; told from the rows where `undefined`.
 * @throws GaitKineticsError `conflict`: rows that are of neither design, or of another than is stated.
 */
export function studyOf(
  rows: readonly Pick<RunnerRow, "runner" | "condition">[],
  trials: readonly Trial[],
  stated: StudyDesign | undefined,
): readonly PairedRunner[] | RunnerGroups {
  const names = [...new Set(rows.map(({ runner }) => runner))];
  const runners = names.map((runner): RowsOfRunner => {
    const of = (condition: RunnerRow["condition"]) =>
      trials.filter((_, k) => rows[k]?.runner === runner && rows[k]?.condition === condition);
    return { runner, baseline: of("baseline"), changed: of("changed") };
  });
  for (const condition of ["baseline", "changed"] as const) {
    if (runners.some((runner) => runner[condition].length > 0)) continue;
    fail("conflict", `no row is of condition ${condition}; both are needed`, { argument: "design" });
  }
  const both = runners.filter(({ baseline, changed }) => baseline.length > 0 && changed.length > 0);
  const one = runners.filter((runner) => !both.includes(runner));
  const design = stated ?? (one.length === 0 ? "paired" : "independent");
  if (design === "paired") {
    const [lacking] = one;
    if (lacking !== undefined) refusePaired(lacking);
    return runners;
  }
  const [twice] = both;
  if (twice !== undefined) refuseIndependent(twice, one[0], stated);
  return { baseline: groupOf(runners, "baseline"), changed: groupOf(runners, "changed") };
}

function groupOf(
  runners: readonly RowsOfRunner[],
  condition: RunnerRow["condition"],
): readonly GroupRunner[] {
  return runners
    .filter((runner) => runner[condition].length > 0)
    .map((runner) => ({ runner: runner.runner, trials: runner[condition] }));
}

function refusePaired({ runner, baseline }: RowsOfRunner): never {
  const lacks = baseline.length === 0 ? "baseline" : "changed";
  fail(
    "conflict",
    `the design is stated as paired, and runner "${runner}" has no row of condition ${lacks}; take the runner out, or add the row`,
    { argument: "design", values: { runner } },
  );
}

function refuseIndependent(
  { runner }: RowsOfRunner,
  other: RowsOfRunner | undefined,
  stated: StudyDesign | undefined,
): never {
  const but = other === undefined ? "" : ` and "${other.runner}" in one alone`;
  const why =
    stated === undefined
      ? `runner "${runner}" is in both conditions${but}: the design is neither paired nor independent; take out those in one alone for a paired one`
      : `the design is stated as independent, and runner "${runner}" is in both conditions; state paired, or leave the option out`;
  fail("conflict", why, { argument: "design", values: { runner } });
}
