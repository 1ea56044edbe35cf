import { type Fraction, fail } from "../../units/index.js";

/** Window on a rise, as fractions of its duration. */
export interface SlopeWindow {
  readonly from: Fraction;
  readonly to: Fraction;
}

/**
 * Checks that a window rises within 0 to 1.
 *
 * @param window - What was asked for.
 * @throws GaitKineticsError `out-of-range`: not rising within 0 to 1.
 */
export function requireSlopeWindow({ from, to }: SlopeWindow): void {
  if (from >= 0 && from < to && to <= 1) return;
  fail("out-of-range", `the window is ${from} to ${to}; it must rise within 0 to 1`, {
    argument: from >= 0 && from < 1 ? "to" : "from",
    values: { from, to },
  });
}
