import type { Writable } from "node:stream";
import type { Progress } from "./output/progress.js";

/** What a process gives a command line: nothing else of it is touched while a command runs. */
export interface Streams {
  /** Standard output: results only. */
  readonly out: (text: string) => void;
  /** Standard error: problems and notes. */
  readonly err: (text: string) => void;
  /** Standard error as the terminal that a person watches, for progress; `null` where none does. */
  readonly watched: Writable | null;
}

/** What a command writes to; progress makes way for what stays. */
export interface Terminal {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly progress: Progress;
}
