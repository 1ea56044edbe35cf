import { requireOneOf } from "../../units/index.js";

/** Which side of a value a probability is of. */
export type Tail = "below" | "above";

const TAILS: readonly Tail[] = ["below", "above"];

/** Checks which side is asked for. */
export function requireTail(tail: Tail): void {
  requireOneOf("tail", tail, TAILS);
}
