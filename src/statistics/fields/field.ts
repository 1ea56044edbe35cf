import { fail, requireNumber, requireOneOf } from "../../units/index.js";

interface Extent {
  /** Points of the curve, a whole number from 2. */
  readonly nodes: number;
  /** Smoothness: full width at half maximum, in points, above 0. */
  readonly fullWidthAtHalfMaximum: number;
}

/** A smooth random curve of Student's t; `degreesOfFreedom` from 2, need not be whole. */
export interface StudentField extends Extent {
  readonly kind: "t";
  readonly degreesOfFreedom: number;
}

/**
 * A smooth random curve of the F ratio; degrees of freedom of the numerator, a whole number from 1, and of the
 * denominator, from 2.
 */
export interface VarianceRatioField extends Extent {
  readonly kind: "F";
  readonly degreesOfFreedom: readonly [numerator: number, denominator: number];
}

/** A smooth random curve of a normal variable of mean 0 and standard deviation 1. */
export interface GaussianField extends Extent {
  readonly kind: "gaussian";
}

/** A smooth random curve without any true effect: what it is of, how long and how smooth it is. */
export type Field = StudentField | VarianceRatioField | GaussianField;

/** How a probability over the whole curve is bounded. */
export type FieldRule = "smaller" | "random field" | "Bonferroni";

/** Lengths of the curve in points over its smoothness: how many independent stretches it is worth. */
export function reselsOf({ nodes, fullWidthAtHalfMaximum }: Field): number {
  return (nodes - 1) / fullWidthAtHalfMaximum;
}

/** Refuses what is no field, and the two-sided reading of F, which has no sign. */
export function requireField(field: Field, twoSided: boolean): void {
  if (typeof field !== "object" || field === null) {
    fail("wrong-type", `field is ${String(field)}; an object with kind, nodes and smoothness is needed`, {
      argument: "field",
    });
  }
  requireOneOf("kind", field.kind, ["t", "F", "gaussian"]);
  requireNumber("nodes", field.nodes, { from: 2, whole: true });
  requireNumber("fullWidthAtHalfMaximum", field.fullWidthAtHalfMaximum, { above: 0 });
  if (field.kind === "t") {
    const hint = "a curve of fewer has no threshold";
    requireNumber("degreesOfFreedom", field.degreesOfFreedom, { from: 2, hint });
  }
  if (field.kind !== "F") return;
  if (!Array.isArray(field.degreesOfFreedom)) {
    fail("wrong-type", "degreesOfFreedom of an F field is a pair, of the numerator and the denominator", {
      argument: "degreesOfFreedom",
    });
  }
  requireNumber("degreesOfFreedom[0]", field.degreesOfFreedom[0], { from: 1, whole: true });
  requireNumber("degreesOfFreedom[1]", field.degreesOfFreedom[1], { from: 2 });
  if (twoSided) {
    fail("conflict", "an F field has no sign and is read on one side; twoSided must be false", {
      argument: "twoSided",
    });
  }
}
