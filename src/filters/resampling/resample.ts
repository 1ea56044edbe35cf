import {
  type Complete,
  fail,
  type Hertz,
  requireFiniteSamples,
  requireNumber,
  requireOneOf,
  withDefaults,
} from "../../units/index.js";
import { finiteResult } from "../finiteResult.js";
import { rationalRatio } from "./rationalRatio.js";
import { windowedSinc } from "./windowedSinc.js";

/** What {@link resample} needs and may be told. */
export interface ResampleOptions {
  /** Rate of the samples given, Hz. */
  readonly from: Hertz;
  /** Rate wanted, Hz. */
  readonly to: Hertz;
  /**
   * How the signal goes on beyond its ends: turned about its end point (`odd`), mirrored (`even`), held (`constant`) or
   * zero (`none`).
   */
  readonly ends?: "odd" | "even" | "constant" | "none" | undefined;
}

/** Odd ends, so that a signal that stands away from zero does not droop at its ends. */
export const RESAMPLE_DEFAULTS: Complete<Pick<ResampleOptions, "ends">> = { ends: "odd" };

/**
 * Brings samples to another rate, without what the new rate could not hold.
 *
 * Formula: up/down = to/from in lowest terms; y_k = Σ x_j h(k·down − j·up), h a sinc with its −6 dB point at half the lower
 * rate under a Kaiser window (β = 5) of 10 max(up, down) steps to either side, scaled to gain `up`.
 * Units: Hz; the unit of the samples, which they keep in their type.
 * Limits: zero phase. The result has ⌈n·up/down⌉ samples, the first at the same time. Between 0.9 and 1.1 times half the lower rate frequencies
 * are damped and partly folded: filter first where something strong lies there. A constant ripples by up to 0.07 % where the rate rises,
 * by 0.0015 % from 1000 to 240 Hz. A ratio that needs more than 10 000 steps is refused.
 * Source: design as in SciPy's `resample_poly`, with which it agrees for each of its ends.
 * @param samples - One channel.
 * @param options - Both rates, and what {@link RESAMPLE_DEFAULTS} holds where left out.
 * @throws GaitKineticsError `out-of-range`: rates not above 0, or no ratio of whole numbers up to 10 000; `too-short`:
 * fewer samples than the filter reaches beyond an end, for odd and even ends; `not-finite`; `wrong-type`; `unknown-option`.
 * @example
 * resample(new Float64Array(100).fill(700), { from: 1000, to: 240 }).length // 24
 */
export function resample<S extends Float64Array>(samples: S, options: ResampleOptions): S {
  const { from, to, ...rest } = { ...options };
  const { ends } = withDefaults(RESAMPLE_DEFAULTS, rest);
  requireOneOf("ends", ends, ["odd", "even", "constant", "none"]);
  requireNumber("from", from, { above: 0, unit: "Hz" });
  requireNumber("to", to, { above: 0, unit: "Hz" });
  requireFiniteSamples("samples", samples);
  const [up, down] = rationalRatio(to / from);
  const length = Math.ceil((samples.length * up) / down);
  if (up === down || samples.length === 0) return samples.slice() as S;

  const half = 10 * Math.max(up, down);
  const taps = windowedSinc(half, 1 / Math.max(up, down), up);
  const reach = Math.ceil(half / up);
  const extended = extend(samples, reach, ends);
  const phases = phasesOf(taps, half, up, reach);
  const result = new Float64Array(length);
  for (let k = 0; k < length; k++) {
    const place = k * down;
    const phase = phases[place % up] as Float64Array;
    // The sample before the place, which lies `reach` further on in the extended signal, less the reach of the filter.
    const start = Math.floor(place / up);
    result[k] = product(phase, extended, start);
  }
  return finiteResult(result) as S;
}

/** Sum of the products of taps with samples from a place on: four sums side by side, none waiting for another. */
function product(taps: Float64Array, samples: Float64Array, start: number): number {
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  let i = 0;
  for (; i < taps.length - 3; i += 4) {
    a += (taps[i] as number) * (samples[start + i] as number);
    b += (taps[i + 1] as number) * (samples[start + i + 1] as number);
    c += (taps[i + 2] as number) * (samples[start + i + 2] as number);
    d += (taps[i + 3] as number) * (samples[start + i + 3] as number);
  }
  for (; i < taps.length; i++) a += (taps[i] as number) * (samples[start + i] as number);
  return a + b + (c + d);
}

/** For each place between two samples, the taps that fall on the samples from `reach` before it to `reach` after. */
function phasesOf(taps: Float64Array, half: number, up: number, reach: number): Float64Array[] {
  return Array.from({ length: up }, (_, phase) =>
    Float64Array.from({ length: 2 * reach + 1 }, (_, i) => taps[half + phase - (i - reach) * up] ?? 0),
  );
}

/** The signal with what lies beyond its ends. */
function extend(
  samples: Float64Array,
  reach: number,
  ends: "odd" | "even" | "constant" | "none",
): Float64Array {
  const count = samples.length;
  const extended = new Float64Array(count + 2 * reach);
  extended.set(samples, reach);
  if (ends === "none") return extended;
  if (count <= reach && ends !== "constant") {
    fail(
      "too-short",
      `there are ${count} samples; more than ${reach} are needed for this ratio (or ends "constant" or "none")`,
      {
        argument: "samples",
        values: { length: count, reach },
      },
    );
  }
  const [first, last] = [samples[0] as number, samples[count - 1] as number];
  const beyond = (edge: number, mirrored: number | undefined) =>
    ends === "constant" ? edge : ends === "even" ? (mirrored as number) : 2 * edge - (mirrored as number);
  for (let i = 1; i <= reach; i++) {
    extended[reach - i] = beyond(first, samples[i]);
    extended[reach + count - 1 + i] = beyond(last, samples[count - 1 - i]);
  }
  return extended;
}
