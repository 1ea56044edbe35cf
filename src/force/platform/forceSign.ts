import type { Platform } from "../../recording/index.js";
import type { Caution } from "../../units/index.js";
import type { Flight } from "../baseline.js";
import type { PlatformOptions } from "./platformOptions.js";

/** Whose force the channels hold and the sign that makes it the ground's on the runner. */
export interface ForceSign {
  readonly sign: 1 | -1;
  /** A sign that was stated, against what the load shows. */
  readonly againstLoad: boolean;
  readonly cautions: readonly Caution[];
}

/** A plate whose vertical force stays this near to zero shows nothing, N; so does a range of no more. */
const LEAST_LOAD = 100;
/** What speaks for one end of the range speaks for it this many times more than for the other, or for neither. */
const CLEAR = 2;
/** A sample is near an end of the range within this share of it. */
const NEAR_END = 0.05;
/** Samples beyond either end of the range, so that single spikes are no end: this share, and at most so many. */
const BEYOND_SHARE = 0.001;
const BEYOND_MOST = 20;
/** Voices of a stretch that the caller states as unloaded, against one of all else. */
const STATED_VOICES = 2;

/**
 * The sign of a platform's force: stated, or such that the loaded vertical force points up.
 *
 * A plate is only pressed, so that one end of the range of its vertical force is the unloaded level. Three
 * things tell which: the level of the samples that are named as unloaded lies at it; zero lies nearer to it;
 * the force stays near it for longer (in a run on a treadmill 0.37 of the time against 0.13, with one step in
 * five seconds 0.95 against 0.01). Each has one voice, what the caller states two. Without a majority the
 * larger sum of squares on either side of zero is the load, and a `Caution` says that it is not clear where
 * there are both.
 * @param up - Vertical force as the channels give it, in the library's frame.
 * @param stated - Samples that the caller states to be unloaded, `null` for none.
 */
export function forceSign(
  platform: Platform,
  up: Float64Array,
  stated: Flight | null,
  forceOn: NonNullable<PlatformOptions["forceOn"]>,
): ForceSign {
  const { name } = platform;
  const { least, most } = endsOf(up);
  const loaded = Math.max(most, -least) >= LEAST_LOAD;
  const steady = most - least < LEAST_LOAD;
  const voices = loaded && !steady ? voicesFor(platform, up, stated, { least, most }) : 0;
  if (forceOn !== "auto") {
    const sign = forceOn === "runner" ? 1 : -1;
    return { sign, againstLoad: sign * voices < 0, cautions: [] };
  }
  if (!loaded) return { sign: 1, againstLoad: false, cautions: [] };
  const down = voices === 0 ? below(up) : voices < 0;
  const cautions: Caution[] = [];
  const values = { least, most };
  // Adding 0 makes 0 of −0.
  const range = `${Math.round(least) + 0} to ${Math.round(most) + 0} N`;
  // Where all of it is on one side of zero that side is the load.
  if (voices === 0 && !steady && least < 0 && most > 0) {
    cautions.push({
      code: "force-direction-unclear",
      message: `the vertical force of "${name}", ${range}, does not show which end of its range is the unloaded level; ${down ? "down" : "up"} was taken for the load: state whose force the channels hold`,
      where: name,
      values,
    });
  }
  if (down) {
    cautions.push({
      code: "force-negated",
      message: `the vertical force of "${name}" points down under load (${range}), so its channels hold the force on the platform; force and moment were negated`,
      where: name,
      values,
    });
  }
  return { sign: down ? -1 : 1, againstLoad: false, cautions };
}

/** Above 0 where the lower end of the range is the unloaded one, below 0 where the upper is. */
function voicesFor(
  { zero }: Platform,
  up: Float64Array,
  stated: Flight | null,
  { least, most }: { readonly least: number; readonly most: number },
): number {
  const lowerAt = (level: number) => lowerOf(Math.abs(most - level), Math.abs(least - level));
  const named = stated ?? zero;
  const byName = named == null ? 0 : (stated === null ? 1 : STATED_VOICES) * lowerAt(meanOver(up, named));
  return lowerAt(0) + lowerByTime(up, least, most) + byName;
}

/** Lowest and highest value but for a few. */
function endsOf(up: Float64Array): { readonly least: number; readonly most: number } {
  const sorted = up.slice().sort();
  const beyond = Math.min(BEYOND_MOST, Math.floor(BEYOND_SHARE * up.length));
  return { least: sorted[beyond] as number, most: sorted[up.length - 1 - beyond] as number };
}

/** 1 where the lower end is the unloaded one, −1 where the upper is, 0 where that is not clear. */
function lowerOf(forLower: number, forUpper: number): 1 | -1 | 0 {
  if (forLower >= CLEAR * forUpper) return 1;
  return forUpper >= CLEAR * forLower ? -1 : 0;
}

function lowerByTime(up: Float64Array, least: number, most: number): 1 | -1 | 0 {
  const reach = NEAR_END * (most - least);
  let nearLeast = 0;
  let nearMost = 0;
  for (let i = 0; i < up.length; i++) {
    const value = up[i] as number;
    if (value < least + reach) nearLeast++;
    else if (value > most - reach) nearMost++;
  }
  return lowerOf(nearLeast, nearMost);
}

/** Whether the sum of squares below zero is the larger one. */
function below(up: Float64Array): boolean {
  let sum = 0;
  for (let i = 0; i < up.length; i++) {
    const value = up[i] as number;
    sum += value < 0 ? -value * value : value * value;
  }
  return sum < 0;
}

function meanOver(samples: Float64Array, { from, to }: Flight): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += samples[i] as number;
  return sum / (to - from);
}
