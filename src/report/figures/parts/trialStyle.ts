import type { Role } from "../paint.js";
import type { MarkerShape } from "./marker.js";

/** How the baseline and the changed trial are told apart: colour, line and shape. */
export interface TrialStyle {
  readonly role: Role;
  readonly shape: MarkerShape;
  /** `undefined` is solid. */
  readonly dash: string | undefined;
}

/** The first trial: solid, circles. */
export const FIRST_STYLE: TrialStyle = { role: "first", shape: "circle", dash: undefined };
/** The second: dashed, squares. */
export const SECOND_STYLE: TrialStyle = { role: "second", shape: "square", dash: "7 4" };
