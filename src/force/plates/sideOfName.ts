import type { Side } from "../../recording/index.js";

/** The foot that a plate's or belt's name says it belongs to; `null` where it says none. */
export function sideOfName(name: string): Side | null {
  const left = /left/i.test(name);
  return left === /right/i.test(name) ? null : left ? "left" : "right";
}
