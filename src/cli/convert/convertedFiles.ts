import { dirname, join } from "node:path";
import type { GroundReaction } from "../../force/index.js";
import {
  type C3dFile,
  type MotionBidsNames,
  type MotionBidsTexts,
  recordingToC3d,
  writeC3d,
  writeMotionBids,
} from "../../io/index.js";
import type { Recording } from "../../recording/index.js";
import { describeC3d } from "../../report/index.js";
import { groundOfRecording } from "../input/groundOfRecording.js";
import { windowOf } from "../input/windowOf.js";
import {
  FORCE_OPTIONS,
  type ForceOptions,
  type ReadingOptions,
  type RecordingOptions,
} from "../options/inputOptions.js";
import type { FileToWrite } from "../output/writeFilesWhole.js";
import { groundRecording } from "./groundRecording.js";
import { tableOf } from "./tableOf.js";
import type { Target } from "./target.js";

/** What a conversion gives. */
export interface Converted {
  readonly files: readonly FileToWrite[];
  /** What a person must know of it: what was done to the force, and what the format does not hold. */
  readonly notes: readonly string[];
}

/**
 * Makes the files of another format. Platforms stay as they are where the format holds them; in a table, and wherever an
 * option of the force step is given, they become the force in the library's frame, as an analysis computes it.
 *
 * @throws GaitKineticsError as the force step and the writers do.
 */
export function convertedFiles(
  recording: Recording,
  target: Target,
  options: RecordingOptions & ForceOptions & ReadingOptions,
): Converted {
  const computed = needsForce(recording, target, options);
  const ground = computed ? groundOfRecording(recording, options, options) : null;
  const part = windowOf(recording, options);
  const written = ground === null ? part : groundRecording(ground, part);
  const { files, notes } = filesOf(written, target);
  return {
    files,
    notes: [
      ...written.cautions.map(({ message }) => message),
      ...(ground === null ? [] : [forceNote(recording, ground)]),
      ...notes,
    ],
  };
}

function needsForce({ platforms = [] }: Recording, { format }: Target, options: ForceOptions): boolean {
  const asked = FORCE_OPTIONS.some((name) => options[name] !== undefined);
  return asked || (platforms.length > 0 && format === "table");
}

function forceNote({ platforms = [] }: Recording, { settings, plates }: GroundReaction): string {
  const parts = Object.entries(settings.offset ?? {}).map(([name, value]) => `${name} ${value.toFixed(1)} N`);
  const taken = parts.length === 0 ? "no offset was taken off" : `offset taken off: ${parts.join(", ")}`;
  const drift = settings.driftRemoved ? ", and drift from flight to flight" : "";
  const again =
    parts.length === 0
      ? ""
      : `; analyse what is written with --offset none${settings.driftRemoved ? " --drift never" : ""}, or one is taken off twice`;
  if (platforms.length === 0) return `${taken}${drift}${again}`;
  const kept = plates === undefined ? "" : `, ${plates.length} plates apart`;
  return `the platforms' channels became the force of the ground on the runner, forward, up, right${kept}; ${taken}${drift}${again}`;
}

function filesOf(recording: Recording, target: Target): Converted {
  const { path, format } = target;
  switch (format) {
    case "table": {
      const { content, notes } = tableOf(recording);
      return { files: [{ path, content }], notes };
    }
    case "c3d": {
      const file = recordingToC3d(recording);
      return { files: [{ path, content: writeC3d(file) }], notes: inventedPlatforms(recording, file) };
    }
    case "motion-bids":
      return { files: motionBidsFiles(recording, target), notes: [] };
  }
}

/** The format holds force by platforms alone: what stands for a platform where the recording states none. */
function inventedPlatforms({ platforms = [] }: Recording, file: C3dFile): string[] {
  const { platforms: written, lengthUnit } = describeC3d(file);
  return written.slice(platforms.length).flatMap(({ name, place }) => {
    if (place === null) return [];
    const size = `${place.length.toPrecision(3)} by ${place.width.toPrecision(3)} ${lengthUnit}`;
    return [`the recording states no force platform; platform ${name} of ${size} was written in its place`];
  });
}

function motionBidsFiles(
  recording: Recording,
  { path, entities }: Extract<Target, { format: "motion-bids" }>,
): FileToWrite[] {
  const { names, markers, events, eventsSidecar, ...texts } = writeMotionBids(recording, entities);
  const beside = (name: string, content: string | undefined): FileToWrite[] =>
    content === undefined ? [] : [{ path: join(dirname(path), name), content }];
  const system = (own: MotionBidsTexts, named: MotionBidsNames): FileToWrite[] => [
    ...beside(named.channels, own.channels),
    ...beside(named.sidecar, own.sidecar),
    ...beside(named.channelsSidecar, own.channelsSidecar),
  ];
  return [
    { path, content: texts.motion },
    ...system(texts, names),
    ...(markers === undefined
      ? []
      : [...beside(markers.names.motion, markers.motion), ...system(markers, markers.names)]),
    ...beside(names.events, events),
    ...beside(names.eventsSidecar, eventsSidecar),
  ];
}
