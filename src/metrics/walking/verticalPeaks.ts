import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { type Complete, type Fraction, requireNumber, withDefaults } from "../../units/index.js";
import { loneFoot } from "../common/loneFoot.js";
import { requireContact } from "../common/requireContact.js";

/** What makes two peaks with a trough between them. */
export interface VerticalPeaksOptions {
  /** Least drop from the lower of the peaks to the trough, as a share of that peak. */
  readonly leastDrop?: Fraction | undefined;
}

/** 2 %: more than noise behind the default filter leaves. A judgement. */
export const VERTICAL_PEAKS_DEFAULTS: Complete<VerticalPeaksOptions> = { leastDrop: 0.02 };

/** Both peaks of the vertical force of a walker's contact and the trough between them, N. */
export interface VerticalPeaks {
  readonly first: number;
  readonly trough: number;
  readonly second: number;
}

/**
 * Finds the largest sample of either half of the contact and the least one between them; `null` where one of the three is no
 * turning point, or the trough too shallow. Of a foot that shares its plate only single support is looked at: what turns there
 * is this foot's own.
 *
 * @param ground - The recording.
 * @param step - The step to measure; its contact alone is used.
 * @param options - Least drop.
 */
export function verticalPeaks(
  ground: GroundReaction,
  step: Step,
  options: VerticalPeaksOptions,
): VerticalPeaks | null {
  const { leastDrop } = withDefaults(VERTICAL_PEAKS_DEFAULTS, options);
  requireNumber("leastDrop", leastDrop, { from: 0, below: 1 });
  const { initialContact, toeOff } = requireContact(ground, step);
  const lone = loneFoot(ground, step);
  if (lone === null) return null;
  const { up } = lone.foot.force;
  const { sampleRate } = ground;
  const first = Math.ceil(lone.from * sampleRate);
  const last = Math.min(up.length - 1, Math.floor(lone.to * sampleRate));
  const middle = ((initialContact + toeOff) / 2) * sampleRate;
  const one = extreme(up, first, Math.min(last, Math.ceil(middle) - 1), 1);
  const two = extreme(up, Math.max(first, Math.ceil(middle)), last, 1);
  if (one === null || two === null || one === first || two === last) return null;
  const between = extreme(up, one, two, -1);
  if (between === null || between === one || between === two) return null;
  const peaks = {
    first: up[one] as number,
    trough: up[between] as number,
    second: up[two] as number,
  };
  const lower = Math.min(peaks.first, peaks.second);
  return lower - peaks.trough >= leastDrop * lower ? peaks : null;
}

/** Sample number of the largest (sign 1) or least (−1) of a range; `null` where it is empty. */
function extreme(samples: Float64Array, from: number, to: number, sign: 1 | -1): number | null {
  let found: number | null = null;
  for (let i = from; i <= to; i++) {
    if (found === null || sign * (samples[i] as number) > sign * (samples[found] as number)) found = i;
  }
  return found;
}
