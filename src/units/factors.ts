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
}

/**
 * Conversion factors to SI. Each is an exact definition or a product of them: the international yard and pound of 1959
 * (0.9144 m, 0.45359237 kg), the mile of 1760 yards, standard gravity 9.80665 m/s² (ISO 80000-3), minute and hour.
 */
export const FACTORS: Readonly<Record<KnownUnit, UnitFactor>> = {
  N: { dimension: "force", si: "N", toSi: 1 },
  kN: { dimension: "force", si: "N", toSi: 1000 },
  lbf: { dimension: "force", si: "N", toSi: 0.45359237 * 9.80665 },
  kgf: { dimension: "force", si: "N", toSi: 9.80665 },
  kg: { dimension: "mass", si: "kg", toSi: 1 },
  g: { dimension: "mass", si: "kg", toSi: 1 / 1000 },
  lb: { dimension: "mass", si: "kg", toSi: 0.45359237 },
  m: { dimension: "length", si: "m", toSi: 1 },
  cm: { dimension: "length", si: "m", toSi: 1 / 100 },
  mm: { dimension: "length", si: "m", toSi: 1 / 1000 },
  km: { dimension: "length", si: "m", toSi: 1000 },
  in: { dimension: "length", si: "m", toSi: 0.0254 },
  ft: { dimension: "length", si: "m", toSi: 0.3048 },
  mi: { dimension: "length", si: "m", toSi: 1609.344 },
  s: { dimension: "time", si: "s", toSi: 1 },
  ms: { dimension: "time", si: "s", toSi: 1 / 1000 },
  min: { dimension: "time", si: "s", toSi: 60 },
  h: { dimension: "time", si: "s", toSi: 3600 },
  Hz: { dimension: "frequency", si: "Hz", toSi: 1 },
  kHz: { dimension: "frequency", si: "Hz", toSi: 1000 },
  "m/s": { dimension: "speed", si: "m/s", toSi: 1 },
  "km/h": { dimension: "speed", si: "m/s", toSi: 1 / 3.6 },
  "mi/h": { dimension: "speed", si: "m/s", toSi: 1609.344 / 3600 },
  "m/min": { dimension: "speed", si: "m/s", toSi: 1 / 60 },
  "m/s^2": { dimension: "acceleration", si: "m/s^2", toSi: 1 },
  "N s": { dimension: "impulse", si: "N s", toSi: 1 },
  "N m": { dimension: "moment", si: "N m", toSi: 1 },
  "N mm": { dimension: "moment", si: "N m", toSi: 1 / 1000 },
  J: { dimension: "energy", si: "J", toSi: 1 },
  kJ: { dimension: "energy", si: "J", toSi: 1000 },
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
 * Converts a number between units of the same dimension.
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
  return (value * source.toSi) / target.toSi;
}
