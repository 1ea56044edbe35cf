import type { C3dProcessor } from "./c3dFile.js";
import { decToIeee, ieeeToDec } from "./decFloat.js";

/** Reads and writes the numbers of header and parameters. */
export interface NumberAccess {
  readonly uint8: (at: number) => number;
  readonly uint16: (at: number) => number;
  readonly int16: (at: number) => number;
  readonly float32: (at: number) => number;
  readonly setUint16: (at: number, value: number) => void;
  /** Gives `false` where the number is too large for the file's form. */
  readonly setFloat32: (at: number, value: number) => boolean;
}

/** Access to the numbers in bytes, in the byte order and floating form of a processor. */
export function numberAccess(bytes: Uint8Array, processor: C3dProcessor): NumberAccess {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const little = processor !== "mips";
  const word = new Uint32Array(1);
  const float = new Float32Array(word.buffer);
  return {
    uint8: (at) => view.getUint8(at),
    uint16: (at) => view.getUint16(at, little),
    int16: (at) => view.getInt16(at, little),
    float32: (at) => {
      if (processor !== "dec") return view.getFloat32(at, little);
      word[0] = view.getUint32(at, true);
      decToIeee(word);
      return float[0] as number;
    },
    setUint16: (at, value) => view.setUint16(at, value, little),
    setFloat32: (at, value) => {
      float[0] = value;
      const fits = processor !== "dec" || ieeeToDec(word) < 0;
      view.setUint32(at, word[0] as number, little);
      return fits && Math.abs(float[0]) !== Number.POSITIVE_INFINITY;
    },
  };
}
