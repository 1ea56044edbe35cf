import { checkRecording, type Platform, type PlatformType } from "../../recording/index.js";
import { type Caution, isGaitKineticsError } from "../../units/index.js";
import type { C3dChannel } from "./c3dFile.js";
import type { ParameterTable } from "./parameterTable.js";
import { plateCalibration } from "./plateCalibration.js";
import { plateCorners, plateNormal, type Triple } from "./plateCorners.js";
import { CHANNEL_QUANTITIES, platformChannels } from "./platformChannels.js";
import type { PlatformSource, Say } from "./platformSource.js";
import { sayDoubtfulMoments } from "./sayDoubtfulMoments.js";

/** Cosine of the angle, 30°, up to which a plate may lean from the vertical that the axes state. A judgement. */
const LEAST_COSINE = 0.866;

/** The platforms of a file, and which of its channels they took. */
export interface FilePlatforms {
  readonly platforms: readonly Platform[];
  readonly taken: ReadonlySet<number>;
  readonly cautions: readonly Caution[];
}

/**
 * Brings the force platforms of a file into the library's frame and SI units. One whose type the format's pages do not define, or
 * that lacks what its type needs, is left out with a `Caution`; its channels stay readable.
 */
export function platformsOf(source: PlatformSource): FilePlatforms {
  const { table, file } = source;
  const corners = plateCorners(table);
  const types = table.numbers("FORCE_PLATFORM", "TYPE");
  const platforms: Platform[] = [];
  const taken = new Set<number>();
  const cautions: Caution[] = [];
  for (const [plate, own] of corners.entries()) {
    const name = source.own?.platformNames[plate] || String(plate + 1);
    const skip = (code: string, why: string, values: Caution["values"] = {}) => {
      cautions.push({
        code,
        message: `force platform ${name} ${why}; its channels are kept as recorded, without force`,
        where: `FORCE_PLATFORM, platform ${plate + 1}`,
        values,
      });
    };
    const type = types[plate];
    if (type !== 1 && type !== 2 && type !== 3 && type !== 4) {
      const stated = type === undefined ? "states no type" : `is of type ${type}`;
      skip(
        "platform-type-unsupported",
        `${stated}; types 1, 2, 3 and 4 are known, and of others no two public descriptions agree`,
        { type: type ?? null },
      );
      continue;
    }
    const numbers = channelNumbers(table, plate, CHANNEL_QUANTITIES[type].length);
    if (numbers.some((number) => isOwnForce(source.own?.roles[number - 1]))) continue;
    const channels = numbers.flatMap((number) => file.analogue.channels[number - 1] ?? []);
    if (channels.length < CHANNEL_QUANTITIES[type].length) {
      skip(
        "platform-incomplete",
        `names the channels ${numbers.join(", ") || "none"} of the ${file.analogue.channels.length} in the file; type ${type} needs ${CHANNEL_QUANTITIES[type].length}`,
      );
      continue;
    }
    if (own === null) {
      skip("platform-incomplete", "has no corners in FORCE_PLATFORM:CORNERS");
      continue;
    }
    const built = buildPlatform(source, plate, name, type, channels, own);
    if (typeof built === "string") {
      skip("platform-incomplete", built);
      continue;
    }
    cautions.push(...built.cautions);
    platforms.push(built.platform);
    for (const number of numbers) taken.add(number - 1);
  }
  return { platforms, taken, cautions };
}

function buildPlatform(
  source: PlatformSource,
  plate: number,
  name: string,
  type: PlatformType,
  channels: readonly C3dChannel[],
  own: readonly [Triple, Triple, Triple, Triple],
): { readonly platform: Platform; readonly cautions: readonly Caution[] } | string {
  const { table, axes, length } = source;
  const cautions: Caution[] = [];
  const where = `FORCE_PLATFORM, platform ${plate + 1}`;
  const say = (code: string, message: string, values: Caution["values"] = {}) =>
    cautions.push({ code, message: `force platform ${name}: ${message}`, where, values });
  const corner = ([x, y, z]: Triple) => axes.position(x, y, z, length.toMetres);
  const corners = [corner(own[0]), corner(own[1]), corner(own[2]), corner(own[3])] as const;
  const normal = axes.position(...plateNormal(own), 1);
  const cosine = Math.abs(normal.up) / Math.hypot(normal.forward, normal.up, normal.right);
  if (cosine < LEAST_COSINE) {
    say(
      "axes-doubtful",
      `its surface stands ${((Math.acos(cosine) * 180) / Math.PI).toFixed(0)}° out of the horizontal by the axes stated; check axes`,
      { cosine },
    );
  }
  const origins = table.numbers("FORCE_PLATFORM", "ORIGIN");
  const metres = (k: number) => (origins[3 * plate + k] ?? 0) * length.toMetres;
  const origin = [metres(0), metres(1), metres(2)] as const;
  if (origins.length < 3 * plate + 3 && type !== 1) {
    say(
      "platform-incomplete",
      "FORCE_PLATFORM:ORIGIN is missing; 0 0 0 was used, so the centre of pressure may be off",
    );
  }
  const halfSide = Math.max(...sidesOf(corners)) / 2;
  const scaled = platformChannels(source, type, channels, halfSide, say);
  if (typeof scaled === "string") return scaled;
  const calibration = type === 4 ? plateCalibration(source, plate, scaled, halfSide, say) : null;
  if (typeof calibration === "string") return calibration;
  const zero = zeroOf(source, plate, say);
  const side = sideOf(source.own?.platformSides[plate]);
  const platform: Platform = {
    name,
    type,
    channels: scaled,
    corners,
    origin,
    ...(calibration !== null && { calibration }),
    ...(zero !== null && { zero }),
    ...(side !== null && { side }),
  };
  const problem = problemOf(platform);
  if (problem !== null) return problem;
  if (source.own === null) sayDoubtfulMoments(platform, halfSide, say);
  return { platform, cautions };
}

function sidesOf([a, b, c]: Platform["corners"]): readonly [number, number] {
  const side = (p: Platform["corners"][0], q: Platform["corners"][0]) =>
    Math.hypot(p.forward - q.forward, p.up - q.up, p.right - q.right);
  return [side(a, b), side(b, c)];
}

/** A platform that this library made of force channels goes back to those. */
function isOwnForce(role: string | undefined): boolean {
  return role !== undefined && role !== "platform" && role !== "other";
}

/** Numbers, from 1, of a platform's channels; each platform has a column of its own. */
function channelNumbers(table: ParameterTable, plate: number, count: number): readonly number[] {
  const rows = table.get("FORCE_PLATFORM", "CHANNEL")?.dimensions[0] ?? 0;
  const numbers = table.numbers("FORCE_PLATFORM", "CHANNEL");
  return numbers.slice(rows * plate, rows * plate + Math.min(rows, count)).filter((number) => number > 0);
}

/**
 * FORCE_PLATFORM:ZERO is first and last frame of points (sample files of the format call it "3D frame range"), counted from
 * 1 from the file's first, both included; as samples from the first of the first frame to before the first behind the last. A
 * last frame before the first, or a 0, is none.
 */
function zeroOf(
  { file, table, own }: PlatformSource,
  plate: number,
  say: Say,
): { readonly from: number; readonly to: number } | null {
  if (own !== null) {
    const [from, to] = (own.platformZeros[plate] ?? "").split(" ").map(Number);
    return from === undefined || to === undefined ? null : { from, to };
  }
  const [first = 0, last = 0] = table.numbers("FORCE_PLATFORM", "ZERO");
  if (!(first >= 1 && last >= first)) return null;
  if (first > file.frames) {
    say(
      "zero-outside",
      `FORCE_PLATFORM:ZERO names frames ${first} to ${last}; the file has ${file.frames}: not used`,
      {
        first,
        last,
      },
    );
    return null;
  }
  const each = file.analogue.samplesPerFrame;
  return { from: (first - 1) * each, to: Math.min(last, file.frames) * each };
}

function sideOf(text: string | undefined): "left" | "right" | null {
  return text === "left" || text === "right" ? text : null;
}

/** What speaks against a platform, `null` where nothing does. */
function problemOf(platform: Platform): string | null {
  try {
    checkRecording({
      sampleRate: 1,
      startTime: 0,
      channels: [],
      platforms: [platform],
      subject: {},
      origin: { format: "c3d" },
      cautions: [],
    });
    return null;
  } catch (caught) {
    if (!isGaitKineticsError(caught)) throw caught;
    return `cannot be used: ${caught.message}`;
  }
}
