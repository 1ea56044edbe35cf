import type { C3dFile, C3dProcessor, C3dStorage } from "../../io/index.js";
import { c3dPlatformChannels, c3dPlatforms } from "./c3dPlatforms.js";
import type { DescribedChannel, RecordingDescription } from "./description.js";
import { markerGaps } from "./markerGaps.js";
import { sampleRange } from "./sampleRange.js";

const PROCESSORS: Readonly<Record<C3dProcessor, string>> = {
  intel: "little-endian",
  dec: "little-endian, floating numbers of VAX",
  mips: "big-endian",
};

const STORAGE: Readonly<Record<C3dStorage, string>> = {
  integer: "16-bit integers",
  float: "32-bit floating numbers",
};

/**
 * Describes a C3D file as it is, in its own axes and units: nothing needs to be stated.
 *
 * Units: as the file writes them.
 * Limits: of the runner and of events nothing is told; a recording read with its axes stated tells them.
 * Source: listing of this library; parameters as the C3D format's pages at c3d.org name them.
 * @param file - From `parseC3d`.
 * @param toState - What must be stated before force can be computed, a sentence each: the description carries it.
 * @returns Plain data, ready for JSON.
 * @example
 * describeC3d(recordingToC3d(recording)).framed // false
 */
export function describeC3d(file: C3dFile, toState: readonly string[] = []): RecordingDescription {
  const { analogue, points, frames, frameRate, firstFrame, processor, storage } = file;
  const platforms = c3dPlatforms(file);
  const samples = analogue.channels[0]?.samples.length ?? 0;
  return {
    format: "c3d",
    storage: `${PROCESSORS[processor]}, ${STORAGE[storage]}`,
    framed: false,
    lengthUnit: points[0]?.unit ?? pointUnit(file),
    duration: frames / frameRate,
    sampleRate: samples > 0 ? analogue.sampleRate : frameRate,
    samples,
    startTime: (firstFrame - 1) / frameRate,
    subject: {},
    speed: null,
    surface: null,
    grade: null,
    firstFoot: null,
    footwear: null,
    columns: [],
    channels: channelsOf(file, platforms.length),
    platforms,
    markers:
      points.length === 0
        ? null
        : {
            sampleRate: frameRate,
            frames,
            markers: points.map(({ name, x }) => ({ name, ...markerGaps(x) })),
          },
    events: [],
    toState,
    commandLine: null,
    cautions: file.cautions,
  };
}

/** The unit of lengths, which the file states with or without points. */
function pointUnit({ groups }: C3dFile): string {
  const units = groups
    .filter(({ name }) => name.toUpperCase() === "POINT")
    .flatMap(({ parameters }) => parameters)
    .find(({ name }) => name.toUpperCase() === "UNITS");
  return units?.type === "character" ? (units.data[0] ?? "").trim() : "";
}

function channelsOf(file: C3dFile, platforms: number): DescribedChannel[] {
  const plateOf = new Map<number, string>();
  for (let index = 0; index < platforms; index++) {
    for (const number of c3dPlatformChannels(file, index)) plateOf.set(number, String(index + 1));
  }
  return file.analogue.channels.map(({ name, unit, samples }, number) => ({
    name,
    holds: null,
    unit,
    ...sampleRange(samples),
    plate: plateOf.get(number) ?? null,
  }));
}
