import type { OverallComparison, OverallReading } from "../../compare/index.js";

const HEADINGS: Readonly<Record<OverallReading, string>> = {
  shifted: "The load shifted",
  reduced: "The load was reduced",
  raised: "The load was raised",
  unsettled: "Unsettled",
  "no clear change": "No clear change",
};

/**
 * The answer as a heading; `per step` where the reading would be taken for more than it says.
 *
 * @param reading - Of the load per step.
 * @param perKilometre - Components that read otherwise there.
 */
export function overallHeading(
  reading: OverallReading,
  { lower, higher }: Pick<OverallComparison["perKilometre"], "lower" | "higher">,
): string {
  const otherwise =
    reading === "raised"
      ? lower.length > 0
      : reading === "no clear change" && lower.length + higher.length > 0;
  return `${HEADINGS[reading]}${otherwise ? " per step" : ""}`;
}
