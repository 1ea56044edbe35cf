import type { C3dProcessor, C3dStorage } from "./c3dFile.js";
import { decToIeee, ieeeToDec } from "./decFloat.js";

/** Bytes that are worked on at a time: they stay in the processor's cache while each channel takes its values out. */
const BLOCK_BYTES = 131_072;

/** A stretch of whole frames, with its numbers in the form of the machine that runs this. */
export interface DataBlock {
  readonly frames: number;
  readonly numbers: Int16Array | Float32Array;
  /** Fills the block from a file's bytes. */
  readonly load: (bytes: Uint8Array, at: number, frames: number) => void;
  /** Writes the block to a file's bytes; gives the place of the first number too large for the file's form, or −1. */
  readonly store: (bytes: Uint8Array, at: number, frames: number) => number;
}

/**
 * Makes a block that holds as many frames as fit well.
 * @param perFrame - Numbers in one frame.
 * @param most - Frames of the file.
 */
export function dataBlock(
  perFrame: number,
  most: number,
  processor: C3dProcessor,
  storage: C3dStorage,
): DataBlock {
  const size = storage === "float" ? 4 : 2;
  const frames = Math.max(1, Math.min(most, Math.floor(BLOCK_BYTES / (perFrame * size))));
  const raw = new Uint8Array(frames * perFrame * size);
  const numbers = storage === "float" ? new Float32Array(raw.buffer) : new Int16Array(raw.buffer);
  const bigEndianHost = new Uint8Array(new Uint16Array([1]).buffer)[0] === 0;
  const swapped = (processor === "mips") !== bigEndianHost;
  const bytesOf = (count: number) => count * perFrame * size;
  const dec = storage === "float" && processor === "dec";
  return {
    frames,
    numbers,
    load: (bytes, at, count) => {
      const length = bytesOf(count);
      raw.set(bytes.subarray(at, at + length));
      if (swapped) swapBytes(raw, length, size);
      if (dec) decToIeee(new Uint32Array(raw.buffer, 0, length / 4));
    },
    store: (bytes, at, count) => {
      const length = bytesOf(count);
      const tooLarge = dec ? ieeeToDec(new Uint32Array(raw.buffer, 0, length / 4)) : -1;
      if (swapped) swapBytes(raw, length, size);
      bytes.set(raw.subarray(0, length), at);
      return tooLarge;
    },
  };
}

function swapBytes(raw: Uint8Array, length: number, size: number): void {
  if (size === 2) {
    const words = new Uint16Array(raw.buffer, 0, length / 2);
    for (let i = 0; i < words.length; i++) {
      const word = words[i] as number;
      words[i] = (word << 8) | (word >>> 8);
    }
    return;
  }
  const words = new Uint32Array(raw.buffer, 0, length / 4);
  for (let i = 0; i < words.length; i++) {
    const word = words[i] as number;
    words[i] = (word << 24) | ((word & 0xff00) << 8) | ((word >>> 8) & 0xff00) | (word >>> 24);
  }
}
