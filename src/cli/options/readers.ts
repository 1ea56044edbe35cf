import { InvalidArgumentError } from "commander";
import type { Delimiter } from "../../io/index.js";
import { type Axes, axisMapping, checkFootwear, PLAUSIBLE_BOUNDS, type Side } from "../../recording/index.js";
import { isGaitKineticsError, type NumberBounds, requireNumber } from "../../units/index.js";
import { parseQuantity } from "../../units/parse/index.js";
import { oneLine } from "../output/oneLine.js";
import { optionWords } from "../output/optionWords.js";

/** Turns what was typed for an option into its value. */
export type Reader<T> = (text: string) => T;

/** Kinds of quantity that options take, each with an example of how it is typed. */
const EXAMPLES = {
  mass: '"70 kg"',
  length: '"1.78 m"',
  speed: '"12 km/h"',
  force: '"20 N"',
  frequency: '"50 Hz"',
  time: '"15 s"',
} as const;

/** Reads a quantity with its unit into SI; `plausible` are bounds that hold for every recording. */
export function quantity(
  dimension: keyof typeof EXAMPLES,
  bounds: { readonly positive: boolean; readonly plausible?: NumberBounds },
): Reader<number> {
  return (text) => {
    const value = refusingAsUsage(() => parseQuantity(text, dimension));
    if (bounds.positive ? value <= 0 : value < 0) {
      throw new InvalidArgumentError(
        `It must be ${bounds.positive ? "above" : "at least"} zero, such as ${EXAMPLES[dimension]}.`,
      );
    }
    return refusingAsUsage(() => requireNumber("It", value, bounds.plausible));
  };
}

/** Reads a word of a list. */
export function word<const T extends string>(...allowed: readonly T[]): Reader<T> {
  return (text) => {
    const found = allowed.find((candidate) => candidate === text.trim());
    if (found === undefined) throw new InvalidArgumentError(`It must be ${allowed.join(" or ")}.`);
    return found;
  };
}

/** Reads a whole number from `least` up. */
export function whole(least: number): Reader<number> {
  return (text) => {
    const value = Number(text);
    if (text.trim() === "" || !Number.isInteger(value) || value < least) {
      throw new InvalidArgumentError(`It must be a whole number from ${least}.`);
    }
    return value;
  };
}

/** Reads the net order of a filter that runs forward and backward. */
export function netOrder(text: string): number {
  const value = whole(2)(text);
  if (value % 2 !== 0 || value > 100) {
    throw new InvalidArgumentError("It must be even, as both passes share it, from 2 to 100.");
  }
  return value;
}

/** Reads a slope: `2 %` or `0.02`, uphill positive. */
export function grade(text: string): number {
  const match = /^\s*([+-]?\d+(?:\.\d+)?)\s*(%?)\s*$/.exec(text);
  if (match === null) throw new InvalidArgumentError('It must be rise over run, such as "2 %" or 0.02.');
  const slope = Number(match[1]) / (match[2] === "%" ? 100 : 1);
  return refusingAsUsage(() => requireNumber("It", slope, PLAUSIBLE_BOUNDS.grade));
}

/** Reads what is on the feet: one line of text. */
export function footwear(text: string): string {
  return refusingAsUsage(() => checkFootwear("It", text.trim()));
}

/** Reads a cutoff, or the word `none`. */
export function cutoff(text: string): number | "none" {
  if (text.trim() === "none") return "none";
  return refusingNegative(text);
}

/** Reads names in a list with commas between. */
export function list(text: string): readonly string[] {
  return text
    .split(",")
    .map((name) => name.trim())
    .filter((name) => name !== "");
}

/** Reads words in a list with commas between; an empty one stands for an empty cell. */
export function words(text: string): readonly string[] {
  return text.split(",").map((word) => word.trim());
}

const DELIMITERS: Readonly<Record<string, Delimiter>> = {
  comma: ",",
  semicolon: ";",
  tab: "\t",
  bar: "|",
  blanks: " ",
};

/** Reads what stands between cells: its name, or itself. */
export function delimiter(text: string): Delimiter {
  const found = DELIMITERS[text.trim()] ?? Object.values(DELIMITERS).find((sign) => sign === text);
  if (found === undefined) {
    throw new InvalidArgumentError(`It must be ${Object.keys(DELIMITERS).join(", ")}.`);
  }
  return found;
}

const timeOfStretch = quantity("time", { positive: false });

/** Reads a stretch of time: `0 s to 0.2 s`. */
export function stretch(text: string): { readonly from: number; readonly to: number } {
  const [from, to, ...more] = text.split(/\bto\b/);
  if (from === undefined || to === undefined || more.length > 0) {
    throw new InvalidArgumentError('It must be two times with "to" between, such as "0 s to 0.2 s".');
  }
  const read = { from: timeOfStretch(from), to: timeOfStretch(to) };
  if (!(read.from < read.to)) {
    throw new InvalidArgumentError(
      `It runs from ${read.from} s to ${read.to} s; it must end after it begins.`,
    );
  }
  return read;
}

/** Reads `name=value` pairs with commas between; a comma in a name has no place. */
export function pairs(text: string): Readonly<Record<string, string>> {
  const read = list(text).map((pair) => {
    const at = pair.lastIndexOf("=");
    if (at < 1 || at === pair.length - 1) {
      throw new InvalidArgumentError(`"${pair}" is no NAME=VALUE; pairs have commas between them.`);
    }
    return [pair.slice(0, at).trim(), pair.slice(at + 1).trim()] as const;
  });
  if (read.length === 0)
    throw new InvalidArgumentError("It must be NAME=VALUE pairs with commas between them.");
  const names = read.map(([name]) => name);
  const twice = names.find((name, i) => names.indexOf(name) < i);
  if (twice !== undefined) {
    throw new InvalidArgumentError(`"${twice}" stands twice; each name takes one value.`);
  }
  return Object.fromEntries(read);
}

/** Reads the foot of each belt. */
export function sides(text: string): Readonly<Record<string, Side>> {
  const stated = pairs(text);
  const wrong = Object.values(stated).find((side) => side !== "left" && side !== "right");
  if (wrong !== undefined) throw new InvalidArgumentError(`"${wrong}" is no foot; it must be left or right.`);
  return stated as Readonly<Record<string, Side>>;
}

/** Reads where the axes of a file point. */
export function axes(text: string): Axes {
  const stated = pairs(text) as Axes;
  refusingAsUsage(() => axisMapping(stated));
  return stated;
}

/** Reads the name of a page. */
export function page(text: string): string {
  if (!/[^/\\]\.html?$/i.test(text)) {
    throw new InvalidArgumentError(
      "It must be a file name that ends in .html or .htm: a page for a browser.",
    );
  }
  return text;
}

/** Reads the name of a folder. */
export function folder(text: string): string {
  if (text.trim() === "") throw new InvalidArgumentError('It must name a folder; "." is the one you are in.');
  return text;
}

/** Longest text that a source is named in, characters. */
const LONGEST_SENTENCE = 200;

/** Reads a text that is printed as it is: one line. */
export function sentence(text: string): string {
  const plain = text.trim();
  if (plain === "" || plain.length > LONGEST_SENTENCE || plain !== oneLine(plain)) {
    throw new InvalidArgumentError(`It must be one line of text of up to ${LONGEST_SENTENCE} characters.`);
  }
  return plain;
}

/** Reads the name of a file. */
export function fileName(text: string): string {
  if (text.trim() === "") throw new InvalidArgumentError("It must name a file.");
  return text;
}

const refusingNegative = quantity("frequency", { positive: true });

/** What the library refuses in an option is bad usage. */
export function refusingAsUsage<T>(read: () => T): T {
  try {
    return read();
  } catch (caught) {
    if (isGaitKineticsError(caught))
      throw new InvalidArgumentError(`${capitalised(optionWords(caught.message))}.`);
    throw caught;
  }
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
