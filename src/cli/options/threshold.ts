import { InvalidArgumentError } from "commander";
import { quantity } from "./readers.js";

/** Level that contacts are read at: newtons, a share of body weight, or standard deviations above the force in flight. */
export type Threshold =
  | { readonly threshold: number }
  | { readonly thresholdShare: number }
  | { readonly noiseFactor: number };

const newtons = quantity("force", { positive: true });

/** Reads the contact threshold: `20 N`, `5 %` or `0.05 BW` of body weight, `6 SD` above the mean force in flight. */
export function threshold(text: string): Threshold {
  const [, number = "", unit = ""] = /^\s*([+-]?\d+(?:[.,]\d+)?)\s*(%|BW|SD)\s*$/.exec(text) ?? [];
  const value = Number(number.replace(",", "."));
  switch (unit) {
    case "%":
      return { thresholdShare: share(value / 100) };
    case "BW":
      return { thresholdShare: share(value) };
    case "SD":
      if (!(value > 0)) throw new InvalidArgumentError('It must be above zero, such as "6 SD".');
      return { noiseFactor: value };
    default:
      return { threshold: inNewtons(text) };
  }
}

function share(value: number): number {
  if (value > 0 && value < 1) return value;
  throw new InvalidArgumentError('It must lie between 0 and 100 % of body weight, such as "5 %".');
}

function inNewtons(text: string): number {
  try {
    return newtons(text);
  } catch (caught) {
    if (!(caught instanceof InvalidArgumentError)) throw caught;
    throw new InvalidArgumentError(
      `${caught.message} A share of body weight is "5 %", a level by the noise in flight "6 SD".`,
    );
  }
}
