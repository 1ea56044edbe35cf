import type { Caution } from "../../units/index.js";
import type { ParameterTable } from "./parameterTable.js";

const GROUPS = ["SUBJECT", "SUBJECTS", "PROCESSING", "PARTICIPANT", "PATIENT"] as const;
const MASS_NAMES = ["MASS", "BODYMASS", "BODY_MASS", "WEIGHT", "BODYWEIGHT", "BODY_WEIGHT"] as const;
const HEIGHT_NAMES = ["HEIGHT", "BODYHEIGHT", "BODY_HEIGHT", "STATURE"] as const;

/** Where a number of the runner stands in a file, with the unit that stands behind it or in its description. */
interface Found {
  readonly where: string;
  readonly value: number;
  readonly unit: string;
}

/** How a number becomes SI, and what a runner's may be. Bounds are judgements: a child to the heaviest runner. */
interface Kind {
  readonly names: readonly string[];
  readonly units: Readonly<Record<string, number>>;
  readonly si: string;
  readonly from: number;
  readonly to: number;
  /** Units to try, in order, where the stated one is missing or gives no runner's number. */
  readonly guesses: readonly string[];
}

/** A weight of 1 N is that of 0.10197… kg under standard gravity, 9.80665 m/s². */
const MASS: Kind = {
  names: MASS_NAMES,
  units: {
    kg: 1,
    kilogram: 1,
    kilograms: 1,
    lb: 0.45359237,
    lbs: 0.45359237,
    pound: 0.45359237,
    pounds: 0.45359237,
    g: 0.001,
    n: 0.10197162129779283,
    newton: 0.10197162129779283,
    newtons: 0.10197162129779283,
  },
  si: "kg",
  from: 15,
  to: 250,
  guesses: ["kg"],
};
const HEIGHT: Kind = {
  names: HEIGHT_NAMES,
  units: {
    m: 1,
    metre: 1,
    metres: 1,
    meter: 1,
    meters: 1,
    cm: 0.01,
    mm: 0.001,
    in: 0.0254,
    inch: 0.0254,
    inches: 0.0254,
  },
  si: "m",
  from: 0.7,
  to: 2.4,
  guesses: ["m", "cm", "mm"],
};

/**
 * Finds mass and height of the runner. The format has no parameter for them; files hold them in groups such as SUBJECT or
 * PROCESSING. Each one that is used is named in a `Caution`, with the unit it was taken in.
 */
export function subjectOf(table: ParameterTable): {
  readonly mass?: number;
  readonly height?: number;
  readonly cautions: readonly Caution[];
} {
  const cautions: Caution[] = [];
  const mass = read(table, MASS, "mass", cautions);
  const height = read(table, HEIGHT, "height", cautions);
  return { ...(mass !== null && { mass }), ...(height !== null && { height }), cautions };
}

function read(table: ParameterTable, kind: Kind, key: string, cautions: Caution[]): number | null {
  const found = find(table, kind);
  if (found === null) return null;
  const { where, value, unit } = found;
  const inUnit = (name: string) => value * (kind.units[name] as number);
  const plausible = (name: string) => inUnit(name) >= kind.from && inUnit(name) <= kind.to;
  const stated = Object.hasOwn(kind.units, unit);
  const name =
    stated && plausible(unit) ? unit : kind.guesses.find((guess) => guess !== unit && plausible(guess));
  if (name === undefined) {
    cautions.push({
      code: `${key}-not-read`,
      message: `${where} is ${value}${unit && ` ${unit}`}, which is no runner's ${key} in ${kind.guesses.join(", ")}; it was not used`,
      where,
      values: { value },
    });
    return null;
  }
  const said =
    name === unit
      ? "as stated there"
      : stated
        ? `not in ${unit}, as stated there`
        : "though no unit is stated";
  cautions.push({
    code: `${key}-from-file`,
    message: `${key} ${Number(inUnit(name).toPrecision(6))} ${kind.si} was taken from ${where}, ${value} in ${name}, ${said}; state ${key} if that is wrong`,
    where,
    values: { value, unit: name },
  });
  return inUnit(name);
}

function find(table: ParameterTable, { names, units }: Kind): Found | null {
  for (const group of GROUPS) {
    for (const name of names) {
      const parameter = table.get(group, name);
      const first = parameter?.data[0];
      if (parameter === undefined || first === undefined || parameter.data.length > 1) continue;
      const text = typeof first === "string" ? first : String(first);
      const [, digits = "", behind = ""] = /^\s*([\d.]+(?:e[+-]?\d+)?)\s*([a-z]*)\s*$/i.exec(text) ?? [];
      const value = Number(digits);
      if (digits === "" || !Number.isFinite(value) || value <= 0) continue;
      const words = parameter.description.toLowerCase().split(/[^a-z]+/);
      const unit = behind.toLowerCase() || (words.find((word) => Object.hasOwn(units, word)) ?? "");
      // 32-bit numbers are printed with their own seven digits: 82.7, not 82.69999694824219.
      const rounded = typeof first === "number" ? Number(value.toPrecision(7)) : value;
      return { where: `${group}:${name}`, value: rounded, unit };
    }
  }
  return null;
}
