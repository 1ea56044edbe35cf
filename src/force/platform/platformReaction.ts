import { checkRecording, type Platform, type Side } from "../../recording/index.js";
import { type Caution, type Complete, requireNumber, type Samples, withDefaults } from "../../units/index.js";
import { withoutOffset } from "../baseline.js";
import { centreOfPressureFloor } from "../moments.js";
import { decodePlatform, refusePlatformGaps } from "./decodePlatform.js";
import type { PlatformFrame } from "./platformFrame.js";
import { type PlatformOptions, requirePlatformOptions } from "./platformOptions.js";
import { pressMoment } from "./pressMoment.js";
import type { AlongDirections } from "./rotate.js";

/** How one platform's channels become force and moment. */
export interface PlatformReactionOptions extends PlatformOptions {
  /**
   * Samples from the first to before the last, counted from 0, whose mean comes off every channel; `null` for
   * none.
   */
  readonly unloaded?: { readonly from: number; readonly to: number } | null | undefined;
}

/**
 * Nothing is taken off, no cover; signs as load and geometry show: files of both signs exist among public
 * recordings.
 */
export const PLATFORM_REACTION_DEFAULTS: Complete<PlatformReactionOptions> = {
  coverThickness: 0,
  forceOn: "auto",
  originSign: "auto",
  unloaded: null,
};

/** Force and moment of one platform on the runner, at its own surface. */
export interface PlatformReaction {
  readonly name: string;
  readonly side?: Side;
  readonly frame: PlatformFrame;
  readonly force: Readonly<Record<"forward" | "up" | "right", Samples<"N">>>;
  /** About the middle of the surface, in the library's frame; `null` where the platform does not state it. */
  readonly moment: Readonly<Record<"forward" | "up" | "right", Samples<"N m">>> | null;
  readonly cautions: readonly Caution[];
}

/**
 * Turns the channels of one force platform into force and moment of the ground on the runner at the plate's
 * surface.
 *
 * Formula: channels to force F and moment M about the transducer by the platform's type; about the middle of
 * the surface M − o × F, o the origin lengthened by the cover; both rotated into the library's frame by the
 * axes of {@link PlatformFrame}. Type 3, with a and b half the sensors' spacings: Mx = b (Fz1 + Fz2 − Fz3 −
 * Fz4), My = a (−Fz1 + Fz2 + Fz3 − Fz4), Mz = b (−Fx12 + Fx34) + a (Fy14 − Fy23).
 * Units: N, N m, m or V in, as a `Recording` holds them; N and N·m out.
 * Limits: type 3 whose origin lacks the spacings gives force alone. Makers' own corrections of the centre of
 * pressure are not applied.
 * Source: pages on TYPE, ORIGIN, CORNERS and CAL_MATRIX of the C3D format (c3d.org); moments of type 3 follow
 * from statics.
 * @param platform - As a recording holds it.
 * @param options - {@link PLATFORM_REACTION_DEFAULTS} where left out.
 * @throws GaitKineticsError `gap`: a missing sample; `out-of-range`, `wrong-type`, `missing-channel`,
 * `unit-mismatch`, `missing-value`: as `checkRecording` of the platform, or an option out of bounds.
 * @example
 * const corner = (forward: number, right: number) => ({ forward, up: 0, right });
 * const corners = [corner(0.3, 0.2), corner(-0.3, 0.2), corner(-0.3, -0.2), corner(0.3, -0.2)] as const;
 * const channel = (name: string, unit: string, value: number) => ({ name, unit, samples: new Float64Array([value]) });
 * const forces = [channel("Fx", "N", 0), channel("Fy", "N", 0), channel("Fz", "N", 700)];
 * const moments = [channel("Mx", "N m", 0), channel("My", "N m", -70), channel("Mz", "N m", 0)];
 * const platform = { name: "one", type: 2, channels: [...forces, ...moments], corners, origin: [0, 0, -0.04] } as const;
 * platformReaction(platform).force.up[0] // 700
 */
export function platformReaction(
  platform: Platform,
  options: PlatformReactionOptions = {},
): PlatformReaction {
  const settings = withDefaults<PlatformReactionOptions>(PLATFORM_REACTION_DEFAULTS, options);
  requirePlatformOptions(settings);
  checkRecording({
    sampleRate: 1,
    startTime: 0,
    channels: [],
    platforms: [platform],
    subject: {},
    origin: { format: "platform" },
    cautions: [],
  });
  refusePlatformGaps(platform, null, 0);
  const { unloaded } = settings;
  const { length } = platform.channels[0]?.samples ?? [];
  if (unloaded !== null) {
    requireNumber("unloaded.from", unloaded.from, { from: 0, whole: true });
    requireNumber("unloaded.to", unloaded.to, { above: unloaded.from, to: length, whole: true });
  }
  const decoded = decodePlatform(platform, settings, unloaded);
  const level = (samples: Float64Array): Float64Array =>
    unloaded === null ? samples : withoutOffset(samples, meanOver(samples, unloaded));
  const force = levelled(decoded.force, level);
  let moment = decoded.moment === null ? null : levelled(decoded.moment, level);
  if (platform.type === 1) {
    const floor = centreOfPressureFloor(force.up, pressColumns(platform), 1, 0, platform.name);
    const { coverThickness } = settings;
    moment = pressMoment(platform, decoded.frame, force, decoded.sign, { coverThickness, floor });
  }
  const { name, side } = platform;
  return {
    name,
    ...(side !== undefined && { side }),
    frame: decoded.frame,
    force,
    moment,
    cautions: decoded.cautions,
  };
}

/** The columns of a type-1 platform whose gaps below the floor are normal. */
export function pressColumns({
  channels,
}: Platform): Record<"forward" | "right" | "freeMoment", Float64Array> {
  const [, , , px, py, twist] = channels.map(({ samples }) => samples);
  return { forward: px as Float64Array, right: py as Float64Array, freeMoment: twist as Float64Array };
}

function levelled(series: AlongDirections, level: (samples: Float64Array) => Float64Array): AlongDirections {
  return { forward: level(series.forward), up: level(series.up), right: level(series.right) };
}

function meanOver(samples: Float64Array, { from, to }: { from: number; to: number }): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += samples[i] as number;
  return sum / (to - from);
}
