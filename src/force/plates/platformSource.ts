import type { Platform } from "../../recording/index.js";
import type { Complete, Hertz, Seconds } from "../../units/index.js";
import type { Flight } from "../baseline.js";
import { centreOfPressureFloor } from "../moments.js";
import { decodePlatform, refusePlatformGaps } from "../platform/decodePlatform.js";
import type { PlatformOptions } from "../platform/platformOptions.js";
import { pressColumns } from "../platform/platformReaction.js";
import { pressMoment } from "../platform/pressMoment.js";
import type { AlongDirections } from "../platform/rotate.js";
import { saturationCautions } from "../saturation.js";
import type { PlateSource } from "./plateSource.js";
import { refuseUpsideDown } from "./refuseUpsideDown.js";
import { sideOfName } from "./sideOfName.js";

/** A force platform's channels, in the library's frame. */
export function platformSource(
  platform: Platform,
  options: Complete<PlatformOptions>,
  stated: Flight | null,
  { sampleRate, startTime }: { readonly sampleRate: Hertz; readonly startTime: Seconds },
): PlateSource {
  refusePlatformGaps(platform, sampleRate, startTime);
  const zero = platform.zero ?? null;
  const decoded = decodePlatform(platform, options, stated);
  const { frame, force, moment, sign, originNegated, cautions } = decoded;
  // Before an offset is taken off, which would make the load the unloaded level.
  if (decoded.againstLoad) {
    refuseUpsideDown(
      force.up,
      `the vertical force of force platform "${platform.name}"`,
      `forceOn "${options.forceOn}" is stated for its channels: state forceOn "${sign === 1 ? "platform" : "runner"}", or leave it out`,
      0,
    );
  }
  const press: PlateSource["press"] = (corrected) => {
    // A platform's force has all three components.
    const whole = corrected as AlongDirections;
    const floor = centreOfPressureFloor(
      corrected.up,
      pressColumns(platform),
      sampleRate,
      startTime,
      platform.name,
    );
    const { coverThickness } = options;
    return {
      moment: pressMoment(platform, frame, whole, sign, { coverThickness, floor }) ?? undefined,
      floor,
    };
  };
  return {
    name: platform.name,
    side: platform.side ?? sideOfName(platform.name),
    force,
    moment,
    press: platform.type === 1 ? press : null,
    centre: frame.centre,
    zero,
    signs: { forceOn: sign === 1 ? "runner" : "platform", originNegated },
    cautions: [...cautions, ...saturationCautions(platform.channels, force.up)],
  };
}
