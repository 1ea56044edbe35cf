import { type ErrorCode, fail } from "./error.js";

/** The bounds of {@link requireNumber}; each is optional, and inclusive unless its name says otherwise. */
export interface NumberBounds {
  readonly above?: number | undefined;
  readonly below?: number | undefined;
  readonly from?: number | undefined;
  readonly to?: number | undefined;
  readonly whole?: boolean | undefined;
  /** Unit to print behind the number. */
  readonly unit?: string | undefined;
  /** A hint printed behind the sentence, such as what the caller may have mixed up. */
  readonly hint?: string | undefined;
}

/**
 * Checks that an argument is a finite number within bounds and returns it.
 *
 * @param argument - Its name, for the message.
 * @param value - What was given.
 * @param bounds - What is allowed.
 * @throws GaitKineticsError `wrong-type`: no number; `not-finite`: NaN or infinite; `out-of-range`: outside the bounds.
 * @example
 * requireNumber("mass", 70, { above: 0, unit: "kg" }) // 70
 */
export function requireNumber(argument: string, value: unknown, bounds: NumberBounds = {}): number {
  const { above, below, from, to, whole } = bounds;
  if (typeof value !== "number") return refuse("wrong-type", argument, value, bounds);
  if (!Number.isFinite(value)) return refuse("not-finite", argument, value, bounds);
  if (
    (above !== undefined && value <= above) ||
    (below !== undefined && value >= below) ||
    (from !== undefined && value < from) ||
    (to !== undefined && value > to) ||
    (whole && !Number.isInteger(value))
  ) {
    return refuse("out-of-range", argument, value, bounds);
  }
  return value;
}

/** The sentence is made only where it is needed: the check itself runs in hot paths. */
function refuse(code: ErrorCode, argument: string, value: unknown, bounds: NumberBounds): never {
  const unit = bounds.unit && bounds.unit !== "1" ? ` ${bounds.unit}` : "";
  const limits = (["above", "from", "below", "to"] as const)
    .flatMap((name) => (bounds[name] === undefined ? [] : ` ${name} ${bounds[name]}`))
    .join(" and");
  fail(
    code,
    `${argument} is ${shown(value)}${unit}; a ${bounds.whole ? "whole" : "finite"} number${limits}${unit} is needed${bounds.hint ? ` (${bounds.hint})` : ""}`,
    { argument, values: { given: value, ...bounds } },
  );
}

/** What was given, in a message: an object need not have a string of its own. */
function shown(value: unknown): string {
  if (typeof value === "string") return `"${value}"`;
  if (value !== Object(value)) return String(value);
  return Array.isArray(value) ? "a list" : "an object";
}

/**
 * Tells whether samples sum up to a finite number, and so are finite themselves; two sums side by side take a third of the
 * time of one. Finite samples whose sum overflows give `false`.
 * @example
 * allFinite(new Float64Array([0, 1, Number.NaN])) // false
 */
export function allFinite(samples: Float64Array): boolean {
  let even = samples.at(-1) ?? 0;
  let odd = 0;
  for (let i = 1; i < samples.length; i += 2) {
    even += samples[i - 1] as number;
    odd += samples[i] as number;
  }
  return Number.isFinite(even + odd);
}

/**
 * Checks that samples are a `Float64Array` without NaN or infinite values.
 *
 * @param argument - Its name, for the message.
 * @param samples - What was given.
 * @throws GaitKineticsError `wrong-type`: no `Float64Array`; `not-finite`: the first sample that is not finite, by number.
 * @example
 * requireFiniteSamples("up", new Float64Array([0, 1])) // undefined
 */
export function requireFiniteSamples(argument: string, samples: unknown): asserts samples is Float64Array {
  if (!(samples instanceof Float64Array)) {
    fail("wrong-type", `${argument} is ${typeof samples}; a Float64Array is needed`, { argument });
  }
  if (allFinite(samples)) return;
  const index = samples.findIndex((sample) => !Number.isFinite(sample));
  if (index >= 0) {
    fail(
      "not-finite",
      `${argument} holds ${samples[index]} at sample ${index}; every sample must be a finite number`,
      {
        argument,
        where: `sample ${index}`,
        values: { index, given: String(samples[index]) },
      },
    );
  }
}

/**
 * Checks that an argument is one of a list of words and returns it.
 * @throws GaitKineticsError `out-of-range`: none of them.
 * @example
 * requireOneOf("surface", "belt", ["ground", "belt"]) // "belt"
 */
export function requireOneOf<const T extends string>(
  argument: string,
  value: unknown,
  allowed: readonly T[],
): T {
  const found = allowed.find((word) => word === value);
  if (found === undefined) {
    fail(
      "out-of-range",
      `${argument} is ${shown(value)}; it must be ${allowed.map((word) => `"${word}"`).join(" or ")}`,
      {
        argument,
        values: { given: value, allowed },
      },
    );
  }
  return found;
}
