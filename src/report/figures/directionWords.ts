import type { ComponentName } from "../../compare/index.js";

/**
 * Says in words what the positive and the negative side of an axis mean; `null` where the axis says it by itself.
 * Medial is −right for a right foot and +right for a left foot.
 */
export function directionWords(
  component: ComponentName,
  side: "left" | "right" | "both",
): { readonly positive: string; readonly negative: string } | null {
  if (component === "vertical") return null;
  if (component === "anteroposterior") return { positive: "propels", negative: "brakes" };
  if (side === "both") return { positive: "to the right", negative: "to the left" };
  return side === "right"
    ? { positive: "lateral", negative: "medial" }
    : { positive: "medial", negative: "lateral" };
}
