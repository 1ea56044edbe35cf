import type { C3dHeader, C3dHeaderEvent } from "./c3dFile.js";
import type { NumberAccess } from "./numberAccess.js";
import type { TextReader } from "./text.js";

/** Bytes of a block; all parts of a file begin with one. */
export const BLOCK_SIZE: number = 512;
/** Stands in words 149 and 150 of the header where what follows them is present. */
export const HEADER_KEY: number = 12345;
/** Events that the header has room for. */
export const MOST_HEADER_EVENTS: number = 18;

/** Reads the first block of a file. */
export function readHeader(numbers: NumberAccess, texts: TextReader): C3dHeader {
  const word = (number: number) => numbers.uint16(2 * (number - 1));
  return {
    points: word(2),
    analoguePerFrame: word(3),
    firstFrame: word(4),
    lastFrame: word(5),
    longestGap: word(6),
    scale: numbers.float32(12),
    dataStart: word(9),
    samplesPerFrame: word(10),
    frameRate: numbers.float32(20),
    events: word(150) === HEADER_KEY ? readEvents(word(151), numbers, texts) : [],
  };
}

function readEvents(count: number, numbers: NumberAccess, texts: TextReader): C3dHeaderEvent[] {
  // Words 153, 189 and 199: times, flags and labels.
  return Array.from({ length: Math.min(count, MOST_HEADER_EVENTS) }, (_, k) => ({
    label: texts.read(396 + 4 * k, 400 + 4 * k),
    time: numbers.float32(304 + 4 * k),
    displayFlag: numbers.uint8(376 + k),
  }));
}
