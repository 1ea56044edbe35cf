import {
  type Channel,
  type ChannelQuantity,
  checkFootwear,
  checkRecording,
  type Direction,
  PLAUSIBLE_BOUNDS,
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
import { refuseAbsurd } from "../largestValue.js";
import { shownStatement } from "../shownStatement.js";
import type { C3dFile } from "./c3dFile.js";
import { eventsOf } from "./eventsOf.js";
import { labAxes } from "./labAxes.js";
import { lengthUnit } from "./lengthUnit.js";
import { markersOf } from "./markersOf.js";
import { READ_C3D_DEFAULTS, type ReadC3dOptions } from "./options.js";
import { type OwnStatements, readOwnGroup, type Statements } from "./ownGroup.js";
import { parameterTable } from "./parameterTable.js";
import { platformsOf } from "./platformsOf.js";
import { quoted } from "./refuse.js";
import { scaledSamples } from "./scaledSamples.js";
import { statedUnits } from "./statedUnits.js";
import { subjectOf } from "./subjectOf.js";
import { unitOf } from "./unitOf.js";

/** How far a rate that this library stated may lie from the format's 32-bit number and be the same, as a share. */
const SAME_RATE = 1e-6;

/**
 * Makes a recording of a C3D file that was read: what {@link readC3d} does behind {@link parseC3d}.
 *
 * Units: SI, in the library's frame.
 * Limits: as of {@link readC3d}.
 * @param file - From {@link parseC3d}.
 * @param options - {@link READ_C3D_DEFAULTS} where left out.
 * @throws GaitKineticsError as {@link readC3d}.
 * @example
 * c3dToRecording(recordingToC3d(recording)).channels.length === recording.channels.length // true
 */
export function c3dToRecording(file: C3dFile, options: ReadC3dOptions = {}): Recording {
  const settings = checkedOptions(options);
  const table = parameterTable(file.groups);
  const own = readOwnGroup(table, file.analogue.channels.length);
  const units = statedUnits(file.analogue.channels, settings.units);
  const axes = labAxes(file, table, settings.axes, own?.axes);
  const { unit: length, cautions: ofLength } =
    file.points.length + (table.count("FORCE_PLATFORM", "USED") ?? 0) > 0
      ? lengthUnit(file, table, settings.lengthUnit)
      : { unit: { name: "m", toMetres: 1 }, cautions: [] };
  const {
    platforms,
    taken,
    cautions: ofPlatforms,
  } = platformsOf({
    file,
    table,
    axes,
    length,
    own,
    unitsOfOption: units,
  });
  const { channels, cautions: ofChannels } = channelsOf(file, own, taken, units);
  const sampleRate = sampleRateOf(file, own?.rate);
  const frameRate = frameRateOf(file, own?.markerRate ?? sampleRate / file.analogue.samplesPerFrame);
  const clock = own?.clock ?? 0;
  const startTime = clock + (file.firstFrame - 1) / frameRate;
  const { markers, cautions: ofMarkers } = markersOf(
    file,
    table,
    axes,
    length.toMetres,
    own?.markerFrames,
    own === null,
  );
  const { events, cautions: ofEvents } = eventsOf(file, table, clock, startTime);
  const { values, cautions: ofTrial } = trialOf(own, table, settings);
  const { mass, height, ...trial } = values;
  return checkRecording({
    sampleRate,
    startTime,
    channels,
    ...(platforms.length > 0 && { platforms }),
    ...(markers.length > 0 && { markers: { sampleRate: frameRate, startTime, markers } }),
    ...(events.length > 0 && { events }),
    subject: { ...(mass !== undefined && { mass }), ...(height !== undefined && { height }) },
    ...trial,
    origin: { format: "c3d" },
    cautions: [
      ...file.cautions,
      ...ofLength,
      ...ofPlatforms,
      ...ofChannels,
      ...ofMarkers,
      ...ofEvents,
      ...ofTrial,
    ],
  });
}

/** The rate this library wrote, where the format's own is that one rounded, or is of markers alone. */
function sampleRateOf({ analogue, frameRate }: C3dFile, written: number | undefined): number {
  if (analogue.channels.length === 0) return written ?? frameRate;
  const { sampleRate } = analogue;
  return written !== undefined && Math.abs(written / sampleRate - 1) < SAME_RATE ? written : sampleRate;
}

/** Likewise; one frame holds a whole number of samples. */
function frameRateOf({ frameRate }: C3dFile, exact: number): number {
  return Math.abs(exact / frameRate - 1) < SAME_RATE ? exact : frameRate;
}

function checkedOptions(options: ReadC3dOptions): Complete<ReadC3dOptions> {
  const settings = withDefaults<ReadC3dOptions>(READ_C3D_DEFAULTS, options);
  const { mass, height, speed, grade, surface, firstFoot, footwear, lengthUnit: unit, units } = settings;
  if (mass !== null) requireNumber("mass", mass, PLAUSIBLE_BOUNDS.mass);
  if (height !== null) requireNumber("height", height, PLAUSIBLE_BOUNDS.height);
  if (speed !== null) requireNumber("speed", speed, PLAUSIBLE_BOUNDS.speed);
  if (grade !== null) requireNumber("grade", grade, PLAUSIBLE_BOUNDS.grade);
  if (surface !== null) requireOneOf("surface", surface, ["ground", "belt"]);
  if (firstFoot !== null) requireOneOf("firstFoot", firstFoot, ["left", "right"]);
  if (footwear !== null) checkFootwear("footwear", footwear);
  if (unit !== null) requireOneOf("lengthUnit", unit, ["mm", "cm", "m"]);
  if (
    typeof units !== "object" ||
    units === null ||
    !Object.values(units).every((one) => typeof one === "string")
  ) {
    fail("wrong-type", 'units is no object with a text for each channel, such as { FZ1: "N" }', {
      argument: "units",
    });
  }
  return settings;
}

const ROLE = /^(-?)(force|centre-of-pressure|free-moment) (forward|up|right)$/;
const UNITS: Readonly<Record<Exclude<ChannelQuantity, "other">, string>> = {
  force: "N",
  "centre-of-pressure": "m",
  "free-moment": "N m",
};

/** Channels that no platform took: as `other`, in the units the file writes, or what this library wrote them as. */
function channelsOf(
  { analogue }: C3dFile,
  own: OwnStatements | null,
  taken: ReadonlySet<number>,
  stated: Readonly<Record<string, string>>,
): { readonly channels: readonly Channel[]; readonly cautions: readonly Caution[] } {
  const roles = own?.roles ?? [];
  const names = new Set<string>();
  const channels: Channel[] = [];
  let gaps = 0;
  for (const [k, { name, unit, samples }] of analogue.channels.entries()) {
    const [, minus, quantity, direction] = ROLE.exec(roles[k] ?? "") ?? [];
    if (quantity === undefined && taken.has(k)) continue;
    const scaled = scaledSamples(samples, minus === "-" ? -1 : 1, own?.samples);
    const plate = own?.plates[k] ? { plate: own.plates[k] } : {};
    const given = Object.hasOwn(stated, name) ? stated[name] : undefined;
    if (quantity !== undefined) {
      const known = quantity as Exclude<ChannelQuantity, "other">;
      const recorded = own?.names[k] || name;
      if (given !== undefined) refuseStatedUnit(name, given, UNITS[known]);
      refuseAbsurd(scaled, UNITS[known], "bytes", (i) => `channel ${quoted(recorded)}, sample ${i + 1}`);
      channels.push({
        name: recorded,
        quantity: known,
        direction: direction as Direction,
        unit: UNITS[known],
        samples: scaled,
        ...plate,
      });
      continue;
    }
    gaps += own === null && scaled.some(Number.isNaN) ? 1 : 0;
    const base = name || `channel ${k + 1}`;
    let unique = base;
    for (let n = 2; names.has(`${own?.plates[k] ?? ""}\n${unique}`); n++) unique = `${base} (${n})`;
    names.add(`${own?.plates[k] ?? ""}\n${unique}`);
    channels.push({
      name: unique,
      quantity: "other",
      direction: null,
      unit: given ?? unit,
      samples: scaled,
      ...plate,
    });
  }
  const cautions: Caution[] =
    gaps === 0
      ? []
      : [
          {
            code: "gap",
            message: `${gaps} analogue channels hold samples that are no finite number; they were taken as gaps`,
            where: "ANALOG",
            values: { count: gaps },
          },
        ];
  return { channels, cautions };
}

/** This library states the unit of its own channels; an option may repeat it. */
function refuseStatedUnit(name: string, given: string, unit: string): void {
  const [one, two] = [unitOf(given), unitOf(unit)];
  if (one !== null && one.dimension === two?.dimension && one.toSi === two.toSi) return;
  fail(
    "conflict",
    `units states ${quoted(given)} for channel ${quoted(name)}, which this library wrote in ${unit}; leave the option out`,
    { argument: "units", where: name, values: { file: unit, option: given } },
  );
}

/** What the caller states, over what the file states. */
function trialOf(
  own: OwnStatements | null,
  table: ReturnType<typeof parameterTable>,
  settings: Complete<ReadC3dOptions>,
): { readonly values: Statements; readonly cautions: readonly Caution[] } {
  const { cautions: ofSubject, ...subject } = own === null ? subjectOf(table) : { cautions: [] };
  const stated: Statements = { ...subject, ...own?.statements };
  const values: Record<string, number | string> = { ...stated };
  const cautions: Caution[] = [];
  for (const key of ["mass", "height", "speed", "surface", "grade", "firstFoot", "footwear"] as const) {
    const given = settings[key];
    const inFile = stated[key];
    if (given === null) continue;
    values[key] = given;
    if (inFile === undefined || inFile === given) continue;
    cautions.push({
      code: "option-over-file",
      message: `the file states ${key} ${shownStatement(key, inFile)}, the option ${shownStatement(key, given)}; the option was used`,
      where: key,
      values: { file: inFile, option: given },
    });
  }
  // What was taken from the file and then overruled needs no second sentence.
  const kept = ofSubject.filter(
    ({ code }) => !["mass", "height"].some((key) => code.startsWith(key) && settings[key as "mass"] !== null),
  );
  return { values: values as Statements, cautions: [...kept, ...cautions] };
}
