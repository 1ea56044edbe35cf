import type { GroundReaction } from "../../force/index.js";
import type { Caution, Newtons, Seconds } from "../../units/index.js";
import type { Stretch } from "../crossings.js";
import { holdsBothFeet } from "./holdsBothFeet.js";
import { splitShared } from "./splitShared.js";

/** No foot stays longer on the ground in common walking, s: longer stretches are tried for two feet. */
const LONG_STRETCH: Seconds = 1;

/**
 * Parts every long stretch that holds the contacts of both feet, and says what was done, or why it could not be: first of
 * those that hold both feet beyond doubt, which are marked.
 */
export function partSharedStretches(
  ground: GroundReaction,
  stretches: readonly Stretch[],
  threshold: Newtons,
): { stretches: Stretch[]; cautions: Caution[]; reasons: string[] } {
  const cautions: Caution[] = [];
  const reasons: string[] = [];
  let contacts = 0;
  let untold = 0;
  let level = threshold;
  const parted = stretches.flatMap((stretch): readonly Stretch[] => {
    if (stretch.toeOff - stretch.initialContact <= LONG_STRETCH) return [stretch];
    const plate = stretch.plate === undefined ? ground : (ground.plates?.[stretch.plate] ?? ground);
    const split = splitShared(plate, stretch, threshold);
    if ("reason" in split) {
      if (!holdsBothFeet(plate, stretch)) {
        reasons.push(split.reason);
        return [stretch];
      }
      reasons.unshift(split.reason);
      return [{ ...stretch, untold: true }];
    }
    contacts += split.stretches.length;
    // Those beside the ends may be cut by the recording.
    untold += split.stretches.slice(2, -2).filter(({ cut }) => cut).length;
    for (const part of split.stretches) level = Math.max(level, part.level ?? 0);
    return split.stretches;
  });
  if (contacts > 0) {
    cautions.push({
      code: "feet-share-plate",
      message: `both feet were on one plate: when each landed and left in double support was worked out from the way the centre of pressure passes from foot to foot (at ${level === threshold ? "" : "up to "}${level.toFixed(0)} N under one foot), and is less certain than on a plate of its own; how hard each foot pressed in double support is not known${untold === 0 ? "" : `; ${untold === 1 ? "1 contact is" : `${untold} contacts are`} left out because ${untold === 1 ? "its" : "their"} events could not be told`}`,
      values: { contacts, untold, level },
    });
  }
  parted.sort((a, b) => a.initialContact - b.initialContact || a.toeOff - b.toeOff);
  return { stretches: parted, cautions, reasons };
}
