import { type Complete, fail, requireNumber, requireOneOf, withDefaults } from "../../units/index.js";
import type { C3dEncoding, C3dFile, C3dHeader, C3dProcessor, C3dStorage } from "./c3dFile.js";
import { COUNT_LIMIT } from "./frameCount.js";
import { numberAccess } from "./numberAccess.js";
import { BLOCK_SIZE, HEADER_KEY, MOST_HEADER_EVENTS } from "./readHeader.js";
import { storedAs } from "./storedAs.js";
import { encodeText } from "./text.js";
import { writeData } from "./writeData.js";
import { writeParameters } from "./writeParameters.js";
import { writtenParameters } from "./writtenParameters.js";

/** How a file is to be stored; each as the file itself says where `null`. */
export interface WriteC3dOptions {
  readonly processor?: C3dProcessor | null | undefined;
  readonly storage?: C3dStorage | null | undefined;
  readonly encoding?: C3dEncoding | null | undefined;
}

/** A file is stored as it says of itself. */
export const WRITE_C3D_DEFAULTS: Complete<WriteC3dOptions> = {
  processor: null,
  storage: null,
  encoding: null,
};

const PROCESSOR_CODES = { intel: 84, dec: 85, mips: 86 } as const;
/** Blocks that the count in the parameter section can state. */
const MOST_PARAMETER_BLOCKS = 255;

/**
 * Writes a C3D file, which {@link parseC3d} reads back equal.
 *
 * Header and the parameters that describe the data (USED, FRAMES, SCALE, LABELS, …) are brought in line with points,
 * channels and rates; every other parameter is written as it is. Lists longer than 255 go on in LABELS2, …; from 65 535
 * frames on the count stands in TRIAL and POINT:LONG_FRAMES as well.
 *
 * Units: as in the file.
 * Limits: 32-bit floating numbers or 16-bit integers: analogue values come back to that precision. Where floating numbers become
 * integers and are not on whole steps, each channel's largest value takes 32 000 of them. Integers hold no gaps but
 * those of points; floating files hold one as NaN. Header words outside of {@link C3dHeader} are zero.
 * Source: description of the format on c3d.org.
 * @param file - From {@link parseC3d}, {@link recordingToC3d} or made by hand.
 * @param options - {@link WRITE_C3D_DEFAULTS} where left out.
 * @throws GaitKineticsError `unequal-lengths`: series or parameters of other lengths than stated; `out-of-range`: what
 * the form has no room for; `gap`: a gap in an integer channel; `unknown-option`; `wrong-type`; `not-finite`.
 * @example
 * writeC3d(recordingToC3d(recording), { processor: "mips" })[515] // 86
 */
export function writeC3d(file: C3dFile, options: WriteC3dOptions = {}): Uint8Array {
  const settings = withDefaults<WriteC3dOptions>(WRITE_C3D_DEFAULTS, options);
  const processor = requireOneOf("processor", settings.processor ?? file.processor, ["intel", "dec", "mips"]);
  const storage = requireOneOf("storage", settings.storage ?? file.storage, ["integer", "float"]);
  const encoding = requireOneOf("encoding", settings.encoding ?? file.encoding, ["utf-8", "latin-1"]);
  checkFile(file);
  const { scale, analogue } = storedAs(file, storage);
  const stored = { ...file, analogue };
  // Its length does not hang on the number of the first data block, which is in it.
  const section = (dataStart: number) =>
    writeParameters(writtenParameters(stored, storage, scale, dataStart), processor, encoding);
  const blocks = Math.ceil((section(2).length + 4) / BLOCK_SIZE);
  if (blocks > MOST_PARAMETER_BLOCKS) {
    fail("out-of-range", `the parameters take ${blocks} blocks of 512 bytes; the format has room for 255`, {
      argument: "groups",
      values: { given: blocks, allowed: MOST_PARAMETER_BLOCKS },
    });
  }
  const dataStart = 2 + blocks;
  const perFrame = 4 * file.points.length + analogue.channels.length * analogue.samplesPerFrame;
  const data = file.frames * perFrame * (storage === "float" ? 4 : 2);
  const bytes = new Uint8Array(BLOCK_SIZE * (1 + blocks + Math.ceil(data / BLOCK_SIZE)));
  writeHeader(bytes, stored, storage === "float" ? -scale : scale, dataStart, processor, encoding);
  bytes[BLOCK_SIZE + 2] = blocks;
  bytes[BLOCK_SIZE + 3] = PROCESSOR_CODES[processor];
  bytes.set(section(dataStart), BLOCK_SIZE + 4);
  writeData(bytes, (dataStart - 1) * BLOCK_SIZE, stored, processor, storage, scale);
  return bytes;
}

function checkFile({ frames, frameRate, firstFrame, points, analogue }: C3dFile): void {
  requireNumber("frames", frames, { from: 1, below: 2 ** 32, whole: true });
  requireNumber("firstFrame", firstFrame, { from: 1, below: 2 ** 32, whole: true });
  requireNumber("frameRate", frameRate, { above: 0, unit: "Hz" });
  const { channels, samplesPerFrame } = analogue;
  requireNumber("samplesPerFrame", samplesPerFrame, {
    from: channels.length > 0 ? 1 : 0,
    to: COUNT_LIMIT,
    whole: true,
  });
  const check = (name: string, length: number, allowed: number) => {
    if (length === allowed) return;
    fail("unequal-lengths", `${name} has ${length} values; ${allowed} are needed for ${frames} frames`, {
      where: name,
      values: { given: length, allowed },
    });
  };
  requireNumber("number of points", points.length, { to: COUNT_LIMIT });
  requireNumber("analogue values in a frame", channels.length * samplesPerFrame, { to: COUNT_LIMIT });
  for (const { name, x, y, z, residual, cameras } of points) {
    for (const series of [x, y, z, residual, cameras]) check(`point "${name}"`, series.length, frames);
  }
  for (const { name, samples } of channels) {
    check(`channel "${name}"`, samples.length, frames * samplesPerFrame);
  }
}

function writeHeader(
  bytes: Uint8Array,
  { points, frames, firstFrame, frameRate, header, analogue }: C3dFile,
  scale: number,
  dataStart: number,
  processor: C3dProcessor,
  encoding: C3dEncoding,
): void {
  const numbers = numberAccess(bytes, processor);
  const word = (number: number, value: number) =>
    numbers.setUint16(2 * (number - 1), Math.min(value, COUNT_LIMIT));
  bytes[0] = 2;
  bytes[1] = 80;
  word(2, points.length);
  word(3, analogue.channels.length * analogue.samplesPerFrame);
  word(4, firstFrame);
  word(5, firstFrame + frames - 1);
  word(6, header.longestGap);
  numbers.setFloat32(12, scale);
  word(9, dataStart);
  word(10, analogue.samplesPerFrame);
  numbers.setFloat32(20, frameRate);
  writeEvents(bytes, header, processor, encoding);
}

function writeEvents(
  bytes: Uint8Array,
  { events }: C3dHeader,
  processor: C3dProcessor,
  encoding: C3dEncoding,
): void {
  if (events.length === 0) return;
  if (events.length > MOST_HEADER_EVENTS) {
    fail("out-of-range", `the header has ${events.length} events; it has room for ${MOST_HEADER_EVENTS}`, {
      argument: "header.events",
    });
  }
  const numbers = numberAccess(bytes, processor);
  numbers.setUint16(298, HEADER_KEY);
  numbers.setUint16(300, events.length);
  for (const [k, { label, time, displayFlag }] of events.entries()) {
    numbers.setFloat32(304 + 4 * k, time);
    bytes[376 + k] = displayFlag;
    const text = encodeText(label, encoding);
    if (text.length > 4) {
      fail("out-of-range", `header event "${label}" takes ${text.length} bytes; there are 4`, {
        argument: "header.events",
        where: label,
      });
    }
    bytes.fill(0x20, 396 + 4 * k, 400 + 4 * k);
    bytes.set(text, 396 + 4 * k);
  }
}
