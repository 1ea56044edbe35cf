import type { Step } from "../../events/index.js";

/** What a step's metrics worked out and may use again, by name, with the recording and the setting that it belongs to. */
export type SharedResults = Map<
  string,
  { readonly of: object; readonly setting: unknown; readonly value: unknown }
>;

/** Where a step that shares keeps them: a property of its own, since a look-up by step would cost as much as some metrics. */
export const SHARED_RESULTS: unique symbol = /* @__PURE__ */ Symbol("shared results");

/** A step whose metrics may share. */
export type SharingStep = Step & { readonly [SHARED_RESULTS]?: SharedResults };

/**
 * Gives a copy of a step whose metrics share what they integrate: the work by axis, the spring, the landing.
 *
 * Limits: for one pass of several metrics over one recording, whose samples stay as they are for as long as the copy is in
 * use. Every value is what it is without sharing. A metric called with any other step shares nothing.
 * Source: book-keeping of this library.
 * @param step - The step to be measured by several metrics.
 * @example
 * const shared = shareResults(steps[0]);
 * positiveWorkVertical(ground, shared) === positiveWorkVertical(ground, steps[0]) // true
 */
export function shareResults(step: Step): Step {
  const sharing: SharingStep = { ...step, [SHARED_RESULTS]: new Map() };
  return sharing;
}
