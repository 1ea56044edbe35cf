import type { RecordedEvent, Side, Subject, Surface } from "../recording/index.js";
import type {
  Caution,
  Fraction,
  Hertz,
  Kilograms,
  Metres,
  MetresPerSecond,
  MetresPerSecondSquared,
  Samples,
  Seconds,
} from "../units/index.js";

/** Force of the ground on the runner by direction, N: `up` supports, negative `forward` brakes. */
export interface ForceComponents {
  readonly forward?: Samples<"N">;
  readonly up: Samples<"N">;
  readonly right?: Samples<"N">;
}

/**
 * Moment of the ground on the runner about the frame's origin at ground level, N·m; a part not recorded is
 * absent.
 */
export interface MomentComponents {
  readonly forward?: Samples<"N m">;
  readonly up?: Samples<"N m">;
  readonly right?: Samples<"N m">;
}

/** A place that moves, on the samples of the force and in its frame. */
export interface GroundTrack {
  readonly forward: Samples<"m">;
  readonly right: Samples<"m">;
  /** Its height, where it was measured. */
  readonly up?: Samples<"m">;
}

/** Both ends of a foot or shoe: the rearmost point of the heel and the foremost of the toes. */
export interface FootTrack {
  readonly heel: GroundTrack;
  readonly toe: GroundTrack;
}

/** How far markers went over a recording, in the frame of the force. */
export interface MarkerTravel {
  /** From the first place to the last, the median of the markers, m. */
  readonly forward: Metres;
  readonly right: Metres;
  /** Between both places, s. */
  readonly duration: Seconds;
}

/** Names of the markers that places were taken from. */
export interface MarkerSettings {
  readonly sampleRate: number;
  /** Their mean is the centre of mass. */
  readonly centreOfMass?: readonly string[];
  readonly feet?: Readonly<
    Partial<Record<Side, { readonly heel: readonly string[]; readonly toe: readonly string[] }>>
  >;
}

/** What was done to one plate or belt on its way from the recording; numbers in SI units. */
export interface PlateSettings {
  readonly name: string;
  /** The foot that steps on it, where that is known. */
  readonly side?: Side;
  /** Mean force taken off as offset, per component, N; absent where none was taken off. */
  readonly offset?: Readonly<Partial<Record<"forward" | "up" | "right", number>>>;
  /** Mean moment about the middle of the surface taken off as offset, N·m. */
  readonly momentOffset?: Readonly<Partial<Record<"forward" | "up" | "right", number>>>;
  /**
   * Where the offset is from: a stretch the caller stated, the recording's own, unloaded stretches found,
   * nowhere.
   */
  readonly zero: "stated" | "file" | "flights" | "none";
  readonly driftRemoved: boolean;
  readonly flights: number;
  /**
   * Whose force the channels held; `platform` means that they were negated. Absent where channels are forces
   * already.
   */
  readonly forceOn?: "runner" | "platform";
  /** Whether the platform's origin was taken with the opposite sign. */
  readonly originNegated?: boolean;
}

/** What was done to the force on its way from the recording; numbers in SI units. */
export interface GroundReactionSettings {
  /** Mean force taken off as offset, per component, N; absent where none was taken off. */
  readonly offset?: Readonly<Partial<Record<"forward" | "up" | "right", number>>>;
  /** Whether drift was removed linearly between flights. */
  readonly driftRemoved: boolean;
  /** Flight phases found by the rough rule for unloaded stretches. */
  readonly flights: number;
  /** Low-pass filter run over force and moment; `null` for none. */
  readonly filter: { readonly cutoff: number; readonly order: number } | null;
  /** Each named plate or belt that force was taken from; absent for channels that belong to none. */
  readonly plates?: readonly PlateSettings[];
  /** Markers that the centre of mass and the feet were placed by; absent where none were. */
  readonly markers?: MarkerSettings;
}

/**
 * The force between foot and ground in the library's frame: finite samples only, offset and drift taken off,
 * and with it what the numbers behind need of the trial.
 */
export interface GroundReaction {
  readonly sampleRate: Hertz;
  /** Time of the first sample. */
  readonly startTime: Seconds;
  readonly force: ForceComponents;
  readonly moment?: MomentComponents;
  /**
   * Force and moment before a low-pass filter, offset and drift taken off: what the instants of first and last touch are
   * read from, since a filter stretches the rise. Absent where nothing was filtered; then `force` and `moment` are it.
   */
  readonly unfiltered?: { readonly force: ForceComponents; readonly moment?: MomentComponents };
  /**
   * Place of the centre of mass where it was measured, by markers for one, on the same samples and in the same frame.
   * Distances to it are then measured; else they follow from the force.
   */
  readonly centreOfMass?: { readonly forward: Samples<"m"> };
  /** Place of each foot where it was measured, by markers for one. */
  readonly feet?: Readonly<Partial<Record<Side, FootTrack>>>;
  /** How far the recording's markers went; absent where there are none, or they stay within 0.5 m of where they began. */
  readonly markerTravel?: MarkerTravel;
  /**
   * The plates or belts kept apart, each a ground reaction of its own on the same samples and in the same
   * frame; `force` and `moment` above are their sums. Absent where there is one plate, or where all are taken
   * together.
   */
  readonly plates?: readonly GroundReaction[];
  /** The plate's name, where this is one of several. */
  readonly plate?: string;
  /** The foot that steps on this plate, where the recording says so. */
  readonly side?: Side;
  readonly subject: Subject;
  /** Mass by force (mean vertical force over whole strides ÷ gravity), once the strides are known. */
  readonly massByForce?: Kilograms;
  /** Mean forward over mean vertical force over whole strides, less the grade, once the strides are known. */
  readonly forwardBalance?: Fraction;
  /** Mean speed over the ground or belt. */
  readonly speed?: MetresPerSecond;
  readonly surface?: Surface;
  /** Slope, rise over run, uphill positive; level where absent. */
  readonly grade?: number;
  readonly gravity: MetresPerSecondSquared;
  /** The foot of the first complete contact, where the recording states it. */
  readonly firstFoot?: Side;
  /** What was on the feet, in words, where the recording says so. */
  readonly footwear?: string;
  /** Events that somebody marked in the recording, on its clock: they tell left from right. */
  readonly recordedEvents?: readonly RecordedEvent[];
  readonly settings: GroundReactionSettings;
  readonly cautions: readonly Caution[];
}
