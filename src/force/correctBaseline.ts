import type { Direction } from "../recording/index.js";
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
 * Takes offset or drift off every channel of force and of moment. The force alone tells whether there is
 * drift; where it is taken off, the lines from flight to flight are the offset too.
 */
export function correctBaseline(
  raw: { readonly force: ForceComponents; readonly moment: Required<MomentComponents> | null },
  { source, zero, flights }: Unloaded,
  settings: Pick<Complete<ToGroundReactionOptions>, "drift" | "driftLimit">,
): CorrectedForce {
  const takesOffset = source !== "none";
  if (flights.length === 0 && zero === null) {
    const message = "no flight phase was found, so no offset or drift of the platform was taken off";
    const asked = takesOffset || settings.drift !== "never";
    const cautions = asked ? [{ code: "no-flight", message }] : [];
    return { ...raw, offset: {}, momentOffset: {}, driftRemoved: false, cautions };
  }
  const series = { force: raw.force, moment: raw.moment ?? {} };
  const channels = (["force", "moment"] as const).flatMap((quantity) =>
    levelsOf(quantity, series[quantity], flights, zero, settings.driftLimit),
  );
  const worst = channels
    .filter(({ quantity }) => quantity === "force")
    .reduce((a, b) => (b.range - b.limit > a.range - a.limit ? b : a));
  const drifts = worst.range > worst.limit;
  const driftRemoved =
    flights.length > 0 && (settings.drift === "always" || (settings.drift === "auto" && drifts));
  const corrected: Record<Level["quantity"], Partial<Record<Direction, Float64Array>>> = {
    force: {},
    moment: {},
  };
  const offset: Record<Level["quantity"], Record<string, number>> = { force: {}, moment: {} };
  for (const { quantity, direction, samples, mean, levels } of channels) {
    if (takesOffset) offset[quantity][direction] = mean;
    if (driftRemoved) {
      corrected[quantity][direction] = withoutDrift(
        samples,
        flights,
        takesOffset ? levels : levels.map((level) => level - mean),
      );
    } else corrected[quantity][direction] = takesOffset ? withoutOffset(samples, mean) : samples;
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
    force: corrected.force as ForceComponents,
    moment: raw.moment === null ? null : (corrected.moment as Required<MomentComponents>),
    offset: offset.force,
    momentOffset: offset.moment,
    driftRemoved,
    cautions: [...(drifts ? [drift] : []), ...largeOffsets(offset.force)],
  };
}

function levelsOf(
  quantity: Level["quantity"],
  series: Partial<Record<Direction, Float64Array>>,
  flights: readonly Flight[],
  zero: Flight | null,
  driftLimit: number,
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
    const limit = Math.max(driftLimit, NOISE_RANGE * flightMeanError(samples, flights, means));
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
