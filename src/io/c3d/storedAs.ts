import type { C3dAnalogue, C3dChannel, C3dFile, C3dPoint, C3dStorage } from "./c3dFile.js";
import { parameterTable } from "./parameterTable.js";

/** Steps of an integer that the largest value takes, a little below the 32 767 there are. */
const FULL_SCALE = 32_000;
/** How near to a whole step each value must lie for a scale to be kept. */
const WHOLE_STEP = 0.01;

/** How a file's numbers are to be stored. */
export interface StoredForm {
  /** Of the points, without sign. */
  readonly scale: number;
  readonly analogue: C3dAnalogue;
}

/**
 * Finds scales and offsets to store a file with. They are the file's own; where floating numbers are to become integers
 * and do not lie on whole steps of these, the scale is chosen anew so that the largest value takes 32 000 steps.
 */
export function storedAs(file: C3dFile, storage: C3dStorage): StoredForm {
  const { points, analogue, groups, header } = file;
  const scale = Math.abs(parameterTable(groups).number("POINT", "SCALE") ?? header.scale);
  if (storage === file.storage || storage === "float") return { scale, analogue };
  const { generalScale, format } = analogue;
  const channels = analogue.channels.map((channel) => storedChannel(channel, generalScale, format));
  return {
    scale: pointsOnSteps(points, scale) ? scale : stepOf(points.reduce(largestPoint, 0)),
    analogue: { ...analogue, channels },
  };
}

function storedChannel(channel: C3dChannel, generalScale: number, format: C3dAnalogue["format"]): C3dChannel {
  const { samples, scale, offset } = channel;
  const [least, most] = format === "unsigned" ? [0, 65_535] : [-32_768, 32_767];
  const factor = scale * generalScale;
  let largest = 0;
  let kept = factor !== 0 && Number.isInteger(offset);
  for (let i = 0; i < samples.length; i++) {
    const value = samples[i] as number;
    if (Math.abs(value) > largest) largest = Math.abs(value);
    const stored = value / factor + offset;
    if (!isOnStep(stored, least, most)) kept = false;
  }
  if (kept) return channel;
  const step = generalScale === 0 ? 1 : stepOf(largest / Math.abs(generalScale));
  return { ...channel, scale: step, offset: format === "unsigned" ? 32_768 : 0 };
}

/** As a 32-bit number, in which the file holds it; 1 where all values are 0. */
function stepOf(largest: number): number {
  const step = Math.fround(largest / FULL_SCALE);
  return step > 0 ? step : 1;
}

function largestPoint(most: number, { x, y, z }: C3dPoint): number {
  let largest = most;
  for (const axis of [x, y, z]) {
    for (let i = 0; i < axis.length; i++) {
      const size = Math.abs(axis[i] as number);
      if (size > largest) largest = size;
    }
  }
  return largest;
}

function pointsOnSteps(points: readonly C3dPoint[], scale: number): boolean {
  if (!(scale > 0)) return points.length === 0;
  return points.every(({ x, y, z }) =>
    [x, y, z].every((axis) => axis.every((value) => isOnStep(value / scale, -32_768, 32_767))),
  );
}

/** A gap lies on every step. */
function isOnStep(stored: number, least: number, most: number): boolean {
  const rounded = Math.round(stored);
  if (Number.isNaN(stored)) return true;
  return Math.abs(stored - rounded) <= WHOLE_STEP && rounded >= least && rounded <= most;
}
