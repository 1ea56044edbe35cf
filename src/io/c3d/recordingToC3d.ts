import { checkRecording, type Marker, type Recording } from "../../recording/index.js";
import { fail } from "../../units/index.js";
import type { C3dChannel, C3dFile, C3dGroup, C3dPoint } from "./c3dFile.js";
import { eventGroup } from "./eventGroup.js";
import { type OwnContent, ownGroup } from "./ownGroup.js";
import { parameterParts } from "./parameterParts.js";
import { type WrittenPlatforms, writtenPlatforms } from "./writtenPlatforms.js";

/** How far two times or a ratio of rates may lie from what they should be, in marker frames. */
const SAME_FRAME = 1e-6;

/**
 * Makes a C3D file of a recording, for {@link writeC3d}; {@link readC3d} brings the recording back.
 *
 * Laboratory axes are x forward, y left, z up. Platforms are written as they are. Channels of force, centre of pressure
 * and free moment of a plate become a platform of type 1 where all six are there, so that other programs find them;
 * its plate axes are x forward, y right, z down, its signs those of the action on the plate, and its channels are labelled by
 * these axes (Fx1, Fy1, Fz1, Px1, Py1, Mz1). Its surface is invented, square about the origin and as large as the centre of
 * pressure needs: a `Caution` of the file says so, with its `side` in m. Where one of the six is missing they are
 * plain channels: a missing component is never written as zero. A group GAIT_KINETICS states axes, runner, trial and what
 * each channel is and was called, with all digits.
 *
 * Units: N, N m, m and V.
 * Limits: samples, positions and event times come back to the precision of 32-bit floating numbers (relative 6e-8; event
 * times 2 µs), everything else exactly, except blanks at the ends of names. Cautions are not written. Markers must start
 * with the recording, at its rate divided by a whole number.
 * Source: description of the format on c3d.org; signs follow from its plate axes.
 * @param recording - Checked before it is written.
 * @throws GaitKineticsError as `checkRecording`; `conflict`: markers that start at another time or whose rate does not
 * divide the recording's; `too-short`: markers without a frame, and no sample.
 * @example
 * recordingToC3d(recording).storage // "float"
 */
export function recordingToC3d(recording: Recording): C3dFile {
  const { channels, platforms = [], markers, events = [], sampleRate, startTime } = checkRecording(recording);
  const samples = channels[0]?.samples.length ?? platforms[0]?.channels[0]?.samples.length;
  const markerFrames = markers?.markers[0]?.forward.length;
  const samplesPerFrame = samplesPerFrameOf(recording, samples);
  const frameRate =
    samples === undefined ? (markers?.sampleRate ?? sampleRate) : sampleRate / samplesPerFrame;
  const frames = Math.max(Math.ceil((samples ?? 0) / samplesPerFrame), markerFrames ?? 0);
  if (frames === 0)
    fail("too-short", "the recording has neither a sample nor a marker frame; at least one is needed");
  const start = samples === undefined ? (markers?.startTime ?? startTime) : startTime;
  const firstFrame = Math.max(1, Math.min(2 ** 31, Math.round(start * frameRate) + 1));
  const clock = start - (firstFrame - 1) / frameRate;
  const written = writtenPlatforms(platforms, channels);
  const fill = (values: Float64Array) => filled(values, frames * samplesPerFrame);
  const points = (markers?.markers ?? []).map((marker) => pointOf(marker, frames));
  const content: OwnContent = {
    rate: sampleRate,
    markerRate: markers?.sampleRate,
    clock: Math.abs(clock) * frameRate < SAME_FRAME ? undefined : clock,
    samples,
    markerFrames,
    ...written.content,
  };
  const analogue = written.channels.map(
    ({ name, unit, samples: values }): C3dChannel => ({
      name,
      description: "",
      unit,
      scale: 1,
      offset: 0,
      samples: fill(values),
    }),
  );
  const cut = (value: number) => Math.min(value, 0xffff);
  return {
    processor: "intel",
    storage: "float",
    encoding: "utf-8",
    header: {
      points: points.length,
      analoguePerFrame: analogue.length * samplesPerFrame,
      firstFrame: cut(firstFrame),
      lastFrame: cut(firstFrame + frames - 1),
      longestGap: 0,
      scale: -1,
      // The writer finds it.
      dataStart: 0,
      samplesPerFrame,
      frameRate,
      events: [],
    },
    groups: groupsOf(recording, written, content, clock, events.length > 0),
    frameRate,
    frames,
    firstFrame,
    points,
    analogue: {
      sampleRate: samples === undefined ? frameRate : sampleRate,
      samplesPerFrame,
      generalScale: 1,
      format: "signed",
      channels: analogue,
    },
    cautions: written.cautions,
  };
}

function samplesPerFrameOf(
  { markers, sampleRate, startTime }: Recording,
  samples: number | undefined,
): number {
  if (markers === undefined || samples === undefined) return 1;
  const ratio = sampleRate / markers.sampleRate;
  const whole = Math.round(ratio);
  if (whole < 1 || Math.abs(ratio / whole - 1) > SAME_FRAME) {
    fail(
      "conflict",
      `markers are at ${markers.sampleRate} Hz and channels at ${sampleRate} Hz; a C3D file holds a whole number of samples in a frame: resample one of them`,
      {
        argument: "recording",
        where: "markers.sampleRate",
        values: { markers: markers.sampleRate, channels: sampleRate },
      },
    );
  }
  if (Math.abs(markers.startTime - startTime) * markers.sampleRate > SAME_FRAME) {
    fail(
      "conflict",
      `markers start at ${markers.startTime} s and channels at ${startTime} s; in a C3D file both start together: cut one of them`,
      {
        argument: "recording",
        where: "markers.startTime",
        values: { markers: markers.startTime, channels: startTime },
      },
    );
  }
  return whole;
}

/** Series with gaps behind them, up to a length. */
function filled(values: Float64Array, length: number, sign = 1): Float64Array {
  const series = new Float64Array(length).fill(Number.NaN);
  for (let i = 0; i < values.length; i++) series[i] = sign * (values[i] as number);
  return series;
}

function pointOf({ name, forward, up, right }: Marker, frames: number): C3dPoint {
  const x = filled(forward, frames);
  const residual = x.map((value) => (Number.isNaN(value) ? Number.NaN : 0));
  return {
    name,
    description: "",
    unit: "m",
    x,
    y: filled(right, frames, -1),
    z: filled(up, frames),
    residual,
    cameras: new Uint8Array(frames),
  };
}

function groupsOf(
  recording: Recording,
  written: WrittenPlatforms,
  content: OwnContent,
  clock: number,
  hasEvents: boolean,
): C3dGroup[] {
  const screen = (name: string, values: string, description: string) =>
    parameterParts({ name, type: "character", values: [values], single: true, description });
  const groups: Omit<C3dGroup, "id">[] = [
    {
      name: "POINT",
      description: "points",
      locked: false,
      parameters: [
        ...screen("UNITS", "m", "unit of length"),
        ...screen("X_SCREEN", "+X", "axis to the right of a screen"),
        ...screen("Y_SCREEN", "+Z", "axis up a screen"),
      ],
    },
    { name: "ANALOG", description: "analogue channels", locked: false, parameters: [] },
    { name: "FORCE_PLATFORM", description: "force platforms", locked: false, parameters: written.parameters },
    ...(hasEvents ? [eventGroup(recording.events ?? [], clock)] : []),
  ];
  const numbered = groups.map((group, k) => ({ ...group, id: k + 1 }));
  return [...numbered, ownGroup(numbered.length + 1, recording, content)];
}
