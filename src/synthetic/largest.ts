/** Step of the first search, s. */
const GRID = 5e-4;
/** (√5 − 1) / 2 */
const GOLDEN = 0.6180339887498949;

/**
 * Finds the time and value of the largest value of a function of time: on a grid of half a millisecond, then by golden
 * section around its best point.
 */
export function largest(
  value: (time: number) => number,
  from: number,
  to: number,
): { readonly time: number; readonly value: number } {
  const count = Math.max(2, Math.ceil((to - from) / GRID));
  const step = (to - from) / count;
  let best = 0;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i <= count; i++) {
    const here = value(from + i * step);
    if (here > most) {
      most = here;
      best = i;
    }
  }
  let low = from + Math.max(best - 1, 0) * step;
  let high = from + Math.min(best + 1, count) * step;
  while (high - low > 1e-9) {
    const reach = GOLDEN * (high - low);
    if (value(high - reach) > value(low + reach)) high = low + reach;
    else low = high - reach;
  }
  const time = (low + high) / 2;
  const refined = value(time);
  return refined >= most ? { time, value: refined } : { time: from + best * step, value: most };
}
