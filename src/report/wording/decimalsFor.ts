/** Decimals that no table exceeds for numbers of everyday size. */
const MOST = 4;
/** The same for numbers, or a spread, that would else be written as zero. */
const MOST_WHEN_SMALL = 6;

/**
 * Chooses the decimals of a row: four significant digits of its largest number, but no more than two significant digits
 * of its spread.
 *
 * @param size - Magnitude of the largest number in the row.
 * @param spread - Its standard deviation or half interval; `null` where there is none.
 * @example
 * decimalsFor(16.28, 0.94) // 2
 */
export function decimalsFor(size: number, spread: number | null = null): number {
  const largest = Math.max(Math.abs(size), spread ?? 0);
  if (largest === 0) return 0;
  const lost = spread !== null && spread > 0 && spread < 10 ** -MOST;
  const most = largest < 0.001 || lost ? MOST_WHEN_SMALL : MOST;
  const bySize = 3 - Math.floor(Math.log10(largest));
  const bySpread = spread === null || spread <= 0 ? most : 1 - Math.floor(Math.log10(spread));
  return Math.min(Math.max(Math.min(bySize, bySpread), 0), most);
}
