import type { Side } from "../../recording/index.js";
import type { Caution, Hertz, Seconds } from "../../units/index.js";

/** A marker by its name, or several whose mean is taken, such as the two posterior iliac spines for the sacrum. */
export type MarkerChoice = string | readonly string[];

/** A segment by a point near its upper and a point near its lower end. */
export interface SegmentMarkers {
  readonly upper: MarkerChoice;
  readonly lower: MarkerChoice;
}

/** Which markers of a set stand on one leg. Each detector says which of them it needs. */
export interface LegMarkers {
  readonly heel: MarkerChoice;
  /** As far forward on the foot as there is a marker: hallux, second toe, or a metatarsal head. */
  readonly toe: MarkerChoice;
  readonly pelvis: MarkerChoice;
  readonly thigh: SegmentMarkers;
  readonly shank: SegmentMarkers;
  /** The foot that the markers are on, for the result; `"unknown"` where left out. */
  readonly side?: Side | undefined;
}

/** The published methods, by author and what they read. */
export type KinematicMethod =
  | "Zeni coordinate"
  | "Zeni velocity"
  | "O'Connor velocity"
  | "Fellin heel and knee"
  | "Handsaker acceleration"
  | "Dingwell knee extension";

/** How the markers are smoothed before they are read. */
export interface MarkerFilterOptions {
  /** Net −3 dB point of the zero-phase low-pass, Hz; `null` for markers that are smoothed already. */
  readonly cutoff?: Hertz | null | undefined;
  /** Net order, even. */
  readonly order?: number | undefined;
}

/** What the events were found by. */
export interface KinematicSettings {
  readonly sampleRate: Hertz;
  /** Of the markers, Hz; `null` for none. */
  readonly cutoff: number | null;
  readonly order: number;
  /** Names of the markers by what they stood for. */
  readonly markers: Readonly<Record<string, readonly string[]>>;
  /** Swings of the leg that were found, one a stride. */
  readonly swings: number;
}

/** Events of one foot, s from the first frame of the markers, in order. */
export interface KinematicEvents {
  readonly method: KinematicMethod;
  readonly side: Side | "unknown";
  readonly initialContacts: readonly Seconds[];
  readonly toeOffs: readonly Seconds[];
  readonly settings: KinematicSettings;
  readonly cautions: readonly Caution[];
}
