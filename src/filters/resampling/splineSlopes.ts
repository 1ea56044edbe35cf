/**
 * Finds the slopes at the points of the cubic spline with two continuous derivatives and not-a-knot ends: the third
 * derivative too goes on over the second and the last but one point. Two points give a line, three a parabola.
 */
export function splineSlopes(times: Float64Array, values: Float64Array): Float64Array {
  const last = times.length - 1;
  const width = (i: number) => (times[i + 1] as number) - (times[i] as number);
  const rise = (i: number) => ((values[i + 1] as number) - (values[i] as number)) / width(i);
  if (last === 1) return new Float64Array(2).fill(rise(0));
  if (last === 2) {
    const curvature = (rise(1) - rise(0)) / (width(0) + width(1));
    return Float64Array.of(
      rise(0) - curvature * width(0),
      rise(0) + curvature * width(0),
      rise(1) + curvature * width(1),
    );
  }
  // Rows of the tridiagonal system: below, diagonal, above, right.
  const rows = Array.from(times, (_, i): [number, number, number, number] => {
    if (i === 0) {
      const [w0, w1] = [width(0), width(1)];
      const sum = w0 + w1;
      return [0, w1, sum, ((w0 + 2 * sum) * w1 * rise(0) + w0 * w0 * rise(1)) / sum];
    }
    if (i === last) {
      const [w0, w1] = [width(last - 2), width(last - 1)];
      const sum = w0 + w1;
      return [sum, w0, 0, (w1 * w1 * rise(last - 2) + (2 * sum + w1) * w0 * rise(last - 1)) / sum];
    }
    const [w0, w1] = [width(i - 1), width(i)];
    return [w1, 2 * (w0 + w1), w0, 3 * (w1 * rise(i - 1) + w0 * rise(i))];
  });
  for (let i = 1; i <= last; i++) {
    const [row, before] = [rows[i], rows[i - 1]] as [
      [number, number, number, number],
      [number, number, number, number],
    ];
    const factor = row[0] / before[1];
    row[1] -= factor * before[2];
    row[3] -= factor * before[3];
  }
  const slopes = new Float64Array(times.length);
  for (let i = last; i >= 0; i--) {
    const [, diagonal, above, right] = rows[i] as [number, number, number, number];
    slopes[i] = (right - above * (slopes[i + 1] ?? 0)) / diagonal;
  }
  return slopes;
}
