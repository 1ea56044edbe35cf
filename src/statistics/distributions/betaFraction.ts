/** A stop for the worst case: Student's needs at most 75 terms, two numbers of 10⁶ some 2000. */
const MOST_TERMS = 20000;

/**
 * The continued fraction of the incomplete beta function in Didonato & Morris's form, by Lentz's method as modified by
 * Thompson & Barnett; x + y = 1, given both so that a y − b x keeps its digits. The textbook form (Numerical Recipes,
 * section 6.4) loses four digits more at ν = 10⁶. Source: Didonato & Morris 1992, ACM Trans. Math. Softw. 18:360, from
 * memory; checked against SciPy and mpmath.
 */
export function betaFraction(a: number, b: number, x: number, y: number): number {
  const lead = a * y - b * x + 1;
  let denominator = (a * lead) / (a + 1);
  let c = denominator;
  let d = 0;
  for (let n = 1; n <= MOST_TERMS; n++) {
    const odd = a + 2 * n - 1;
    const alpha = (((a + n - 1) * x) / odd) * (((a + b + n - 1) * x) / odd) * n * (b - n);
    const beta = n + (n * (b - n) * x) / odd + ((a + n) * (lead + n * (1 + y))) / (odd + 2);
    d = 1 / nonZero(beta + alpha * d);
    c = nonZero(beta + alpha / c);
    const change = c * d;
    denominator *= change;
    if (Math.abs(change - 1) < 2e-16) break;
  }
  return a / denominator;
}

function nonZero(value: number): number {
  return Math.abs(value) < 1e-300 ? 1e-300 : value;
}
