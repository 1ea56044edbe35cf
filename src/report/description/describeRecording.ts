import {
  type Channel,
  checkRecording,
  type Marker,
  type MarkerSet,
  type Platform,
  type Recording,
} from "../../recording/index.js";
import type {
  DescribedChannel,
  DescribedMarker,
  DescribedMarkers,
  DescribedPlatform,
  RecordingDescription,
} from "./description.js";
import { markerGaps } from "./markerGaps.js";
import { platformPlace } from "./platformPlace.js";
import { sampleRange } from "./sampleRange.js";

const DIRECTIONS = ["forward", "up", "right"] as const;

/**
 * Describes what is in a recording: duration, rate, channels with their ranges, platforms with size and place, markers
 * with their gaps, events, runner and trial, cautions.
 *
 * Units: SI, as in the recording; a platform's channels in the units they were recorded in.
 * Limits: describes what was recorded; no offset is taken off and nothing is filtered.
 * Source: listing of this library.
 * @param recording - Checked first.
 * @returns Plain data, ready for JSON.
 * @throws GaitKineticsError as {@link checkRecording}.
 * @example
 * describeRecording(recording).channels.map(({ holds }) => holds).slice(0, 3) // ["force forward", "force up", "force right"]
 */
export function describeRecording(recording: Recording): RecordingDescription {
  const { sampleRate, startTime, channels, platforms = [], markers, events = [] } = checkRecording(recording);
  const samples = channels[0]?.samples.length ?? platforms[0]?.channels[0]?.samples.length ?? 0;
  return {
    format: recording.origin.format,
    storage: null,
    framed: true,
    lengthUnit: "m",
    duration: samples === 0 && markers !== undefined ? durationOf(markers) : samples / sampleRate,
    sampleRate,
    samples,
    startTime,
    subject: recording.subject,
    speed: recording.speed ?? null,
    surface: recording.surface ?? null,
    grade: recording.grade ?? null,
    firstFoot: recording.firstFoot ?? null,
    footwear: recording.footwear ?? null,
    columns: [],
    channels: [...channels.map(describeChannel), ...platforms.flatMap(describePlatformChannels)],
    platforms: platforms.map(describePlatform),
    markers: markers === undefined ? null : describeMarkers(markers),
    events,
    toState: [],
    commandLine: null,
    cautions: recording.cautions,
  };
}

function describeChannel({ name, quantity, direction, unit, samples, plate }: Channel): DescribedChannel {
  const what = quantity.replaceAll("-", " ");
  return {
    name,
    holds: quantity === "other" ? null : quantity === "free-moment" ? what : `${what} ${direction}`,
    unit,
    ...sampleRange(samples),
    plate: plate ?? null,
  };
}

function describePlatformChannels({ name: plate, channels }: Platform): DescribedChannel[] {
  return channels.map(({ name, unit, samples }) => ({
    name,
    holds: null,
    unit,
    ...sampleRange(samples),
    plate,
  }));
}

function describePlatform(platform: Platform): DescribedPlatform {
  const corners = platform.corners.map(({ forward, up, right }) => ({ forward, up, right }));
  return {
    name: platform.name,
    type: platform.type,
    channels: platform.channels.map(({ name }) => name),
    place: platformPlace(corners, DIRECTIONS),
    origin: platform.origin,
    zero: platform.zero ?? null,
    calibrated: platform.calibration !== undefined,
    side: platform.side ?? null,
  };
}

function describeMarkers({ sampleRate, markers }: MarkerSet): DescribedMarkers {
  return {
    sampleRate,
    frames: markers[0]?.up.length ?? 0,
    markers: markers.map(describeMarker),
  };
}

function durationOf({ sampleRate, markers }: MarkerSet): number {
  return (markers[0]?.up.length ?? 0) / sampleRate;
}

function describeMarker({ name, up }: Marker): DescribedMarker {
  return { name, ...markerGaps(up) };
}
