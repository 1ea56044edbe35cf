import type { Platform, Recording } from "../../recording/index.js";
import { type Complete, fail } from "../../units/index.js";
import type { Flight } from "../baseline.js";
import type { ToGroundReactionOptions } from "../options.js";
import { channelSource } from "./channelSource.js";
import type { PlateSource } from "./plateSource.js";
import { platformSource } from "./platformSource.js";

/**
 * Every plate of a recording that is asked for: its force platforms and the plates its channels belong to.
 */
export function plateSources(
  recording: Recording,
  settings: Complete<ToGroundReactionOptions>,
  stated: Flight | null,
): PlateSource[] {
  const { channels, platforms = [] } = recording;
  const forces = channels.filter(({ quantity }) => quantity === "force");
  const onPlates = [...new Set(forces.flatMap(({ plate }) => plate ?? []))];
  const names = [...platforms.map(({ name }) => name), ...onPlates];
  const loose = forces.some(({ plate }) => plate === undefined);
  if (loose && names.length > 0) {
    fail(
      "conflict",
      `the recording holds forces of plates (${names.join(", ")}) and forces of none (${forces.flatMap(({ name, plate }) => (plate === undefined ? name : [])).join(", ")}), which may be their sum; leave one kind out`,
      { argument: "recording", values: { plates: names } },
    );
  }
  const twice = names.find((name, k) => names.indexOf(name) !== k);
  if (twice !== undefined) {
    fail("conflict", `a force platform and the plate of channels are both named "${twice}"`, {
      argument: "recording",
      where: twice,
    });
  }
  const { only, sides, coverThickness } = settings;
  for (const [argument, asked] of [
    ["only", only ?? []],
    ["sides", Object.keys(sides ?? {})],
  ] as const) {
    for (const name of asked) if (!names.includes(name)) refuseName(argument, name, names);
  }
  if (coverThickness > 0 && platforms.length === 0) {
    fail(
      "conflict",
      `a cover of ${coverThickness} m is stated, and the recording holds no force platform: where the centre of pressure of channels lies is for their reader to say`,
      { argument: "coverThickness" },
    );
  }
  if (names.length === 0) return [channelSource(recording, null)];
  const taken = (name: string) => only === null || only.includes(name);
  const takenPlatforms = platforms.filter(({ name }) => taken(name));
  refuseSharedChannels(takenPlatforms);
  const sources = [
    ...takenPlatforms.map((platform) => platformSource(platform, settings, stated, recording)),
    ...onPlates.filter(taken).map((name) => channelSource(recording, name)),
  ];
  return sources.map((source) => ({ ...source, side: sides?.[source.name ?? ""] ?? source.side }));
}

/** Two platforms that are made of the same channels would count the same force twice. */
function refuseSharedChannels(platforms: readonly Platform[]): void {
  platforms.forEach((one, k) => {
    for (const { name, channels } of platforms.slice(k + 1)) {
      const same =
        one.channels.some(({ samples }) => varies(samples)) &&
        one.channels.length === channels.length &&
        one.channels.every(({ samples }, i) => equal(samples, channels[i]?.samples));
      if (!same) continue;
      fail(
        "conflict",
        `force platforms "${one.name}" and "${name}" hold the same samples in every channel, and their force would count twice; take one of them: only names the plates to take`,
        { argument: "recording", where: name, values: { platforms: [one.name, name] } },
      );
    }
  });
}

function varies(samples: Float64Array): boolean {
  return samples.some((value) => value !== samples[0]);
}

function equal(a: Float64Array, b: Float64Array | undefined): boolean {
  return b !== undefined && (a === b || a.every((value, i) => value === b[i]));
}

function refuseName(argument: string, name: string, names: readonly string[]): never {
  const has = names.length === 0 ? "the recording names no plate" : `the plates are ${names.join(", ")}`;
  fail("out-of-range", `${argument} names "${name}"; ${has}`, {
    argument,
    values: { given: name, allowed: names },
  });
}
