import { type Complete, type Metres, requireNumber, requireOneOf } from "../../units/index.js";

/** How the channels of a force platform are read. */
export interface PlatformOptions {
  /** Thickness of a cover on the plates that their corners and origins do not include, m. */
  readonly coverThickness?: Metres | undefined;
  /**
   * Whose force the channels hold: the ground's on the runner, the runner's on the platform, or `auto`, as
   * the load shows: the ground can only push up.
   */
  readonly forceOn?: "auto" | "runner" | "platform" | undefined;
  /**
   * Whether the platform's origin is taken as stored, all of it negated, or `auto`: negated where it would
   * put the transducer above the surface.
   */
  readonly originSign?: "auto" | "stored" | "negated" | undefined;
}

/** No cover is thicker, m. A judgement. */
const THICKEST_COVER = 0.5;

/** Checks the options of a platform. */
export function requirePlatformOptions(options: Complete<PlatformOptions>): void {
  requireNumber("coverThickness", options.coverThickness, {
    from: 0,
    to: THICKEST_COVER,
    unit: "m",
    hint: "a larger number may be in millimetres",
  });
  requireOneOf("forceOn", options.forceOn, ["auto", "runner", "platform"]);
  requireOneOf("originSign", options.originSign, ["auto", "stored", "negated"]);
}
