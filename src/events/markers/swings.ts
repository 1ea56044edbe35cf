import { derivative, lowPass } from "../../filters/index.js";
import { median, quantile } from "../../statistics/index.js";
import { largestBetween } from "./extremes.js";

/** Cutoff of the copy that swings are told by, Hz: above the stride's own harmonics, below contact's. */
const SWING_CUTOFF = 8;
/** Least difference of the foot's forward speed between swing and stance, m/s: slower than any gait. */
const LEAST_SPEED = 0.5;
/** What is shorter is no swing, s. */
const SHORTEST_SWING = 0.1;
/** Share of the frames taken as the foot's slowest and as its fastest. */
const TAIL = 0.05;

/** A window in which nothing can be found. */
const NO_FRAMES: Region = { first: 0, last: 0 };

/** One swing of a leg, by frames: the forward speed rises through its middle level, peaks, falls through it. */
export interface Swing {
  readonly from: number;
  readonly peak: number;
  readonly to: number;
}

/** A stretch of samples above a level: first and last index. */
export interface Region {
  readonly first: number;
  readonly last: number;
}

/**
 * Finds the swings of a leg: stretches in which the foot moves forward faster than half-way between its slow and its
 * fast speeds. Alike on the ground, where the slow foot stands, and on a belt, where it moves backward.
 * @param forward - Position of the foot, m; moving with the pelvis or not.
 */
export function swingsOf(forward: Float64Array, sampleRate: number): Swing[] {
  const smooth = lowPass(forward, { cutoff: SWING_CUTOFF, sampleRate });
  const speed = derivative(smooth, sampleRate);
  const slow = quantile(speed, TAIL);
  const fast = quantile(speed, 1 - TAIL);
  if (fast - slow < LEAST_SPEED) return [];
  const end = forward.length - 1;
  return regionsAbove(speed, (slow + fast) / 2)
    .filter(({ first, last }) => first === 0 || last === end || (last - first) / sampleRate >= SHORTEST_SWING)
    .map(({ first, last }) => {
      // Of a swing that the recording cuts, the part inside begins or ends where the recording does.
      const peak = largestBetween(speed, first, last) ?? (first === 0 ? first : last);
      return { from: first, peak: Math.round(peak), to: last };
    });
}

/** Stretches of samples above a level. */
export function regionsAbove(samples: Float64Array, level: number): Region[] {
  const regions: Region[] = [];
  let first = -1;
  for (let i = 0; i <= samples.length; i++) {
    const above = i < samples.length && (samples[i] as number) > level;
    if (above && first < 0) first = i;
    else if (!above && first >= 0) {
      regions.push({ first, last: i - 1 });
      first = -1;
    }
  }
  return regions;
}

/**
 * For each swing the frames from its peak or end to where the next begins, or the last frame; no frames where the
 * recording ends within the swing.
 */
export function afterSwings(
  swings: readonly Swing[],
  frames: number,
  from: "peak" | "to",
): readonly Region[] {
  return swings.map((swing, k) =>
    swing.to >= frames - 1 ? NO_FRAMES : { first: swing[from], last: swings[k + 1]?.from ?? frames - 1 },
  );
}

/** For each swing the frames from where the one before ended, or the first frame, to its peak; no frames where the recording starts within the swing. */
export function beforeSwings(swings: readonly Swing[]): readonly Region[] {
  return swings.map((swing, k) =>
    swing.from === 0 ? NO_FRAMES : { first: swings[k - 1]?.to ?? 0, last: swing.peak },
  );
}

/**
 * For each swing the first `share` of the time from its end to the next swing; of the median of such times behind the last
 * swing; no frames where the recording ends within the swing.
 */
export function earlyStances(swings: readonly Swing[], frames: number, share: number): readonly Region[] {
  const usual = usualBetween(swings) ?? frames;
  return swings.map(({ to }, k) => {
    if (to >= frames - 1) return NO_FRAMES;
    const next = swings[k + 1]?.from;
    const span = next === undefined ? usual : next - to;
    return { first: to, last: Math.min(frames - 1, Math.round(to + share * span)) };
  });
}

/**
 * For each swing the last `share` of the time since the one before, and on half-way to its peak; no frames where the
 * recording starts within the swing.
 */
export function lateStances(swings: readonly Swing[], share: number): readonly Region[] {
  const usual = usualBetween(swings);
  return swings.map(({ from, peak }, k) => {
    if (from === 0) return NO_FRAMES;
    const before = swings[k - 1]?.to;
    const span = before === undefined ? (usual ?? from) : from - before;
    return { first: Math.max(0, Math.round(from - share * span)), last: Math.round((from + peak) / 2) };
  });
}

/** Median of the frames between each swing and the next; `null` with one swing. */
function usualBetween(swings: readonly Swing[]): number | null {
  const spans = swings.slice(1).map(({ from }, k) => from - (swings[k] as Swing).to);
  return spans.length === 0 ? null : median(spans);
}
