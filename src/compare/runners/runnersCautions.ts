import { mean } from "../../statistics/index.js";
import type { Caution } from "../../units/index.js";
import { contactsLost } from "../contactsLost.js";
import { gaitUnread } from "../gaitUnread.js";
import { type Obstacle, SAME, scalesApart, together } from "../obstacles.js";
import { oneFootOnly } from "../oneFootOnly.js";
import type { Settings } from "../options.js";
import { type NamedPair, namedDifferences } from "../severalTrials/namedDifferences.js";
import { digits, listed } from "../wording.js";
import type { Runners } from "./requireRunners.js";
import type { ComparedMetric } from "./runnersMetric.js";

/** Trials that belong together: of pairs every one of a runner's two conditions, of groups each with the first of all. */
function pairsOf({ design, baseline, changed }: Runners): NamedPair[] {
  if (design === "paired") {
    return baseline.flatMap(({ runner, trials }, k) =>
      trials.flatMap(({ trial: one }) =>
        (changed[k]?.trials ?? []).map(({ trial: other }) => ({ name: runner, one, other })),
      ),
    );
  }
  const all = [...baseline, ...changed];
  const first = all[0]?.trials[0]?.trial;
  if (first === undefined) return [];
  return all.flatMap(({ runner, trials }) =>
    trials.map(({ trial }) => ({ name: runner, one: first, other: trial })),
  );
}

/** What stands in the way of any reading: another gait, one foot, lost contacts, scales apart, or speeds apart on average. */
export function runnersObstacle(runners: Runners, settings: Settings): Obstacle | null {
  const pairs = pairsOf(runners);
  const kinds = [
    gaitUnread,
    oneFootOnly,
    contactsLost,
    ...(runners.design === "paired" ? [scalesApart] : []),
  ];
  const found = kinds.flatMap((kind): Obstacle[] => {
    const those = pairs.flatMap(({ name, one, other }) => {
      const obstacle = kind(one, other);
      return obstacle === null ? [] : [{ name, obstacle }];
    });
    const [first] = those;
    if (first === undefined) return [];
    const names = [...new Set(those.map(({ name }) => name))];
    return [
      {
        brief: first.obstacle.brief,
        reason: `trials of ${listed(names)} cannot be read (${first.obstacle.brief})`,
        toSettle: [`these runners left out (${listed(names)}), or ${first.obstacle.toSettle.join(", ")}`],
      },
    ];
  });
  return together([...found, speedsOnAverage(runners, settings)]);
}

/** A difference in speed that all runners share is no difference in technique. */
function speedsOnAverage({ baseline, changed }: Runners, { speedTolerance }: Settings): Obstacle | null {
  const meanSpeed = (cells: Runners["baseline"]) => {
    const speeds = cells.flatMap(({ trials }) => {
      const own = trials.map(({ trial }) => trial.settings.speed).filter((speed) => speed !== null);
      return own.length === 0 ? [] : [mean(own)];
    });
    return speeds.length === 0 ? null : mean(speeds);
  };
  const [one, other] = [meanSpeed(baseline), meanSpeed(changed)];
  if (one === null || other === null) return null;
  if (Math.abs(other - one) <= (speedTolerance + SAME) * Math.min(one, other)) return null;
  return {
    brief: "speeds apart",
    reason: `the mean speeds, ${digits(one)} and ${digits(other)} m/s, are more than ${digits(100 * speedTolerance)} % apart, and speed alone moves most loads`,
    toSettle: ["both conditions at one speed"],
  };
}

/** What the conditions of runners differ in beside the technique, each kind once with the runners' names. */
export function pairCautions(runners: Runners, settings: Settings): Caution[] {
  const paired = runners.design === "paired";
  const total = new Set([...runners.baseline, ...runners.changed].map(({ runner }) => runner)).size;
  return namedDifferences(pairsOf(runners), settings).flatMap(({ code, what, names }) => {
    // Runners of groups differ in mass as people do; what is normalised takes it out.
    if (!paired && code === "masses-differ") return [];
    const of = `${names.length} of ${total} runners`;
    const message =
      code === "speed-not-stated"
        ? `of ${of} a speed is not known: that speeds agree cannot be checked, and loads per kilometre are missing`
        : paired
          ? `the conditions of ${of} differ in ${what} beside the technique`
          : `trials of ${of} differ from those of the first in ${what} beside the technique`;
    return [{ code, message, where: names.join(", "), values: { runners: names.length, of: total } }];
  });
}

/** Primaries that some runners lack, and metrics that could not be normalised. */
export function metricCautions(compared: readonly ComparedMetric[]): Caution[] {
  const short = compared.filter(
    ({ metric, found, leftOut }) => metric.primary === true && found !== null && leftOut.length > 0,
  );
  const own = compared.filter(({ found, notNormalised }) => found !== null && notNormalised);
  return [
    ...short.map(
      ({ metric, leftOut }): Caution => ({
        code: "runners-left-out",
        message: `${metric.name} is not known in all trials of ${listed(leftOut)}, who ${leftOut.length === 1 ? "is" : "are"} left out of it`,
        where: metric.id,
        values: { runners: leftOut.length },
      }),
    ),
    ...(own.length === 0
      ? []
      : [
          {
            code: "not-normalised",
            message:
              "some trial has no mass (or no speed), so that these metrics are compared in their own units: heavier runners count for more",
            where: own.map(({ metric }) => metric.id).join(", "),
          },
        ]),
  ];
}

/** The trials' own cautions: each kind once, with the runners it is of. */
export function ownCautions({ baseline, changed }: Runners): Caution[] {
  const all = [
    ...baseline.map((cell) => ({ ...cell, condition: "baseline" })),
    ...changed.map((cell) => ({ ...cell, condition: "changed" })),
  ].flatMap(({ runner, trials, condition }) =>
    trials.flatMap(({ trial }) =>
      trial.cautions.map((caution) => ({ caution, of: `${runner}, ${condition}` })),
    ),
  );
  const codes = [...new Set(all.map(({ caution }) => caution.code))];
  return codes.flatMap((code) => {
    const those = all.filter(({ caution }) => caution.code === code);
    const [first] = those;
    if (first === undefined) return [];
    const places = [...new Set(those.map(({ of }) => of))];
    return [
      {
        code,
        message:
          places.length === 1
            ? first.caution.message
            : `${first.caution.message} (and ${places.length - 1} more such)`,
        where: places.join("; "),
      },
    ];
  });
}
