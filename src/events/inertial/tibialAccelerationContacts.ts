import { lowPass } from "../../filters/index.js";
import type { Side } from "../../recording/index.js";
import { median, quantile } from "../../statistics/index.js";
import {
  type Complete,
  type Fraction,
  fail,
  type Hertz,
  requireFiniteSamples,
  requireNumber,
  requireOneOf,
  type Samples,
  type Seconds,
  withDefaults,
} from "../../units/index.js";
import { largestBetween, negated } from "../markers/extremes.js";
import { type InertialEvents, inertialCautions } from "./inertialEvents.js";

/** How {@link tibialAccelerationContacts} finds the peaks and what it takes for initial contact. */
export interface TibialAccelerationOptions {
  /** Net −3 dB point of the zero-phase low-pass, Hz; `null` for none. */
  readonly cutoff?: Hertz | null | undefined;
  /** Net order, even. */
  readonly order?: number | undefined;
  /** The smallest acceleration before the peak, or the last rise through a share of the way from it to the peak. */
  readonly contactFeature?: "minimum" | "rise" | undefined;
  /** That share. */
  readonly riseShare?: Fraction | undefined;
  /** How long before the peak initial contact is looked for, s. */
  readonly lookBack?: Seconds | undefined;
  /** Peaks of one leg are at least this far apart, s. */
  readonly shortestStride?: Seconds | undefined;
  /** The leg that wears the sensor; `"unknown"` where left out. */
  readonly side?: Side | "unknown" | undefined;
}

/** Low-pass, look-back and rise: common practice. Shortest stride: that of 240 steps a minute. */
export const TIBIAL_ACCELERATION_DEFAULTS: Complete<TibialAccelerationOptions> = {
  cutoff: 60,
  order: 4,
  contactFeature: "minimum",
  riseShare: 0.1,
  lookBack: 0.05,
  shortestStride: 0.5,
  side: "unknown",
};

/** A peak must rise above the median by this share of what the strongest do. */
const PEAK_SHARE = 0.4;
/** Quantile taken as the strongest: an impact lasts some 2 % of a stride. */
const STRONGEST = 0.995;
/** Strongest accelerations that exceed the median by less are no impact, m/s². */
const LEAST_PEAK = 5;

/** Contacts of one leg with the peaks that follow them. */
export interface TibialContacts extends InertialEvents {
  /** Times of the peaks of the smoothed acceleration, s, one for each initial contact. */
  readonly peakTimes: readonly Seconds[];
}

/**
 * Finds the initial contacts of one leg from the acceleration of its tibia along its axis: each lies before a peak.
 *
 * Formula: peaks are the largest accelerations at least a shortest stride apart; initial contact is the smallest acceleration within
 * the look-back before a peak, or the last rise through a share of the way from that to the peak.
 * Units: m/s² and Hz in; s from the first sample out.
 * Limits: positive is towards the knee. No toe-off is told. The peak follows contact by 10 to 30 ms (common practice). Four published
 * detectors were mostly late, and later from rearfoot to forefoot and from hard to soft soles (Mitschke C, Heß T, Milani
 * TL 2017, Appl. Sci. 7:959, abstract); single contacts of one sensor are ±0.1 s, of eighteen methods on 74 runners the
 * best had limits of −97 to +132 ms (PMC10255839, abstract): only means over many steps are usable.
 * Source: minimum before the peak: from memory, no publication read.
 * @param acceleration - Along the tibia, without gaps, at 100 Hz or more.
 * @param sampleRate - Samples per second.
 * @param options - {@link TIBIAL_ACCELERATION_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: rate, cutoff, feature, share, side; `not-finite`: a gap; `too-short`; `wrong-type`;
 * `unknown-option`.
 * @example
 * const acceleration = new Float64Array(1000)
 * for (const peak of [200, 600]) for (let i = -30; i <= 30; i++) acceleration[peak + i] = 50 * Math.cos((Math.PI * i) / 20)
 * tibialAccelerationContacts(acceleration, 500, { cutoff: null }).peakTimes // [0.4, 1.2]
 */
export function tibialAccelerationContacts(
  acceleration: Samples<"m/s^2">,
  sampleRate: Hertz,
  options: TibialAccelerationOptions = {},
): TibialContacts {
  const settings = withDefaults<TibialAccelerationOptions>(TIBIAL_ACCELERATION_DEFAULTS, options);
  const { cutoff, order } = settings;
  const contactFeature = requireOneOf("contactFeature", settings.contactFeature, ["minimum", "rise"]);
  const side = requireOneOf("side", settings.side, ["left", "right", "unknown"]);
  const riseShare = requireNumber("riseShare", settings.riseShare, { above: 0, below: 1 });
  const lookBack = requireNumber("lookBack", settings.lookBack, { above: 0, unit: "s" });
  const shortestStride = requireNumber("shortestStride", settings.shortestStride, { above: 0, unit: "s" });
  requireNumber("sampleRate", sampleRate, { from: 100, unit: "Hz" });
  requireFiniteSamples("acceleration", acceleration);
  if (acceleration.length < shortestStride * sampleRate) {
    fail(
      "too-short",
      `the acceleration lasts ${acceleration.length / sampleRate} s; a stride of at least ${shortestStride} s is needed`,
      { argument: "acceleration" },
    );
  }
  const smooth = cutoff === null ? acceleration : lowPass(acceleration, { cutoff, order, sampleRate });
  const opposite = negated(smooth);
  const back = Math.round(lookBack * sampleRate);
  const pairs = impactPeaks(smooth, shortestStride * sampleRate).flatMap((peak) => {
    const lowest = largestBetween(opposite, peak - back, peak);
    if (lowest === null) return [];
    return [
      { peak, contact: contactFeature === "minimum" ? lowest : riseBefore(smooth, lowest, peak, riseShare) },
    ];
  });
  return {
    method: "tibial acceleration",
    side,
    initialContacts: pairs.map(({ contact }) => contact / sampleRate),
    toeOffs: [],
    peakTimes: pairs.map(({ peak }) => peak / sampleRate),
    settings: { sampleRate, cutoff, order, contactFeature, shortestStride },
    cautions: inertialCautions(sampleRate, pairs.length),
  };
}

/** Samples of the strongest peaks that are far enough apart, in order. */
function impactPeaks(smooth: Float64Array, apart: number): number[] {
  const usual = median(smooth);
  const strongest = quantile(smooth, STRONGEST) - usual;
  if (strongest < LEAST_PEAK) return [];
  const level = usual + PEAK_SHARE * strongest;
  const candidates: number[] = [];
  for (let i = 1; i < smooth.length - 1; i++) {
    const here = smooth[i] as number;
    if (here >= level && here > (smooth[i - 1] as number) && here >= (smooth[i + 1] as number)) {
      candidates.push(i);
    }
  }
  candidates.sort((a, b) => (smooth[b] as number) - (smooth[a] as number));
  const kept: number[] = [];
  for (const place of candidates) {
    if (kept.every((other) => Math.abs(other - place) >= apart)) kept.push(place);
  }
  return kept.sort((a, b) => a - b);
}

/** Last place before the peak where the samples rise through a share of the way from their lowest to the peak. */
function riseBefore(smooth: Float64Array, lowest: number, peak: number, share: number): number {
  const low = smooth[Math.round(lowest)] as number;
  const level = low + share * ((smooth[peak] as number) - low);
  let i = peak;
  while (i > 0 && (smooth[i - 1] as number) >= level) i--;
  const before = smooth[i - 1] as number;
  return i === 0 ? 0 : i - 1 + (level - before) / ((smooth[i] as number) - before);
}
