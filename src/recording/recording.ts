import type { Caution, Hertz, Kilograms, Metres, MetresPerSecond, Seconds } from "../units/index.js";

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
  readonly subject: Subject;
  /** Mean speed over the ground or belt. */
  readonly speed?: MetresPerSecond;
  readonly surface?: Surface;
  /** Slope, rise over run, uphill positive. */
  readonly grade?: number;
  /** The foot of the first complete contact, where the recording states it. */
  readonly firstFoot?: Side;
  readonly origin: RecordingOrigin;
  readonly cautions: readonly Caution[];
}
