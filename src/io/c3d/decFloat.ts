/** Bits of a number with sign 1 and exponent 0, which the DEC form reserves: what it has for "no number". */
const RESERVED = 0x8000_0000;
const EXPONENT = 0x7f80_0000;
/** The DEC form's exponent counts two more than that of IEEE 754: 128 for a mantissa below 1, where IEEE has 127 below 2. */
const TWO = 0x0100_0000;

/**
 * Turns 32-bit floating numbers of the DEC form, as a little-endian machine loads them, into those of IEEE 754, in place.
 *
 * Formula: the two 16-bit halves change places; then exponent − 2. An exponent of 0 is zero, with a sign no number.
 * Source: the format's description on c3d.org; 1.0 is stored as 80 40 00 00.
 */
export function decToIeee(words: Uint32Array): void {
  const floats = new Float32Array(words.buffer, words.byteOffset, words.length);
  for (let i = 0; i < words.length; i++) {
    const word = words[i] as number;
    const bits = ((word << 16) | (word >>> 16)) >>> 0;
    const exponent = bits & EXPONENT;
    if (exponent > TWO) words[i] = bits - TWO;
    else if (exponent === 0) words[i] = bits >>> 31 === 0 ? 0 : 0x7fc0_0000;
    else {
      words[i] = bits;
      floats[i] = (floats[i] as number) / 4;
    }
  }
}

/**
 * Turns 32-bit floating numbers of IEEE 754 into those of the DEC form, in place: the way back of {@link decToIeee}.
 *
 * Limits: what is smaller than 2^−128 becomes 0.
 * @returns Place of the first number too large for the form (2^127 and above), −1 where there is none.
 */
export function ieeeToDec(words: Uint32Array): number {
  const floats = new Float32Array(words.buffer, words.byteOffset, words.length);
  let tooLarge = -1;
  for (let i = 0; i < words.length; i++) {
    const value = floats[i] as number;
    let bits = words[i] as number;
    if (Number.isNaN(value)) bits = RESERVED;
    else if ((bits & EXPONENT) === 0) {
      floats[i] = value * 4;
      bits = words[i] as number;
      if ((bits & EXPONENT) === 0) bits = 0;
    } else if ((bits & EXPONENT) >= EXPONENT - (1 << 23)) {
      if (tooLarge < 0) tooLarge = i;
    } else bits += TWO;
    words[i] = (bits << 16) | (bits >>> 16);
  }
  return tooLarge;
}
