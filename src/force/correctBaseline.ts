import type { Caution, Complete } from "../units/index.js";
import {
  type Flight,
  flightMeanError,
  flightMeans,
  medianOfThree,
  rangeOf,
  withoutDrift,
  withoutOffset,
} from "./baseline.js";
import type { ForceComponents } from "./groundReaction.js";
import type { ToGroundReactionOptions } from "./options.js";

/** Force with offset or drift taken off, and what was done. */
export interface CorrectedForce {
  readonly force: ForceComponents;
  /** Mean level of the flights by component, N, where it was taken off. */
  readonly offset: Readonly<Record<string, number>>;
  readonly driftRemoved: boolean;
  readonly cautions: readonly Caution[];
}

/**
 * Flight levels that range over less than this many standard errors of a flight's mean are noise: of 80 medians of three
 * normal values the range is about 3.3. Taking noise off as drift would add it to every contact.
 */
const NOISE_RANGE = 4;

/** An offset above this is said, N: a platform zeroed as usual has less. A judgement. */
const LARGE_OFFSET = 50;

/** Takes offset or drift off every channel by the flights. */
export function correctBaseline(
  raw: ForceComponents,
  flights: readonly Flight[],
  settings: Complete<ToGroundReactionOptions>,
): CorrectedForce {
  const takesOffset = settings.offset === "flights";
  if (flights.length === 0) {
    const message = "no flight phase was found, so no offset or drift of the platform was taken off";
    const asked = takesOffset || settings.drift !== "never";
    return {
      force: raw,
      offset: {},
      driftRemoved: false,
      cautions: asked ? [{ code: "no-flight", message }] : [],
    };
  }
  const channels = (["forward", "up", "right"] as const).flatMap((direction) => {
    const samples = raw[direction];
    if (samples === undefined) return [];
    const means = flightMeans(samples, flights);
    const mean = means.reduce((sum, value) => sum + value, 0) / means.length;
    const levels = medianOfThree(means, flights);
    const limit = Math.max(settings.driftLimit, NOISE_RANGE * flightMeanError(samples, flights, means));
    return [{ direction, samples, mean, levels, range: rangeOf(levels), limit }];
  });
  const worst = channels.reduce((a, b) => (b.range - b.limit > a.range - a.limit ? b : a));
  const drifts = worst.range > worst.limit;
  const driftRemoved = settings.drift === "always" || (settings.drift === "auto" && drifts);
  const corrected: Partial<Record<"forward" | "up" | "right", Float64Array>> = {};
  const offset: Record<string, number> = {};
  for (const { direction, samples, mean, levels } of channels) {
    if (takesOffset) offset[direction] = mean;
    if (driftRemoved) {
      corrected[direction] = withoutDrift(
        samples,
        flights,
        takesOffset ? levels : levels.map((level) => level - mean),
      );
    } else corrected[direction] = takesOffset ? withoutOffset(samples, mean) : samples;
  }
  const { direction, range, limit } = worst;
  const done = driftRemoved ? "a line between flights was taken off every force channel" : "it was left in";
  const drift: Caution = {
    code: driftRemoved ? "drift-removed" : "drift",
    message: `the unloaded level of "${direction}" drifts by ${range.toFixed(0)} N over the recording's ${flights.length} flight phases; ${done}`,
    where: direction,
    values: { range, flights: flights.length, limit },
  };
  return {
    force: { ...corrected, up: corrected.up as Float64Array },
    offset,
    driftRemoved,
    cautions: [...(drifts ? [drift] : []), ...largeOffsets(offset)],
  };
}

function largeOffsets(offset: Readonly<Record<string, number>>): Caution[] {
  return Object.entries(offset)
    .filter(([, level]) => Math.abs(level) > LARGE_OFFSET)
    .map(([direction, level]) => ({
      code: "large-offset",
      message: `the unloaded level of "${direction}" was ${level.toFixed(0)} N and was taken off: was the platform zeroed without the runner on it?`,
      where: direction,
      values: { offset: level },
    }));
}
