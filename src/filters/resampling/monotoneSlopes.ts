/**
 * Finds slopes at points so that the cubic pieces between them rise and fall only where the points do: the weighted
 * harmonic mean of the two rises where they have one sign, else zero; at the ends a three-point estimate, held within
 * what keeps the sign.
 */
export function monotoneSlopes(times: Float64Array, values: Float64Array): Float64Array {
  const last = times.length - 1;
  const width = (i: number) => (times[i + 1] as number) - (times[i] as number);
  const rise = (i: number) => ((values[i + 1] as number) - (values[i] as number)) / width(i);
  if (last === 1) return new Float64Array(2).fill(rise(0));
  return Float64Array.from(times, (_, i) => {
    if (i === 0) return atEnd(width(0), width(1), rise(0), rise(1));
    if (i === last) return atEnd(width(last - 1), width(last - 2), rise(last - 1), rise(last - 2));
    const [before, after] = [rise(i - 1), rise(i)];
    if (before * after <= 0) return 0;
    const [w0, w1] = [2 * width(i) + width(i - 1), width(i) + 2 * width(i - 1)];
    return (w0 + w1) / (w0 / before + w1 / after);
  });
}

/** Slope at an end from the two rises next to it, the outer first. */
function atEnd(outer: number, inner: number, outerRise: number, innerRise: number): number {
  const slope = ((2 * outer + inner) * outerRise - outer * innerRise) / (outer + inner);
  if (slope * outerRise <= 0) return 0;
  if (outerRise * innerRise <= 0 && Math.abs(slope) > 3 * Math.abs(outerRise)) return 3 * outerRise;
  return slope;
}
