import { InvalidArgumentError } from "commander";
import { smallestChanges, type TypedChange } from "./smallestChanges.js";

/** A share of every baseline, or a margin for each of some metrics. */
export type Margin =
  | { readonly share: number }
  | { readonly byMetric: Readonly<Record<string, TypedChange>> };

/** Reads margins: a share above zero and below one, `10 %` or `0.1`, or pairs, `brakingImpulse=8 %`. */
export function margin(text: string): Margin {
  if (text.includes("=")) return { byMetric: smallestChanges(text) };
  const [, digits = "", sign = ""] = /^\s*([+-]?\d+(?:\.\d+)?)\s*(%?)\s*$/.exec(text) ?? [];
  const share = Number(digits) / (sign === "%" ? 100 : 1);
  if (digits !== "" && share > 0 && share < 1) return { share };
  throw new InvalidArgumentError(
    'It must lie between 0 and 100 %, such as "10 %" or 0.1, or name metrics, such as "brakingImpulse=8 %".',
  );
}
