import { metricById } from "../../metrics/index.js";
import type { Trial } from "../../trial/index.js";
import { fail } from "../../units/index.js";
import type { AnalysisOptions, MarkerOptions } from "../options/inputOptions.js";

/** An option, and the metrics that it moves. */
const MOVES = [
  ["air-drag", ["positiveWorkForward", "positiveExternalWork", "pushToBrakeTimeRatio"]],
  ["centre-of-mass", ["touchdownDistance", "takeOffDistance"]],
  ["feet", ["strikeIndex"]],
] as const;

/**
 * Refuses an option that moves no number of any trial: a drag of the air or markers where nothing that they move is
 * computed.
 *
 * @param options - As typed.
 * @param trials - Those that were analysed with them.
 * @throws GaitKineticsError `conflict`.
 */
export function refuseWithoutEffect(
  { airDrag, centreOfMass, feet }: AnalysisOptions & MarkerOptions,
  trials: readonly Trial[],
): void {
  const given = { "air-drag": airDrag, "centre-of-mass": centreOfMass, feet };
  for (const [flag, ids] of MOVES) {
    if (given[flag] === undefined) continue;
    if (trials.some(({ steps }) => steps.some(({ values }) => ids.some((id) => values[id] != null))))
      continue;
    if (flag === "feet" && trials.some(({ settings }) => settings.events.sides === "markers")) continue;
    refuse(flag, ids, trials);
  }
}

function refuse(flag: string, ids: readonly string[], trials: readonly Trial[]): never {
  const names = ids.map((id) => metricById(id).name);
  const listed = names.length === 1 ? names[0] : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
  const lacking = names.length === 1 ? "that is not computed" : "none of them is computed";
  const reason = trials[0]?.notComputed.find(({ id }) => ids.includes(id))?.message;
  const why = reason === undefined ? "" : ` (${reason})`;
  fail("conflict", `--${flag} is for ${listed}, and ${lacking}${why}; leave the option out`, {
    argument: flag,
  });
}
