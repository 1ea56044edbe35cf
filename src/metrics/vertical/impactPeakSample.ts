import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { requireNumber, withDefaults } from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { massForStep } from "../common/massForStep.js";
import { requireContact } from "../common/requireContact.js";
import { IMPACT_PEAK_DEFAULTS, type ImpactPeakOptions } from "./impactPeakRule.js";

/**
 * Finds the sample of the impact peak: the first local maximum of the vertical force within the rule's window
 * that is followed by the rule's drop before the force next exceeds it. `null` where there is none.
 *
 * @param ground - The recording.
 * @param step - The step; its contact is searched.
 * @param options - The rule.
 * @throws GaitKineticsError `out-of-range`: the contact lies outside the recording, or an option out of
 * bounds; `missing-value`: body weight unknown.
 */
export function impactPeakSample(
  ground: GroundReaction,
  step: Step,
  options: ImpactPeakOptions,
): number | null {
  const { initialContact, toeOff } = requireContact(ground, step);
  const { after, before, drop } = options === IMPACT_PEAK_DEFAULTS ? IMPACT_PEAK_DEFAULTS : ruleOf(options);
  const needed = drop * massForStep(ground, step) * ground.gravity;
  const { sampleRate } = ground;
  const { up } = footOf(ground, step).force;
  const earliest = (initialContact + after) * sampleRate;
  const latest = (initialContact + before * (toeOff - initialContact)) * sampleRate;
  const last = Math.floor(toeOff * sampleRate);
  let i = Math.max(1, Math.floor(earliest) + 1);
  while (i < latest) {
    const peak = up[i] as number;
    if (!(peak > (up[i - 1] as number))) {
      i++;
      continue;
    }
    let j = i + 1;
    while (j <= last && (up[j] as number) <= peak) {
      if (peak - (up[j] as number) >= needed) return i;
      j++;
    }
    // What lies between dropped by less than the rule asks for, so that no later maximum among it can pass.
    i = j;
  }
  return null;
}

function ruleOf(options: ImpactPeakOptions): typeof IMPACT_PEAK_DEFAULTS {
  const rule = withDefaults(IMPACT_PEAK_DEFAULTS, options);
  requireNumber("after", rule.after, { from: 0, unit: "s" });
  requireNumber("before", rule.before, { above: 0, to: 1 });
  requireNumber("drop", rule.drop, { above: 0, hint: "in body weights" });
  return rule;
}
