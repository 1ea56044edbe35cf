import type { Trial } from "../../trial/index.js";

/** A stride runs from one contact to the next of the same foot. */
const CONTACTS_OF_STRIDE = 3;

/** What two successive contacts are called: two alone hold no whole stride. */
export function strideNoun({ contacts }: Trial): string {
  return contacts.length < CONTACTS_OF_STRIDE ? "pair of contacts" : "stride";
}

/** What the means and standard deviations of a trial run over: contacts, where no two make a pair. */
export function summaryNoun(trial: Trial): string {
  return trial.summary.strides === 0 ? "contact" : strideNoun(trial);
}
