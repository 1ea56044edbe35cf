import type { RecordingOptions } from "../options/inputOptions.js";

/** A file of a command that takes several, and what is stated of it. */
export interface TrialSource {
  readonly path: string;
  readonly own: RecordingOptions;
}
