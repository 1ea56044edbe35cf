import type { Caution } from "../../units/index.js";
import type { StepRow } from "../trial.js";

/** Metrics whose definition lets them fall below zero, where the force is not shaped as they take it to be, and what it then means. */
const MEANINGS: Readonly<Record<string, string>> = {
  earlyLoadingRate: "the force falls there, so that it says nothing of how fast the load rises",
  halfSineFit: "a constant force would fit better than a half sine, so that the contact is no bounce",
};

/** Says where a metric fell below zero that has no meaning there. */
export function belowZeroCautions(rows: readonly StepRow[]): Caution[] {
  return Object.entries(MEANINGS).flatMap(([id, meaning]): Caution[] => {
    const below = rows.filter(({ values }) => (values[id] ?? 0) < 0);
    if (below.length === 0) return [];
    const lowest = below.reduce((least, { values }) => Math.min(least, values[id] as number), 0);
    return [
      {
        code: "below-zero",
        message: `${id} is below 0 in ${below.length} of ${rows.length} contact${rows.length === 1 ? "" : "s"} (${Number(lowest.toPrecision(3))} at the least): ${meaning}`,
        where: id,
        values: { contacts: below.length, lowest },
      },
    ];
  });
}
