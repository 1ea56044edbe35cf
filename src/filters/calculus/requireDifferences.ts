import { fail, type Hertz, requireFiniteSamples, requireNumber } from "../../units/index.js";

/**
 * Checks what central differences ask of their arguments; `beyond` is how many samples more than the end order the rule at
 * the ends needs.
 * @throws GaitKineticsError `out-of-range`: rate not above 0, end order neither 1 nor 2; `too-short`; `not-finite`;
 * `wrong-type`.
 */
export function requireDifferences(
  samples: Float64Array,
  sampleRate: Hertz,
  endOrder: 1 | 2,
  beyond: number,
): void {
  if (endOrder !== 1 && endOrder !== 2) {
    fail("out-of-range", `endOrder is ${String(endOrder)}; it must be 1 or 2`, { argument: "endOrder" });
  }
  requireNumber("sampleRate", sampleRate, { above: 0, unit: "Hz" });
  requireFiniteSamples("samples", samples);
  const needed = endOrder + beyond;
  if (samples.length < needed) {
    fail(
      "too-short",
      `there are ${samples.length} samples; at least ${needed} are needed at end order ${endOrder}`,
      { argument: "samples", values: { length: samples.length } },
    );
  }
}
