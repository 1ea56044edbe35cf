import { fail } from "../units/index.js";
import { requireValues, type Values } from "./requireValues.js";

/**
 * Checks two lists that belong together place by place.
 *
 * @param first - Finite numbers.
 * @param second - As many.
 * @param least - Fewest pairs allowed.
 * @throws GaitKineticsError `wrong-type`, `too-short`, `not-finite`: as for each list; `unequal-lengths`: one is longer.
 */
export function requireSameLength(first: Values, second: Values, least: number): void {
  requireValues("first", first, least);
  requireValues("second", second, least);
  if (first.length === second.length) return;
  fail(
    "unequal-lengths",
    `first holds ${first.length} values and second ${second.length}; they must belong together in pairs`,
    { argument: "second", values: { first: first.length, second: second.length } },
  );
}
