import type { Side } from "../../recording/index.js";

/** What a plate or belt is called beside its foot, where both are written as one word. */
const PLATE = "(?:force|belt|plate|platform|foot|leg|side)?";

/**
 * The foot that a plate's or belt's name says it belongs to, as a word of its own or with what a plate is
 * called ("left_belt", "BeltRight"); `null` where it says none, or both.
 */
export function sideOfName(name: string): Side | null {
  const words = name.replace(/([a-z])([A-Z])/g, "$1 $2").split(/[^A-Za-z]+/);
  const says = (side: Side) => words.some((word) => new RegExp(`^${PLATE}${side}${PLATE}$`, "i").test(word));
  const left = says("left");
  return left === says("right") ? null : left ? "left" : "right";
}
