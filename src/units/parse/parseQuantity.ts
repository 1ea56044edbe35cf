import {
  type Dimension,
  FACTORS,
  fail,
  type Hertz,
  type Joules,
  type Kilograms,
  type KnownUnit,
  type Metres,
  type MetresPerSecond,
  type MetresPerSecondSquared,
  type NewtonMetres,
  type NewtonSeconds,
  type Newtons,
  requireOneOf,
  type Seconds,
} from "../index.js";
import { isSameUnit, measureSame, readUnit, type UnitPart } from "./mathUnits.js";

/** The SI quantity of each dimension. */
export interface QuantityOf {
  readonly force: Newtons;
  readonly mass: Kilograms;
  readonly length: Metres;
  readonly time: Seconds;
  readonly frequency: Hertz;
  readonly speed: MetresPerSecond;
  readonly acceleration: MetresPerSecondSquared;
  readonly impulse: NewtonSeconds;
  readonly moment: NewtonMetres;
  readonly energy: Joules;
}

/** For each dimension how it is written, its SI unit first. */
const EXAMPLES: Readonly<Record<Dimension, { readonly unit: KnownUnit; readonly text: string }>> = {
  force: { unit: "N", text: "20 N" },
  mass: { unit: "kg", text: "70 kg" },
  length: { unit: "m", text: "1.78 m" },
  time: { unit: "s", text: "0.25 s" },
  frequency: { unit: "Hz", text: "50 Hz" },
  speed: { unit: "m/s", text: "12 km/h" },
  acceleration: { unit: "m/s^2", text: "9.81 m/s^2" },
  impulse: { unit: "N s", text: "18 N s" },
  moment: { unit: "N m", text: "7 N m" },
  energy: { unit: "J", text: "110 J" },
};

/** Single units with a factor, by which the parts of a compound are known. */
const SINGLE = ["N", "lbf", "kgf", "g", "lb", "m", "in", "ft", "mi", "s", "min", "h", "Hz", "J"] as const;

/**
 * Reads a quantity as a person types it, with its unit, and gives it in SI.
 *
 * Formula: number × exact factor of the unit ({@link FACTORS}); mathjs reads which unit is meant, with its prefixes,
 * plurals and compounds. Terms add up: `5 ft 11 in`.
 * Units: those of {@link FACTORS} and their multiples in; SI out.
 * Limits: a number without a unit is refused, and so is a comma before exactly three digits, which may set thousands
 * apart ("1,500 N"); "1,78 m" is 1.78 m. No pace (min/km). Whether the value makes sense is not looked at.
 * Source: factors as in {@link FACTORS}.
 * @param text - Such as `154 lb`, `12 km/h`, `70kg`, `20 N`, `50 Hz`.
 * @param dimension - What is needed.
 * @throws GaitKineticsError `wrong-type`: no quantity; `unknown-unit`: no unit, or one without a factor here;
 * `unit-mismatch`: a quantity of another kind, such as newtons for a mass; `not-finite`: beyond the largest number;
 * `out-of-range`: no known dimension.
 * @example
 * parseQuantity("154 lb", "mass") // 69.85322498000001
 * parseQuantity("36 km/h", "speed") // 10
 */
export function parseQuantity<D extends Dimension>(text: string, dimension: D): QuantityOf[D] {
  requireOneOf("dimension", dimension, Object.keys(EXAMPLES) as Dimension[]);
  if (typeof text !== "string") {
    fail(
      "wrong-type",
      `${typeof text} given; a text with number and unit is needed, such as "${EXAMPLES[dimension].text}"`,
      {
        values: { given: typeof text },
      },
    );
  }
  const given = text.trim();
  if (dimension === "speed" && /\bmin\s*(?:\/|per)\s*(?:km|mi)/i.test(given)) {
    fail("unit-mismatch", `${shown(given)} is a pace; a speed is needed, such as "12 km/h"`, {
      values: { given, allowed: unitsOf(dimension) },
    });
  }
  let total = 0;
  for (const [index, term] of given.split(/(?<=[a-z])\s+(?=\d)/i).entries()) {
    const value = valueOfTerm(term, given, dimension);
    total = index === 0 ? value : total + (given.startsWith("-") ? -value : value);
  }
  if (!Number.isFinite(total)) {
    fail("not-finite", `${shown(given)} is beyond the largest number; a finite quantity is needed`, {
      values: { given },
    });
  }
  return total as QuantityOf[D];
}

function valueOfTerm(term: string, given: string, dimension: Dimension): number {
  const [, digits, rest] = /^([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?)(.*)$/is.exec(term) ?? [];
  if (digits === undefined || rest === undefined) {
    fail(
      "wrong-type",
      `${shown(given)} is no quantity; a number with a unit of ${dimension} is needed, such as "${EXAMPLES[dimension].text}"`,
      { values: { given, allowed: unitsOf(dimension) } },
    );
  }
  if (/^[+-]?[1-9]\d{0,2},\d{3}$/.test(digits)) {
    fail(
      "wrong-type",
      `${shown(given)} has a comma that may stand for decimals or set thousands apart; write ${shown(term.replace(",", ""))} or ${shown(term.replace(",", "."))}`,
      { values: { given } },
    );
  }
  const unit = rest.trim();
  if (unit === "") {
    fail(
      "unknown-unit",
      `${shown(given)} has no unit; write it as "${digits} ${EXAMPLES[dimension].unit}", or in another unit of ${dimension}: ${unitsOf(dimension)}`,
      { values: { given, allowed: unitsOf(dimension) } },
    );
  }
  return Number(digits.replace(",", ".")) * factorOf(unit, given, dimension);
}

function factorOf(written: string, given: string, dimension: Dimension): number {
  const [unit, parts] = understood(written) ?? refuseUnknown(written, given, dimension);
  const kind = dimensionOf(unit, parts, dimension);
  if (kind !== dimension) {
    const hint =
      kind === "force" && dimension === "mass"
        ? "; mass is not weight: weight in newtons ÷ 9.80665 m/s² is mass in kilograms"
        : "";
    fail(
      "unit-mismatch",
      `${shown(given)} is ${kind === null ? "something else" : withArticle(kind)}; ${withArticle(dimension)} is needed, such as "${EXAMPLES[dimension].text}"${hint}`,
      { values: { given, allowed: unitsOf(dimension) } },
    );
  }
  let above = 1;
  let below = 1;
  for (const { name, prefix, power } of parts) {
    const single = SINGLE.find((known) => isSameUnit(name, known));
    if (single === undefined) return refuseUnknown(written, given, dimension);
    const size = (FACTORS[single].toSi * prefix) ** Math.abs(power);
    if (power > 0) above *= size;
    else below *= size;
  }
  return above / below;
}

/** The unit as mathjs knows it, with its parts; `null` where it knows none. */
function understood(written: string): readonly [unit: string, parts: readonly UnitPart[]] | null {
  const plain = written
    .replace(/[·⋅×]/g, "*")
    .replace(/²|(?<=\/\s*s)2\b/g, "^2")
    .replace(/metre/gi, "meter")
    .replace(/gramme/gi, "gram")
    .replace(/\bnewtons?\b/gi, "N")
    .replace(/\bpounds?\b/gi, "lb")
    .replace(/\bmph\b/gi, "mi/h")
    .replace(/\bkm?ph\b|\bkmh\b/gi, "km/h")
    .replace(/\bper\b/gi, "/")
    .replace(/\bN(mm?|s)\b/g, "N $1");
  // "KG" and "hz" are no units to mathjs, whose names differ in case by meaning; a name of ours in other letters is.
  const ours = Object.keys(FACTORS).find((name) => name.toLowerCase() === plain.toLowerCase());
  for (const unit of ours === undefined ? [plain] : [plain, ours]) {
    const parts = readUnit(unit);
    if (parts !== null) return [unit, parts];
  }
  return null;
}

/** What a unit measures, the dimension asked for first: N m measures moment and energy. */
function dimensionOf(unit: string, parts: readonly UnitPart[], asked: Dimension): Dimension | null {
  const inJoules = parts.some(({ name }) => isSameUnit(name, "J"));
  const others = (Object.keys(EXAMPLES) as Dimension[]).filter((dimension) => dimension !== asked);
  for (const dimension of [asked, ...others]) {
    if (dimension === "moment" && inJoules) continue;
    if (measureSame(unit, EXAMPLES[dimension].unit)) return dimension;
  }
  return null;
}

function refuseUnknown(written: string, given: string, dimension: Dimension): never {
  fail(
    "unknown-unit",
    `${shown(given)}: ${shown(written)} is no unit with a known factor; units of ${dimension} are ${unitsOf(dimension)}`,
    { values: { given, allowed: unitsOf(dimension) } },
  );
}

function unitsOf(dimension: Dimension): string {
  return (Object.keys(FACTORS) as KnownUnit[])
    .filter((unit) => FACTORS[unit].dimension === dimension)
    .join(", ");
}

function withArticle(dimension: Dimension): string {
  return `${/^[aei]/.test(dimension) ? "an" : "a"} ${dimension}`;
}

function shown(text: string): string {
  return JSON.stringify(text.length > 40 ? `${text.slice(0, 39)}…` : text);
}
