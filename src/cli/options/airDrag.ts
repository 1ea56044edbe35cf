import { InvalidArgumentError } from "commander";
import { parseQuantity } from "../../units/parse/index.js";
import { refusingAsUsage } from "./readers.js";

/** No air is that strong, N. */
const MOST = 100;

/** Reads the drag of the air: newtons backward, negative with a wind from behind, or the word `estimated`. */
export function airDrag(text: string): number | "estimated" {
  if (text.trim() === "estimated") return "estimated";
  const value = refusingAsUsage(() => newtons(text));
  if (Math.abs(value) <= MOST) return value;
  throw new InvalidArgumentError(`It is ${value} N; it must lie within -${MOST} to ${MOST} N.`);
}

function newtons(text: string): number {
  if (!/\d/.test(text)) throw new InvalidArgumentError('It must be a force, such as "3 N", or estimated.');
  return parseQuantity(text, "force");
}
