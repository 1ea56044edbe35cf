import { fail } from "../../units/index.js";
import type { C3dChannel, C3dFile, C3dPoint, C3dProcessor, C3dStorage } from "./c3dFile.js";
import { dataBlock } from "./dataBlock.js";

/** Writes points and analogue channels into a file's bytes, from a place on. */
export function writeData(
  bytes: Uint8Array,
  start: number,
  { frames, points, analogue }: C3dFile,
  processor: C3dProcessor,
  storage: C3dStorage,
  scale: number,
): void {
  const { channels, samplesPerFrame, generalScale, format } = analogue;
  const perFrame = 4 * points.length + channels.length * samplesPerFrame;
  if (perFrame === 0) return;
  const block = dataBlock(perFrame, frames, processor, storage);
  const unsigned = format === "unsigned" && block.numbers instanceof Int16Array;
  const numbers = unsigned ? new Uint16Array(block.numbers.buffer) : block.numbers;
  const size = numbers.BYTES_PER_ELEMENT;
  for (let first = 0; first < frames; first += block.frames) {
    const count = Math.min(block.frames, frames - first);
    for (const [k, point] of points.entries()) {
      putPoint(point, block.numbers, 4 * k, perFrame, first, count, scale);
    }
    for (const [k, channel] of channels.entries()) {
      const from = 4 * points.length + k;
      putChannel(
        channel,
        generalScale,
        numbers,
        from,
        perFrame,
        channels.length,
        samplesPerFrame,
        first,
        count,
      );
    }
    const tooLarge = block.store(bytes, start + first * perFrame * size, count);
    if (tooLarge >= 0) refuseLarge(`frame ${first + Math.floor(tooLarge / perFrame) + 1}`);
  }
}

function putPoint(
  { name, x, y, z, residual, cameras }: C3dPoint,
  numbers: Int16Array | Float32Array,
  from: number,
  perFrame: number,
  first: number,
  count: number,
  scale: number,
): void {
  const isInteger = numbers instanceof Int16Array;
  for (let i = 0, at = from; i < count; i++, at += perFrame) {
    const frame = first + i;
    const a = x[frame] as number;
    const b = y[frame] as number;
    const c = z[frame] as number;
    const sum = a + b + c;
    if (sum - sum !== 0) {
      if (!Number.isNaN(a) && !Number.isNaN(b) && !Number.isNaN(c))
        refuseLarge(`${name}, frame ${frame + 1}`);
      numbers.fill(0, at, at + 3);
      numbers[at + 3] = -1;
      continue;
    }
    if (isInteger) {
      putInteger(numbers, at, a / scale, name, frame);
      putInteger(numbers, at + 1, b / scale, name, frame);
      putInteger(numbers, at + 2, c / scale, name, frame);
    } else {
      putFloat(numbers, at, a, name, frame);
      putFloat(numbers, at + 1, b, name, frame);
      putFloat(numbers, at + 2, c, name, frame);
    }
    const steps = scale > 0 ? Math.round((residual[frame] as number) / scale) : 0;
    // Not a number: no residual known. Beyond eight bits: the largest they hold.
    const low = steps > 0 ? Math.min(255, steps) : 0;
    numbers[at + 3] = (((cameras[frame] as number) & 0x7f) << 8) | low;
  }
}

function putChannel(
  { name, samples, scale, offset }: C3dChannel,
  generalScale: number,
  numbers: Int16Array | Uint16Array | Float32Array,
  from: number,
  perFrame: number,
  channels: number,
  samplesPerFrame: number,
  first: number,
  count: number,
): void {
  const factor = scale * generalScale;
  let k = first * samplesPerFrame;
  for (let frame = 0; frame < count; frame++) {
    let at = frame * perFrame + from;
    for (let i = 0; i < samplesPerFrame; i++, at += channels, k++) {
      const value = samples[k] as number;
      // A factor of 0 reads back as 0 whatever is stored.
      const stored = factor === 0 ? offset : value / factor + offset;
      if (numbers instanceof Float32Array) {
        if (Number.isNaN(stored)) numbers[at] = Number.NaN;
        else putFloat(numbers, at, stored, name, first + frame);
      } else {
        if (Number.isNaN(stored)) {
          fail(
            "gap",
            `channel "${name}" has a gap in frame ${first + frame + 1}, which an integer file cannot hold; fill it, or write storage: "float"`,
            { argument: "storage", where: name, values: { frame: first + frame + 1 } },
          );
        }
        putInteger(numbers, at, stored, name, first + frame);
      }
    }
  }
}

function putInteger(
  numbers: Int16Array | Uint16Array,
  at: number,
  value: number,
  name: string,
  frame: number,
): void {
  const rounded = Math.round(value);
  numbers[at] = rounded;
  if (numbers[at] !== rounded && rounded !== 0) {
    const where = `${name}, frame ${frame + 1}`;
    fail(
      "out-of-range",
      `${where} would be stored as ${rounded}, which 16 bits cannot hold; take a larger scale, or write storage: "float"`,
      { argument: "storage", where, values: { given: rounded } },
    );
  }
}

function putFloat(numbers: Float32Array, at: number, value: number, name: string, frame: number): void {
  numbers[at] = value;
  if (Math.abs(numbers[at] as number) === Number.POSITIVE_INFINITY)
    refuseLarge(`${name}, frame ${frame + 1}`);
}

function refuseLarge(where: string): never {
  fail("out-of-range", `${where} holds a number that 32 bits of the file's floating form cannot`, {
    argument: "file",
    where,
  });
}
