import type { SmallestDetectableChange } from "./comparison.js";
import { LEAST_DEGREES_OF_FREEDOM } from "./options.js";
import { digits } from "./wording.js";

/** A given change for the baseline's mean. */
export type ChangeAt = (baselineMean: number) => SmallestDetectableChange;

/** What is given of a metric instead of taken from its strides. */
export interface Given {
  /** Smallest detectable change; `null` where nobody measured it. */
  readonly smallestChange: ChangeAt | null;
  /** That it rests on; `null` where that is not known, or nothing is given. */
  readonly degreesOfFreedom: number | null;
  /** `null` where the margin is the default. */
  readonly margin: ChangeAt | null;
  /** What is taken off the difference, as the effect of speed. */
  readonly takenOff: number;
}

/**
 * What a difference must exceed: the change that was given, or what the recordings themselves ask for. Of a change that rests on
 * few degrees of freedom, which may be far too small by chance, the larger of both.
 *
 * @param mean - The baseline's.
 * @param own - What the recordings ask for.
 */
export function detectableChange(
  { smallestChange, degreesOfFreedom }: Pick<Given, "smallestChange" | "degreesOfFreedom">,
  mean: number,
  own: () => SmallestDetectableChange,
): SmallestDetectableChange {
  if (smallestChange === null) return own();
  const given = smallestChange(mean);
  if (!isFew(degreesOfFreedom)) return given;
  const asked = own();
  const freedom = freedomWords(degreesOfFreedom);
  return asked.value > given.value
    ? {
        value: asked.value,
        source: `${asked.source}, larger than what was given with ${freedom} (${given.source})`,
      }
    : { value: given.value, source: `${given.source}, with ${freedom} larger than ${asked.source}` };
}

/** Whether an error rests on too few degrees of freedom to stand alone; not where nobody says how many. */
export function isFew(degreesOfFreedom: number | null | undefined): degreesOfFreedom is number {
  return degreesOfFreedom != null && degreesOfFreedom < LEAST_DEGREES_OF_FREEDOM;
}

/** "1 degree of freedom". */
export function freedomWords(degreesOfFreedom: number): string {
  return `${digits(degreesOfFreedom)} degree${degreesOfFreedom === 1 ? "" : "s"} of freedom`;
}
