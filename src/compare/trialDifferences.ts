import type { Trial } from "../trial/index.js";
import type { Caution } from "../units/index.js";
import { massesApart, relativeDifference, SAME, scalesApart, speedsApart } from "./obstacles.js";
import { MASS_RATIO_TOLERANCE, type Settings } from "./options.js";
import { apart, percentApart } from "./wording.js";

/** Something in which two trials differ beside the technique. */
export interface TrialDifference {
  readonly caution: Caution;
  /** What the answer itself must say of it; `null` where the caution will do. */
  readonly aside: string | null;
}

/** Slopes closer than this, rise over run, are one slope. */
const SAME_GRADE = 0.005;

/** Finds in what else than the technique the trials differ. */
export function trialDifferences(baseline: Trial, changed: Trial, settings: Settings): TrialDifference[] {
  const one = baseline.settings;
  const other = changed.settings;
  const speeds = speedsApart(baseline, changed, settings);
  const scales = scalesApart(baseline, changed);
  const found: (TrialDifference | null)[] = [
    speeds && only("speeds-differ", speeds.reason, pair(one.speed, other.speed)),
    speedNotStated(one, other),
    surfacesDiffer(one, other),
    footwearDiffers(one, other),
    gradesDiffer(one, other),
    thresholdsDiffer(one, other),
    one.events.cutoff === other.events.cutoff
      ? null
      : only(
          "event-filters-differ",
          "contacts were found on copies with different filters, which moves their times: analyse both with one",
          pair(one.events.cutoff, other.events.cutoff),
        ),
    one.sampleRate === other.sampleRate
      ? null
      : only(
          "sample-rates-differ",
          `the sampling rates are ${apart(one.sampleRate, other.sampleRate).join(" and ")} Hz: loading rates and impact peaks depend on them`,
          pair(one.sampleRate, other.sampleRate),
        ),
    one.version === other.version
      ? null
      : only(
          "versions-differ",
          `the trials were analysed with versions ${one.version} and ${other.version} of the library, whose numbers may differ`,
          pair(one.version, other.version),
        ),
    landingsDiffer(one, other),
    dragsDiffer(one, other),
    scales === null
      ? massesDiffer(one, other)
      : only("mass-ratios-differ", scales.reason, massesOf(one, other)),
  ];
  return found.filter((difference) => difference !== null);
}

type TrialSettings = Trial["settings"];
type Values = NonNullable<Caution["values"]>;

function only(code: string, message: string, values: Values): TrialDifference {
  return { caution: { code, message, values }, aside: null };
}

function pair(baseline: number | string | null, changed: number | string | null): Values {
  return { baseline, changed };
}

function speedNotStated(one: TrialSettings, other: TrialSettings): TrialDifference | null {
  if (one.speed !== null && other.speed !== null) return null;
  const which =
    one.speed === other.speed ? "both trials" : one.speed === null ? "the baseline" : "the changed trial";
  return only(
    "speed-not-stated",
    `the speed of ${which} is not known: that the speeds agree cannot be checked, and loads per kilometre and work per metre are missing`,
    pair(one.speed, other.speed),
  );
}

function surfacesDiffer(one: TrialSettings, other: TrialSettings): TrialDifference | null {
  if (one.surface === other.surface) return null;
  const message = `the baseline was recorded on ${surface(one.surface)}, the changed trial on ${surface(other.surface)}`;
  return {
    ...only("surfaces-differ", message, pair(one.surface, other.surface)),
    aside:
      one.surface === null || other.surface === null
        ? null
        : `the baseline was recorded on ${surface(one.surface)} and the changed trial on ${surface(other.surface)}`,
  };
}

function surface(value: TrialSettings["surface"]): string {
  return value === null ? "an unstated surface" : value === "belt" ? "a belt" : "the ground";
}

function footwearDiffers(one: TrialSettings, other: TrialSettings): TrialDifference | null {
  const [before, after] = [one.footwear, other.footwear];
  if (before === after) return null;
  const words = (footwear: string | null) => (footwear === null ? "nothing stated" : `“${footwear}”`);
  const message = `on the feet: ${words(before)} in the baseline, ${words(after)} in the changed trial; footwear moves impact peaks and loading rates by itself`;
  return {
    ...only("footwear-differs", message, pair(before, after)),
    aside: before === null || after === null ? null : `on the feet were ${words(before)} and ${words(after)}`,
  };
}

/** Only where both trials have distances from the centre of mass. */
function landingsDiffer(one: TrialSettings, other: TrialSettings): TrialDifference | null {
  const [before, after] = [one.landing, other.landing];
  if (before === null || after === null || before.method === after.method) return null;
  const words = { force: "found from the force", measured: "measured" };
  return only(
    "landing-methods-differ",
    `the centre of mass at landing was ${words[before.method]} in the baseline and ${words[after.method]} in the changed trial, which moves touchdown and take-off distance: analyse both by one`,
    pair(before.method, after.method),
  );
}

function dragsDiffer(one: TrialSettings, other: TrialSettings): TrialDifference | null {
  const [before, after] = [one.airDrag ?? 0, other.airDrag ?? 0];
  if (relativeDifference(before, after) <= SAME) return null;
  const [low, high] = apart(before, after);
  return only(
    "air-drag-differs",
    `the work was done against ${low} N of air in the baseline and ${high} N in the changed trial, as was asked for: work and landing differ by that as well`,
    pair(one.airDrag, other.airDrag),
  );
}

function gradesDiffer(one: TrialSettings, other: TrialSettings): TrialDifference | null {
  const differ = (a: number, b: number) => Math.abs(a - b) > 100 * SAME_GRADE;
  const [before, after] = [100 * one.grade, 100 * other.grade];
  if (!differ(before, after)) return null;
  const slopes = `the slopes are ${apart(before, after, differ).join(" and ")} %`;
  return {
    ...only(
      "grades-differ",
      `${slopes}: slope alone moves braking and propulsion`,
      pair(one.grade, other.grade),
    ),
    aside: `${slopes}, and slope alone moves braking, propulsion and work`,
  };
}

function thresholdsDiffer(one: TrialSettings, other: TrialSettings): TrialDifference | null {
  const [before, after] = [one.events.threshold, other.events.threshold];
  if (relativeDifference(before, after) <= SAME) return null;
  const [low, high] = apart(before, after);
  return only(
    "thresholds-differ",
    `contacts were read at ${low} N in the baseline and at ${high} N in the changed trial, which moves times and impulses: analyse both with the larger`,
    pair(before, after),
  );
}

/** Masses of trials whose forces are on one scale, as far as anybody can tell. */
function massesDiffer(one: TrialSettings, other: TrialSettings): TrialDifference | null {
  const stated = one.massStated && other.massStated;
  const [before, after] = stated ? [one.mass, other.mass] : [one.massByForce, other.massByForce];
  if (before === null || after === null || !massesApart(before, after)) return null;
  const masses = apart(before, after, massesApart).join(" and ");
  const share = percentApart(relativeDifference(before, after), MASS_RATIO_TOLERANCE);
  const values = massesOf(one, other);
  if (stated) {
    return {
      ...only(
        "masses-differ",
        `the stated masses are ${masses} kg: a heavier runner bears more load in SI units, and per body weight it may be the same; the readings are on SI units`,
        values,
      ),
      aside: `the stated masses are ${masses} kg, ${share} % apart (another load carried, or another runner; loads are read in SI units)`,
    };
  }
  return {
    ...only(
      "masses-differ",
      `the mass by force is ${masses} kg in baseline and changed trial, ${share} % apart: another load on the runner, or another scale of the force, so that loads in SI units may not be comparable; a stated mass of both would tell`,
      values,
    ),
    aside: `the masses by force are ${masses} kg, ${share} % apart (another load carried, another runner, or another scale of the force; a stated mass of both would tell)`,
  };
}

function massesOf(one: TrialSettings, other: TrialSettings): Values {
  return {
    baselineMass: one.mass,
    changedMass: other.mass,
    baselineMassByForce: one.massByForce,
    changedMassByForce: other.massByForce,
  };
}
