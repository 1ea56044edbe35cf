/**
 * Designs a low-pass of 2 half + 1 taps: a sinc with its −6 dB point at a fraction of the Nyquist frequency, under a
 * Kaiser window with β = 5, scaled to a gain at 0 Hz.
 */
export function windowedSinc(half: number, cutoff: number, gain: number): Float64Array {
  const taps = Float64Array.from({ length: 2 * half + 1 }, (_, i) => {
    const place = i - half;
    const argument = Math.PI * cutoff * place;
    const part = place / half;
    return (place === 0 ? 1 : Math.sin(argument) / argument) * besselI0(5 * Math.sqrt(1 - part * part));
  });
  const scale = gain / taps.reduce((sum, tap) => sum + tap, 0);
  return taps.map((tap) => tap * scale);
}

/** Modified Bessel function of the first kind of order 0, by its power series, for arguments up to 5. */
function besselI0(x: number): number {
  let [term, sum] = [1, 1];
  for (let k = 1; term > 1e-18 * sum; k++) {
    term *= (x / (2 * k)) ** 2;
    sum += term;
  }
  return sum;
}
