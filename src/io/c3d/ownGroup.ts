import { type Axes, checkFootwear, PLAUSIBLE_BOUNDS, type Recording } from "../../recording/index.js";
import { requireNumber, requireOneOf } from "../../units/index.js";
import type { C3dGroup } from "./c3dFile.js";
import { parameterParts } from "./parameterParts.js";
import type { ParameterTable } from "./parameterTable.js";
import { quoted, refuseFile } from "./refuse.js";

/** The group in which this library writes what the format has no parameter for. */
export const OWN_GROUP: string = "GAIT_KINETICS";

/** The laboratory axes of the files that this library writes: right-handed, with the vertical along z. */
export const OWN_AXES: Required<{ [K in keyof Axes]: NonNullable<Axes[K]> }> = {
  x: "forward",
  y: "left",
  z: "up",
};

/** What is said of runner and trial. */
export type Statements = Pick<Recording["subject"], "mass" | "height"> &
  Pick<Recording, "speed" | "surface" | "grade" | "firstFoot" | "footwear">;

/** What the group holds; absent parameters are `undefined` or empty. */
export interface OwnStatements {
  readonly axes: Axes | undefined;
  readonly statements: Statements;
  /** Hz, exact, where the format's own number is rounded. */
  readonly rate: number | undefined;
  readonly markerRate: number | undefined;
  /** Time of frame 1 of the trial, s. */
  readonly clock: number | undefined;
  /** Samples and marker frames without those that fill up the last frame. */
  readonly samples: number | undefined;
  readonly markerFrames: number | undefined;
  /** For each analogue channel what it is, such as `force up` or `-force forward`, `other` or `platform`. */
  readonly roles: readonly string[];
  /** For each analogue channel its name in the recording, blank where it is the channel's label. */
  readonly names: readonly string[];
  /** For each analogue channel the plate it belongs to, blank where none. */
  readonly plates: readonly string[];
  readonly platformNames: readonly string[];
  readonly platformSides: readonly string[];
  /** For each platform `FROM TO`, or blank. */
  readonly platformZeros: readonly string[];
}

const TEXT_UNITS = { MASS: " kg", HEIGHT: " m", SPEED: " m/s", GRADE: "" } as const;

/**
 * Reads the group; `null` where the file has none.
 * @param channels - Analogue channels of the file; their roles are refused where another program changed their number.
 */
export function readOwnGroup(table: ParameterTable, channels: number): OwnStatements | null {
  const texts = (name: string) => table.texts(OWN_GROUP, name);
  const [x, y, z] = texts("AXES");
  const own = ["AXES", "RATE", "CHANNELS"].some((name) => table.get(OWN_GROUP, name) !== undefined);
  if (!own) return null;
  const roles = texts("CHANNELS");
  if (roles.length !== channels) {
    refuseFile(
      `${OWN_GROUP}:CHANNELS`,
      `it names ${roles.length} channels and the file has ${channels}: it was changed after this library wrote it; take the group out to read the file as any other`,
    );
  }
  const number = (name: string, unit = ""): number | undefined => {
    const text = table.text(OWN_GROUP, name);
    if (text === undefined || text === "") return undefined;
    const digits = unit !== "" && text.endsWith(unit) ? text.slice(0, -unit.length) : text;
    const value = Number(digits);
    if (digits.trim() === "" || !Number.isFinite(value)) {
      refuseFile(
        `${OWN_GROUP}:${name}`,
        `it is ${quoted(text)}; a number is needed${unit && `, with${unit}`}`,
      );
    }
    return value;
  };
  const bounded = (name: keyof typeof TEXT_UNITS, key: keyof typeof PLAUSIBLE_BOUNDS) => {
    const value = number(name, TEXT_UNITS[name]);
    if (value === undefined) return {};
    return { [key]: requireNumber(`${OWN_GROUP}:${name}`, value, PLAUSIBLE_BOUNDS[key]) };
  };
  const word = <const T extends string>(name: string, key: string, allowed: readonly T[]) => {
    const text = table.text(OWN_GROUP, name);
    return text === undefined || text === ""
      ? {}
      : { [key]: requireOneOf(`${OWN_GROUP}:${name}`, text, allowed) };
  };
  const whole = (name: string) => {
    const value = number(name);
    return value === undefined || !Number.isInteger(value) || value < 0 ? undefined : value;
  };
  return {
    axes: x === undefined ? undefined : ({ x, y, z } as Axes),
    statements: {
      ...bounded("MASS", "mass"),
      ...bounded("HEIGHT", "height"),
      ...bounded("SPEED", "speed"),
      ...bounded("GRADE", "grade"),
      ...word("SURFACE", "surface", ["ground", "belt"]),
      ...word("FIRST_FOOT", "firstFoot", ["left", "right"]),
      ...footwearOf(table),
    },
    rate: number("RATE", " Hz"),
    markerRate: number("MARKER_RATE", " Hz"),
    clock: number("FRAME_1_TIME", " s"),
    samples: whole("SAMPLES"),
    markerFrames: whole("MARKER_FRAMES"),
    roles,
    names: texts("NAMES"),
    plates: texts("PLATES"),
    platformNames: texts("PLATFORMS"),
    platformSides: texts("PLATFORM_SIDES"),
    platformZeros: texts("PLATFORM_ZEROS"),
  };
}

function footwearOf(table: ParameterTable): Pick<Statements, "footwear"> {
  const text = table.text(OWN_GROUP, "FOOTWEAR");
  return text === undefined || text === "" ? {} : { footwear: checkFootwear(`${OWN_GROUP}:FOOTWEAR`, text) };
}

/** What {@link ownGroup} writes beside the statements. */
export type OwnContent = Pick<
  OwnStatements,
  | "rate"
  | "markerRate"
  | "clock"
  | "samples"
  | "markerFrames"
  | "roles"
  | "names"
  | "plates"
  | "platformNames"
  | "platformSides"
  | "platformZeros"
>;

/** Makes the group. Numbers are texts with all their digits. */
export function ownGroup(id: number, { subject, ...trial }: Recording, content: OwnContent): C3dGroup {
  const line = (name: string, value: number | string | undefined, description: string, unit = "") =>
    value === undefined
      ? []
      : parameterParts({ name, type: "character", values: [`${value}${unit}`], single: true, description });
  const list = (name: string, values: readonly string[], description: string) =>
    values.every((value) => value === "")
      ? []
      : parameterParts({ name, type: "character", values, description });
  return {
    id,
    name: OWN_GROUP,
    description: "what a recording of gait-kinetics holds beside the format's own parameters",
    locked: false,
    parameters: [
      ...list("AXES", [OWN_AXES.x, OWN_AXES.y, OWN_AXES.z], "where x, y and z point, seen by the runner"),
      ...line("MASS", subject.mass, "of the runner", TEXT_UNITS.MASS),
      ...line("HEIGHT", subject.height, "of the runner", TEXT_UNITS.HEIGHT),
      ...line("SPEED", trial.speed, "mean speed over the ground or belt", TEXT_UNITS.SPEED),
      ...line("SURFACE", trial.surface, "ground or belt"),
      ...line("GRADE", trial.grade, "slope, rise over run, uphill positive", TEXT_UNITS.GRADE),
      ...line("FIRST_FOOT", trial.firstFoot, "foot of the first complete contact"),
      ...line("FOOTWEAR", trial.footwear, "what was on the feet"),
      ...line("RATE", content.rate, "samples in a second", " Hz"),
      ...line("MARKER_RATE", content.markerRate, "marker frames in a second", " Hz"),
      ...line("FRAME_1_TIME", content.clock, "time of the trial's frame 1", " s"),
      ...line("SAMPLES", content.samples, "samples without those that fill up the last frame"),
      ...line("MARKER_FRAMES", content.markerFrames, "frames with markers"),
      ...list("CHANNELS", content.roles, "what each channel is; - where its sign is turned"),
      ...list(
        "NAMES",
        content.names,
        "the name of each channel in the recording, where its label is another",
      ),
      ...list("PLATES", content.plates, "the plate of each channel"),
      ...list("PLATFORMS", content.platformNames, "names of the force platforms"),
      ...list("PLATFORM_SIDES", content.platformSides, "foot on each force platform"),
      ...list(
        "PLATFORM_ZEROS",
        content.platformZeros,
        "first unloaded sample, from 0, and the one after the last",
      ),
    ],
  };
}
