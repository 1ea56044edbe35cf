import type { Platform } from "../../recording/index.js";
import { type Caution, type Complete, fail } from "../../units/index.js";
import type { Flight } from "../baseline.js";
import { decodeChannels, knowsSensors } from "./decodeChannels.js";
import { forceSign } from "./forceSign.js";
import { type PlatformFrame, platformFrame } from "./platformFrame.js";
import type { PlatformOptions } from "./platformOptions.js";
import { type AlongDirections, movedBy, toLibrary } from "./rotate.js";
import { surfaceOrigin } from "./surfaceOrigin.js";
import { combine } from "./vectors.js";

/** A platform's force of the ground on the runner in the library's frame, offset not yet taken off. */
export interface DecodedPlatform {
  readonly frame: PlatformFrame;
  readonly force: AlongDirections;
  /** About the middle of the surface; `null` where the channels do not state it, or (type 1) not yet. */
  readonly moment: AlongDirections | null;
  /** What the channels were multiplied by. */
  readonly sign: 1 | -1;
  /** A sign that was stated, against what the load shows. */
  readonly againstLoad: boolean;
  readonly originNegated: boolean;
  readonly cautions: readonly Caution[];
}

/** A surface tilted by more than this is said, degrees. A judgement: 2° shift 3.5 % of the vertical force. */
const TILT = 2;

/**
 * Decodes, rotates and signs a platform's channels. All steps are linear, so that an offset may come off
 * behind them.
 * @param stated - Samples that the caller states to be unloaded, `null` for none.
 */
export function decodePlatform(
  platform: Platform,
  options: Complete<PlatformOptions>,
  stated: Flight | null,
): DecodedPlatform {
  const { name, type } = platform;
  const bare = platformFrame(platform);
  const frame = platformFrame(platform, options.coverThickness);
  const decoded = decodeChannels(platform);
  const raw = toLibrary(decoded.force, bare, 1);
  const { sign, againstLoad, cautions: signCautions } = forceSign(platform, raw.up, stated, options.forceOn);
  const force = sign === 1 ? raw : toLibrary(decoded.force, bare, -1);
  const origin = surfaceOrigin(platform, bare, options.originSign);
  const cautions: Caution[] = [...signCautions, ...origin.cautions, ...frameCautions(name, frame)];
  if (type === 3 && !knowsSensors(platform)) {
    cautions.push({
      code: "no-moment",
      message: `the origin of "${name}" (${platform.origin.join(" ")} m) does not say how far apart its sensors are: its force is known, its moment and centre of pressure are not`,
      where: name,
    });
  }
  if (decoded.moment === null) {
    return { frame, force, moment: null, sign, againstLoad, originNegated: origin.negated, cautions };
  }
  const [ox, oy, oz] = origin.vector;
  const toSurface = combine([ox, bare.x], [oy, bare.y], [oz, bare.z]);
  const surface = combine([1, toSurface], [options.coverThickness, frame.normal]);
  const moment = movedBy(toLibrary(decoded.moment, bare, sign), force, combine([-1, surface]));
  return { frame, force, moment, sign, againstLoad, originNegated: origin.negated, cautions };
}

/** Refuses a gap in the channels that force is made of: for type 1 the first three, for the others all. */
export function refusePlatformGaps(platform: Platform, sampleRate: number | null, startTime: number): void {
  const channels = platform.type === 1 ? platform.channels.slice(0, 3) : platform.channels;
  for (const { name, samples } of channels) {
    const gap = samples.findIndex(Number.isNaN);
    if (gap < 0) continue;
    let missing = 0;
    for (let i = gap; i < samples.length; i++) if (Number.isNaN(samples[i])) missing++;
    const time = sampleRate === null ? null : startTime + gap / sampleRate;
    const at = time === null ? `sample ${gap}` : `${time.toFixed(3)} s (sample ${gap})`;
    fail(
      "gap",
      `"${name}" of force platform "${platform.name}" lacks ${missing} of ${samples.length} samples, the first at ${at}; fill the gaps before force is computed`,
      {
        where: `${platform.name}, ${name}, sample ${gap}`,
        values: {
          platform: platform.name,
          channel: name,
          sample: gap,
          missing,
          ...(time !== null && { time }),
        },
      },
    );
  }
}

function frameCautions(name: string, { z, normal }: PlatformFrame): Caution[] {
  const cautions: Caution[] = [];
  const tilt = (Math.acos(Math.min(1, Math.abs(normal.up))) * 180) / Math.PI;
  if (tilt > TILT) {
    cautions.push({
      code: "tilted-plate",
      message: `the surface of "${name}" is tilted by ${tilt.toFixed(1)}° against the horizontal of the frame: force is given along the frame's axes, not along and normal to that surface`,
      where: name,
      values: { tilt },
    });
  }
  if (z.up > 0) {
    cautions.push({
      code: "plate-axes",
      message: `the corners of "${name}" come in an order that lets its z axis point up, where the format has it point down; they were followed: check the horizontal force`,
      where: name,
    });
  }
  return cautions;
}
