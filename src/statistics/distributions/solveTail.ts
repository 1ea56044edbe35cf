/** A probability on one side of a value, as a logarithm, and the slope of that logarithm. */
export interface TailAt {
  readonly logTail: number;
  readonly slope: number;
}

/** A stop for the worst case: of 8·10⁴ random cases of F and chi-square none took more than 63 steps. */
const MOST_STEPS = 400;

/**
 * Finds the u at which a tail, given as a logarithm that rises or falls with u throughout, meets a target: by Newton's
 * method, which falls back to halving where it would leave what is known to hold the root.
 *
 * @param at - The tail at u.
 * @param target - Its logarithm that is sought.
 * @param start - Where to begin.
 */
export function solveTail(at: (u: number) => TailAt, target: number, start: number): number {
  let low = Number.NEGATIVE_INFINITY;
  let high = Number.POSITIVE_INFINITY;
  let u = start;
  for (let i = 0; i < MOST_STEPS; i++) {
    const { logTail, slope } = at(u);
    const miss = logTail - target;
    if (miss === 0) return u;
    if (miss > 0 === slope > 0) high = u;
    else low = u;
    const step = -miss / slope;
    const next = within(u, u + step, low, high);
    if (Math.abs(next - u) <= 1e-15 * Math.abs(u) || next === low || next === high) return next;
    u = next;
  }
  return u;
}

/** Newton's place where it lies between the bounds; else half way, or further out where a side is not bounded yet. */
function within(u: number, newton: number, low: number, high: number): number {
  if (newton > low && newton < high)
    return Math.abs(newton - u) > 50 ? u + 50 * Math.sign(newton - u) : newton;
  if (low === Number.NEGATIVE_INFINITY) return u - 4;
  if (high === Number.POSITIVE_INFINITY) return u + 4;
  return (low + high) / 2;
}
