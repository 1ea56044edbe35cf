import { checkRecording, type MarkerSet, type RecordedEvent, type Recording } from "../../recording/index.js";
import { type Complete, fail, VERSION, withDefaults } from "../../units/index.js";
import { type MotionBidsNames, motionBidsNames } from "./motionBidsNames.js";
import { WRITE_MOTION_BIDS_DEFAULTS, type WriteMotionBidsOptions } from "./options.js";
import { MISSING, quoted } from "./words.js";
import { columnsOfMarkers, requireWritable, type WrittenColumn, writtenColumns } from "./writtenColumns.js";
import { jsonOf, type MotionBidsTexts, tableOf, writtenSystem } from "./writtenSystem.js";

/** A recording's files as texts, with the names that the standard gives them. */
export interface WrittenMotionBids extends MotionBidsTexts {
  readonly names: MotionBidsNames;
  /** Markers at a rate of their own, as a tracking system of their own. */
  readonly markers?: MotionBidsTexts & { readonly names: MotionBidsNames };
  /** `*_events.tsv` and its sidecar, where the recording has events. */
  readonly events?: string;
  readonly eventsSidecar?: string;
  /** `dataset_description.json`, at the top of the data set. */
  readonly datasetDescription: string;
}

/** Version of the standard that the files keep to. */
const BIDS_VERSION = "1.10.0";

/**
 * Writes a recording as Motion-BIDS files of a derivative data set, which {@link readMotionBids} reads back to the same
 * numbers.
 *
 * Forces, centre of pressure, free moment, platforms as recorded and `other` become channels of type MISC, markers of type
 * POS; markers at another rate, start or length than the channels become a tracking system of their own in `markers`.
 * A column `quantity` says what a channel holds; `tracked_point` is the plate. What the standard has no field for (start,
 * runner, speed, surface, grade, footwear, platforms' corners) stands in the sidecar under `GaitKinetics`.
 *
 * Units: SI, as in the recording, numbers in full precision; a gap is `n/a`.
 * Limits: cautions are not written; those about gaps come back on reading. Text that has `markers` or `events` is whole
 * only with their files. Events, and markers of their own, are named without `tracksys`: a second system of the same person
 * and task needs another `sub`, `task` or `run` (or `markersTracksys`), or its files take the names of the first one's.
 * Source: Jeung et al. (2024), Sci. Data 11:716; BIDS specification 1.10, which allows further columns and fields.
 * @param recording - Checked before it is written.
 * @param options - {@link WRITE_MOTION_BIDS_DEFAULTS} where left out.
 * @throws GaitKineticsError as {@link checkRecording} and {@link motionBidsNames}; `out-of-range`: a name, plate, unit or
 * label that cannot be written so that it comes back, a task name whose letters and digits are not `task`; `conflict`: two
 * markers of one name, one label for two tracking systems; `too-short`: markers without a frame.
 * @example
 * writeMotionBids(recording, { sub: "07" }).names.channels // "sub-07_task-running_tracksys-force_channels.tsv"
 */
export function writeMotionBids(
  recording: Recording,
  options: WriteMotionBidsOptions = {},
): WrittenMotionBids {
  const { markersTracksys, taskName, datasetName, ...entities }: Complete<WriteMotionBidsOptions> =
    withDefaults(WRITE_MOTION_BIDS_DEFAULTS, options);
  const names = motionBidsNames(entities);
  const task = taskOf(taskName, entities.task);
  const { sampleRate, startTime, events = [] } = checkRecording(recording);
  const markers = recording.markers?.markers.length === 0 ? null : (recording.markers ?? null);
  const hasChannels = recording.channels.length > 0 || (recording.platforms ?? []).length > 0;
  // Markers alone set the rate of the file; the recording's own is kept beside.
  const clock = hasChannels ? { sampleRate, startTime } : (markers ?? { sampleRate, startTime });
  const together = markers === null || !hasChannels || isOnClock(markers, recording);
  const columns = writtenColumns(recording, together ? markers : null);
  const facts = (systemName: string, rate: number, own: Readonly<Record<string, unknown>>) => ({
    taskName: task,
    systemName,
    sampleRate: rate,
    own,
  });
  const own = {
    startTime: clock.startTime,
    ...(!hasChannels && { grid: { sampleRate, startTime } }),
    ...statementsOf(recording),
    ...platformsOf(recording, columns),
  };
  return {
    ...writtenSystem(columns, facts(entities.tracksys, clock.sampleRate, own)),
    names,
    ...(markers !== null && !together && { markers: besideOf(markers, entities, markersTracksys, facts) }),
    ...(events.length > 0 && eventsOf(events, clock.startTime)),
    datasetDescription: jsonOf({
      Name: datasetName,
      BIDSVersion: BIDS_VERSION,
      DatasetType: "derivative",
      GeneratedBy: [{ Name: "gait-kinetics", Version: VERSION }],
    }),
  };
}

function besideOf(
  markers: MarkerSet,
  entities: Pick<Complete<WriteMotionBidsOptions>, "sub" | "ses" | "task" | "tracksys" | "run" | "desc">,
  tracksys: string,
  facts: (
    name: string,
    rate: number,
    own: Readonly<Record<string, unknown>>,
  ) => Parameters<typeof writtenSystem>[1],
): NonNullable<WrittenMotionBids["markers"]> {
  if (tracksys === entities.tracksys) {
    fail("conflict", `tracksys and markersTracksys are both ${quoted(tracksys)}; each system needs its own`, {
      argument: "markersTracksys",
    });
  }
  const { sampleRate, startTime } = markers;
  return {
    ...writtenSystem(columnsOfMarkers(markers), facts(tracksys, sampleRate, { startTime })),
    names: motionBidsNames({ ...entities, tracksys }),
  };
}

/** Whether the markers were taken at the same times as the channels. */
function isOnClock(
  { sampleRate, startTime, markers }: MarkerSet,
  { sampleRate: rate, startTime: start, channels, platforms = [] }: Recording,
): boolean {
  const samples = (channels[0] ?? platforms[0]?.channels[0])?.samples.length;
  return sampleRate === rate && startTime === start && markers[0]?.forward.length === samples;
}

function statementsOf({
  subject,
  speed,
  surface,
  grade,
  firstFoot,
  footwear,
}: Recording): Readonly<Record<string, unknown>> {
  // JSON leaves out what is undefined.
  return { mass: subject.mass, height: subject.height, speed, surface, grade, firstFoot, footwear };
}

/** What the columns do not say of the platforms, whose columns stand behind those of the channels. */
function platformsOf(
  { channels, platforms = [] }: Recording,
  columns: readonly WrittenColumn[],
): Readonly<Record<string, unknown>> {
  if (platforms.length === 0) return {};
  const names = columns.slice(channels.length).map(({ name }) => name);
  let first = 0;
  const described = platforms.map(({ channels: own, ...rest }) => {
    const from = first;
    first += own.length;
    return { ...rest, columns: names.slice(from, first) };
  });
  return { platforms: described };
}

function eventsOf(
  events: readonly RecordedEvent[],
  startTime: number,
): Required<Pick<WrittenMotionBids, "events" | "eventsSidecar">> {
  const rows = events.map(({ label, time, side }) => {
    requireWritable(label, "the label of an event");
    return [time - startTime, MISSING, label, side ?? MISSING, time];
  });
  return {
    events: tableOf(["onset", "duration", "trial_type", "side", "recording_time"], rows),
    eventsSidecar: jsonOf({
      onset: { Description: "Time from the first sample.", Units: "s" },
      trial_type: { Description: "What was marked." },
      side: {
        Description: "Foot that it was marked of.",
        Levels: { left: "left foot", right: "right foot" },
      },
      recording_time: { Description: "Time on the clock of the recording.", Units: "s" },
    }),
  };
}

function taskOf(taskName: string | null, task: string): string {
  if (taskName === null) return task;
  if (typeof taskName === "string" && taskName.replace(/[^a-zA-Z0-9]/g, "") === task) return taskName;
  fail(
    "out-of-range",
    `taskName is ${JSON.stringify(taskName) ?? String(taskName)}; its letters and digits must be the label task, ${quoted(task)}`,
    { argument: "taskName", values: { given: taskName, allowed: task } },
  );
}
