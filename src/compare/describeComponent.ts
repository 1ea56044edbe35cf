import type { ComponentComparison } from "./comparison.js";
import type { ComponentState } from "./readComponent.js";
import { capital, numbersOf } from "./wording.js";

/** Puts a component's reading into one sentence with its numbers. */
export function describeComponent({ component, primary }: ComponentState): ComponentComparison {
  if (primary === null) {
    return {
      component,
      metric: null,
      reading: null,
      perKilometre: null,
      sentence: `${capital(component)}: not recorded in both trials.`,
    };
  }
  const { pair, reading, perKilometre, obstacle, reason } = primary;
  const { id, name, unit } = pair.metric;
  const numbers = pair.comparison === null ? "" : `: ${name} goes from ${numbersOf(pair.comparison, unit)}`;
  const because = obstacle?.brief ?? reason;
  const why = because === null ? "" : ` (${because})`;
  const kilometre =
    perKilometre === null || perKilometre === reading ? "" : `; per kilometre ${perKilometre}`;
  return {
    component,
    metric: id,
    reading,
    perKilometre,
    sentence: `${capital(component)} ${reading}${why}${numbers}${kilometre}.`,
  };
}
