import type { Platform } from "../../recording/index.js";
import type { Caution } from "../../units/index.js";
import type { PlatformOptions } from "./platformOptions.js";

/** Whose force the channels hold and the sign that makes it the ground's on the runner. */
export interface ForceSign {
  readonly sign: 1 | -1;
  readonly cautions: readonly Caution[];
}

/** A plate whose vertical force never leaves its unloaded level by more than this shows nothing, N. */
const LEAST_LOAD = 100;
/** A mean over the samples named as unloaded beyond this share of the largest force is no unloaded level. */
const LARGEST_LEVEL = 0.25;
/** Sums of squares of both signs nearer to each other than this many times tell no direction. */
const CLEAR = 4;

/**
 * The sign of a platform's force: stated, or such that the loaded vertical force points up.
 * @param up - Vertical force as the channels give it, in the library's frame.
 * @param unloaded - Samples that are stated to be unloaded, `null` for none.
 */
export function forceSign(
  { name }: Platform,
  up: Float64Array,
  unloaded: { readonly from: number; readonly to: number } | null,
  forceOn: NonNullable<PlatformOptions["forceOn"]>,
): ForceSign {
  if (forceOn !== "auto") return { sign: forceOn === "runner" ? 1 : -1, cautions: [] };
  const level = unloadedLevel(up, unloaded);
  let least = 0;
  let most = 0;
  let below = 0;
  let above = 0;
  for (let i = 0; i < up.length; i++) {
    const value = (up[i] as number) - level;
    if (value < 0) below += value * value;
    else above += value * value;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  if (Math.max(most, -least) < LEAST_LOAD) return { sign: 1, cautions: [] };
  const cautions: Caution[] = [];
  const down = below > above;
  const values = { least, most };
  const range = `${least.toFixed(0)} to ${most.toFixed(0)} N`;
  if (below * CLEAR > above && above * CLEAR > below) {
    cautions.push({
      code: "force-direction-unclear",
      message: `the vertical force of "${name}" goes both ways, ${range} about its unloaded level; ${down ? "down" : "up"} was taken for the load: state whose force the channels hold`,
      where: name,
      values,
    });
  }
  if (down) {
    cautions.push({
      code: "force-negated",
      message: `the vertical force of "${name}" points down under load (${range}), so its channels hold the force on the platform; force and moment were negated`,
      where: name,
      values,
    });
  }
  return { sign: down ? -1 : 1, cautions };
}

/** Mean over the samples named as unloaded, where it may be one; else 0. */
function unloadedLevel(up: Float64Array, unloaded: { from: number; to: number } | null): number {
  if (unloaded === null) return 0;
  let sum = 0;
  for (let i = unloaded.from; i < unloaded.to; i++) sum += up[i] as number;
  const level = sum / (unloaded.to - unloaded.from);
  let largest = 0;
  for (let i = 0; i < up.length; i++) largest = Math.max(largest, Math.abs(up[i] as number));
  return Math.abs(level) <= LARGEST_LEVEL * largest ? level : 0;
}
