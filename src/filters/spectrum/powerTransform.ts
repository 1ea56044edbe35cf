import FFT from "fft.js";

/**
 * Adds the squared Fourier transforms |Σ x_i exp(−2πj ik/n)|², k = 0 to n/2, of two real inputs to sums.
 *
 * @param first - Real input.
 * @param second - Another, or zeros.
 * @param sums - Where the sum of both powers is added.
 */
export type PowerTransform = (first: Float64Array, second: Float64Array, sums: Float64Array) => void;

/**
 * Prepares the transform of a length. Two inputs go through one complex transform as x + jy: |Z_k|² + |Z_{n−k}|² is twice
 * the sum of their powers.
 *
 * Powers of two go straight to the transform. Any other length is written as a convolution with a chirp (Bluestein) over
 * the next power of two that is long enough, so that the frequencies are those of the length asked for.
 */
export function powerTransform(length: number): PowerTransform {
  const transform = length > 1 && (length & (length - 1)) === 0 ? direct(length) : bluestein(length);
  const input = new Float64Array(2 * length);
  return (first, second, sums) => {
    for (let i = 0; i < length; i++) {
      input[2 * i] = first[i] as number;
      input[2 * i + 1] = second[i] as number;
    }
    const output = transform(input);
    for (let k = 0; k < sums.length; k++) {
      const mirror = k === 0 ? 0 : length - k;
      sums[k] = (sums[k] as number) + (power(output, k) + power(output, mirror)) / 2;
    }
  };
}

const power = (output: ArrayLike<number>, k: number): number =>
  (output[2 * k] as number) ** 2 + (output[2 * k + 1] as number) ** 2;

type ComplexTransform = (input: Float64Array) => ArrayLike<number>;

function direct(length: number): ComplexTransform {
  const transform = new FFT(length);
  const output = transform.createComplexArray();
  return (input) => {
    transform.transform(output, input);
    return output;
  };
}

/** Gives the transform but for a factor of size 1 on each frequency, which drops out of the power. */
function bluestein(length: number): ComplexTransform {
  const size = Math.max(2 ** Math.ceil(Math.log2(2 * length - 1)), 2);
  const transform = new FFT(size);
  // exp(−πj i²/n), its angle taken within one turn: i² is exact, i² π/n would lose digits.
  const cosine = new Float64Array(length);
  const sine = new Float64Array(length);
  for (let i = 0; i < length; i++) {
    const angle = (Math.PI * ((i * i) % (2 * length))) / length;
    cosine[i] = Math.cos(angle);
    sine[i] = -Math.sin(angle);
  }
  const chirp = new Float64Array(2 * size);
  for (let i = 0; i < length; i++) {
    for (const place of i === 0 ? [0] : [i, size - i]) {
      chirp[2 * place] = cosine[i] as number;
      chirp[2 * place + 1] = -(sine[i] as number);
    }
  }
  const kernel = transform.createComplexArray();
  transform.transform(kernel, chirp);
  const work = new Float64Array(2 * size);
  const output = transform.createComplexArray();
  const spectrum = transform.createComplexArray();
  return (input) => {
    for (let i = 0; i < length; i++) {
      const [x, y, c, s] = [input[2 * i], input[2 * i + 1], cosine[i], sine[i]] as [
        number,
        number,
        number,
        number,
      ];
      work[2 * i] = x * c - y * s;
      work[2 * i + 1] = x * s + y * c;
    }
    transform.transform(spectrum, work);
    for (let k = 0; k < 2 * size; k += 2) {
      const [a, b, c, d] = [spectrum[k], spectrum[k + 1], kernel[k], kernel[k + 1]] as [
        number,
        number,
        number,
        number,
      ];
      spectrum[k] = a * c - b * d;
      spectrum[k + 1] = a * d + b * c;
    }
    transform.inverseTransform(output, spectrum);
    return output;
  };
}
