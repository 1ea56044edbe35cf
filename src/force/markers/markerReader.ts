import { interpolate } from "../../filters/index.js";
import type { Direction, Marker, MarkerSet, Recording } from "../../recording/index.js";
import { fail, type Hertz, type Samples } from "../../units/index.js";
import type { MarkerNames } from "../options.js";

/** Reads places of markers at the samples of the force. */
export interface MarkerReader {
  readonly sampleRate: Hertz;
  /** Mean place of the markers named, m. */
  readonly read: (argument: string, names: readonly string[], direction: Direction) => Samples<"m">;
}

/** Shares of a frame by which a time may miss it and still be on it: rounding. */
const ROUNDING = 1e-6;

/**
 * Opens a recording's markers at the times of its force: between frames by a cubic spline, less than one frame beyond the
 * first or last one by a straight line.
 */
export function markerReader({ markers, startTime, sampleRate }: Recording, samples: number): MarkerReader {
  if (markers === undefined) {
    fail("missing-channel", "markers are named, and the recording holds none", { argument: "recording" });
  }
  const delay = startTime - markers.startTime;
  const frames = markers.markers[0]?.forward.length ?? 0;
  const span = framesOver(markers, delay, delay + (samples - 1) / sampleRate, frames);
  const [first, last] = [span.from / markers.sampleRate, span.to / markers.sampleRate];
  const times = Float64Array.from(
    { length: span.to - span.from + 1 },
    (_, k) => (span.from + k) / markers.sampleRate,
  );
  const at = Float64Array.from({ length: samples }, (_, i) => delay + i / sampleRate);
  const within = at.map((time) => Math.min(last, Math.max(first, time)));
  const read: MarkerReader["read"] = (argument, names, direction) => {
    const chosen = names.map((name) => markerOf(markers, argument, name));
    const places = meanPlace(chosen, direction, span, markers.sampleRate);
    const result = interpolate(times, places, within, { method: "cubic" });
    const slope = (from: number) =>
      ((places[from + 1] as number) - (places[from] as number)) * markers.sampleRate;
    for (let i = 0; i < samples; i++) {
      const beyond = (at[i] as number) - (within[i] as number);
      if (beyond !== 0)
        result[i] = (result[i] as number) + beyond * slope(beyond < 0 ? 0 : places.length - 2);
    }
    return result;
  };
  return { sampleRate: markers.sampleRate, read };
}

/** The frames that enclose a stretch of time, at least two; refuses one that reaches a frame or more beyond them. */
function framesOver(
  { sampleRate, markers }: MarkerSet,
  from: number,
  to: number,
  frames: number,
): { from: number; to: number } {
  if (frames < 2) {
    fail("too-short", `the markers have ${frames} frame${frames === 1 ? "" : "s"}; at least 2 are needed`, {
      argument: "recording",
      values: { frames },
    });
  }
  const [start, end] = [from * sampleRate, to * sampleRate];
  if (start > -1 && end < frames) {
    const low = Math.min(frames - 2, Math.max(0, Math.floor(start + ROUNDING)));
    return { from: low, to: Math.max(low + 1, Math.min(frames - 1, Math.ceil(end - ROUNDING))) };
  }
  fail(
    "gap",
    `the markers (${markers.map(({ name }) => name).join(", ")}) were recorded from ${(-from).toFixed(3)} s to ${((frames - 1) / sampleRate - from).toFixed(3)} s after the first sample of force, which lasts until ${(to - from).toFixed(3)} s; cut the force to the markers, or leave the markers out`,
    {
      argument: "recording",
      where: "markers",
      values: { from: -from, to: (frames - 1) / sampleRate - from, duration: to - from },
    },
  );
}

function markerOf({ markers }: MarkerSet, argument: string, name: string): Marker {
  const found = markers.find((marker) => marker.name === name);
  if (found !== undefined) return found;
  const known = markers.map((marker) => marker.name);
  fail("missing-channel", `${argument} names "${name}"; the markers are ${known.join(", ")}`, {
    argument,
    where: name,
    values: { given: name, allowed: known },
  });
}

function meanPlace(
  chosen: readonly Marker[],
  direction: Direction,
  { from, to }: { readonly from: number; readonly to: number },
  sampleRate: Hertz,
): Float64Array {
  const mean = new Float64Array(to - from + 1);
  for (const { name, [direction]: place } of chosen) {
    for (let i = from; i <= to; i++) {
      const value = place[i] as number;
      if (!Number.isFinite(value)) refuseGap(name, place, i, to, sampleRate);
      mean[i - from] = (mean[i - from] as number) + value / chosen.length;
    }
  }
  return mean;
}

function refuseGap(name: string, place: Float64Array, first: number, last: number, sampleRate: Hertz): never {
  let missing = 0;
  for (let i = first; i <= last; i++) if (!Number.isFinite(place[i])) missing++;
  fail(
    "gap",
    `the marker "${name}" was not seen in ${missing} frame${missing === 1 ? "" : "s"}, the first at ${(first / sampleRate).toFixed(3)} s of the markers (frame ${first}); fill its gaps first`,
    { where: `${name}, frame ${first}`, values: { marker: name, frame: first, missing } },
  );
}

/** The names of a choice as a list. */
export function namesOf(argument: string, choice: MarkerNames): readonly string[] {
  const names = typeof choice === "string" ? [choice] : choice;
  if (Array.isArray(names) && names.length > 0 && names.every((name) => typeof name === "string")) {
    return names;
  }
  fail(
    "wrong-type",
    `${argument} is ${JSON.stringify(choice) ?? String(choice)}; at least one marker's name is needed`,
    {
      argument,
    },
  );
}
