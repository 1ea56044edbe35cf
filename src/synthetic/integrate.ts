/** Points and weights of the eight-point Gauss–Legendre rule on −1 to 1. Source: numpy.polynomial.legendre.leggauss(8). */
const POINTS: readonly number[] = [
  0.18343464249564984, 0.525532409916329, 0.7966664774136267, 0.9602898564975362,
];
const WEIGHTS: readonly number[] = [
  0.3626837833783621, 0.31370664587788744, 0.22238103445337445, 0.10122853629037619,
];
/** Parts that each stretch between two breaks is cut into. */
const PARTS = 2;

/**
 * Integrates a function that is smooth between breaks.
 *
 * Formula: eight-point Gauss–Legendre rule on each half of each stretch; its error for sines of up to one whole wave a
 * stretch is in the last digits.
 */
export function integrate(value: (time: number) => number, breaks: readonly number[]): number {
  const sorted = [...breaks].sort((a, b) => a - b);
  let sum = 0;
  for (let stretch = 1; stretch < sorted.length; stretch++) {
    const from = sorted[stretch - 1] as number;
    const half = ((sorted[stretch] as number) - from) / (2 * PARTS);
    for (let part = 0; part < PARTS; part++) {
      const middle = from + (2 * part + 1) * half;
      for (let i = 0; i < POINTS.length; i++) {
        const reach = half * (POINTS[i] as number);
        sum += (WEIGHTS[i] as number) * half * (value(middle - reach) + value(middle + reach));
      }
    }
  }
  return sum;
}
