import FFT from "fft.js";

/**
 * Prepares the squared Fourier transform |Σ x_i exp(−2πj ik/n)|², k = 0 to n/2, of real input of a length.
 *
 * Powers of two go straight to the transform. Any other length is written as a convolution with a chirp (Bluestein) over
 * the next power of two that is long enough, so that the frequencies are those of the length asked for.
 */
export function powerTransform(length: number): (input: Float64Array, power: Float64Array) => void {
  if (length === 1) {
    return (input, power) => {
      power[0] = (input[0] as number) ** 2;
    };
  }
  return (length & (length - 1)) === 0 ? direct(length) : bluestein(length);
}

function direct(length: number): (input: Float64Array, power: Float64Array) => void {
  const transform = new FFT(length);
  const output = transform.createComplexArray();
  return (input, power) => {
    transform.realTransform(output, input);
    for (let k = 0; k <= length / 2; k++)
      power[k] = (output[2 * k] as number) ** 2 + (output[2 * k + 1] as number) ** 2;
  };
}

function bluestein(length: number): (input: Float64Array, power: Float64Array) => void {
  const size = 2 ** Math.ceil(Math.log2(2 * length - 1));
  const transform = new FFT(size);
  // exp(−πj i²/n), its angle taken within one turn: i² is exact, i² π/n would lose digits.
  const cosine = new Float64Array(length);
  const sine = new Float64Array(length);
  for (let i = 0; i < length; i++) {
    const angle = (Math.PI * ((i * i) % (2 * length))) / length;
    cosine[i] = Math.cos(angle);
    sine[i] = -Math.sin(angle);
  }
  const chirp = transform.createComplexArray();
  for (let i = 0; i < length; i++) {
    for (const place of i === 0 ? [0] : [i, size - i]) {
      chirp[2 * place] = cosine[i] as number;
      chirp[2 * place + 1] = -(sine[i] as number);
    }
  }
  const kernel = transform.createComplexArray();
  transform.transform(kernel, chirp);
  const work = transform.createComplexArray();
  const spectrum = transform.createComplexArray();
  return (input, power) => {
    work.fill(0);
    for (let i = 0; i < length; i++) {
      work[2 * i] = (input[i] as number) * (cosine[i] as number);
      work[2 * i + 1] = (input[i] as number) * (sine[i] as number);
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
    transform.inverseTransform(work, spectrum);
    // The last factor of the chirp has size 1 and drops out of the power.
    for (let k = 0; k <= length / 2; k++)
      power[k] = (work[2 * k] as number) ** 2 + (work[2 * k + 1] as number) ** 2;
  };
}
