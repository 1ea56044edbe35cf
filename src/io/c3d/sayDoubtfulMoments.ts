import type { Platform } from "../../recording/index.js";
import { type Loads, loadedDistance } from "./loadedDistance.js";
import { FARTHEST } from "./momentUnit.js";
import { LEAST_LOAD, type Say } from "./platformSource.js";
import { quoted } from "./refuse.js";

/** Nearer to the transducer no runner lands step after step, m: the moments are in a larger unit. A judgement. */
const NEAREST = 0.001;

/**
 * Says where a platform's loads lie far off its surface, or all at its very middle: then a unit that the file states, of
 * moments or of length, is wrong by a thousand. The median over the loaded samples decides, so that a light touch does not.
 *
 * @param halfSide - Half of the plate's longest side, m.
 */
export function sayDoubtfulMoments(platform: Platform, halfSide: number, say: Say): void {
  const loads = loadsOf(platform);
  const distance = loads === null ? null : loadedDistance(loads, LEAST_LOAD);
  if (distance === null) return;
  const far = distance > FARTHEST * halfSide;
  // Without moments at all, and no depth that would make some, nothing speaks against a load in the middle.
  const near = distance < NEAREST && (distance > 0 || platform.origin[2] !== 0);
  const lie = `in the median its loads lie ${Number((1000 * distance).toPrecision(3))} mm from the ${platform.type === 1 ? "centre" : "transducer"}, and half its longest side is ${(1000 * halfSide).toFixed(0)} mm`;
  const values = { distance, halfSide };
  if (platform.type === 2 && (far || near)) {
    const name = quoted(platform.channels[3]?.name ?? "");
    const unit = far ? "N mm" : "N m";
    say(
      "moment-unit-doubtful",
      `${lie}; where its moments are in ${unit}, state that for each of them, as units: { ${name}: "${unit}" }`,
      values,
    );
  } else if (platform.type === 4 && (far || near)) {
    say("moment-unit-doubtful", `${lie}; check its CAL_MATRIX, scales and offsets`, values);
  } else if (far) {
    say(
      "centre-of-pressure-doubtful",
      `${lie}; check the unit of its centre of pressure and lengthUnit`,
      values,
    );
  }
}

/**
 * Vertical force, and what it turns about the plate's horizontal axes, in N and N m. Type 3 has no moments to go wrong: its
 * loads lie between its sensors, whose place a recording bounds.
 */
function loadsOf({ type, channels, calibration = [] }: Platform): Loads | null {
  const at = (k: number, i: number) => channels[k]?.samples[i] as number;
  const samples = channels[0]?.samples.length ?? 0;
  switch (type) {
    case 1:
      return {
        samples,
        vertical: (i) => at(2, i),
        moments: (i) => [at(3, i) * at(2, i), at(4, i) * at(2, i)],
      };
    case 2:
      return { samples, vertical: (i) => at(2, i), moments: (i) => [at(3, i), at(4, i)] };
    case 4: {
      const row = (k: number, i: number) =>
        (calibration[k] ?? []).reduce((sum, factor, column) => sum + factor * at(column, i), 0);
      return { samples, vertical: (i) => row(2, i), moments: (i) => [row(3, i), row(4, i)] };
    }
    default:
      return null;
  }
}
