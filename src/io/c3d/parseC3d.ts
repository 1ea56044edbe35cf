import { type Complete, fail, requireOneOf, withDefaults } from "../../units/index.js";
import { signatureOf } from "../bytes/formatOf.js";
import { bytesHint, typeName } from "../typeName.js";
import type { C3dFile, C3dProcessor } from "./c3dFile.js";
import { layoutOf } from "./layout.js";
import { numberAccess } from "./numberAccess.js";
import { parameterTable } from "./parameterTable.js";
import { readAnalogue } from "./readAnalogue.js";
import { BLOCK_SIZE, readHeader } from "./readHeader.js";
import { readParameters } from "./readParameters.js";
import { readPoints } from "./readPoints.js";
import { refuseFile } from "./refuse.js";
import { textReader } from "./text.js";

/** How a file is to be read. */
export interface ParseC3dOptions {
  /** The processor, where the file's own mark of it is missing or wrong. */
  readonly processor?: C3dProcessor | null | undefined;
}

/** The file says it itself. */
export const PARSE_C3D_DEFAULTS: Complete<ParseC3dOptions> = { processor: null };

const PROCESSORS = ["intel", "dec", "mips"] as const;
/** Byte 2 of every C3D file. */
const MARK = 80;
/** Stands before the number of the processor, 1 to 3. */
const PROCESSOR_BASE = 83;

/**
 * Reads a C3D file as it is: header, every parameter, points and analogue channels in the file's own axes and units.
 *
 * All three byte orders and both number formats are read; texts as UTF-8 or else Latin-1; counts above 65 535 frames from
 * TRIAL and POINT:LONG_FRAMES; lists longer than 255 from their continuations (LABELS2, …). Where header and parameters
 * differ the parameters count, or else what alone fills the file, with a `Caution`. {@link readC3d} makes a recording of it.
 *
 * Formula: point = stored × |POINT:SCALE| in integer files, as stored in floating ones; analogue = (stored − OFFSET) ×
 * SCALE × GEN_SCALE.
 * Units: as the file states them.
 * Limits: a point with a negative fourth word or a number that is not finite is NaN. Sections for labels and ranges in
 * the header's reserved words are not read.
 * Source: description of the format on c3d.org; a 32-bit frame number is low word + 65536 × high word.
 * @param bytes - The whole file.
 * @param options - {@link PARSE_C3D_DEFAULTS} where left out.
 * @throws GaitKineticsError `unreadable-file`: no C3D file, cut off, records that point nowhere or overlap, sizes that
 * the file does not hold, no frame, no rate; `wrong-type`: no bytes; `out-of-range`; `unknown-option`.
 * @example
 * parseC3d(writeC3d(recordingToC3d(recording))).processor // "intel"
 */
export function parseC3d(bytes: Uint8Array, options: ParseC3dOptions = {}): C3dFile {
  const settings = withDefaults<ParseC3dOptions>(PARSE_C3D_DEFAULTS, options);
  if (settings.processor !== null) requireOneOf("processor", settings.processor, PROCESSORS);
  if (!(bytes instanceof Uint8Array)) {
    fail(
      "wrong-type",
      `bytes are ${typeName(bytes)}; a Uint8Array with the whole file is needed${bytesHint(bytes)}`,
      { argument: "bytes" },
    );
  }
  const seen = signatureOf(bytes);
  if (seen !== null) {
    refuseFile("byte 1", `the file looks like ${seen}, whatever its name says; a C3D file is needed`, {
      seen,
    });
  }
  if (bytes.length < 2 * BLOCK_SIZE) {
    const size = `${bytes.length} byte${bytes.length === 1 ? "" : "s"}`;
    refuseFile("header", `the file has ${size}; a C3D file has at least two blocks of 512`);
  }
  if (bytes[1] !== MARK) {
    refuseFile("byte 2", `it is ${bytes[1]}; a C3D file has ${MARK} there: this is another format`, {
      given: bytes[1],
      allowed: MARK,
    });
  }
  const section = ((bytes[0] as number) - 1) * BLOCK_SIZE;
  if (section < BLOCK_SIZE || section + 4 > bytes.length) {
    refuseFile(
      "byte 1",
      `the parameters begin in block ${bytes[0]}; the file has blocks 2 to ${Math.ceil(bytes.length / BLOCK_SIZE)} for them`,
    );
  }
  const processor = settings.processor ?? processorOf(bytes[section + 3] as number, section + 3);
  const numbers = numberAccess(bytes, processor);
  const texts = textReader(bytes);
  const header = readHeader(numbers, texts);
  const dataStart = (header.dataStart - 1) * BLOCK_SIZE;
  const end = dataStart > section ? Math.min(dataStart, bytes.length) : bytes.length;
  const { groups, cautions } = readParameters(numbers, texts, section + 4, end);
  const table = parameterTable(groups);
  const { layout, cautions: ofLayout } = layoutOf(header, table, bytes.length);
  const points = readPoints(bytes, processor, layout, table);
  const { analogue, cautions: ofAnalogue } = readAnalogue(bytes, processor, layout, table);
  const { storage, frameRate, frames, firstFrame } = layout;
  return {
    processor,
    storage,
    encoding: texts.encoding(),
    header,
    groups,
    frameRate,
    frames,
    firstFrame,
    points,
    analogue,
    cautions: [...cautions, ...ofLayout, ...ofAnalogue],
  };
}

function processorOf(byte: number, at: number): C3dProcessor {
  return (
    PROCESSORS[byte - PROCESSOR_BASE - 1] ??
    refuseFile(
      `byte ${at + 1}`,
      `the processor is ${byte}; known are 84 (intel), 85 (dec) and 86 (mips), state it as processor: "intel" if the mark is wrong`,
      { given: byte, allowed: [84, 85, 86] },
    )
  );
}
