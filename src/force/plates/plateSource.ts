import type { Position, Side } from "../../recording/index.js";
import type { Caution } from "../../units/index.js";
import type { Flight } from "../baseline.js";
import type { ForceComponents, MomentComponents, PlateSettings } from "../groundReaction.js";

/**
 * A moment that follows from force and centre of pressure, and the force below which the latter was not used.
 */
export interface PressedMoment {
  readonly moment: MomentComponents | undefined;
  readonly floor: number;
}

/**
 * One plate or belt on its way to a ground reaction: force in the library's frame, offset not yet taken off.
 */
export interface PlateSource {
  /** `null` where a recording's channels belong to no named plate. */
  readonly name: string | null;
  readonly side: Side | null;
  readonly force: ForceComponents;
  /** About the middle of the surface; `null` where it follows from a centre of pressure, or is not known. */
  readonly moment: Required<MomentComponents> | null;
  /** The moment by the corrected force, where the source states a centre of pressure. */
  readonly press: ((force: ForceComponents) => PressedMoment) | null;
  /** Middle of the surface that the moment is about; `null` where it is about the frame's origin already. */
  readonly centre: Position | null;
  /** Samples that the recording names as unloaded. */
  readonly zero: Flight | null;
  readonly signs: Pick<PlateSettings, "forceOn" | "originNegated"> | null;
  readonly cautions: readonly Caution[];
}
