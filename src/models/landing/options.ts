import type { Surface } from "../../recording/index.js";
import {
  type Complete,
  type Fraction,
  type Metres,
  type MetresPerSecond,
  type MetresPerSecondSquared,
  type Newtons,
  requireNumber,
  requireOneOf,
  STANDARD_GRAVITY,
  withDefaults,
} from "../../units/index.js";

/**
 * How the rise of the vertical force is carried on below the threshold, to where it leaves zero: `curve`, between a line and
 * a parabola as the rise itself bends; `line`, a straight line through the threshold and the foot level.
 */
export type ToeShape = "curve" | "line";

/** Vertical force at which the foot's place is read: newtons, or body weights by force over the stride. */
export type FootLevel = Newtons | { readonly bodyWeights: Fraction };

/** How the two touches of a contact are read, and in which frame. */
export interface TouchOptions {
  /** `belt` carries the foot backward at `speed`; `ground` stands still. */
  readonly surface?: Surface | undefined;
  /** Mean speed over the surface; a belt needs it, on the ground it is held against the one found. */
  readonly speed?: MetresPerSecond | null | undefined;
  /** Where the rise and the fall begin to be read; below the foot level. */
  readonly threshold?: Newtons | undefined;
  readonly footLevel?: FootLevel | undefined;
  readonly toe?: ToeShape | undefined;
}

/** What {@link landingFromForce} needs beside the force. */
export interface LandingOptions extends TouchOptions {
  readonly gravity?: MetresPerSecondSquared | undefined;
  /** Rise over run, uphill positive. */
  readonly grade?: number | undefined;
  /**
   * Mean forward over mean vertical force of the whole trial, less the grade: taken off as a plate's tilt. Without it a
   * stride's forward force is taken to change the speed, as it does from stride to stride.
   */
  readonly balance?: Fraction | undefined;
  /** Body height, of which the centre of mass is taken to be at 0.55; `null` where it is not known. */
  readonly height?: Metres | null | undefined;
}

/**
 * Standing ground, 20 N and 250 N. Below some 250 N the centre of pressure of a treadmill is known to centimetres only. The
 * curve: on synthetic runs a line through both levels leaves the take-off 20 to 25 mm too short.
 */
export const TOUCH_DEFAULTS: Complete<TouchOptions> = {
  surface: "ground",
  speed: null,
  threshold: 20,
  footLevel: 250,
  toe: "curve",
};

/** As {@link TOUCH_DEFAULTS}, on the level under standard gravity, height not known. */
export const LANDING_DEFAULTS: Complete<LandingOptions> = {
  surface: "ground",
  speed: null,
  threshold: 20,
  footLevel: 250,
  toe: "curve",
  gravity: STANDARD_GRAVITY,
  grade: 0,
  balance: 0,
  height: null,
};

/** Completes and checks the options of both. */
export function landingSettings(options: LandingOptions): Complete<LandingOptions> {
  const settings = withDefaults<LandingOptions>(LANDING_DEFAULTS, options);
  requireOneOf("surface", settings.surface, ["ground", "belt"]);
  requireOneOf("toe", settings.toe, ["curve", "line"]);
  requireNumber("threshold", settings.threshold, { above: 0, unit: "N" });
  if (settings.speed !== null) requireNumber("speed", settings.speed, { from: 0, unit: "m/s" });
  requireNumber("balance", settings.balance, { from: -0.1, to: 0.1 });
  if (settings.height !== null) requireNumber("height", settings.height, { above: 0, to: 3, unit: "m" });
  const { footLevel } = settings;
  if (typeof footLevel === "object" && footLevel !== null) {
    requireNumber("footLevel.bodyWeights", footLevel.bodyWeights, { above: 0, below: 2 });
  } else requireNumber("footLevel", footLevel, { above: 0, unit: "N" });
  return settings;
}
