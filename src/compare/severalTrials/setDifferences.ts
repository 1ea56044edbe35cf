import type { Trial } from "../../trial/index.js";
import type { Settings } from "../options.js";
import type { OfBoth } from "../strideSeries.js";
import { type TrialDifference, trialDifferences } from "../trialDifferences.js";
import { listed } from "../wording.js";
import { namedDifferences } from "./namedDifferences.js";

/** In what else than the technique any trial of one condition differs from any of the other, and trials of one from each other. */
export function setDifferences(sets: OfBoth<readonly Trial[]>, settings: Settings): TrialDifference[] {
  const across = sets.baseline.flatMap((one) =>
    sets.changed.flatMap((other) => trialDifferences(one, other, settings)),
  );
  const codes = [...new Set(across.map(({ caution }) => caution.code))];
  const firsts = codes.flatMap((code) => across.find(({ caution }) => caution.code === code) ?? []);
  return [
    ...firsts,
    ...within("baseline", sets.baseline, settings),
    ...within("changed", sets.changed, settings),
  ];
}

/** What differs between trials of one condition widens their spread, or passes for it. */
function within(
  which: keyof OfBoth<unknown>,
  trials: readonly Trial[],
  settings: Settings,
): TrialDifference[] {
  const [first, ...rest] = trials as [Trial, ...Trial[]];
  // That a speed is not stated is said of both conditions already.
  const found = namedDifferences(
    rest.map((other) => ({ name: which, one: first, other })),
    settings,
  ).filter(({ code }) => code !== "speed-not-stated");
  if (found.length === 0) return [];
  const name = which === "baseline" ? "the baseline" : "the changed condition";
  const words = listed(found.map(({ what }) => what));
  return [
    {
      caution: {
        code: "trials-of-a-condition-differ",
        message: `the trials of ${name} differ among themselves in ${words}: what that does to the load counts as variation from trial to trial`,
        where: which,
        values: { codes: found.map(({ code }) => code).join(", ") },
      },
      aside: null,
    },
  ];
}
