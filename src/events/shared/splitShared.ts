import type { GroundReaction } from "../../force/index.js";
import { mean } from "../../statistics/index.js";
import type { Newtons } from "../../units/index.js";
import type { Stretch } from "../crossings.js";
import { changeOfFoot } from "./changeOfFoot.js";
import type { PressurePath } from "./footPath.js";
import { type FootSpan, footSpans } from "./footSpans.js";
import { BOTH_FEET_SHARE } from "./holdsBothFeet.js";

/** Contacts of single feet, or why a stretch holds none that can be told. */
export type SplitStretch = { readonly stretches: readonly Stretch[] } | { readonly reason: string };

/** Vertical force below which no centre of pressure is taken, N; walkers bear half their weight and more at any time. */
const FLOOR: Newtons = 100;

/**
 * Parts a stretch in which both feet load one plate into the contacts of each.
 *
 * In single support the centre of pressure is the foot's own; short straight lines carry its way into the double support
 * before and after. Between the two feet the centre of pressure divides the line from one to the other as the load is divided
 * (statics), so the vertical force under each follows, and with it where it rises and falls through the threshold.
 *
 * @param plate - Force and moment of one plate.
 * @param stretch - Where its force stays above the threshold.
 * @param threshold - Level of the vertical force under one foot, N.
 */
export function splitShared(plate: GroundReaction, stretch: Stretch, threshold: Newtons): SplitStretch {
  const path = pathOf(plate, stretch);
  if (typeof path === "string") return { reason: path };
  if (bearsHalf(plate, path)) return { reason: "less than the body weight is borne, as by one foot" };
  const spans = footSpans(path);
  if (spans === null) {
    return { reason: "the centre of pressure does not pass regularly from side to side" };
  }
  if (!restsOnOneLeg(path, spans)) {
    return { reason: "the vertical force is largest on one leg, as in running without flight" };
  }
  const changes = spans.slice(1).map((next, k) => changeOfFoot(path, spans[k] as FootSpan, next, threshold));
  if (changes.every((change) => change === null)) {
    return {
      reason: "the way of the centre of pressure is too irregular to tell when a foot lands and leaves",
    };
  }
  const { plate: on } = stretch;
  const lastSample = (plate.force.up.length - 1) / plate.sampleRate;
  const stretches = spans.map((span, k): Stretch => {
    const begins = changes[k - 1] ?? null;
    const ends = changes[k] ?? null;
    const atStart = k === 0 && stretch.initialContact > 0;
    const atEnd = k === spans.length - 1 && stretch.toeOff < lastSample;
    return {
      initialContact: k === 0 ? stretch.initialContact : (begins?.initialContact ?? span.from),
      toeOff: k === spans.length - 1 ? stretch.toeOff : (ends?.toeOff ?? span.to),
      // A change of foot that could not be told cuts the contacts on both sides of it.
      cut: (begins === null && !atStart) || (ends === null && !atEnd),
      shared: true,
      level: Math.max(threshold, begins?.level ?? 0, ends?.level ?? 0),
      ...(on !== undefined && { plate: on }),
    };
  });
  return { stretches };
}

/** The centre of pressure of a stretch, or why there is none. */
function pathOf(plate: GroundReaction, { initialContact, toeOff }: Stretch): PressurePath | string {
  const { sampleRate, moment } = plate;
  if (moment?.forward === undefined) return "no centre of pressure along `right` was recorded";
  const { up } = plate.force;
  let first = Math.ceil(initialContact * sampleRate);
  let last = Math.min(up.length - 1, Math.floor(toeOff * sampleRate));
  while (first < last && (up[first] as number) < FLOOR) first++;
  while (last > first && (up[last] as number) < FLOOR) last--;
  const length = last - first + 1;
  const right = new Float64Array(length);
  const forward = new Float64Array(length);
  for (let i = 0; i < length; i++) {
    const load = up[first + i] as number;
    if (load < FLOOR) return `the vertical force falls to ${load.toFixed(0)} N within the contact`;
    right[i] = -(moment.forward[first + i] as number) / load;
    if (moment.right !== undefined) forward[i] = (moment.right[first + i] as number) / load;
  }
  return { sampleRate, first, right, forward, load: up.subarray(first, last + 1) };
}

/** Whether the mean force is clearly below the stated body weight, which two feet bear. */
function bearsHalf({ subject, gravity, grade = 0 }: GroundReaction, { load }: PressurePath): boolean {
  if (subject.mass === undefined) return false;
  const weight = (subject.mass * gravity) / Math.hypot(1, grade);
  return mean(load) < BOTH_FEET_SHARE * weight;
}

/** Whether the body bears less in the middle of the steps than between them, as a walker's does (common practice). */
function restsOnOneLeg({ sampleRate, first, load }: PressurePath, spans: readonly FootSpan[]): boolean {
  let onOne = 0;
  let onBoth = 0;
  for (const { from, to } of spans.slice(1, -1)) {
    const at = (share: number) =>
      load[
        Math.max(0, Math.min(load.length - 1, Math.round((from + share * (to - from)) * sampleRate) - first))
      ] as number;
    onOne += at(0.45) + at(0.5) + at(0.55);
    onBoth += at(0) + (at(0.1) + at(0.9)) / 2 + at(1);
  }
  return onOne < onBoth;
}
