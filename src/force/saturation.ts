import type { Caution } from "../units/index.js";

/** Equal samples in a row at the very end of a channel's range that make one plateau. */
const PLATEAU = 5;
/** Shorter ones count where there are several: at a low sampling rate a limit cuts off a few samples a contact. */
const SHORT_PLATEAU = 3;
const SHORT_PLATEAUS = 3;

/** Range of the vertical force below which nobody was on the platform, N. */
const LEAST_RANGE = 100;
/** A sample is under load where the vertical force lies above this share of its range. */
const LOADED = 0.1;

/**
 * Half its length beyond either end of a plateau the force must have fallen by more than this many steps of the channel's
 * resolution. A parabola that is rounded to whole steps falls by 3, one whose top was cut off by three times the height
 * that is missing; noise of less than a step adds two or three.
 */
const LEAST_FALL = 9;
/** The resolution is read near the level of the plateau, since files of so many digits are coarser there. */
const NEAR = 0.8;
/** Values closer together than this share of them are one value. */
const ROUNDING = 1e-9;
/** Values that the resolution is read from. */
const VALUES = 4096;

/**
 * Says which channels of force, moment or volts stay at their own extreme value under load and fall away steeply on either
 * side, as a saturated amplifier or a full converter does. A rounded peak falls away as its own curvature has it.
 * @param up - Vertical force that tells where the platform is loaded: in flight a channel may well stay at one value.
 */
export function saturationCautions(
  channels: readonly { readonly name: string; readonly unit?: string; readonly samples: Float64Array }[],
  up: Float64Array,
): Caution[] {
  const level = loadLevel(up);
  if (level === null) return [];
  return channels.flatMap(({ name, unit = "N", samples }) =>
    ([1, -1] as const).flatMap((sign): Caution[] => {
      const extreme = extremeOf(samples, sign, up, level);
      const { long, short } = plateausAt(samples, sign, extreme, up, level);
      const plateaus = long > 0 ? long : short >= SHORT_PLATEAUS ? short : 0;
      if (plateaus === 0) return [];
      const least = long > 0 ? PLATEAU : SHORT_PLATEAU;
      return [
        {
          code: "saturated",
          message: `"${name}" stays at its very ${sign > 0 ? "largest" : "smallest"} value under load, ${(sign * extreme).toPrecision(4)} ${unit}, for ${least} samples or more, ${plateaus === 1 ? "once" : `${plateaus} times`}, and falls away from it steeply: the channel may be saturated, its peaks cut off`,
          where: name,
          values: { plateaus, level: sign * extreme },
        },
      ];
    }),
  );
}

/** The vertical force above which the platform is loaded; `null` where nobody was on it. */
function loadLevel(up: Float64Array): number | null {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < up.length; i++) {
    const value = up[i] as number;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  return most - least >= LEAST_RANGE ? least + LOADED * (most - least) : null;
}

/** Largest sample under load, of the negatives with sign −1. */
function extremeOf(samples: Float64Array, sign: 1 | -1, up: Float64Array, level: number): number {
  let extreme = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < samples.length; i++) {
    const value = sign * (samples[i] as number);
    if (value > extreme && (up[i] as number) > level) extreme = value;
  }
  return extreme;
}

/** Runs of samples at the extreme that fall away steeply: long ones, and long and short ones together. */
function plateausAt(
  samples: Float64Array,
  sign: 1 | -1,
  extreme: number,
  up: Float64Array,
  level: number,
): { long: number; short: number } {
  const counts = { long: 0, short: 0 };
  let resolution: number | null = null;
  for (let from = 1; from < samples.length; from++) {
    if (sign * (samples[from] as number) !== extreme) continue;
    let to = from;
    while (to + 1 < samples.length && sign * (samples[to + 1] as number) === extreme) to++;
    const length = to - from + 1;
    const beyond = Math.max(2, Math.round(length / 2));
    const [before, after] = [from - beyond, to + beyond];
    if (length >= SHORT_PLATEAU && (up[(from + to) >> 1] as number) > level) {
      if (before >= 0 && after < samples.length) {
        resolution ??= resolutionNear(samples, sign, extreme);
        const higher = Math.max(sign * (samples[before] as number), sign * (samples[after] as number));
        if (extreme - higher > LEAST_FALL * resolution) {
          counts.short++;
          if (length >= PLATEAU) counts.long++;
        }
      }
    }
    from = to;
  }
  return counts;
}

/**
 * Smallest difference between values near the extreme: the channel's resolution there, or the finest of its noise. Where
 * there is one value alone, the difference to the next one.
 */
function resolutionNear(samples: Float64Array, sign: 1 | -1, extreme: number): number {
  const rounding = ROUNDING * Math.abs(extreme);
  const floor = extreme - (1 - NEAR) * Math.abs(extreme);
  const values = new Float64Array(VALUES);
  let count = 0;
  let second = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < samples.length; i++) {
    const value = sign * (samples[i] as number);
    if (value > second && value < extreme - rounding) second = value;
    if (value >= floor && count < VALUES) values[count++] = value;
  }
  const sorted = values.subarray(0, count).sort();
  let least = extreme - second;
  for (let i = 1; i < count; i++) {
    const step = (sorted[i] as number) - (sorted[i - 1] as number);
    if (step > rounding && step < least) least = step;
  }
  return least;
}
