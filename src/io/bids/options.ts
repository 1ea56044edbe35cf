import type { Axes, Side, Surface } from "../../recording/index.js";
import type { Complete, Kilograms, Metres, MetresPerSecond } from "../../units/index.js";

/** A file's text, or its bytes in UTF-8. */
export type MotionBidsText = string | Uint8Array;

/** The files of one tracking system. */
export interface MotionBidsFiles {
  /** `*_motion.tsv`: the samples. */
  readonly motion: MotionBidsText;
  /** `*_channels.tsv`: what each column of it holds. */
  readonly channels: MotionBidsText;
  /** `*_motion.json`: rate and task. */
  readonly sidecar: MotionBidsText;
  /** `*_channels.json`: where the axes point. */
  readonly channelsSidecar?: MotionBidsText | undefined;
}

/** The files of one recording. */
export interface MotionBidsRecording extends MotionBidsFiles {
  /** Markers of a tracking system of their own, at another rate. */
  readonly markers?: MotionBidsFiles | undefined;
  /** `*_events.tsv`. */
  readonly events?: MotionBidsText | undefined;
}

/** What a channel can be stated as: a word for quantity and direction, or one whose direction the component gives. */
export type MotionBidsColumn =
  | "time"
  | "forward"
  | "up"
  | "right"
  | "cop_forward"
  | "cop_right"
  | "free_moment"
  | "force"
  | "cop"
  | "other";

/** What the files do not say of themselves. */
export interface ReadMotionBidsOptions {
  /** Where x, y and z point, seen by the runner, where no reference frame says so; overrules one that does. */
  readonly axes?: Axes | null | undefined;
  /** What a channel is, by its name, where its name does not tell: `{ "plate z": "force" }`. */
  readonly columns?: Readonly<Record<string, MotionBidsColumn>> | undefined;
  /** On whom the file's force acts; on the `ground`, forces and free moment change sign. */
  readonly forceOn?: "runner" | "ground" | undefined;
  readonly mass?: Kilograms | null | undefined;
  readonly height?: Metres | null | undefined;
  /** Mean speed over the ground or belt. */
  readonly speed?: MetresPerSecond | null | undefined;
  readonly surface?: Surface | null | undefined;
  /** Slope, rise over run, uphill positive. */
  readonly grade?: number | null | undefined;
  /** The foot of the first complete contact. */
  readonly firstFoot?: Side | null | undefined;
  /** What was on the feet, in words: one line of text, such as `road shoe, 250 g`. */
  readonly footwear?: string | null | undefined;
}

/** Nothing is assumed of the files but that their force acts on the runner. */
export const READ_MOTION_BIDS_DEFAULTS: Complete<ReadMotionBidsOptions> = {
  axes: null,
  columns: {},
  forceOn: "runner",
  mass: null,
  height: null,
  speed: null,
  surface: null,
  grade: null,
  firstFoot: null,
  footwear: null,
};

/** How a recording's files are named and described. */
export interface WriteMotionBidsOptions extends MotionBidsEntities {
  /** Label of the tracking system that markers at a rate of their own become. */
  readonly markersTracksys?: string | undefined;
  /** `TaskName` of the sidecar; its letters and digits are the label `task`, which stands in for it where `null`. */
  readonly taskName?: string | null | undefined;
  /** `Name` in `dataset_description.json`. */
  readonly datasetName?: string | undefined;
}

/** The parts of a file's name: letters and digits, `run` a whole number; a part that is `null` is left out. */
export interface MotionBidsEntities {
  /** Label of the person. */
  readonly sub?: string | undefined;
  readonly ses?: string | null | undefined;
  readonly task?: string | undefined;
  /** Label of the tracking system. */
  readonly tracksys?: string | undefined;
  readonly run?: number | null | undefined;
  /** What tells this derivative from others. */
  readonly desc?: string | null | undefined;
}

/** Labels that say nothing of the person. */
export const MOTION_BIDS_ENTITIES: Complete<MotionBidsEntities> = {
  sub: "01",
  ses: null,
  task: "running",
  tracksys: "force",
  run: null,
  desc: null,
};

/** The names of {@link MOTION_BIDS_ENTITIES}. */
export const WRITE_MOTION_BIDS_DEFAULTS: Complete<WriteMotionBidsOptions> = {
  sub: "01",
  ses: null,
  task: "running",
  tracksys: "force",
  run: null,
  desc: null,
  markersTracksys: "markers",
  taskName: null,
  datasetName: "Force between foot and ground",
};
