import type { Trial } from "../trial/index.js";
import { type Caution, fail } from "../units/index.js";
import { MASS_RATIO_TOLERANCE, type Settings } from "./options.js";
import type { Obstacle } from "./readComponent.js";
import { digits } from "./wording.js";

/** Rounding of a speed or threshold that was typed in another unit is no difference. */
const SAME = 1e-9;

/** Refuses trials whose numbers cannot be set against each other at all. */
export function requireComparable(baseline: Trial, changed: Trial): void {
  for (const [argument, trial] of [
    ["baseline", baseline],
    ["changed", changed],
  ] as const) {
    if (trial?.schema !== "gait-kinetics/trial/1") {
      fail("wrong-type", `${argument} is no trial; what analyseTrial returns is needed`, { argument });
    }
  }
  const [one, other] = [baseline.settings.filter, changed.settings.filter];
  if (one?.cutoff !== other?.cutoff || one?.order !== other?.order) {
    const words = (filter: Trial["settings"]["filter"]) =>
      filter === null ? "no filter" : `a ${digits(filter.cutoff)} Hz filter of order ${filter.order}`;
    fail(
      "not-comparable",
      `the baseline was analysed with ${words(one)} and the changed trial with ${words(other)}; a filter moves peaks and rates by as much as a technique: analyse both with one`,
      { argument: "changed", values: { baseline: one, changed: other } },
    );
  }
}

/** Tells what stands in the way of any reading: speeds too far apart. */
export function speedsApart(baseline: Trial, changed: Trial, { speedTolerance }: Settings): Obstacle | null {
  const [one, other] = [baseline.settings.speed, changed.settings.speed];
  if (one === null || other === null) return null;
  if (Math.abs(other - one) <= (speedTolerance + SAME) * Math.min(one, other)) return null;
  return {
    brief: "speeds apart",
    reason: `the speeds, ${digits(one)} and ${digits(other)} m/s, are more than ${digits(100 * speedTolerance)} % apart, and speed alone moves most loads`,
    toSettle: "both recordings at one speed",
  };
}

/** Says in what else than the technique the trials differ. */
export function differenceCautions(baseline: Trial, changed: Trial, settings: Settings): Caution[] {
  const one = baseline.settings;
  const other = changed.settings;
  const apart = speedsApart(baseline, changed, settings);
  const pair = (before: number | string | null, after: number | string | null) => ({
    baseline: before,
    changed: after,
  });
  const cautions: (Caution | null)[] = [
    apart && {
      code: "speeds-differ",
      message: apart.reason,
      values: pair(one.speed, other.speed),
    },
    (one.speed === null || other.speed === null) && {
      code: "speed-not-stated",
      message: `the speed of ${one.speed === other.speed ? "both trials" : one.speed === null ? "the baseline" : "the changed trial"} is not known: that the speeds agree cannot be checked, and loads per kilometre and work per metre are missing`,
      values: pair(one.speed, other.speed),
    },
    one.surface !== other.surface && {
      code: "surfaces-differ",
      message: `the baseline was recorded on ${surface(one.surface)}, the changed trial on ${surface(other.surface)}`,
      values: pair(one.surface, other.surface),
    },
    Math.abs(one.grade - other.grade) > 0.005 && {
      code: "grades-differ",
      message: `the slopes are ${digits(100 * one.grade)} and ${digits(100 * other.grade)} %: slope alone moves braking and propulsion`,
      values: pair(one.grade, other.grade),
    },
    relative(one.events.threshold, other.events.threshold) > SAME && {
      code: "thresholds-differ",
      message: `contacts were read at ${digits(one.events.threshold)} N in the baseline and at ${digits(other.events.threshold)} N in the changed trial, which moves times and impulses: analyse both with the larger`,
      values: pair(one.events.threshold, other.events.threshold),
    },
    one.events.cutoff !== other.events.cutoff && {
      code: "event-filters-differ",
      message:
        "contacts were found on copies with different filters, which moves their times: analyse both with one",
      values: pair(one.events.cutoff, other.events.cutoff),
    },
    one.sampleRate !== other.sampleRate && {
      code: "sample-rates-differ",
      message: `the sampling rates are ${digits(one.sampleRate)} and ${digits(other.sampleRate)} Hz: loading rates and impact peaks depend on them`,
      values: pair(one.sampleRate, other.sampleRate),
    },
    one.version !== other.version && {
      code: "versions-differ",
      message: `the trials were analysed with versions ${one.version} and ${other.version} of the library, whose numbers may differ`,
      values: pair(one.version, other.version),
    },
    massCaution(one, other),
  ].map((caution) => caution || null);
  return cautions.filter((caution) => caution !== null);
}

/** On masses: another load on the runner, or another scale of the force. */
function massCaution(one: Trial["settings"], other: Trial["settings"]): Caution | null {
  const values = {
    baselineMass: one.mass,
    changedMass: other.mass,
    baselineMassByForce: one.massByForce,
    changedMassByForce: other.massByForce,
  };
  if (one.massByForce === null || other.massByForce === null) return null;
  if (!one.massStated || !other.massStated || one.mass === null || other.mass === null) {
    const apart = relative(one.massByForce, other.massByForce);
    if (apart <= MASS_RATIO_TOLERANCE) return null;
    return {
      code: "masses-differ",
      message: `the mass by force is ${one.massByForce.toFixed(1)} kg in the baseline and ${other.massByForce.toFixed(1)} kg in the changed trial, ${(100 * apart).toFixed(1)} % apart: another load on the runner, or another scale of the force, so that loads in SI units are not comparable`,
      values,
    };
  }
  const ratios = [one.massByForce / one.mass, other.massByForce / other.mass] as const;
  const apart = relative(...ratios);
  if (apart > MASS_RATIO_TOLERANCE) {
    return {
      code: "mass-ratios-differ",
      message: `mass by force over stated mass is ${ratios[0].toFixed(3)} in the baseline and ${ratios[1].toFixed(3)} in the changed trial, ${(100 * apart).toFixed(1)} % apart: the forces are on different scales (calibration, drift, slope), and loads in SI units are not comparable`,
      values,
    };
  }
  if (relative(one.mass, other.mass) <= MASS_RATIO_TOLERANCE) return null;
  return {
    code: "masses-differ",
    message: `the stated masses are ${one.mass.toFixed(1)} and ${other.mass.toFixed(1)} kg: a heavier runner bears more load in SI units, and per body weight it may be the same; the readings are on SI units`,
    values,
  };
}

function relative(one: number, other: number): number {
  return one === other ? 0 : Math.abs(other - one) / Math.min(Math.abs(one), Math.abs(other));
}

function surface(value: Trial["settings"]["surface"]): string {
  return value === null ? "an unstated surface" : value === "belt" ? "a belt" : "the ground";
}
