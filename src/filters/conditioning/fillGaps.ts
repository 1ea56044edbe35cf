import {
  type Caution,
  type Complete,
  fail,
  type Hertz,
  requireNumber,
  requireOneOf,
  type Seconds,
  withDefaults,
} from "../../units/index.js";
import { type InterpolationMethod, interpolate } from "../resampling/interpolate.js";

/** What {@link fillGaps} may be told. */
export interface FillGapsOptions {
  /** By which curve: `cubic` goes on smoothly, `pchip` does not overshoot, `linear` is a straight line. */
  readonly method?: InterpolationMethod | undefined;
  /** Longest gap that is filled, s; longer ones are left. */
  readonly longest?: Seconds | undefined;
}

/** A cubic spline over at most 0.1 s: common practice for marker trajectories. */
export const FILL_GAPS_DEFAULTS: Complete<FillGapsOptions> = { method: "cubic", longest: 0.1 };

/** A run of missing samples. */
export interface Gap {
  /** Number of its first sample. */
  readonly from: number;
  /** One beyond the number of its last sample. */
  readonly to: number;
  /** Its samples divided by the rate, s. */
  readonly duration: Seconds;
}

/** Samples with gaps filled, and which. */
export interface FilledGaps<S extends Float64Array> {
  readonly samples: S;
  readonly filled: readonly Gap[];
  /** Gaps left as NaN: too long, or at the start or end. */
  readonly left: readonly Gap[];
  readonly cautions: readonly Caution[];
}

/** Samples known on either side that shape a filling. What lies beyond thirty moves a spline by less than 2⁻⁵³. */
const NEIGHBOURS = 30;

/**
 * Fills gaps, runs of NaN, from the samples on either side of them.
 *
 * Formula: that of {@link interpolate} through the known samples.
 * Units: those of the samples; Hz and s.
 * Limits: never beyond the first or last known sample, never over more than `longest`. A filled stretch is a guess: keep
 * `filled` beside the result. Ground reaction should not be filled through a contact.
 * Source: common practice, cubic spline up to 0.1 to 0.2 s.
 * @param samples - One channel; NaN where a sample is missing.
 * @param sampleRate - Samples per second, above 0, Hz.
 * @param options - {@link FILL_GAPS_DEFAULTS} where left out.
 * @throws GaitKineticsError `not-finite`: infinity; `out-of-range`: rate, longest or method; `wrong-type`; `unknown-option`.
 * @example
 * fillGaps(new Float64Array([0, 1, Number.NaN, 9, 16]), 100).samples[2] // 4
 */
export function fillGaps<S extends Float64Array>(
  samples: S,
  sampleRate: Hertz,
  options: FillGapsOptions = {},
): FilledGaps<S> {
  const { method, longest } = withDefaults(FILL_GAPS_DEFAULTS, options);
  requireOneOf("method", method, ["linear", "cubic", "pchip"]);
  requireNumber("longest", longest, { from: 0, unit: "s" });
  requireNumber("sampleRate", sampleRate, { above: 0, unit: "Hz" });
  const gaps = gapsOf(samples, sampleRate);
  const canFill = ({ from, to }: Gap) =>
    from > 0 && to < samples.length && (to - from) / sampleRate <= longest * (1 + 1e-12);
  const [filled, left] = [gaps.filter(canFill), gaps.filter((gap) => !canFill(gap))];
  const result = samples.slice() as S;
  for (const { from, to } of filled) {
    const known = [...knownFrom(samples, from - 1, -1).reverse(), ...knownFrom(samples, to, 1)];
    const missing = Array.from({ length: to - from }, (_, i) => from + i);
    const values = Float64Array.from(known, (place) => samples[place] as number);
    result.set(interpolate(Float64Array.from(known), values, missing, { method }), from);
  }
  const cautions = left.map(({ from, to, duration }): Caution => {
    const reason =
      from === 0 || to === samples.length
        ? "it has known samples on one side only"
        : `more than ${longest} s`;
    return {
      code: "gap",
      message: `${to - from} samples, ${duration} s, are missing from sample ${from} on and were not filled: ${reason}`,
      where: `sample ${from}`,
      values: { from, to, duration },
    };
  });
  return { samples: result, filled, left, cautions };
}

function gapsOf(samples: Float64Array, sampleRate: Hertz): Gap[] {
  if (!(samples instanceof Float64Array)) {
    fail("wrong-type", `samples are ${typeof samples}; a Float64Array is needed`, { argument: "samples" });
  }
  const gaps: Gap[] = [];
  for (let from = 0; from < samples.length; from++) {
    const value = samples[from] as number;
    if (Number.isFinite(value)) continue;
    if (!Number.isNaN(value)) {
      fail(
        "not-finite",
        `samples hold ${value} at sample ${from}; a finite number, or NaN for a gap, is needed`,
        {
          argument: "samples",
          where: `sample ${from}`,
        },
      );
    }
    let to = from + 1;
    while (to < samples.length && Number.isNaN(samples[to])) to++;
    gaps.push({ from, to, duration: (to - from) / sampleRate });
    from = to - 1;
  }
  return gaps;
}

/** Numbers of the known samples nearest to a place, counted in one direction. */
function knownFrom(samples: Float64Array, place: number, step: 1 | -1): number[] {
  const known: number[] = [];
  for (let i = place; i >= 0 && i < samples.length && known.length < NEIGHBOURS; i += step) {
    if (!Number.isNaN(samples[i])) known.push(i);
  }
  return known;
}
