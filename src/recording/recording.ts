import type { Caution, Hertz, Kilograms, Metres, MetresPerSecond, Samples, Seconds } from "../units/index.js";

/** The three directions of the library's frame: forward along the surface, up normal to it, right of the runner. */
export type Direction = "forward" | "up" | "right";

/** What a channel measures. */
export type ChannelQuantity = "force" | "centre-of-pressure" | "free-moment" | "other";

/** One measured series, in SI units and, where it has a direction, in the library's frame. */
export interface Channel {
  /** As the file names it. */
  readonly name: string;
  readonly quantity: ChannelQuantity;
  /** `null` for a quantity without a direction in the frame. */
  readonly direction: Direction | null;
  /** SI unit of the samples: N, m, N m; as written for `other`. */
  readonly unit: string;
  /** NaN marks a gap: no value was recorded there. */
  readonly samples: Float64Array;
  /** The plate or belt it belongs to, where the recording has several: `left` and `right` are belts of that foot. */
  readonly plate?: string;
}

/** A point in the library's frame. */
export interface Position {
  readonly forward: Metres;
  readonly up: Metres;
  readonly right: Metres;
}

/** How a force platform's channels state force and moment: the types that the C3D format describes. */
export type PlatformType = 1 | 2 | 3 | 4;

/** One channel of a force platform as recorded, along the plate's own axes. */
export interface PlatformChannel {
  readonly name: string;
  /** N, N m or m; V for type 4. */
  readonly unit: string;
  /** NaN marks a gap. */
  readonly samples: Float64Array;
}

/**
 * A force platform whose channels are not yet forces in the library's frame; `toGroundReaction` makes them so.
 *
 * Channels by type: 1 Fx Fy Fz Px Py Tz; 2 Fx Fy Fz Mx My Mz; 3 Fx12 Fx34 Fy14 Fy23 Fz1 Fz2 Fz3 Fz4; 4 six volts.
 */
export interface Platform {
  readonly name: string;
  readonly type: PlatformType;
  readonly channels: readonly PlatformChannel[];
  /** Corners of the top surface: the quadrants (+x, +y), (−x, +y), (−x, −y), (+x, −y) of the plate's axes. */
  readonly corners: readonly [Position, Position, Position, Position];
  /**
   * In the plate's axes, m, as stored. Types 2 and 4: from the transducer's origin to the middle of the top surface.
   * Type 3: half the sensors' spacing along x and along y, and the height of their plane. Not used by type 1.
   */
  readonly origin: readonly [number, number, number];
  /** Type 4: six rows of six, force rows in N/V, moment rows in N·m/V; corrected = matrix × measured. */
  readonly calibration?: readonly (readonly number[])[];
  /** Samples that the recording names as unloaded: from the first to before the last, counted from 0. */
  readonly zero?: { readonly from: number; readonly to: number };
  /** The foot that steps on it, where the recording says so. */
  readonly side?: Side;
}

/** The way of one marker; NaN in all three where it was not seen. */
export interface Marker {
  readonly name: string;
  readonly forward: Samples<"m">;
  readonly up: Samples<"m">;
  readonly right: Samples<"m">;
}

/** Markers recorded beside the force, at a rate of their own. */
export interface MarkerSet {
  readonly sampleRate: Hertz;
  /** Time of the first frame, on the recording's clock. */
  readonly startTime: Seconds;
  readonly markers: readonly Marker[];
}

/** An event that somebody marked in the recording. */
export interface RecordedEvent {
  readonly label: string;
  /** On the recording's clock. */
  readonly time: Seconds;
  readonly side?: Side;
}

/** Who was recorded. */
export interface Subject {
  readonly mass?: Kilograms;
  readonly height?: Metres;
}

/** What the foot lands on: standing ground, or a belt that runs backward under the runner at the trial's speed. */
export type Surface = "ground" | "belt";

/** Which foot made a contact. */
export type Side = "left" | "right";

/** Where a recording came from. */
export interface RecordingOrigin {
  /** The reader's name for the format, such as `csv`. */
  readonly format: string;
  readonly rows?: number;
}

/**
 * The one form every reader brings a file into: channels of equal length and rate, in SI units and in the frame
 * `forward`, `up`, `right` (force of the ground on the runner), with what the file says of the runner and the trial.
 */
export interface Recording {
  readonly sampleRate: Hertz;
  /** Time of the first sample. */
  readonly startTime: Seconds;
  readonly channels: readonly Channel[];
  /** Force platforms as recorded, on the same samples as the channels. */
  readonly platforms?: readonly Platform[];
  readonly markers?: MarkerSet;
  readonly events?: readonly RecordedEvent[];
  readonly subject: Subject;
  /** Mean speed over the ground or belt. */
  readonly speed?: MetresPerSecond;
  readonly surface?: Surface;
  /** Slope, rise over run, uphill positive. */
  readonly grade?: number;
  /** The foot of the first complete contact, where the recording states it. */
  readonly firstFoot?: Side;
  /** What was on the feet, in words: one line of text, such as `road shoe, 250 g`. */
  readonly footwear?: string;
  readonly origin: RecordingOrigin;
  readonly cautions: readonly Caution[];
}
