/** Significant digits of a number in an exchange file: engines agree to fewer than the 17 that a number has. */
export const SIGNIFICANT_DIGITS = 12;

/** Rounds a finite number to {@link SIGNIFICANT_DIGITS}; what was rounded before stays as it is. */
export function significant(value: number): number {
  return Number(value.toPrecision(SIGNIFICANT_DIGITS));
}
