/** Mean, spread and largest of errors. */
export interface Errors {
  readonly bias: number;
  readonly sd: number;
  readonly worst: number;
}

/** Sums up errors; the worst keeps its sign. */
export function errorsOf(errors: readonly number[]): Errors {
  const bias = errors.reduce((sum, error) => sum + error, 0) / errors.length;
  const squares = errors.reduce((sum, error) => sum + (error - bias) ** 2, 0);
  const worst = errors.reduce((most, error) => (Math.abs(error) > Math.abs(most) ? error : most), 0);
  return { bias, sd: Math.sqrt(squares / (errors.length - 1)), worst };
}
