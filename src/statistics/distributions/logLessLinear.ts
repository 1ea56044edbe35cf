/**
 * Gives ln(1 + t) − t without the loss of digits near t = 0.
 *
 * Formula: with r = t/(2 + t), r [2 (r²/3 + r⁴/5 + r⁶/7 + …) − t], from ln(1 + t) = 2 artanh r.
 * @param t - Above −1.
 * @param onePlus - 1 + t, where the caller has it with more digits than t gives.
 */
export function logLessLinear(t: number, onePlus: number): number {
  if (t < -0.4 || t > 0.6) return Math.log(onePlus) - t;
  const r = t / (2 + t);
  const square = r * r;
  let power = square;
  let sum = 0;
  for (let k = 3; ; k += 2) {
    const term = power / k;
    if (sum + term === sum) break;
    sum += term;
    power *= square;
  }
  return r * (2 * sum - t);
}
