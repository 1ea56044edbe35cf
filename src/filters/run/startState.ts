import { fail } from "../../units/index.js";
import type { Section } from "../design/filterDesign.js";
import { steadyState } from "./steadyState.js";

/** Makes the state a causal filter starts from: given, all zero, or the steady state of each channel's first sample. */
export function startState(
  sections: readonly Section[],
  start: "steady" | "rest" | Float64Array,
  sources: readonly Float64Array[],
): Float64Array {
  const size = 2 * sections.length;
  if (start instanceof Float64Array) {
    const needed = size * sources.length;
    if (start.length !== needed || !start.every(Number.isFinite)) {
      fail(
        "wrong-type",
        `start holds ${start.length} numbers; ${needed} finite ones are needed, 2 a section and channel`,
        {
          argument: "start",
          values: { length: start.length, expected: needed },
        },
      );
    }
    return start.slice();
  }
  const steady = steadyState(sections);
  return Float64Array.from({ length: size * sources.length }, (_, i) =>
    start === "rest" ? 0 : (steady[i % size] as number) * (sources[Math.floor(i / size)]?.[0] as number),
  );
}
