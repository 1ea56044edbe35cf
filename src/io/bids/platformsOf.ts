import type { Platform, PlatformChannel } from "../../recording/index.js";
import { fail } from "../../units/index.js";
import { refuseAbsurd } from "../largestValue.js";
import { rowOf } from "./channelsOf.js";
import { fieldOf, isObject, type JsonObject } from "./readObject.js";
import type { System } from "./readSystem.js";
import { OWN_FIELD, quoted } from "./words.js";

const FIELDS = ["type", "corners", "origin", "calibration", "zero", "side"] as const;

/** Platforms as this library describes them in the sidecar; what they hold is checked with the recording. */
export function platformsOf(system: System): readonly Platform[] {
  const stated = fieldOf(system.own, "platforms") ?? [];
  if (!Array.isArray(stated)) refuse("platforms", "is no list");
  return stated.map((platform: unknown, k): Platform => {
    const where = `platforms[${k}]`;
    if (!isObject(platform)) refuse(where, "is no object");
    const fields = FIELDS.flatMap((name) => {
      const value = fieldOf(platform, name);
      return value === undefined ? [] : [[name, value] as const];
    });
    return {
      name: fieldOf(platform, "name"),
      ...Object.fromEntries(fields),
      channels: channelsOf(platform, system, where),
    } as unknown as Platform;
  });
}

function channelsOf(platform: JsonObject, { columns }: System, where: string): PlatformChannel[] {
  const names = fieldOf(platform, "columns");
  if (!Array.isArray(names)) refuse(`${where}.columns`, "is no list of names in channels.tsv");
  return names.map((name: unknown): PlatformChannel => {
    const found = columns.find(({ channel }) => channel.name === name);
    if (found === undefined) {
      refuse(`${where}.columns`, `names ${quoted(String(name))}, which channels.tsv does not`);
    }
    const { channel, samples } = found;
    const unit = unitOf(channel.unit);
    refuseAbsurd(samples, unit, "channels", rowOf(channel.name));
    return { name: channel.recordedName ?? channel.name, unit, samples };
  });
}

/** A recording writes a newton metre apart. */
function unitOf(unit: string): string {
  return unit === "N*m" ? "N m" : unit;
}

function refuse(place: string, what: string): never {
  const where = `${OWN_FIELD}.${place}`;
  fail("unreadable-file", `${where} of the sidecar ${what}`, { argument: "sidecar", where });
}
