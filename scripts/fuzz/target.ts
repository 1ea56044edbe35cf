/** One input of a reader: the bytes of a file, or several texts of one recording, and what is stated of them. */
export interface FuzzInput {
  readonly bytes: unknown;
  readonly options: unknown;
}

/** A reader and what makes inputs for it. */
export interface FuzzTarget {
  /** Makes the input of a seed; the same seed gives the same bytes. */
  readonly input: (seed: number) => FuzzInput;
  /** Reads it; gives whether something was read, or throws. */
  readonly read: (input: FuzzInput) => void;
}

/** Names of the readers, in the order of the page. */
export const TARGET_NAMES = ["c3d", "csv", "bids", "json"] as const;

/** Name of a reader. */
export type TargetName = (typeof TARGET_NAMES)[number];

/** What came of one input. */
export interface Outcome {
  /** `read`, the code of the library's refusal, or `failed`. */
  readonly result: string;
  readonly milliseconds: number;
  /** Growth of the heap and of the memory of typed arrays while it was read, bytes. */
  readonly growth: number;
  readonly size: number;
  /** What was thrown that is no refusal of the library. */
  readonly problem?: string;
}
