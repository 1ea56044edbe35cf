import type { NestedGroup } from "./nestedGroups.js";

/** Fixed effects at given variances, and minus twice the restricted log likelihood of these. */
export interface AtVariances {
  readonly deviance: number;
  readonly effects: readonly number[];
  /** Of the effects, row by row. */
  readonly covariance: readonly (readonly number[])[];
  /** (y − Xβ)′ V⁻¹ (y − Xβ). */
  readonly residual: number;
}

/**
 * Minus twice the restricted log likelihood, (n − p) ln 2π + ln |V| + ln |X′V⁻¹X| + r′V⁻¹r, with V built up group by group: adding v 11′
 * to a block M takes v/(1 + v s) (M⁻¹1)(M⁻¹1)′ off its inverse, s = 1′M⁻¹1, and adds ln (1 + v s) to ln |M|. `null` where
 * the fixed effects cannot be told apart.
 *
 * @param groups - The outermost groups.
 * @param variances - Of the levels, outermost first, then of the values within the innermost groups.
 * @param width - Number of columns: fixed effects and values.
 */
export function restrictedDeviance(
  groups: readonly NestedGroup[],
  variances: readonly number[],
  width: number,
): AtVariances | null {
  const within = variances[variances.length - 1] as number;
  const total = new Float64Array(width * width);
  let logDeterminant = 0;
  let count = 0;
  for (const group of groups) add(group, 0, null);
  const p = width - 1;
  const factor = cholesky(total, p, width);
  if (factor === null) return null;
  const effects = solve(factor, p, (a) => total[a * width + p] as number);
  let residual = total[p * width + p] as number;
  for (let a = 0; a < p; a++) residual -= (effects[a] as number) * (total[a * width + p] as number);
  residual = Math.max(0, residual);
  let logInformation = 0;
  for (let a = 0; a < p; a++) logInformation += 2 * Math.log(factor[a * p + a] as number);
  const columns = Array.from({ length: p }, (_, b) => solve(factor, p, (a) => (a === b ? 1 : 0)));
  return {
    deviance: (count - p) * Math.log(2 * Math.PI) + logDeterminant + logInformation + residual,
    effects,
    covariance: Array.from({ length: p }, (_, a) => columns.map((column) => column[a] as number)),
    residual,
  };

  /** Adds a group's products to the total, and its 1′V⁻¹1 and 1′V⁻¹X to those of the group around it. */
  function add(group: NestedGroup, depth: number, around: { s: number; t: Float64Array } | null): void {
    const own = { s: 0, t: new Float64Array(width) };
    if (group.inside.length === 0) {
      count += group.count;
      logDeterminant += group.count * Math.log(within);
      own.s = group.count / within;
      for (let a = 0; a < width; a++) own.t[a] = (group.sums[a] as number) / within;
      for (let i = 0; i < total.length; i++)
        total[i] = (total[i] as number) + (group.products[i] as number) / within;
    } else {
      for (const inner of group.inside) add(inner, depth + 1, own);
    }
    const variance = variances[depth] as number;
    const shrink = 1 + variance * own.s;
    logDeterminant += Math.log(shrink);
    for (let a = 0; a < width; a++) {
      for (let b = 0; b < width; b++) {
        const off = (variance / shrink) * (own.t[a] as number) * (own.t[b] as number);
        total[a * width + b] = (total[a * width + b] as number) - off;
      }
    }
    if (around === null) return;
    around.s += own.s / shrink;
    for (let a = 0; a < width; a++) around.t[a] = (around.t[a] as number) + (own.t[a] as number) / shrink;
  }
}

/** Lower triangle L of LL′, row by row, of the first p rows and columns; `null` where it is not positive. */
function cholesky(matrix: Float64Array, p: number, width: number): Float64Array | null {
  const factor = new Float64Array(p * p);
  for (let a = 0; a < p; a++) {
    for (let b = 0; b <= a; b++) {
      let sum = matrix[a * width + b] as number;
      for (let c = 0; c < b; c++) sum -= (factor[a * p + c] as number) * (factor[b * p + c] as number);
      if (a === b) {
        if (!(sum > 1e-12 * Math.abs(matrix[a * width + a] as number))) return null;
        factor[a * p + a] = Math.sqrt(sum);
      } else {
        factor[a * p + b] = sum / (factor[b * p + b] as number);
      }
    }
  }
  return factor;
}

function solve(factor: Float64Array, p: number, right: (row: number) => number): number[] {
  const x = new Array<number>(p).fill(0);
  for (let a = 0; a < p; a++) {
    let sum = right(a);
    for (let c = 0; c < a; c++) sum -= (factor[a * p + c] as number) * (x[c] as number);
    x[a] = sum / (factor[a * p + a] as number);
  }
  for (let a = p - 1; a >= 0; a--) {
    let sum = x[a] as number;
    for (let c = a + 1; c < p; c++) sum -= (factor[c * p + a] as number) * (x[c] as number);
    x[a] = sum / (factor[a * p + a] as number);
  }
  return x;
}
