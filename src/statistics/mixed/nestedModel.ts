import { type Complete, type Fraction, fail, requireNumber, withDefaults } from "../../units/index.js";
import { mean } from "../mean.js";
import type { Interval } from "../meanInterval.js";
import { requireValues, type Values } from "../requireValues.js";
import { studentTQuantile } from "../studentTQuantile.js";
import { minimise } from "./minimise.js";
import { type NestedGroup, nestedGroups } from "./nestedGroups.js";
import { type AtVariances, restrictedDeviance } from "./restrictedDeviance.js";

/** How values are laid out: what is fixed, and the groups they lie in. */
export interface NestedLayout {
  /** Columns beside the intercept by name, such as `{ changed: [0, 0, 1, 1] }`; one number a value. */
  readonly effects?: Readonly<Record<string, Values>> | undefined;
  /** Labels of every value by level, outermost first, such as runners, conditions of a runner, trials. */
  readonly levels: Readonly<Record<string, ArrayLike<string | number>>>;
}

/** How sure. */
export interface NestedModelOptions {
  /** Share of repeats the intervals are meant to cover. */
  readonly level?: Fraction | undefined;
}

/** 95 %: common practice. */
export const NESTED_MODEL_DEFAULTS: Complete<NestedModelOptions> = { level: 0.95 };

/** A fixed effect. */
export interface NestedEffect {
  readonly name: string;
  readonly estimate: number;
  readonly standardError: number;
  /** Satterthwaite's. */
  readonly degreesOfFreedom: number;
  readonly interval: Interval;
}

/** A linear mixed model of values in nested groups. */
export interface NestedModel {
  /** `intercept` first, then in the order given. */
  readonly effects: readonly NestedEffect[];
  /** Variance that each level adds, by name, and that of values within the innermost groups, `residual`. */
  readonly variances: Readonly<Record<string, number>>;
  /** Groups of each level. */
  readonly groups: Readonly<Record<string, number>>;
  /** Restricted log likelihood. */
  readonly logLikelihood: number;
}

/**
 * Fits a linear mixed model to values in nested groups, such as strides in trials in conditions of runners, by restricted maximum
 * likelihood: what a condition changes, and how much each level varies.
 *
 * Formula: y = Xβ + Σ uₗ + e, uₗ one normal number with variance σₗ² for every group of level l, e one for every value. σ² at the
 * maximum of the restricted likelihood, β by generalised least squares there; intervals β ± t SE with Satterthwaite's
 * degrees of freedom 2 V²/(g′ A g), V = SE², g its gradient and A the covariance of the σ², by numerical differences at the maximum. For
 * a change that differs from runner to runner make the runner's conditions a level: in a balanced layout its test is then the paired t test.
 * Units: those of the values; variances in their square.
 * Limits: values within a group are taken as independent; strides are not, which trial means as values avoid. A variance at 0
 * takes no part in the degrees of freedom. Up to four levels; time grows with the number of innermost groups.
 * Source: Patterson & Thompson 1971, Biometrika 58:545; Satterthwaite 1946, Biometrics Bull. 2:110, both from memory; held to R's
 * nlme 3.1-162 (estimates, standard errors, variances, likelihood) and, in balanced layouts, to the paired t test.
 * @param values - Finite numbers.
 * @param layout - Effects and levels, one entry a value in each.
 * @param options - {@link NESTED_MODEL_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`: fewer values than effects and two more, or no level; `unequal-lengths`: a column that is not as long as
 *   the values; `out-of-range`, `not-finite`, `wrong-type`: effects that cannot be told apart, a number or the level
 *   outside its range, more than four levels, or groups of one value only; `unknown-option`.
 * @example
 * const strides = [5, 5.2, 6.1, 6, 4.8, 5, 6.2, 6.4, 5.5, 5.4, 6.3, 6.6];
 * const layout = { effects: { changed: [0, 0, 1, 1, 0, 0, 1, 1, 0, 0, 1, 1] }, levels: { runner: "AAAABBBBCCCC" } };
 * nestedModel(strides, layout).effects[1]?.estimate.toFixed(3) // "1.117"
 */
export function nestedModel(
  values: Values,
  layout: NestedLayout,
  options: NestedModelOptions = {},
): NestedModel {
  const { level } = withDefaults<NestedModelOptions>(NESTED_MODEL_DEFAULTS, options);
  requireNumber("level", level, { above: 0, below: 1 });
  const { names, columns, centre, levels } = checked(values, layout);
  const groups = nestedGroups(
    columns,
    levels.map(([, labels]) => labels),
  );
  const width = columns.length;
  const df = values.length - (width - 1);
  requireSeveral(groups, levels, values.length);
  requireSpread(groups, width);
  const at = (variances: readonly number[]): AtVariances | null =>
    restrictedDeviance(groups, variances, width);
  const ratios = fitted(at, levels.length, df);
  const scaled = at([...ratios, 1]) as AtVariances;
  const residual = scaled.residual / df;
  const variances = [...ratios.map((ratio) => ratio * residual), residual];
  const best = at(variances) as AtVariances;
  return {
    effects: names.map((name, a) => {
      const estimate = (best.effects[a] as number) + (a === 0 ? centre : 0);
      const standardError = Math.sqrt(best.covariance[a]?.[a] as number);
      const degreesOfFreedom = satterthwaite(at, variances, a, df);
      const reach = studentTQuantile((1 + level) / 2, degreesOfFreedom) * standardError;
      const interval = { low: estimate - reach, high: estimate + reach, level };
      return { name, estimate, standardError, degreesOfFreedom, interval };
    }),
    variances: Object.fromEntries(
      [...levels.map(([name]) => name), "residual"].map((name, l) => [name, variances[l] as number]),
    ),
    groups: Object.fromEntries(levels.map(([name], l) => [name, countAt(groups, l)])),
    logLikelihood: -best.deviance / 2,
  };
}

const MOST_LEVELS = 4;

function checked(values: Values, { effects = {}, levels }: NestedLayout) {
  const fixed = Object.entries(effects);
  requireValues("values", values, fixed.length + 3);
  const nested = Object.entries(levels ?? {});
  if (nested.length === 0)
    fail("too-short", "layout.levels holds no level; one is needed, outermost first", {
      argument: "layout.levels",
    });
  if (nested.length > MOST_LEVELS) {
    fail("out-of-range", `layout.levels holds ${nested.length} levels; at most ${MOST_LEVELS} are fitted`, {
      argument: "layout.levels",
    });
  }
  const requireLength = (argument: string, length: number) => {
    if (length === values.length) return;
    fail("unequal-lengths", `${argument} holds ${length} entries for ${values.length} values`, {
      argument,
      values: { given: length, needed: values.length },
    });
  };
  for (const [name, column] of fixed) {
    requireValues(`layout.effects.${name}`, column, 1);
    requireLength(`layout.effects.${name}`, column.length);
  }
  for (const [name, labels] of nested) requireLength(`layout.levels.${name}`, labels.length);
  // Sums of squares of values far from zero would drown what varies.
  const centre = mean(values);
  return {
    names: ["intercept", ...fixed.map(([name]) => name)],
    columns: [
      new Float64Array(values.length).fill(1),
      ...fixed.map(([, column]) => Float64Array.from(column)),
      Float64Array.from(values, (value) => value - centre),
    ],
    centre,
    levels: nested,
  };
}

function countAt(groups: readonly NestedGroup[], depth: number): number {
  return depth === 0
    ? groups.length
    : groups.reduce((sum, { inside }) => sum + countAt(inside, depth - 1), 0);
}

/** Every level must have more groups than the one around it, and the innermost fewer than there are values. */
function requireSeveral(
  groups: readonly NestedGroup[],
  levels: readonly (readonly [string, unknown])[],
  values: number,
): void {
  const counts = [1, ...levels.map((_, l) => countAt(groups, l)), values];
  levels.forEach(([name], l) => {
    const [around, own, inside] = counts.slice(l, l + 3) as [number, number, number];
    if (own > around && own < inside) return;
    const [what, than] =
      own <= around
        ? [`only ${own} groups`, `more than the ${around} around them are needed`]
        : [`${own} groups`, `fewer than the ${inside} within them are needed`];
    fail("out-of-range", `layout.levels.${name} makes ${what}; ${than}, or its variance cannot be told`, {
      argument: `layout.levels.${name}`,
      values: { groups: own },
    });
  });
}

/** Values that are alike within every innermost group leave no variance to hold the others against. */
function requireSpread(groups: readonly NestedGroup[], width: number): void {
  const last = width - 1;
  const within = (group: NestedGroup): { own: number; all: number } => {
    const all = group.products[last * width + last] as number;
    if (group.inside.length === 0) return { own: all - (group.sums[last] as number) ** 2 / group.count, all };
    return { own: group.inside.reduce((sum, inner) => sum + within(inner).own, 0), all };
  };
  const found = groups.map(within);
  const own = found.reduce((sum, group) => sum + group.own, 0);
  const all = found.reduce((sum, group) => sum + group.all, 0);
  if (own > 1e-12 * all) return;
  fail("out-of-range", "the values are alike within every innermost group: no variance can be told", {
    argument: "values",
  });
}

/** σₗ²/σ² at the maximum: the search goes by their roots, whose sign does not matter. */
function fitted(
  at: (variances: readonly number[]) => AtVariances | null,
  levels: number,
  df: number,
): number[] {
  const profile = (roots: readonly number[]): number => {
    const found = at([...roots.map((root) => root * root), 1]);
    if (found === null) return Number.POSITIVE_INFINITY;
    return found.deviance - found.residual + df * (Math.log(Math.max(found.residual, 1e-300) / df) + 1);
  };
  if (profile(new Array<number>(levels).fill(1)) === Number.POSITIVE_INFINITY)
    fail("out-of-range", "the effects cannot be told apart: a column is a sum of others, or constant", {
      argument: "layout.effects",
    });
  const starts = [0.3, 1, 3].map((root) => minimise(profile, new Array<number>(levels).fill(root)));
  let best = starts.reduce((one, other) => (profile(other) < profile(one) ? other : one));
  for (let l = 0; l < levels; l++) {
    const without = best.map((root, i) => (i === l ? 0 : root));
    if (profile(without) <= profile(best) + 1e-9) best = without;
  }
  return best.map((root) => root * root);
}

/** 2 V²/(g′ A g) over the variances that are not 0. */
function satterthwaite(
  at: (variances: readonly number[]) => AtVariances | null,
  variances: readonly number[],
  effect: number,
  most: number,
): number {
  const free = variances.flatMap((variance, i) => (variance > 0 ? [i] : []));
  const moved = (...by: readonly (readonly [number, number])[]) =>
    at(variances.map((variance, i) => variance * by.reduce((f, [k, share]) => (k === i ? f + share : f), 1)));
  const deviance = (...by: readonly (readonly [number, number])[]) => moved(...by)?.deviance ?? Number.NaN;
  const variance = (...by: readonly (readonly [number, number])[]) =>
    moved(...by)?.covariance[effect]?.[effect] ?? Number.NaN;
  // By shares of each variance, so that all steps are alike.
  const h = 1e-3;
  const gradient = free.map((i) => (variance([i, h]) - variance([i, -h])) / (2 * h));
  const hessian = free.map((i) =>
    free.map((j) =>
      i === j
        ? (deviance([i, h]) - 2 * deviance() + deviance([i, -h])) / h ** 2
        : (deviance([i, h], [j, h]) -
            deviance([i, h], [j, -h]) -
            deviance([i, -h], [j, h]) +
            deviance([i, -h], [j, -h])) /
          (4 * h ** 2),
    ),
  );
  const solved = eliminated(hessian, gradient);
  // A = 2 H⁻¹, H of the deviance.
  const spread = solved === null ? 0 : 2 * solved.reduce((sum, x, i) => sum + x * (gradient[i] as number), 0);
  const df = spread > 0 ? (2 * variance() ** 2) / spread : most;
  return Math.min(most, Math.max(1, df));
}

/** The x with Mx = b; `null` where there is none. */
function eliminated(matrix: readonly (readonly number[])[], right: readonly number[]): number[] | null {
  const rows = matrix.map((row, i) => [...row, right[i] as number]);
  const n = rows.length;
  for (let c = 0; c < n; c++) {
    const pivot = rows
      .slice(c)
      .reduce(
        (best, row, k) => (Math.abs(row[c] as number) > Math.abs(rows[best]?.[c] as number) ? c + k : best),
        c,
      );
    [rows[c], rows[pivot]] = [rows[pivot] as number[], rows[c] as number[]];
    const top = rows[c] as number[];
    if (!(Math.abs(top[c] as number) > 0)) return null;
    rows.forEach((row, r) => {
      if (r === c) return;
      const factor = (row[c] as number) / (top[c] as number);
      for (let k = c; k <= n; k++) row[k] = (row[k] as number) - factor * (top[k] as number);
    });
  }
  return rows.map((row, i) => (row[n] as number) / (row[i] as number));
}
