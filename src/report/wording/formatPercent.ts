/**
 * Writes a difference in per cent, with its sign, to one decimal below 100 %.
 *
 * @example
 * formatPercent(-6.32) // "-6.3"
 */
export function formatPercent(percent: number): string {
  const text = percent.toFixed(Math.abs(percent) < 100 ? 1 : 0);
  return Number(text) === 0 ? text.replace("-", "") : percent > 0 ? `+${text}` : text;
}
