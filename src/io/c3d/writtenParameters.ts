import type { C3dFile, C3dGroup, C3dStorage } from "./c3dFile.js";
import { COUNT_LIMIT } from "./frameCount.js";
import { parameterTable } from "./parameterTable.js";
import { type WantedParameter, withParameters } from "./withParameters.js";

/**
 * The groups of a file with all parameters that describe its data brought in line with the data; what already says the
 * same stays as it is.
 *
 * @param scale - Of the points, without sign.
 * @param dataStart - Number of the first data block.
 */
export function writtenParameters(
  file: C3dFile,
  storage: C3dStorage,
  scale: number,
  dataStart: number,
): readonly C3dGroup[] {
  return withParameters(file.groups, [
    ...ofPoints(file, storage === "float" ? -scale : scale, dataStart),
    ...ofFrames(file),
    ...(file.analogue.channels.length > 0 || hasGroup(file, "ANALOG") ? ofAnalogue(file) : []),
  ]);
}

function hasGroup(file: C3dFile, name: string): boolean {
  return file.groups.some((group) => group.name.toUpperCase() === name);
}

function ofPoints({ points, frameRate }: C3dFile, scale: number, dataStart: number): WantedParameter[] {
  const base = { group: "POINT" } as const;
  const text = { ...base, type: "character", fallback: "" } as const;
  return [
    { ...base, type: "integer", name: "USED", values: [points.length], single: true, description: "points" },
    {
      ...base,
      type: "float",
      name: "SCALE",
      values: [scale === 0 ? 0 : scale],
      single: true,
      description: "units of length in one step; negative: floating numbers",
    },
    {
      ...base,
      type: "float",
      name: "RATE",
      values: [frameRate],
      single: true,
      description: "frames in a second",
    },
    {
      ...base,
      type: "integer",
      name: "DATA_START",
      values: [dataStart],
      single: true,
      description: "first block of data",
    },
    // Force platforms have their lengths in it too: without points it stays as it is.
    {
      ...text,
      name: "UNITS",
      values: points.slice(0, 1).map(({ unit }) => unit),
      single: true,
      description: "unit of length",
    },
    {
      ...text,
      name: "LABELS",
      values: points.map(({ name }) => name),
      description: "names of the points",
    },
    {
      ...text,
      name: "DESCRIPTIONS",
      values: points.map(({ description }) => description),
      description: "what the points are",
    },
  ];
}

function ofFrames({ frames, firstFrame, groups, header }: C3dFile): WantedParameter[] {
  const table = parameterTable(groups);
  const long = frames >= COUNT_LIMIT;
  const isFloat = table.get("POINT", "FRAMES")?.type === "float";
  const words = (value: number) => [value & 0xffff, Math.floor(value / 65536)];
  const field = (name: string, value: number, description: string): WantedParameter => ({
    group: "TRIAL",
    type: "integer",
    name,
    values: words(value),
    description,
  });
  const start = table.get("TRIAL", "ACTUAL_START_FIELD") !== undefined;
  const needsStart = long || start || (firstFrame !== header.firstFrame && firstFrame > COUNT_LIMIT);
  return [
    {
      group: "POINT",
      type: isFloat ? "float" : "integer",
      name: "FRAMES",
      values: [isFloat ? frames : Math.min(frames, COUNT_LIMIT)],
      single: true,
      description: "frames",
    },
    ...(needsStart ? [field("ACTUAL_START_FIELD", firstFrame, "first frame: low word, high word")] : []),
    ...(long
      ? [
          field("ACTUAL_END_FIELD", firstFrame + frames - 1, "last frame: low word, high word"),
          {
            group: "POINT",
            type: "float",
            name: "LONG_FRAMES",
            values: [frames],
            single: true,
            description: "frames, where FRAMES is at its limit",
          } as const,
        ]
      : []),
  ];
}

function ofAnalogue({ analogue }: C3dFile): WantedParameter[] {
  const { channels, sampleRate, generalScale, format } = analogue;
  const unsigned = format === "unsigned";
  const base = { group: "ANALOG" } as const;
  const text = { ...base, type: "character", fallback: "" } as const;
  const offsets = channels.map(({ offset }) => offset);
  const whole = offsets.every(
    (offset) =>
      Number.isInteger(offset) &&
      (unsigned ? offset >= 0 : offset >= -32768) &&
      offset <= (unsigned ? 65535 : 32767),
  );
  return [
    {
      ...base,
      type: "integer",
      name: "USED",
      values: [channels.length],
      single: true,
      description: "channels",
    },
    {
      ...base,
      type: "float",
      name: "RATE",
      values: [sampleRate],
      single: true,
      description: "samples in a second",
    },
    {
      ...base,
      type: "float",
      name: "GEN_SCALE",
      values: [generalScale],
      single: true,
      description: "factor of all channels",
    },
    {
      ...base,
      type: "float",
      name: "SCALE",
      values: channels.map(({ scale }) => scale),
      description: "factors of the channels",
    },
    {
      ...base,
      type: whole ? "integer" : "float",
      name: "OFFSET",
      values: offsets,
      description: "stored values at zero",
    },
    {
      ...text,
      name: "FORMAT",
      values: [unsigned ? "UNSIGNED" : "SIGNED"],
      single: true,
      fallback: unsigned ? "" : "SIGNED",
      description: "integers with or without sign",
    },
    {
      ...text,
      name: "UNITS",
      values: channels.map(({ unit }) => unit),
      description: "units of the channels",
    },
    {
      ...text,
      name: "LABELS",
      values: channels.map(({ name }) => name),
      description: "names of the channels",
    },
    {
      ...text,
      name: "DESCRIPTIONS",
      values: channels.map(({ description }) => description),
      description: "what the channels are",
    },
  ];
}
