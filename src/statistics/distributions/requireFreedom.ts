import { requireNumber } from "../../units/index.js";

/** Beyond it series and fractions do not come to an end, and a normal distribution tells the same. */
const MOST_FREEDOM = 1e8;

/** Checks degrees of freedom, which need not be whole. */
export function requireFreedom(argument: string, value: unknown): number {
  return requireNumber(argument, value, { above: 0, to: MOST_FREEDOM });
}
