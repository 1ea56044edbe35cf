import { fail } from "./error.js";

/** The kinds of quantity that {@link FACTORS} converts. */
export type Dimension =
  | "force"
  | "mass"
  | "length"
  | "time"
  | "frequency"
  | "speed"
  | "acceleration"
  | "impulse"
  | "moment"
  | "energy";

/** A unit the library converts. */
export type KnownUnit =
  | "N"
  | "kN"
  | "lbf"
  | "kgf"
  | "kg"
  | "g"
  | "lb"
  | "m"
  | "cm"
  | "mm"
  | "km"
  | "in"
  | "ft"
  | "mi"
  | "s"
  | "ms"
  | "min"
  | "h"
  | "Hz"
  | "kHz"
  | "m/s"
  | "km/h"
  | "mi/h"
  | "m/min"
  | "m/s^2"
  | "N s"
  | "N m"
  | "N mm"
  | "J"
  | "kJ";

/** What one unit is worth in SI. */
export interface UnitFactor {
  readonly dimension: Dimension;
  /** The SI unit of its dimension. */
  readonly si: string;
  /** Multiply a value in this unit by this number to have it in SI. */
  readonly toSi: number;
  /** The same as a quotient of whole numbers, which is exact. */
  readonly ratio: readonly [numerator: number, denominator: number];
}

/**
 * Conversion factors to SI. Each is an exact definition or a product of them: the international yard and pound of 1959
 * (0.9144 m, 0.45359237 kg), the mile of 1760 yards, standard gravity 9.80665 m/s² (ISO 80000-3), minute and hour; so
 * a pound-force is 0.45359237 kg × 9.80665 m/s² = 4.4482216152605 N.
 */
export const FACTORS: Readonly<Record<KnownUnit, UnitFactor>> = {
  N: { dimension: "force", si: "N", ratio: [1, 1], toSi: 1 },
  kN: { dimension: "force", si: "N", ratio: [1000, 1], toSi: 1000 },
  lbf: {
    dimension: "force",
    si: "N",
    ratio: [44_482_216_152_605, 10_000_000_000_000],
    toSi: 4.4482216152605,
  },
  kgf: { dimension: "force", si: "N", ratio: [980_665, 100_000], toSi: 9.80665 },
  kg: { dimension: "mass", si: "kg", ratio: [1, 1], toSi: 1 },
  g: { dimension: "mass", si: "kg", ratio: [1, 1000], toSi: 0.001 },
  lb: { dimension: "mass", si: "kg", ratio: [45_359_237, 100_000_000], toSi: 0.45359237 },
  m: { dimension: "length", si: "m", ratio: [1, 1], toSi: 1 },
  cm: { dimension: "length", si: "m", ratio: [1, 100], toSi: 0.01 },
  mm: { dimension: "length", si: "m", ratio: [1, 1000], toSi: 0.001 },
  km: { dimension: "length", si: "m", ratio: [1000, 1], toSi: 1000 },
  in: { dimension: "length", si: "m", ratio: [254, 10_000], toSi: 0.0254 },
  ft: { dimension: "length", si: "m", ratio: [3048, 10_000], toSi: 0.3048 },
  mi: { dimension: "length", si: "m", ratio: [1_609_344, 1000], toSi: 1609.344 },
  s: { dimension: "time", si: "s", ratio: [1, 1], toSi: 1 },
  ms: { dimension: "time", si: "s", ratio: [1, 1000], toSi: 0.001 },
  min: { dimension: "time", si: "s", ratio: [60, 1], toSi: 60 },
  h: { dimension: "time", si: "s", ratio: [3600, 1], toSi: 3600 },
  Hz: { dimension: "frequency", si: "Hz", ratio: [1, 1], toSi: 1 },
  kHz: { dimension: "frequency", si: "Hz", ratio: [1000, 1], toSi: 1000 },
  "m/s": { dimension: "speed", si: "m/s", ratio: [1, 1], toSi: 1 },
  "km/h": { dimension: "speed", si: "m/s", ratio: [1000, 3600], toSi: 1000 / 3600 },
  "mi/h": { dimension: "speed", si: "m/s", ratio: [1_609_344, 3_600_000], toSi: 1_609_344 / 3_600_000 },
  "m/min": { dimension: "speed", si: "m/s", ratio: [1, 60], toSi: 1 / 60 },
  "m/s^2": { dimension: "acceleration", si: "m/s^2", ratio: [1, 1], toSi: 1 },
  "N s": { dimension: "impulse", si: "N s", ratio: [1, 1], toSi: 1 },
  "N m": { dimension: "moment", si: "N m", ratio: [1, 1], toSi: 1 },
  "N mm": { dimension: "moment", si: "N m", ratio: [1, 1000], toSi: 0.001 },
  J: { dimension: "energy", si: "J", ratio: [1, 1], toSi: 1 },
  kJ: { dimension: "energy", si: "J", ratio: [1000, 1], toSi: 1000 },
};

/**
 * Reads the name of a unit. Spaces, `*` and `·` between units mean the same ("N mm", "N*mm", "N·mm"), and
 * a newton may go without ("Nmm", "Ns").
 *
 * @param name - As written.
 * @param where - Where it stands, for the message.
 * @throws GaitKineticsError `unknown-unit`: not in {@link FACTORS}.
 * @example
 * unitFactor("kN").toSi // 1000
 */
export function unitFactor(name: string, where?: string): UnitFactor {
  const key = name
    .trim()
    .replace(/\s*[·*⋅]\s*|\s+/g, " ")
    .replace(/^N(mm?|s)$/, "N $1")
    .replace("²", "^2");
  if (!Object.hasOwn(FACTORS, key)) {
    fail(
      "unknown-unit",
      `${where === undefined ? "" : `${where}: `}${JSON.stringify(name.slice(0, 40))} is no known unit; known are ${Object.keys(FACTORS).join(", ")}`,
      {
        where,
        values: { given: name, allowed: Object.keys(FACTORS) },
      },
    );
  }
  return FACTORS[key as KnownUnit];
}

/**
 * Converts a number between units of the same dimension, by their exact ratio: 12 in are 1 ft to the last bit.
 *
 * @param value - In the unit `from`.
 * @param from - Its unit.
 * @param to - The unit wanted.
 * @throws GaitKineticsError `unknown-unit`; `unit-mismatch`: the units measure different things.
 * @example
 * convert(12, "in", "ft") // 1
 */
export function convert(value: number, from: KnownUnit, to: KnownUnit): number {
  const source = unitFactor(from);
  const target = unitFactor(to);
  if (source.dimension !== target.dimension) {
    fail(
      "unit-mismatch",
      `${from} measures ${source.dimension} and ${to} measures ${target.dimension}; they must measure the same`,
      {
        values: { from, to },
      },
    );
  }
  const [above, below] = reduced(source.ratio[0], target.ratio[0]);
  const [more, less] = reduced(target.ratio[1], source.ratio[1]);
  return (value * (above * more)) / (below * less);
}

/** Both numbers without their common factors, so that products of them stay exact. */
function reduced(one: number, two: number): readonly [number, number] {
  let [divisor, rest] = [one, two];
  while (rest !== 0) [divisor, rest] = [rest, divisor % rest];
  return [one / divisor, two / divisor];
}
