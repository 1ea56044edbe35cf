import type { Caution } from "../../units/index.js";
import type { Gait } from "./gait.js";
import type { ToldGait } from "./tellGait.js";

/**
 * Says where the gait is not sure, where what was stated is not what is seen, and what a gait without steps leaves out.
 * @param reasons - Why long contacts were not parted into those of both feet.
 * @param untold - Whether one of them holds both feet beyond doubt.
 */
export function gaitCautions(
  told: ToldGait | null,
  stated: Gait | "auto",
  reasons: readonly string[],
  untold: boolean,
): Caution[] {
  if (told === null) return [];
  const gait = stated === "auto" ? told.gait : stated;
  const cautions: Caution[] = [];
  if (stated === "auto" && !told.sure) {
    cautions.push({
      code: "gait-uncertain",
      message: `the recording is taken to be ${told.gait}, which is not sure: ${told.why}; state the gait`,
      values: { gait: told.gait },
    });
  }
  if (stated !== "auto" && told.sure && told.gait !== stated) {
    cautions.push({
      code: "gait-disagrees",
      message: `the gait is stated as ${stated}, and the recording looks like ${told.gait}: ${told.why}; what was stated was followed`,
      values: { stated, seen: told.gait },
    });
  }
  const [reason] = reasons;
  const doubtful =
    stated === "walking" || (!told.sure && gait !== "running") || (untold && gait === "walking");
  if (reason !== undefined && doubtful) {
    cautions.push({
      code: "feet-not-parted",
      message: `if both feet were on one plate, their contacts cannot be told: ${reason}`,
    });
  }
  if (gait === "jumping" || gait === "standing") {
    cautions.push({
      code: "no-steps",
      message: `${gait} has no steps: contacts are of the body, left and right are not told, and the summary counts contacts`,
    });
  }
  return cautions;
}
