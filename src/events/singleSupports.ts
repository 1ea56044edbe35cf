import type { Contact } from "./contact.js";
import type { Stretch } from "./crossings.js";
import { LONGEST_STEP, medianStepTime } from "./stepsOf.js";

/**
 * The part of each contact in which no other foot is on the ground; `null` where the contact before or after is not known, or
 * where the two leave none.
 */
export function singleSupports(
  stretches: readonly Stretch[],
  sides: readonly Contact["side"][],
): (Contact["singleSupport"] | null)[] {
  const longest = LONGEST_STEP * (medianStepTime(stretches) ?? 0);
  const follows = (k: number): boolean => {
    const [here, next] = [stretches[k], stretches[k + 1]];
    if (here === undefined || next === undefined) return false;
    return next.initialContact - here.initialContact <= longest && sides[k] !== sides[k + 1];
  };
  return stretches.map(({ initialContact, toeOff }, k) => {
    const [before, next] = [stretches[k - 1], stretches[k + 1]];
    if (before === undefined || next === undefined || !follows(k - 1) || !follows(k)) return null;
    const from = Math.max(initialContact, before.toeOff);
    const to = Math.min(toeOff, next.initialContact);
    return from < to ? { from, to } : null;
  });
}
