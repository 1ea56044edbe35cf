import { median } from "../../statistics/index.js";
import type { PressurePath } from "./footPath.js";

/** A time in which the centre of pressure stays on one side: about one step, s from the plate's first sample. */
export interface FootSpan {
  readonly side: "left" | "right";
  readonly from: number;
  readonly to: number;
}

/** Rate the sides are told at, Hz: some twenty values a step. */
const COARSE_RATE = 50;
/** Time on either side in which both feet are seen: more than half a stride of slow walking, s. */
const REACH = 1.25;
/** Share of the width by which the centre of pressure must pass the midline to have changed sides. */
const BEYOND = 0.1;
/** Feet closer than this are not told apart from the roll of one foot or from swaying, m. */
const LEAST_WIDTH = 0.03;
/** Spans outside these multiples of the median are no regular steps. */
const REGULAR = [0.5, 1.6] as const;
/** Share of the spans that must be regular. */
const MOSTLY = 0.8;

/**
 * Tells when the load was on the left and when on the right foot, by the side of the centre of pressure against the middle of its
 * range nearby; `null` where it does not pass from side to side regularly.
 */
export function footSpans(path: PressurePath): FootSpan[] | null {
  const block = Math.max(1, Math.round(path.sampleRate / COARSE_RATE));
  const count = Math.floor(path.right.length / block);
  const places = Float64Array.from({ length: count }, (_, k) => {
    let sum = 0;
    for (let i = k * block; i < (k + 1) * block; i++) sum += path.right[i] as number;
    return sum / block;
  });
  const reach = Math.round((REACH * path.sampleRate) / block);
  const least = extremeNearby(places, reach, -1);
  const most = extremeNearby(places, reach, 1);
  const widths = Array.from(places, (_, k) => (most[k] as number) - (least[k] as number));
  if (count === 0 || median(widths) < LEAST_WIDTH) return null;
  const at = (k: number) => (path.first + (k + 0.5) * block) / path.sampleRate;
  const beside = (k: number) => (places[k] as number) - ((most[k] as number) + (least[k] as number)) / 2;
  const spans: { side: FootSpan["side"]; from: number; to: number }[] = [];
  let crossed = 0;
  for (let k = 0; k < count; k++) {
    const place = beside(k);
    if (k > 0 && place > 0 !== beside(k - 1) > 0) {
      const before = beside(k - 1);
      crossed = at(k - 1) + ((at(k) - at(k - 1)) * before) / (before - place);
    }
    if (Math.abs(place) < BEYOND * (widths[k] as number)) continue;
    const side = place > 0 ? "right" : "left";
    const last = spans.at(-1);
    if (last?.side === side) continue;
    if (last !== undefined) last.to = crossed;
    spans.push({ side, from: last === undefined ? path.first / path.sampleRate : crossed, to: 0 });
  }
  const last = spans.at(-1);
  if (last !== undefined) last.to = (path.first + path.right.length - 1) / path.sampleRate;
  return areRegular(spans) ? spans : null;
}

/** At least one whole step between two changes of side, and most of them alike in length. */
function areRegular(spans: readonly FootSpan[]): boolean {
  const whole = spans.slice(1, -1).map(({ from, to }) => to - from);
  if (whole.length === 0) return false;
  const usual = median(whole);
  const [short, long] = REGULAR;
  const regular = whole.filter((time) => time >= short * usual && time <= long * usual).length;
  return regular >= MOSTLY * whole.length;
}

/** The largest (sign 1) or least (−1) value within `reach` places on either side of each. */
function extremeNearby(values: Float64Array, reach: number, sign: 1 | -1): Float64Array {
  return values.map((_, k) => {
    let extreme = Number.NEGATIVE_INFINITY;
    const last = Math.min(values.length - 1, k + reach);
    for (let i = Math.max(0, k - reach); i <= last; i++) {
      const value = sign * (values[i] as number);
      if (value > extreme) extreme = value;
    }
    return sign * extreme;
  });
}
