import type { Side } from "../recording/index.js";
import {
  type Complete,
  type MetresPerSecondSquared,
  type Newtons,
  type Seconds,
  STANDARD_GRAVITY,
} from "../units/index.js";
import type { PlatformOptions } from "./platform/platformOptions.js";

/**
 * How a recording becomes a ground reaction; the options of {@link PlatformOptions} concern force platforms
 * alone.
 */
export interface ToGroundReactionOptions extends PlatformOptions {
  /**
   * What is taken off every channel of force and moment: the mean of the unloaded stretches that are found;
   * the mean over the samples that the file names as unloaded; `auto`, the file's where nobody stood on the
   * plate then, else that of the stretches found; or nothing.
   */
  readonly offset?: "auto" | "flights" | "file" | "none" | undefined;
  /**
   * A stretch in which nobody is on any plate, s from the first sample; its mean is the offset, whatever
   * `offset` says.
   */
  readonly zero?: { readonly from: Seconds; readonly to: Seconds } | null | undefined;
  /** Whether drift is taken off linearly between flights: where the flights show it, always, or never. */
  readonly drift?: "auto" | "always" | "never" | undefined;
  /**
   * Range of the flight levels in any channel of force above which `auto` removes drift, N; more where the
   * noise is large. A moment that drifts alone has a limit of its own, 1 N·m.
   */
  readonly driftLimit?: Newtons | undefined;
  /**
   * Several plates or belts: kept `apart`, a foot each; taken `together` as their sum; `auto`, apart but for
   * plates that one foot stood on at once in at least every second contact, and that belong to no two feet.
   */
  readonly plates?: "auto" | "apart" | "together" | undefined;
  /** Names of the plates to take; `null` for all. */
  readonly only?: readonly string[] | null | undefined;
  /**
   * The foot of each plate by its name, before what the recording or a name with "left" or "right" says;
   * `null` for none.
   */
  readonly sides?: Readonly<Record<string, Side>> | null | undefined;
  /** Markers on the pelvis whose mean is taken for the centre of mass; `null` to have it follow from the force. */
  readonly centreOfMassMarkers?: MarkerNames | null | undefined;
  /** Markers of heel and toes of each foot; `null` where none are to be used. */
  readonly feet?: Readonly<Partial<Record<Side, FootMarkers>>> | null | undefined;
  readonly gravity?: MetresPerSecondSquared | undefined;
}

/** One marker by its name, or several whose mean counts. */
export type MarkerNames = string | readonly string[];

/** Markers at both ends of a foot or shoe. */
export interface FootMarkers {
  readonly heel: MarkerNames;
  readonly toe: MarkerNames;
}

/**
 * Offset from the file or the flights; drift removed where the flights' levels range over more than 5 N (of a
 * moment alone, 1 N·m) and more than noise explains; plates apart.
 * Source: rule of this library, tried on the open recording of Fukuchi, Fukuchi & Duarte (2017), PeerJ
 * 5:e3298.
 */
export const TO_GROUND_REACTION_DEFAULTS: Complete<ToGroundReactionOptions> = {
  coverThickness: 0,
  forceOn: "auto",
  originSign: "auto",
  offset: "auto",
  zero: null,
  drift: "auto",
  driftLimit: 5,
  plates: "auto",
  only: null,
  sides: null,
  centreOfMassMarkers: null,
  feet: null,
  gravity: STANDARD_GRAVITY,
};
