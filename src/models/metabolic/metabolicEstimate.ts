import type { Caution } from "../../units/index.js";

/** The two gaits that the metabolic equations tell apart. */
export type MetabolicGait = "running" | "walking";

/** A stretch of an input that an equation was made for; `null` for no end. */
export interface ValidRange {
  readonly unit: string;
  readonly from: number | null;
  readonly to: number | null;
}

/** What a published equation gives, and where it holds. */
export interface MetabolicEstimate {
  /** Name and source. */
  readonly equation: string;
  readonly value: number;
  readonly unit: string;
  /** By input. */
  readonly range: Readonly<Record<string, ValidRange>>;
  readonly cautions: readonly Caution[];
}

/**
 * Says that an input lies outside the range of an equation.
 *
 * @param equation - Its short name, for the sentence.
 * @param input - Name of the input.
 * @param value - Its value, in the unit of the range.
 * @param range - Where the equation holds.
 */
export function rangeCautions(
  equation: string,
  input: string,
  value: number,
  range: ValidRange,
): readonly Caution[] {
  const { from, to, unit } = range;
  if ((from === null || value >= from) && (to === null || value <= to)) return [];
  const ends = [from === null ? [] : `from ${from}`, to === null ? [] : `to ${to}`].flat().join(" ");
  const behind = unit === "1" ? "" : ` ${unit}`;
  return [
    {
      code: "outside-equation-range",
      message: `${input} is ${value}${behind}; the ${equation} equation holds ${ends}${behind}`,
      where: input,
      values: { value, from, to, unit },
    },
  ];
}
