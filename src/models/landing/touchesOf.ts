import { type ContactSpan, type LandingRefused, refuse } from "./landing.js";
import type { ToeShape } from "./options.js";

/** The four times of a contact, s from the first sample. */
export interface Touches {
  readonly refused?: undefined;
  /** Where the vertical force leaves zero. */
  readonly first: number;
  /** Where it first reaches the foot level. */
  readonly loaded: number;
  /** Where it last falls below the foot level. */
  readonly unloading: number;
  /** Where it is back at zero. */
  readonly last: number;
}

/** How far a filter may have moved the events that the search begins from, s. */
const SLACK = 0.02;
/** The level between threshold and foot level that tells how the rise bends, as a share of the way. */
const MIDDLE = 1 / 3;

/**
 * Reads first and last touch from the unfiltered vertical force.
 *
 * Formula: with t₁, t₂, t₃ the times of the threshold, a third of the way and the foot level, the line through t₁ and t₃ as
 * a function of F, and of √F, each carried on to 0 N; between the two as far as (t₂ − t₁)/(t₃ − t₁) lies between theirs.
 *
 * @param up - Unfiltered, offset taken off.
 * @param sampleRate - Hz.
 * @param contact - Where to look.
 * @param threshold - N.
 * @param footLevel - N, above the threshold.
 * @param toe - How the rise is carried on to zero.
 */
export function touchesOf(
  up: Float64Array,
  sampleRate: number,
  { initialContact, toeOff }: ContactSpan,
  threshold: number,
  footLevel: number,
  toe: ToeShape,
): Touches | LandingRefused {
  const start = Math.max(0, Math.floor((initialContact - SLACK) * sampleRate));
  const end = Math.min(up.length - 1, Math.ceil((toeOff + SLACK) * sampleRate));
  let rise = start;
  while (rise < end && (up[rise] as number) < footLevel) rise++;
  if ((up[rise] as number) < footLevel) {
    return refuse("foot-level", `the vertical force stays below the foot level of ${footLevel.toFixed(0)} N`);
  }
  if (rise === start) return refuse("no-flight", "the foot lands while the ground still carries the runner");
  let fall = end;
  while (fall > rise && (up[fall] as number) < footLevel) fall--;
  if (fall === end) return refuse("no-flight", "the foot leaves while the ground still carries the runner");
  const middle = threshold + MIDDLE * (footLevel - threshold);
  // Backward from the rise and forward from the fall, to the crossing of each level that lies next to it.
  const crossing = (from: number, level: number, step: 1 | -1): number | null => {
    let i = from;
    while (i + step >= 0 && i + step < up.length && (up[i + step] as number) >= level) i += step;
    const inside = up[i] as number;
    const outside = up[i + step];
    return outside === undefined ? null : (i + (step * (inside - level)) / (inside - outside)) / sampleRate;
  };
  const times = (from: number, step: 1 | -1) =>
    [threshold, middle, footLevel].map((level) => crossing(from, level, step)) as [number, number, number];
  const rising = times(rise, -1);
  const falling = times(fall, 1);
  if ([...rising, ...falling].includes(null as never)) {
    return refuse("no-flight", "the recording's end cuts the contact");
  }
  return {
    first: zeroOf(rising, threshold, middle, footLevel, toe),
    loaded: rising[2],
    unloading: falling[2],
    last: zeroOf(falling, threshold, middle, footLevel, toe),
  };
}

/** Carries three crossings on to a force of zero. */
function zeroOf(
  [low, between, high]: readonly [number, number, number],
  threshold: number,
  middle: number,
  footLevel: number,
  toe: ToeShape,
): number {
  const span = high - low;
  const straight = low - (span * threshold) / (footLevel - threshold);
  if (toe === "line" || span === 0) return straight;
  const [a, b, c] = [Math.sqrt(threshold), Math.sqrt(middle), Math.sqrt(footLevel)];
  const bent = low - (span * a) / (c - a);
  const ofLine = (middle - threshold) / (footLevel - threshold);
  const ofParabola = (b - a) / (c - a);
  const weight = Math.min(1, Math.max(0, ((between - low) / span - ofLine) / (ofParabola - ofLine)));
  return straight + weight * (bent - straight);
}
