import {
  type Channel,
  checkFootwear,
  checkRecording,
  type MarkerSet,
  PLAUSIBLE_BOUNDS,
  type RecordedEvent,
  type Recording,
} from "../../recording/index.js";
import {
  type Caution,
  type Complete,
  fail,
  requireNumber,
  requireOneOf,
  withDefaults,
} from "../../units/index.js";
import { shownStatement } from "../shownStatement.js";
import { channelsOf } from "./channelsOf.js";
import { markersOf } from "./markersOf.js";
import {
  type MotionBidsFiles,
  type MotionBidsRecording,
  READ_MOTION_BIDS_DEFAULTS,
  type ReadMotionBidsOptions,
} from "./options.js";
import { platformsOf } from "./platformsOf.js";
import { readEvents } from "./readEvents.js";
import { fieldOf, isObject, type JsonObject } from "./readObject.js";
import { type Description, readDescription, readSystem, type System } from "./readSystem.js";
import { textOf } from "./textOf.js";
import { COLUMN_WORDS, OWN_FIELD, quoted } from "./words.js";

/**
 * Reads a recording from the files of the Motion-BIDS standard: the samples of `*_motion.tsv`, what its columns hold from
 * `*_channels.tsv`, the rate from `*_motion.json`, the axes from `*_channels.json`.
 *
 * The standard has no type for force: it is read from channels of type MISC whose name has a word for it (`Fz`, `force`,
 * `GRF`, `COPx`, `free moment`, `Tz`) and whose unit fits, along the axis that `component` names; `columns` states what
 * a name does not say, and a table that this library wrote says it in a column `quantity`. Where several points are
 * tracked, `tracked_point` is the plate. Channels of type POS become markers, one of type LATENCY the time; everything
 * else is kept as `other`. Where an option and the file differ, the option counts, with a `Caution`.
 *
 * Units: N, m, N·m, s and their multiples in the files; SI in the recording; those of `other` as written.
 * Limits: `n/a` is a gap (NaN), and of markers also the number that `MissingValues` names in all three coordinates.
 * Without axes in the file or the option nothing along an axis is read: they are never guessed. A sidecar inherited from a
 * folder above is merged by the caller. A height of the centre of pressure and a free moment about a horizontal axis must
 * be 0 within 0.001 m or N·m, and are dropped. A force beyond 100 kN, a length, moment or voltage beyond a million in SI units is
 * no recorded one and is refused with its row (judgement of this library). Rows that do not fill `RecordingDuration` are said.
 * Source: Jeung et al. (2024), Sci. Data 11:716; the columns, types and `SpatialAxes` of the BIDS specification 1.10.
 * @param files - Texts or bytes, never paths; `markers` for a tracking system at another rate.
 * @param options - {@link READ_MOTION_BIDS_DEFAULTS} where left out.
 * @throws GaitKineticsError `unreadable-file`: broken JSON, a missing column, rows of another width than the table of
 * channels has rows, a word where a number belongs; `missing-value`: no `SamplingFrequency`; `too-short`: no sample;
 * `unknown-axes`; `unknown-unit`; `unit-mismatch`; `uneven-time`; `conflict`: two times, two sets of markers; as
 * {@link checkRecording} for what the recording then holds; `out-of-range`, `unknown-option`, `wrong-type`, `not-finite`.
 * @example
 * readMotionBids(writeMotionBids(recording)).sampleRate // 1000
 * readMotionBids({ motion: "700\n701", channels: "name\tcomponent\ttype\ttracked_point\tunits\nFz\tz\tMISC\tplate\tN", sidecar: '{"TaskName":"run","SamplingFrequency":1000}' }, { axes: { z: "up" } }).channels[0]?.direction // "up"
 */
export function readMotionBids(files: MotionBidsRecording, options: ReadMotionBidsOptions = {}): Recording {
  const settings = checkedOptions(options);
  if (typeof files !== "object" || files === null) {
    fail("wrong-type", `files are ${String(files)}; { motion, channels, sidecar } are needed`, {
      argument: "files",
    });
  }
  const description = readDescription(files, "");
  const besides =
    files.markers === undefined ? null : readDescription(requireFiles(files.markers), "markers.");
  refuseUnknownColumns(settings, [description, ...(besides === null ? [] : [besides])]);
  const system = readSystem(files, description, settings);
  const beside =
    files.markers === undefined || besides === null ? null : readMarkers(files.markers, besides, settings);
  const here = markersOf(system);
  if (here.set !== null && beside !== null) {
    fail("conflict", "both tracking systems hold markers; a recording holds one set of them", {
      argument: "markers",
    });
  }
  const { channels, cautions } = channelsOf(system, here.used);
  const platforms = platformsOf(system);
  const markers = here.set ?? beside?.set;
  const grid = gridOf(system, channels, platforms.length > 0);
  const said = overrule(system.own, settings);
  const events = eventsOf(files, system);
  return checkRecording({
    ...grid,
    channels,
    ...(platforms.length > 0 && { platforms }),
    ...(markers !== undefined && { markers }),
    ...(events.length > 0 && { events }),
    ...said.statements,
    origin: { format: "motion-bids", rows: system.rows },
    cautions: [...system.cautions, ...(beside?.system.cautions ?? []), ...said.cautions, ...cautions],
  });
}

function requireFiles(files: MotionBidsFiles): MotionBidsFiles {
  if (typeof files === "object" && files !== null) return files;
  fail("wrong-type", `markers are ${String(files)}; { motion, channels, sidecar } are needed`, {
    argument: "markers",
  });
}

function readMarkers(
  files: MotionBidsFiles,
  description: Description,
  settings: Complete<ReadMotionBidsOptions>,
): { readonly system: System; readonly set: MarkerSet } {
  const system = readSystem(files, description, settings);
  const { set, used } = markersOf(system);
  if (set === null) {
    fail("missing-channel", "markers hold no point with three coordinates of type POS", {
      argument: "markers",
    });
  }
  const unread = system.columns.filter((column) => !used.has(column) && column.role.kind !== "time");
  if (unread.length === 0) return { system, set };
  const names = unread
    .slice(0, 5)
    .map(({ channel }) => quoted(channel.name))
    .join(", ");
  const caution: Caution = {
    code: "channel-not-read",
    message: `${names}${unread.length > 5 ? ` and ${unread.length - 5} more` : ""} stand beside the markers and are not read; a recording has one rate for its channels`,
    where: "markers",
  };
  return { system: { ...system, cautions: [...system.cautions, caution] }, set };
}

/** Rate and start of the channels; where there are none, those that the recording had when it was written. */
function gridOf(
  { sampleRate, startTime, own }: System,
  channels: readonly Channel[],
  hasPlatforms: boolean,
): Pick<Recording, "sampleRate" | "startTime"> {
  const grid = fieldOf(own, "grid");
  if (channels.length > 0 || hasPlatforms || !isObject(grid)) return { sampleRate, startTime };
  // What they hold is checked with the recording.
  return {
    sampleRate: fieldOf(grid, "sampleRate") as number,
    startTime: fieldOf(grid, "startTime") as number,
  };
}

function eventsOf({ events }: MotionBidsRecording, { startTime }: System): readonly RecordedEvent[] {
  return events === undefined ? [] : readEvents(textOf(events, "events"), startTime);
}

const SUBJECT = ["mass", "height"] as const;
const TRIAL = ["speed", "surface", "grade", "firstFoot", "footwear"] as const;

/** Puts what the caller states over what the sidecar states, and says where they differ. */
function overrule(
  own: JsonObject,
  settings: Complete<ReadMotionBidsOptions>,
): {
  readonly statements: Pick<Recording, "subject" | (typeof TRIAL)[number]>;
  readonly cautions: readonly Caution[];
} {
  const cautions: Caution[] = [];
  const statementOf = (
    key: (typeof SUBJECT | typeof TRIAL)[number],
  ): readonly (readonly [string, unknown])[] => {
    const inFile = fieldOf(own, key);
    const stated = settings[key];
    if (stated === null) return inFile === undefined ? [] : [[key, inFile]];
    if (inFile !== undefined && inFile !== stated) {
      const shown = typeof inFile === "number" || typeof inFile === "string" ? inFile : null;
      cautions.push({
        code: "option-over-file",
        message: `"${OWN_FIELD}" of the sidecar states ${key} ${shown === null ? quoted(String(inFile)) : shownStatement(key, shown)}, the option ${shownStatement(key, stated)}; the option was used`,
        where: key,
        values: { file: shown, option: stated },
      });
    }
    return [[key, stated]];
  };
  // Values of the file are checked with the recording.
  const subject = Object.fromEntries(SUBJECT.flatMap(statementOf)) as Recording["subject"];
  const trial = Object.fromEntries(TRIAL.flatMap(statementOf)) as Pick<Recording, (typeof TRIAL)[number]>;
  return { statements: { subject, ...trial }, cautions };
}

function checkedOptions(options: ReadMotionBidsOptions): Complete<ReadMotionBidsOptions> {
  const settings = withDefaults<ReadMotionBidsOptions>(READ_MOTION_BIDS_DEFAULTS, options);
  for (const name of ["mass", "height", "speed", "grade"] as const) {
    if (settings[name] !== null) requireNumber(name, settings[name], PLAUSIBLE_BOUNDS[name]);
  }
  if (settings.surface !== null) requireOneOf("surface", settings.surface, ["ground", "belt"]);
  if (settings.firstFoot !== null) requireOneOf("firstFoot", settings.firstFoot, ["left", "right"]);
  if (settings.footwear !== null) checkFootwear("footwear", settings.footwear);
  requireOneOf("forceOn", settings.forceOn, ["runner", "ground"]);
  const columns: unknown = settings.columns;
  if (!isObject(columns)) {
    fail("wrong-type", 'columns is no object with a word for each channel, such as { "plate z": "force" }', {
      argument: "columns",
    });
  }
  for (const [name, word] of Object.entries(columns))
    requireOneOf(`columns[${quoted(name)}]`, word, COLUMN_WORDS);
  return settings;
}

function refuseUnknownColumns(
  { columns }: Complete<ReadMotionBidsOptions>,
  descriptions: readonly Description[],
): void {
  const names = descriptions.flatMap(({ channels }) => channels.map(({ name }) => name));
  const unknown = Object.keys(columns).find((name) => !names.includes(name));
  if (unknown === undefined) return;
  fail(
    "out-of-range",
    `columns names ${quoted(unknown)}, and channels.tsv does not; it names ${names.slice(0, 20).map(quoted).join(", ")}`,
    { argument: "columns", where: "channels.tsv", values: { given: unknown, allowed: names } },
  );
}
