import { lowPass } from "../../filters/index.js";
import type { Side } from "../../recording/index.js";
import { quantile } from "../../statistics/index.js";
import {
  type Complete,
  fail,
  type Hertz,
  requireFiniteSamples,
  requireNumber,
  requireOneOf,
  type Samples,
  type Seconds,
  withDefaults,
} from "../../units/index.js";
import { firstRise, largestBetween, negated } from "../markers/extremes.js";
import { regionsAbove } from "../markers/swings.js";
import { type InertialEvents, inertialCautions } from "./inertialEvents.js";

/** How {@link footAngularRateEvents} smooths and what it takes for initial contact. */
export interface FootAngularRateOptions {
  /** Net −3 dB point of the zero-phase low-pass, Hz; `null` for none. */
  readonly cutoff?: Hertz | null | undefined;
  /** Net order, even. */
  readonly order?: number | undefined;
  /** The first fall through zero after mid-swing, or the smallest rate up to a third of a stride after it. */
  readonly contactFeature?: "zero" | "minimum" | undefined;
  /** Of two mid-swings that are closer, the weaker is none, s. */
  readonly shortestStride?: Seconds | undefined;
  /** The foot that wears the sensor; `"unknown"` where left out. */
  readonly side?: Side | "unknown" | undefined;
}

/**
 * Low-pass: common practice. The minimum lay nearer to contact than the zero on an open running recording (18 to 21 ms late
 * against 33 to 41 ms early). Shortest stride: that of 240 steps a minute.
 */
export const FOOT_ANGULAR_RATE_DEFAULTS: Complete<FootAngularRateOptions> = {
  cutoff: 30,
  order: 4,
  contactFeature: "minimum",
  shortestStride: 0.5,
  side: "unknown",
};

/** Cutoff of the copy that mid-swings are told by, Hz, and the share of its strong rates above which a swing is one. */
const SWING_CUTOFF = 5;
const SWING_SHARE = 0.5;
/** Quantile taken as a strong rate: rarer than a swing's length. */
const STRONG = 0.95;
/** A strong rate that is less is no gait, rad/s. */
const LEAST_RATE = 1;

/**
 * Finds initial contact and toe-off from the angular rate of a foot, or of a shank, about the axis to the runner's left.
 *
 * Formula: mid-swing at the largest rate of a stride; toe-off at the smallest between the mid-swing before and this one; initial
 * contact at the first fall through zero after mid-swing, or at the smallest rate within a third of a stride after it.
 * Units: rad/s and Hz in; s from the first sample out.
 * Limits: the rate is positive where the toes swing forward and up, and the sensor lies with its axis across the foot. Single contacts
 * of one sensor are ±0.1 s: of eighteen methods on 74 runners the best had a bias of 17 ms with limits of −97 to +132 ms
 * (PMC10255839, abstract), so that only means over many steps are usable.
 * Source: mid-swing peak with the zero or minimum after it and the minimum before it: from memory, no publication read.
 * @param rate - Angular rate without gaps, at 50 Hz or more.
 * @param sampleRate - Samples per second.
 * @param options - {@link FOOT_ANGULAR_RATE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: rates, cutoff, feature, side; `not-finite`: a gap; `too-short`; `wrong-type`;
 * `unknown-option`.
 * @example
 * const rate = Float64Array.from({ length: 400 }, (_, i) => -5 * Math.cos((2 * Math.PI * i) / 100))
 * footAngularRateEvents(rate, 100, { contactFeature: "zero" }).initialContacts.length // 4
 */
export function footAngularRateEvents(
  rate: Samples<"rad/s">,
  sampleRate: Hertz,
  options: FootAngularRateOptions = {},
): InertialEvents {
  const settings = withDefaults<FootAngularRateOptions>(FOOT_ANGULAR_RATE_DEFAULTS, options);
  const { cutoff, order } = settings;
  const contactFeature = requireOneOf("contactFeature", settings.contactFeature, ["zero", "minimum"]);
  const side = requireOneOf("side", settings.side, ["left", "right", "unknown"]);
  const shortestStride = requireNumber("shortestStride", settings.shortestStride, { above: 0, unit: "s" });
  requireNumber("sampleRate", sampleRate, { from: 50, unit: "Hz" });
  requireFiniteSamples("rate", rate);
  if (rate.length < shortestStride * sampleRate) {
    fail(
      "too-short",
      `the angular rate lasts ${rate.length / sampleRate} s; a stride of at least ${shortestStride} s is needed`,
      {
        argument: "rate",
      },
    );
  }
  const smooth = cutoff === null ? rate : lowPass(rate, { cutoff, order, sampleRate });
  const swings = midSwings(
    smooth,
    lowPass(rate, { cutoff: SWING_CUTOFF, sampleRate }),
    shortestStride * sampleRate,
  );
  const opposite = negated(smooth);
  const end = rate.length - 1;
  const contacts = swings.map((swing, k) => {
    const before = swings[k - 1];
    const next = swings[k + 1];
    const stride = next !== undefined ? next - swing : before !== undefined ? swing - before : end;
    if (contactFeature === "minimum") {
      return largestBetween(opposite, swing, Math.round(swing + stride / 3));
    }
    return firstRise(opposite, swing, next ?? end);
  });
  const toeOffs = swings.map((swing, k) => {
    const before = swings[k - 1];
    return largestBetween(
      opposite,
      before === undefined ? 0 : Math.round(before + (swing - before) / 3),
      swing,
    );
  });
  const times = (places: readonly (number | null)[]) =>
    places.flatMap((place) => (place === null ? [] : [place / sampleRate]));
  const initialContacts = times(contacts);
  return {
    method: "foot angular rate",
    side,
    initialContacts,
    toeOffs: times(toeOffs),
    settings: { sampleRate, cutoff, order, contactFeature, shortestStride },
    cautions: inertialCautions(sampleRate, initialContacts.length),
  };
}

/** Samples of the mid-swings: the largest rate of each stretch in which the slow copy is strong. */
function midSwings(smooth: Float64Array, slow: Float64Array, apart: number): number[] {
  const strong = quantile(slow, STRONG);
  if (strong < LEAST_RATE) return [];
  const found: number[] = [];
  for (const { first, last } of regionsAbove(slow, SWING_SHARE * strong)) {
    let at = first;
    for (let i = first; i <= last; i++) if ((smooth[i] as number) > (smooth[at] as number)) at = i;
    const before = found.at(-1);
    if (before === undefined || at - before >= apart) found.push(at);
    else if ((smooth[at] as number) > (smooth[before] as number)) found[found.length - 1] = at;
  }
  return found;
}
