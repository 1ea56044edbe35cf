import { fail } from "../units/index.js";

/** A list of numbers: an array or a typed array. */
export type Values = ArrayLike<number>;

/**
 * Checks that a list holds enough numbers and that each is finite.
 *
 * @param argument - Its name, for the message.
 * @param values - What was given.
 * @param least - Fewest values allowed.
 * @throws GaitKineticsError `wrong-type`: no list of numbers; `too-short`: fewer than `least`; `not-finite`: the first
 *   value that is not finite, by its place from 0.
 */
export function requireValues(argument: string, values: Values, least: number): void {
  if (typeof values !== "object" || values === null || typeof values.length !== "number") {
    fail(
      "wrong-type",
      `${argument} is ${values === null ? "null" : typeof values}; a list of numbers is needed`,
      {
        argument,
      },
    );
  }
  if (values.length < least) {
    fail("too-short", `${argument} holds ${values.length} values; at least ${least} are needed`, {
      argument,
      values: { given: values.length, least },
    });
  }
  for (let i = 0; i < values.length; i++) {
    const value: unknown = values[i];
    if (typeof value !== "number") {
      fail("wrong-type", `${argument} holds ${String(value)} at place ${i}; every value must be a number`, {
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
  }
}
