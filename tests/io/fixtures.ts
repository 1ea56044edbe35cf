import { readFileSync } from "node:fs";
import type { ReadCsvOptions } from "../../src/io/index.js";
import { channelOf, type Recording } from "../../src/recording/index.js";

/** Text of a file among the fixtures. */
export const fixture = (path: string): string =>
  readFileSync(new URL(`../fixtures/${path}`, import.meta.url), "utf8");

/** What must be stated of the open treadmill recording, which names axes and no units. */
export const TREADMILL_RUN: ReadCsvOptions = {
  ignore: ["Time"],
  sampleRate: 300,
  units: { Fx: "N", Fy: "N", Fz: "N", COPx: "mm", COPy: "mm", COPz: "mm", Ty: "N mm" },
  axes: { x: "forward", y: "up", z: "right" },
};

/** Samples of a force by direction. */
export const force = (recording: Recording, direction: "forward" | "up" | "right"): number[] => [
  ...(channelOf(recording, "force", direction)?.samples ?? []),
];

/** Samples of the centre of pressure by direction. */
export const cop = (recording: Recording, direction: "forward" | "right"): number[] => [
  ...(channelOf(recording, "centre-of-pressure", direction)?.samples ?? []),
];

/** Samples of the free moment. */
export const freeMoment = (recording: Recording): number[] => [
  ...(channelOf(recording, "free-moment", "up")?.samples ?? []),
];
