import type { Direction } from "../recording/index.js";
import type { Caution, Complete, NewtonMetres } from "../units/index.js";
import {
  type Flight,
  flightMeanError,
  flightMeans,
  medianOfThree,
  rangeOf,
  withoutDrift,
  withoutOffset,
} from "./baseline.js";
import type { ForceComponents, MomentComponents } from "./groundReaction.js";
import type { ToGroundReactionOptions } from "./options.js";
import type { Unloaded } from "./plates/unloaded.js";

/** Force and moment with offset or drift taken off, and what was done. */
export interface CorrectedForce {
  readonly force: ForceComponents;
  readonly moment: Required<MomentComponents> | null;
  /** Mean unloaded level by component, N, where it was taken off. */
  readonly offset: Readonly<Record<string, number>>;
  /** The same of the moment, N·m. */
  readonly momentOffset: Readonly<Record<string, number>>;
  readonly driftRemoved: boolean;
  readonly cautions: readonly Caution[];
}

/**
 * Flight levels that range over less than this many standard errors of a flight's mean are noise: of 80
 * medians of three normal values the range is about 3.3. Taking noise off as drift would add it to every
 * contact.
 */
const NOISE_RANGE = 4;

/** An offset above this is said, N: a platform zeroed as usual has less. A judgement. */
const LARGE_OFFSET = 50;

/**
 * Range of the moment's flight levels above which it drifts, N·m: 1 N·m moves the centre of pressure by 1 mm
 * at 1000 N. A judgement.
 */
const MOMENT_DRIFT_LIMIT: NewtonMetres = 1;
/**
 * {@link NOISE_RANGE} of the moment: at 4 it was said to drift on 10 of 100 synthetic platforms with 2 N·m of
 * white noise, at 5 on up to 2, at 6 on none.
 */
const MOMENT_NOISE_RANGE = 6;

/** One series of force or moment and its unloaded levels. */
interface Level {
  readonly quantity: "force" | "moment";
  readonly direction: Direction;
  readonly samples: Float64Array;
  /** Taken off as offset. */
  readonly mean: number;
  /** Of each flight. */
  readonly levels: Float64Array;
  readonly range: number;
  readonly limit: number;
}

/**
 * Takes offset or drift off every channel of force and of moment; where drift is taken off, the lines from
 * flight to flight are the offset too. Force that drifts is taken for drift of the whole platform, moment
 * included; a moment that drifts alone leaves the force as it is.
 */
export function correctBaseline(
  raw: { readonly force: ForceComponents; readonly moment: Required<MomentComponents> | null },
  { source, zero, flights, notFree }: Unloaded,
  settings: Pick<Complete<ToGroundReactionOptions>, "drift" | "driftLimit">,
): CorrectedForce {
  const takesOffset = source !== "none";
  if (flights.length === 0 && zero === null) {
    const message = "no flight phase was found, so no offset or drift of the platform was taken off";
    const asked = !notFree && (takesOffset || settings.drift !== "never");
    const cautions = asked ? [{ code: "no-flight", message }] : [];
    return { ...raw, offset: {}, momentOffset: {}, driftRemoved: false, cautions };
  }
  const channels = [
    ...levelsOf("force", raw.force, flights, zero, settings.driftLimit, NOISE_RANGE),
    ...levelsOf("moment", raw.moment ?? {}, flights, zero, MOMENT_DRIFT_LIMIT, MOMENT_NOISE_RANGE),
  ];
  const drifting = { force: worstOf(channels, "force"), moment: worstOf(channels, "moment") };
  const takesDrift = (drifts: boolean): boolean =>
    flights.length > 0 && (settings.drift === "always" || (settings.drift === "auto" && drifts));
  const removed = {
    force: takesDrift(drifting.force !== null),
    moment: raw.moment !== null && takesDrift(drifting.force !== null || drifting.moment !== null),
  };
  const corrected: Record<Level["quantity"], Partial<Record<Direction, Float64Array>>> = {
    force: {},
    moment: {},
  };
  const offset: Record<Level["quantity"], Record<string, number>> = { force: {}, moment: {} };
  for (const { quantity, direction, samples, mean, levels } of channels) {
    if (takesOffset) offset[quantity][direction] = mean;
    if (removed[quantity]) {
      corrected[quantity][direction] = withoutDrift(
        samples,
        flights,
        takesOffset ? levels : levels.map((level) => level - mean),
      );
    } else corrected[quantity][direction] = takesOffset ? withoutOffset(samples, mean) : samples;
  }
  return {
    force: corrected.force as ForceComponents,
    moment: raw.moment === null ? null : (corrected.moment as Required<MomentComponents>),
    offset: offset.force,
    momentOffset: offset.moment,
    driftRemoved: removed.force || removed.moment,
    cautions: [...driftCautions(drifting, removed, flights.length), ...largeOffsets(offset.force)],
  };
}

/** The series that exceeds its limit by most; `null` where none does. */
function worstOf(channels: readonly Level[], quantity: Level["quantity"]): Level | null {
  return channels
    .filter((channel) => channel.quantity === quantity && channel.range > channel.limit)
    .reduce<Level | null>(
      (worst, channel) =>
        worst === null || channel.range - channel.limit > worst.range - worst.limit ? channel : worst,
      null,
    );
}

/** Says what drifts: the force, or else the moment. */
function driftCautions(
  drifting: Readonly<Record<Level["quantity"], Level | null>>,
  removed: Readonly<Record<Level["quantity"], boolean>>,
  flights: number,
): Caution[] {
  const level = drifting.force ?? drifting.moment;
  if (level === null) return [];
  const { quantity, direction, range, limit } = level;
  const what = quantity === "force" ? `"${direction}"` : `the moment about "${direction}"`;
  const by = quantity === "force" ? `${range.toFixed(0)} N` : `${range.toFixed(1)} N·m`;
  const done = removed[quantity]
    ? `a line between flights was taken off every ${quantity} channel`
    : "it was left in";
  return [
    {
      code: removed[quantity] ? "drift-removed" : "drift",
      message: `the unloaded level of ${what} drifts by ${by} over the recording's ${flights} flight phases; ${done}`,
      where: quantity === "force" ? direction : `moment ${direction}`,
      values: { range, flights, limit },
    },
  ];
}

function levelsOf(
  quantity: Level["quantity"],
  series: Partial<Record<Direction, Float64Array>>,
  flights: readonly Flight[],
  zero: Flight | null,
  least: number,
  noiseRange: number,
): Level[] {
  return (["forward", "up", "right"] as const).flatMap((direction) => {
    const samples = series[direction];
    if (samples === undefined) return [];
    const means = flightMeans(samples, flights);
    const mean =
      zero === null
        ? means.reduce((sum, value) => sum + value, 0) / means.length
        : (flightMeans(samples, [zero])[0] as number);
    const levels = medianOfThree(means, flights);
    const limit = Math.max(least, noiseRange * flightMeanError(samples, flights, means));
    return [{ quantity, direction, samples, mean, levels, range: rangeOf(levels), limit }];
  });
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
