import {
  type C3dFile,
  type C3dParameter,
  type ReadC3dOptions,
  recordingToC3d,
  writeC3d,
} from "../../../src/io/index.js";
import type { Recording } from "../../../src/recording/index.js";
import { seededRandom } from "../../../src/statistics/index.js";
import { bytesOf } from "./files.js";
import { FORMS, sampleFile } from "./sampleFile.js";

/** What a reader of C3D files is given: the bytes of a file, and what is stated of it. */
export interface C3dFuzzInput {
  readonly bytes: Uint8Array;
  readonly options: ReadC3dOptions;
}

type Below = (limit: number) => number;

/** Small real files and worked ones, in every form. */
const FILES: readonly Uint8Array[] = [
  ...[
    "dec_float",
    "dec_integer",
    "intel_float",
    "intel_integer",
    "intel_integer_unsigned",
    "mips_float",
    "mips_integer",
  ].map((name) => bytesOf(`worked/${name}.c3d`)),
  ...["type-4", "type-3-120", "walk-si-60", "walk-vi-60"].map((name) => bytesOf(`standard/${name}.c3d`)),
  ...FORMS.map((form) => writeC3d(sampleFile, form)),
];

const AXES = [
  { x: "right", y: "forward", z: "up" },
  { x: "forward", y: "left", z: "up" },
  { x: "backward", y: "up", z: "left" },
] as const;
const WORDS = [0, 1, 2, 80, 84, 127, 128, 255, 256, 512, 12345, 32767, 32768, 65534, 65535];
const FLOATS = [
  0,
  -0,
  1,
  -1,
  1e-40,
  1e38,
  -3e38,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  0.001,
  65535,
  16777216,
];
const NAMES = [
  "USED",
  "FRAMES",
  "SCALE",
  "RATE",
  "DATA_START",
  "UNITS",
  "LABELS",
  "LABELS2",
  "OFFSET",
  "GEN_SCALE",
  "FORMAT",
  "TYPE",
  "CHANNEL",
  "CORNERS",
  "ORIGIN",
  "ZERO",
  "CAL_MATRIX",
  "TIMES",
  "CONTEXTS",
  "ACTUAL_START_FIELD",
  "ACTUAL_END_FIELD",
  "LONG_FRAMES",
  "MASS",
  "HEIGHT",
  "AXES",
  "CHANNELS",
  "SAMPLES",
  "MARKER_FRAMES",
  "PLATFORM_ZEROS",
  "ANGLES",
  "FRAME_1_TIME",
];
const GROUPS = ["POINT", "ANALOG", "FORCE_PLATFORM", "EVENT", "TRIAL", "SUBJECT", "GAIT_KINETICS", "OTHER"];
const TEXTS = [
  "mm",
  "m",
  "",
  "N",
  "Nmm",
  "V",
  "UNSIGNED",
  "SIGNED",
  "up",
  "forward",
  "left",
  "Right",
  "é",
  "a\nb",
  "70 kg",
  "x".repeat(250),
  "-force up",
  "other",
  "3 9",
  "1e999",
];

/** Makes the input of a seed: a real file damaged byte by byte or record by record, or a made one with odd parameters. */
export function c3dFuzzInput(seed: number): C3dFuzzInput {
  const random = seededRandom(seed);
  const below: Below = (limit) => Math.floor(random.uniform() * limit);
  const made = below(5) < 2 ? madeFile(below) : (pick(FILES, below).slice() as Uint8Array);
  let bytes = made;
  const damages = below(2) === 0 ? below(2) : below(6);
  for (let k = 0; k < damages; k++) bytes = damage(bytes, below);
  const options: ReadC3dOptions = {
    ...(below(16) > 0 && { axes: pick(AXES, below) }),
    ...(below(8) === 0 && { lengthUnit: "mm" }),
    ...(below(8) === 0 && { mass: 70 }),
    ...(below(8) === 0 && { units: { "F*": "N", FX1: "lbf" } }),
  };
  return { bytes, options };
}

function pick<T>(list: readonly T[], below: Below): T {
  return list[below(list.length)] as T;
}

/** One change: a byte, a word, a float, a cut, a repeat, a splice, or a field of the header or of a parameter record. */
function damage(bytes: Uint8Array, below: Below): Uint8Array {
  if (bytes.length < 16) return bytes;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  const little = below(3) > 0;
  // Most of what can go wrong stands in the first blocks.
  const anywhere = () => below(below(4) === 0 ? bytes.length : Math.min(bytes.length, 3072));
  switch (below(10)) {
    case 0:
      bytes[anywhere()] = below(256);
      return bytes;
    case 1:
      view.setUint16(Math.min(anywhere(), bytes.length - 2), pick(WORDS, below), little);
      return bytes;
    case 2:
      view.setFloat32(Math.min(anywhere(), bytes.length - 4), pick(FLOATS, below), little);
      return bytes;
    case 3:
      return bytes.slice(0, below(2) === 0 ? bytes.length - below(512) : below(bytes.length));
    case 4: {
      const [from, to] = [anywhere(), anywhere()];
      const part = bytes.slice(
        Math.min(from, to),
        Math.min(Math.min(from, to) + below(600), Math.max(from, to)),
      );
      const at = anywhere();
      return joined(bytes.subarray(0, at), part, bytes.subarray(at + below(2) * part.length));
    }
    case 5: {
      const other = pick(FILES, below);
      const at = below(6) * 512;
      return joined(
        bytes.subarray(0, at),
        other.subarray(at, at + 512 * (1 + below(4))),
        bytes.subarray(at + 512),
      );
    }
    case 6: {
      if (bytes.length > 512) view.setUint16(2 * below(12), pick(WORDS, below), little);
      return bytes;
    }
    default:
      damageRecord(bytes, below);
      return bytes;
  }
}

function joined(...parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Changes a field of a record: length of its name, group, pointer, type, number or size of dimensions, data. */
function damageRecord(bytes: Uint8Array, below: Below): void {
  const records: number[] = [];
  const big = bytes[515] === 86;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  for (let at = 516; at + 4 < bytes.length && records.length < 400; ) {
    const length = Math.abs(view.getInt8(at));
    const pointer = at + 2 + length;
    if (length === 0 || pointer + 4 >= bytes.length) break;
    records.push(at);
    const step = view.getUint16(pointer, !big);
    if (step === 0) break;
    at = pointer + step;
  }
  if (records.length === 0) return;
  const at = pick(records, below);
  const pointer = at + 2 + Math.abs(view.getInt8(at));
  switch (below(7)) {
    case 0:
      bytes[at] = below(256);
      break;
    case 1:
      bytes[at + 1] = below(3) === 0 ? below(256) : below(12);
      break;
    case 2:
      // Back to an earlier record, onto itself, or a little off.
      view.setInt16(
        pointer,
        below(2) === 0 ? pick(records, below) - pointer : view.getInt16(pointer, !big) + below(9) - 4,
        !big,
      );
      break;
    case 3:
      bytes[pointer + 2] = pick([255, 0, 1, 2, 3, 4, 8], below);
      break;
    case 4:
      bytes[pointer + 3] = pick([0, 1, 2, 3, 7, 8, 255], below);
      break;
    case 5:
      bytes[pointer + 4 + below(3)] = pick([0, 1, 2, 127, 128, 255], below);
      break;
    default:
      for (let k = 0; k < 4; k++) if (pointer + 4 + k < bytes.length) bytes[pointer + 4 + k] = below(256);
  }
}

function madeFile(below: Below): Uint8Array {
  const base = below(3) === 0 ? recordingToC3d(madeRecording(below)) : sampleFile;
  const groups = [...base.groups];
  for (let k = below(12); k > 0; k--) {
    const name = pick(GROUPS, below);
    const parameter = madeParameter(below);
    const at = groups.findIndex((group) => group.name === name);
    if (at < 0) {
      const id = Math.max(0, ...groups.map((group) => group.id)) + 1;
      groups.push({ id, name, description: "", locked: false, parameters: [parameter] });
    } else {
      const group = groups[at] as C3dFile["groups"][0];
      const others = group.parameters.filter((one) => below(5) === 0 || one.name !== parameter.name);
      groups[at] = { ...group, parameters: [parameter, ...others] };
    }
  }
  if (below(3) === 0) groups.push(madePlatforms(below, Math.max(0, ...groups.map(({ id }) => id)) + 1));
  const form = pick(FORMS, below);
  try {
    return writeC3d({ ...base, groups }, form);
  } catch {
    // What cannot be written, such as a gap in integers, is written as it was.
    return writeC3d(sampleFile, form);
  }
}

function madeParameter(below: Below): C3dParameter {
  const head = {
    name: pick(NAMES, below),
    description: below(4) === 0 ? pick(TEXTS, below) : "",
    locked: below(2) === 0,
  };
  const sizes = Array.from({ length: below(4) }, () => pick([0, 1, 2, 3, 4, 6, 12], below));
  const count = sizes.reduce((product, one) => product * one, 1);
  const many = <T>(value: () => T): T[] => Array.from({ length: count }, value);
  switch (below(4)) {
    case 0:
      return { ...head, type: "character", dimensions: [1, ...sizes], data: many(() => pick(TEXTS, below)) };
    case 1:
      return { ...head, type: "byte", dimensions: sizes, data: many(() => below(256) - 128) };
    case 2:
      return {
        ...head,
        type: "integer",
        dimensions: sizes,
        data: many(() => (below(2) === 0 ? below(12) : pick(WORDS, below))),
      };
    default:
      return {
        ...head,
        type: "float",
        dimensions: sizes,
        data: many(() => (below(2) === 0 ? below(1000) / 8 : pick(FLOATS.filter(Number.isFinite), below))),
      };
  }
}

/** Platforms of any type, with channels and corners that are right, odd or absent. */
function madePlatforms(below: Below, id: number): C3dFile["groups"][0] {
  const count = 1 + below(3);
  const many = <T>(length: number, value: (k: number) => T): T[] =>
    Array.from({ length }, (_, k) => value(k));
  const plate = [464, 0, 0, 0, 0, 0, 0, 508, 0, 464, 508, 0];
  const parameter = (
    name: string,
    type: "integer" | "float",
    dimensions: number[],
    data: number[],
  ): C3dParameter[] =>
    below(12) === 0 ? [] : [{ name, description: "", locked: false, type, dimensions, data }];
  return {
    id,
    name: "FORCE_PLATFORM",
    description: "",
    locked: false,
    parameters: [
      ...parameter("USED", "integer", [], [below(6) === 0 ? pick(WORDS, below) : count]),
      ...parameter(
        "TYPE",
        "integer",
        [count],
        many(count, () => 1 + below(7)),
      ),
      ...parameter(
        "CHANNEL",
        "integer",
        [8, count],
        many(8 * count, (k) => (below(9) === 0 ? below(60) : 1 + (k % 3))),
      ),
      ...parameter(
        "CORNERS",
        "float",
        [3, 4, count],
        many(12 * count, (k) => (below(60) === 0 ? below(2000) - 1000 : (plate[k % 12] as number))),
      ),
      ...parameter(
        "ORIGIN",
        "float",
        [3, count],
        many(3 * count, () => below(80) - 40),
      ),
      ...parameter("ZERO", "integer", [2], [below(10), below(30)]),
      ...parameter(
        "CAL_MATRIX",
        "float",
        [6, 6, count],
        many(36 * count, (k) => (k % 7 === 0 ? 500 : below(5))),
      ),
    ],
  };
}

function madeRecording(below: Below): Recording {
  const length = 1 + below(30);
  const values = () =>
    Float64Array.from({ length }, () => (below(20) === 0 ? Number.NaN : below(2000) - 200));
  const kinds = [
    ["force", "forward", "N"],
    ["force", "up", "N"],
    ["force", "right", "N"],
    ["centre-of-pressure", "forward", "m"],
    ["centre-of-pressure", "right", "m"],
    ["free-moment", "up", "N m"],
  ] as const;
  const markers = {
    sampleRate: 250,
    startTime: 0,
    markers: [{ name: "heel", forward: values(), up: values(), right: values() }],
  };
  return {
    sampleRate: 1000,
    startTime: 0,
    channels: kinds.slice(0, 2 + below(5)).map(([quantity, direction, unit], k) => ({
      name: `c${k}`,
      quantity,
      direction,
      unit,
      samples: values(),
    })),
    ...(below(2) === 0 && { markers }),
    ...(below(2) === 0 && { events: [{ label: "strike", time: 0.5, side: "left" as const }] }),
    subject: below(2) === 0 ? { mass: 70 } : {},
    ...(below(2) === 0 && { surface: "belt" as const, speed: 3 }),
    origin: { format: "made" },
    cautions: [],
  };
}
