import type { PlatformType, RecordedEvent, Side, Subject, Surface } from "../../recording/index.js";
import type { Caution } from "../../units/index.js";

/** A point by direction (forward, up, right) or, where directions are not known, by the file's own axis (x, y, z). */
export type DescribedPoint = Readonly<Record<string, number>>;

/** One channel in numbers: its range and how many of its samples are blank. */
export interface DescribedChannel {
  /** As the file names it. */
  readonly name: string;
  /** What it measures, and along which direction where that is known, such as `force up`; `null` where not known. */
  readonly holds: string | null;
  readonly unit: string;
  /** Smallest sample; `null` where every sample is blank. */
  readonly least: number | null;
  /** Largest sample; `null` where every sample is blank. */
  readonly most: number | null;
  /** Samples without a value. */
  readonly blank: number;
  /** The plate or belt it belongs to, where the recording has several. */
  readonly plate: string | null;
}

/** Size and place of a platform's surface. */
export interface PlatformPlace {
  /** Side between corners 1 and 2: along the plate's own x. */
  readonly length: number;
  /** Side between corners 1 and 4: along the plate's own y. */
  readonly width: number;
  readonly corners: readonly DescribedPoint[];
  /** Mean of the corners. */
  readonly middle: DescribedPoint;
}

/** One column of a table as it is written: numbers in its own unit, no sign turned. */
export interface DescribedColumn {
  /** From 1. */
  readonly number: number;
  /** As the heading names it, without its unit; empty where it has none. */
  readonly name: string;
  /** In the heading or the row of units; empty where none is stated. */
  readonly unit: string;
  /** In the first row; `null` where that is blank. */
  readonly first: number | null;
  readonly least: number | null;
  readonly most: number | null;
  /** Rows without a value. */
  readonly blank: number;
  /** What it is read as, such as `marker:HEEL:x`, where that is not its own name. */
  readonly takenAs: string | null;
  /** Whether it is not read. */
  readonly leftOut: boolean;
}

/** One force platform as the file states it. */
export interface DescribedPlatform {
  readonly name: string;
  /** Its type by the numbers of the C3D format; above 4 the library does not compute force. */
  readonly type: PlatformType | number;
  /** Names of its channels. */
  readonly channels: readonly string[];
  /** Corners of its surface, with what follows from them; `null` where the file does not state all four. */
  readonly place: PlatformPlace | null;
  /** As stored, in the plate's axes. */
  readonly origin: readonly number[];
  /** Samples named as unloaded, from the first to before the last, counted from 0; `null` where none are. */
  readonly zero: { readonly from: number; readonly to: number } | null;
  /** Whether it has a calibration matrix. */
  readonly calibrated: boolean;
  readonly side: Side | null;
}

/** One marker and where it was not seen. */
export interface DescribedMarker {
  readonly name: string;
  /** Frames in which it was not seen. */
  readonly missing: number;
  /** Stretches of such frames. */
  readonly gaps: number;
  /** Longest of them, in frames. */
  readonly longest: number;
}

/** The markers of a recording. */
export interface DescribedMarkers {
  /** `null` where neither file nor caller states it. */
  readonly sampleRate: number | null;
  readonly frames: number;
  readonly markers: readonly DescribedMarker[];
}

/** What is in a recording, as plain data that can be written as JSON. */
export interface RecordingDescription {
  /** The reader's name for the format, such as `csv`. */
  readonly format: string;
  /** How the file stores its numbers, where formats differ in that. */
  readonly storage: string | null;
  /** Whether directions are those of the library's frame; if not, axes and points are the file's own. */
  readonly framed: boolean;
  /** Unit of sizes and places of platforms. */
  readonly lengthUnit: string;
  /** Samples ÷ rate, s; `null` where the rate is not stated. */
  readonly duration: number | null;
  /** `null` where neither file nor caller states it. */
  readonly sampleRate: number | null;
  readonly samples: number;
  /** Time of the first sample on the file's clock, s. */
  readonly startTime: number;
  readonly subject: Subject;
  readonly speed: number | null;
  readonly surface: Surface | null;
  readonly grade: number | null;
  readonly firstFoot: Side | null;
  readonly footwear: string | null;
  /** Of a table, as it is written; none of other formats. */
  readonly columns: readonly DescribedColumn[];
  readonly channels: readonly DescribedChannel[];
  readonly platforms: readonly DescribedPlatform[];
  readonly markers: DescribedMarkers | null;
  readonly events: readonly RecordedEvent[];
  /** What must be stated before force can be computed, one sentence each. */
  readonly toState: readonly string[];
  /** A command line that states it, to be checked; `null` where there is nothing to state, or none can be given. */
  readonly commandLine: string | null;
  readonly cautions: readonly Caution[];
}
