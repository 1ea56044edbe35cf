import { type Caution, type Complete, fail } from "../../units/index.js";
import { durationCaution } from "./durationCaution.js";
import { frameAxes } from "./frameAxes.js";
import type { MotionBidsFiles, ReadMotionBidsOptions } from "./options.js";
import { type BidsChannel, readChannels } from "./readChannels.js";
import { readMotion } from "./readMotion.js";
import { fieldOf, isObject, type JsonObject, readObject } from "./readObject.js";
import { type Role, roleOf } from "./roleOf.js";
import { type SampleTimes, sampleTimes, samplingFrequency } from "./sampleTimes.js";
import { textOf } from "./textOf.js";
import { OWN_FIELD, quoted } from "./words.js";

/** A channel with what becomes of it and its samples as the file has them. */
export interface SystemColumn {
  readonly channel: BidsChannel;
  readonly role: Role;
  readonly samples: Float64Array;
}

/** The files of one tracking system, read. */
export interface System extends SampleTimes {
  readonly columns: readonly SystemColumn[];
  readonly rows: number;
  /** What this library writes beside the standard's fields. */
  readonly own: JsonObject;
  /** A number that stands for a value that is not there; `null` where the file has no such number. */
  readonly missing: number | null;
}

/** Sidecar and table of one tracking system, read before its samples. */
export interface Description {
  readonly prefix: string;
  readonly sidecar: JsonObject;
  readonly own: JsonObject;
  readonly channels: readonly BidsChannel[];
  readonly cautions: readonly Caution[];
}

/** Reads what a tracking system's files say of its samples; `prefix` stands before their names in messages. */
export function readDescription(files: MotionBidsFiles, prefix: string): Description {
  const name = `${prefix}sidecar`;
  const sidecar = readObject(textOf(files.sidecar, name), name);
  const rate = samplingFrequency(sidecar, name);
  const table = `${prefix}channels`;
  return {
    prefix,
    sidecar,
    own: ownOf(sidecar, name),
    ...readChannels(textOf(files.channels, table), table, rate),
  };
}

/** Reads the samples of one tracking system, by its description. */
export function readSystem(
  files: MotionBidsFiles,
  { prefix, sidecar, own, channels, cautions }: Description,
  settings: Complete<ReadMotionBidsOptions>,
): System {
  const frames = frameAxes(axesSidecar(files, prefix), settings.axes);
  const roles = channels.map((channel) => {
    const stated = Object.hasOwn(settings.columns, channel.name) ? settings.columns[channel.name] : undefined;
    return roleOf(channel, stated, frames, settings.forceOn);
  });
  const motion = `${prefix}motion`;
  const samples = readMotion(textOf(files.motion, motion), motion, channels);
  const columns = channels.map((channel, k) => ({
    channel,
    role: roles[k] as Role,
    samples: samples[k] as Float64Array,
  }));
  const named = `${prefix}sidecar`;
  const times = sampleTimes(sidecar, named, stampsOf(columns), startOf(own));
  const rows = (samples[0] as Float64Array).length;
  const isOwn = fieldOf(sidecar, OWN_FIELD) !== undefined;
  return {
    columns,
    rows,
    own,
    missing: missingOf(sidecar),
    ...times,
    cautions: [
      ...taskCaution(sidecar, named),
      ...times.cautions,
      ...durationCaution(sidecar, rows, times.sampleRate, isOwn),
      ...cautions,
      ...frames.cautions(),
      ...doubts(columns),
    ],
  };
}

function axesSidecar({ channelsSidecar }: MotionBidsFiles, prefix: string): JsonObject | null {
  if (channelsSidecar === undefined) return null;
  const name = `${prefix}channelsSidecar`;
  return readObject(textOf(channelsSidecar, name), name);
}

function ownOf(sidecar: JsonObject, argument: string): JsonObject {
  const own = fieldOf(sidecar, OWN_FIELD) ?? {};
  if (isObject(own)) return own;
  return fail("unreadable-file", `"${OWN_FIELD}" of ${argument} is no object`, {
    argument,
    where: OWN_FIELD,
  });
}

function startOf(own: JsonObject): number {
  const start = fieldOf(own, "startTime") ?? 0;
  if (typeof start === "number" && Number.isFinite(start)) return start;
  return fail("unreadable-file", `"startTime" of "${OWN_FIELD}" is no finite number`, {
    where: `${OWN_FIELD}.startTime`,
  });
}

function missingOf(sidecar: JsonObject): number | null {
  const word = fieldOf(sidecar, "MissingValues");
  const value = typeof word === "string" && word.trim() !== "" ? Number(word) : word;
  return typeof value === "number" && Number.isFinite(value) ? value : null;
}

function stampsOf(columns: readonly SystemColumn[]): Float64Array | null {
  const found = columns.filter(({ role }) => role.kind === "time");
  const [first, second] = found;
  if (second !== undefined) {
    fail(
      "conflict",
      `${quoted((first as SystemColumn).channel.name)} and ${quoted(second.channel.name)} both hold the time of the samples`,
      {
        argument: "channels",
        where: second.channel.name,
      },
    );
  }
  if (first === undefined || first.role.kind !== "time") return null;
  const { factor } = first.role;
  return first.samples.map((stamp) => stamp * factor);
}

function taskCaution(sidecar: JsonObject, argument: string): Caution[] {
  if (typeof fieldOf(sidecar, "TaskName") === "string") return [];
  return [
    {
      code: "missing-metadata",
      message: `${argument} has no "TaskName", which the standard requires; the numbers do not need it`,
      where: "TaskName",
    },
  ];
}

function doubts(columns: readonly SystemColumn[]): Caution[] {
  const doubtful = columns.flatMap(({ channel: { name }, role }) =>
    role.kind === "other" && role.doubt !== undefined ? [{ name, doubt: role.doubt }] : [],
  );
  const [first] = doubtful;
  if (first === undefined) return [];
  const some = doubtful
    .slice(0, 5)
    .map(({ name }) => quoted(name))
    .join(", ");
  const more = doubtful.length > 5 ? ` and ${doubtful.length - 5} more` : "";
  return [
    {
      code: "channel-not-mapped",
      message: `${some}${more} may be of force, but ${first.doubt}; kept as other: state it in columns, as { ${quoted(first.name)}: "force" }`,
      where: first.name,
    },
  ];
}
