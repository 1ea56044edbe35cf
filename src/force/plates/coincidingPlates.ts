import type { Platform, Position } from "../../recording/index.js";
import type { Caution, Metres } from "../../units/index.js";

/** Corners that lie within this of one another are the same, m. A judgement: less than the gap between two plates. */
const SAME_PLACE: Metres = 0.002;

/** Says which force platforms lie on the same four corners, as no two can. */
export function coincidingPlates(platforms: readonly Platform[]): Caution[] {
  return platforms.flatMap((one, k) =>
    platforms
      .slice(k + 1)
      .filter(({ corners }) =>
        one.corners.every((corner) => corners.some((other) => distance(corner, other) <= SAME_PLACE)),
      )
      .map(
        ({ name }): Caution => ({
          code: "plates-coincide",
          message: `force platforms "${one.name}" and "${name}" lie on the same four corners, where two plates cannot be: the centre of pressure on one of them is elsewhere, and with it step length and width; check the file's corners`,
          where: `${one.name}, ${name}`,
        }),
      ),
  );
}

function distance(a: Position, b: Position): Metres {
  return Math.hypot(a.forward - b.forward, a.up - b.up, a.right - b.right);
}
