import { fail } from "../../units/index.js";
import { fProbability } from "../distributions/fProbability.js";
import { mean } from "../mean.js";
import { requireValues, type Values } from "../requireValues.js";
import { shown } from "../shown.js";

/** A sum of squares with its degrees of freedom. */
export interface VariancePart {
  readonly sumOfSquares: number;
  readonly degreesOfFreedom: number;
  readonly meanSquare: number;
}

/** One-way analysis of variance. */
export interface AnalysisOfVariance {
  readonly between: VariancePart;
  readonly within: VariancePart;
  /** `null` where nothing spreads within groups. */
  readonly F: number | null;
  /** `null` where F is. */
  readonly p: number | null;
}

/**
 * Tests whether the means of several groups differ, by one-way analysis of variance.
 *
 * Formula: F = [Σ nᵢ (mᵢ − m)²/(g − 1)] / [Σ Σ (xᵢⱼ − mᵢ)²/(N − g)], mᵢ means of g groups, m of all N values.
 * Units: those of the values, squared; F none.
 * Limits: at least two groups and more values than groups; independent values of like spread.
 * Source: definition; the example of the NIST/SEMATECH e-Handbook, 7.4.3.
 * @param groups - Lists of values, at least one each.
 * @throws GaitKineticsError `too-short`, `not-finite`, `wrong-type`: no such groups.
 * @example
 * analysisOfVariance([[6.9, 5.4, 5.8, 4.6, 4.0], [8.3, 6.8, 7.8, 9.2, 6.5], [8.0, 10.5, 8.1, 6.9, 9.3]]).F?.toFixed(2) // "9.59"
 */
export function analysisOfVariance(groups: readonly Values[]): AnalysisOfVariance {
  const given: unknown = groups;
  if (!Array.isArray(given)) {
    fail("wrong-type", `groups are ${shown(given)}; a list of groups is needed`, { argument: "groups" });
  }
  if (groups.length < 2) {
    fail("too-short", `groups holds ${groups.length}; at least 2 are needed`, { argument: "groups" });
  }
  groups.forEach((group, i) => {
    requireValues(`groups[${i}]`, group, 1);
  });
  const all = groups.flatMap((group) => Array.from<number>(group));
  if (all.length <= groups.length) {
    fail(
      "too-short",
      `${all.length} values in ${groups.length} groups leave no spread within them; give more`,
      {
        argument: "groups",
      },
    );
  }
  const centre = mean(all);
  let between = 0;
  let within = 0;
  for (const group of groups) {
    const own = mean(group);
    between += group.length * (own - centre) ** 2;
    for (let i = 0; i < group.length; i++) within += ((group[i] as number) - own) ** 2;
  }
  const df1 = groups.length - 1;
  const df2 = all.length - groups.length;
  const F = within === 0 ? null : between / df1 / (within / df2);
  return {
    between: { sumOfSquares: between, degreesOfFreedom: df1, meanSquare: between / df1 },
    within: { sumOfSquares: within, degreesOfFreedom: df2, meanSquare: within / df2 },
    F,
    p: F === null ? null : fProbability(F, df1, df2, "above"),
  };
}
