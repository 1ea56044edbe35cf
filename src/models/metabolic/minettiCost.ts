import { type Caution, requireNumber, requireOneOf } from "../../units/index.js";
import {
  type MetabolicEstimate,
  type MetabolicGait,
  rangeCautions,
  type ValidRange,
} from "./metabolicEstimate.js";

/** Energy cost on a gradient by {@link minettiCost}. */
export interface MinettiCost extends MetabolicEstimate {
  readonly unit: "J/kg/m";
  readonly gait: MetabolicGait;
  /** Cost over that on the level, both by the polynomial; `null` for walking, whose polynomial misses the level. */
  readonly ratioToLevel: number | null;
}

/** Coefficients of i⁵ to i⁰, i the gradient. */
const POLYNOMIALS: Readonly<Record<MetabolicGait, readonly number[]>> = {
  running: [155.4, -30.4, -43.3, 46.3, 19.5, 3.6],
  walking: [280.5, -58.7, -76.8, 51.9, 19.6, 2.5],
};

/**
 * Gives the metabolic cost of running or walking a metre on a gradient, by the published polynomials.
 *
 * Formula: running 155.4 i⁵ − 30.4 i⁴ − 43.3 i³ + 46.3 i² + 19.5 i + 3.6; walking 280.5 i⁵ − 58.7 i⁴ − 76.8 i³ + 51.9 i² + 19.6 i +
 * 2.5; i rise over run.
 * Units: rise over run in; J/kg/m out, per metre along the slope (from memory).
 * Limits: gradients −0.45 to 0.45; beyond, the result carries a caution. For running use `ratioToLevel`: the polynomial gives
 * 3.60 on the level, where 3.40 ± 0.24 was measured. For walking it misses measured values near the level by far (2.50 for
 * 1.64 ± 0.50, 1.13 for 0.81 at −0.10), so there is no ratio, and a caution above −0.45 and below 0.45. It knows the gradient alone: no change of
 * technique or of force shows in it.
 * Source: Minetti et al. 2002, J Appl Physiol 93:1039 (polynomials as transcribed, measured values from the abstract).
 * @param gait - Which polynomial.
 * @param gradient - Rise over run, −1 to 1.
 * @throws GaitKineticsError `out-of-range`, `wrong-type`, `not-finite`: no such gait, a gradient outside −1 to 1.
 * @example
 * minettiCost("running", 0.1).ratioToLevel // 1.65784
 */
export function minettiCost(gait: MetabolicGait, gradient: number): MinettiCost {
  const coefficients = POLYNOMIALS[requireOneOf("gait", gait, ["running", "walking"])];
  requireNumber("gradient", gradient, { from: -1, to: 1, hint: "0.05 is 5 %, uphill positive" });
  const range: ValidRange = { unit: "1", from: -0.45, to: 0.45 };
  const value = coefficients.reduce((sum, coefficient) => sum * gradient + coefficient, 0);
  const level = coefficients[coefficients.length - 1] as number;
  return {
    equation: `Minetti et al. 2002, ${gait}`,
    gait,
    value,
    unit: "J/kg/m",
    ratioToLevel: gait === "running" ? value / level : null,
    range: { gradient: range },
    cautions: [
      ...rangeCautions(`Minetti ${gait}`, "gradient", gradient, range),
      ...missCautions(gait, gradient),
    ],
  };
}

/** Where the polynomial itself misses what was measured. */
function missCautions(gait: MetabolicGait, gradient: number): readonly Caution[] {
  if (gait === "walking" && Math.abs(gradient) < 0.45) {
    return [
      {
        code: "equation-misses-measurement",
        message:
          "the walking polynomial gives 2.50 J/kg/m on the level, where 1.64 ± 0.50 was measured, and 1.13 at −0.10 for 0.81; only near ±0.45 does it meet the measured values",
        where: "value",
        values: { level: 2.5, measured: 1.64 },
      },
    ];
  }
  return [];
}
