import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Newtons } from "../../units/index.js";
import { VERTICAL_PEAKS_DEFAULTS, type VerticalPeaksOptions, verticalPeaks } from "./verticalPeaks.js";

/**
 * Gives the least vertical force between the two peaks of a walking contact, when the body vaults over the leg.
 *
 * Formula: least F_up between {@link firstVerticalPeak} and {@link secondVerticalPeak}.
 * Units: N out.
 * Limits: `null` where the force has no two peaks with a trough between them, as in slow walking and in running, and where a peak falls into
 * double support of feet that share a plate. About 0.7 to 0.8 body weights at 1.3 to 1.4 m/s (common practice); the
 * faster the walk, the deeper.
 * Source: common practice; the least drop is this library's own.
 * @param ground - Force in the library's frame, already filtered.
 * @param step - The step to measure; its contact alone is used.
 * @param options - Least drop; {@link VERTICAL_PEAKS_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no contact; `out-of-range`: the contact does not rise within the
 * recording, or a drop outside 0 to 1.
 * @example
 * const force = { up: new Float64Array([0, 600, 760, 700, 520, 700, 780, 600, 0]) };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.8 };
 * midstanceTrough({ ...ground, sampleRate: 10, force }, { contact: whole }); // 520
 */
export function midstanceTrough(
  ground: GroundReaction,
  step: Step,
  options: VerticalPeaksOptions = VERTICAL_PEAKS_DEFAULTS,
): Newtons | null {
  return verticalPeaks(ground, step, options)?.trough ?? null;
}
