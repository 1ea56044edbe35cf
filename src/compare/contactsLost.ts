import { LONGEST_STEP, medianStepTime } from "../events/index.js";
import type { Trial } from "../trial/index.js";
import type { Obstacle } from "./obstacles.js";
import { listed } from "./wording.js";

/**
 * Where more than this share of a trial's contacts was left out or missed, the others are no fair sample: what is lost are
 * those with the shortest flights, the lightest or the narrowest. A judgement.
 */
const LARGEST_SHARE = 0.05;
/** A time between contacts of more than this many median steps is a pause, or another pass over the plates. */
const PAUSE = 5;

/** Contacts that were read as one with others, or missed, in more than a few places of a trial. */
export function contactsLost(baseline: Trial, changed: Trial): Obstacle | null {
  const lost = [
    { name: "the baseline", share: shareLost(baseline) },
    { name: "the changed trial", share: shareLost(changed) },
  ].filter(({ share }) => share > LARGEST_SHARE);
  if (lost.length === 0) return null;
  const shares = listed(lost.map(({ name, share }) => `${(100 * share).toFixed(0)} % of ${name}`));
  return {
    brief: "contacts lost",
    reason: `of the contacts ${shares} were read as one with others and left out, or missed, where ${100 * LARGEST_SHARE} % are allowed: those that are left are no fair sample`,
    toSettle: [
      "contacts that are told apart: a shorter shortest flight or another threshold for both trials, or recordings with longer flights",
    ],
  };
}

/** Share of contacts left out because they hold several, or of steps that are missing between the others, whichever is more. */
function shareLost({ contacts, partialContacts, steps, cautions }: Trial): number {
  const several = cautions.find(({ code }) => code === "long-contact")?.values?.leftOut;
  const leftOut = typeof several === "number" ? several : 0;
  const usual = medianStepTime(steps) ?? 0;
  let missed = 0;
  steps.slice(1).forEach(({ initialContact }, k) => {
    const passed = (initialContact - (steps[k]?.initialContact ?? 0)) / usual;
    if (passed > LONGEST_STEP && passed < PAUSE) missed += Math.round(passed) - 1;
  });
  return Math.max(
    leftOut / Math.max(1, contacts.length + partialContacts.length),
    missed / Math.max(1, steps.length + missed),
  );
}
