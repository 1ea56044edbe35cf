import { fail } from "../units/index.js";
import { requireList } from "./requireList.js";
import { shown } from "./shown.js";

/** A list of numbers: an array or a typed array, no value beyond ±1e70. */
export type Values = ArrayLike<number>;

/** The largest size of a value: the fourth power of a larger one, summed, is no finite number. */
export const LARGEST = 1e70;

/**
 * Checks that a list holds enough numbers and that each is finite and no larger than {@link LARGEST}.
 *
 * @param argument - Its name, for the message.
 * @param values - What was given.
 * @param least - Fewest values allowed.
 * @throws GaitKineticsError `wrong-type`: no list of numbers; `too-short`: fewer than `least`; `not-finite`: the first
 *   value that is not finite, or too large to be reckoned with, by its place from 0.
 */
export function requireValues(argument: string, values: Values, least: number): void {
  requireList(argument, values, "numbers");
  if (values.length < least) {
    fail("too-short", `${argument} holds ${values.length} values; at least ${least} are needed`, {
      argument,
      values: { given: values.length, least },
    });
  }
  for (let i = 0; i < values.length; i++) {
    const value: unknown = values[i];
    if (typeof value !== "number") {
      fail("wrong-type", `${argument} holds ${shown(value)} at place ${i}; every value must be a number`, {
        argument,
        where: `place ${i}`,
      });
    }
    if (!Number.isFinite(value)) {
      fail("not-finite", `${argument} holds ${value} at place ${i}; every value must be a finite number`, {
        argument,
        where: `place ${i}`,
        values: { index: i, given: String(value) },
      });
    }
    if (Math.abs(value) > LARGEST) {
      fail(
        "not-finite",
        `${argument} holds ${value} at place ${i}; beyond ±${LARGEST} a value's squares and their products are no finite numbers`,
        { argument, where: `place ${i}`, values: { index: i, given: value } },
      );
    }
  }
}
