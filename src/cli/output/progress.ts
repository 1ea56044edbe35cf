import type { Writable } from "node:stream";
import { setImmediate } from "node:timers/promises";
import yoctoSpinner, { type Spinner } from "yocto-spinner";
import { oneLine } from "./oneLine.js";

/** Says what is being done, on a line that is gone once it is done. */
export interface Progress {
  /**
   * Names the stage that begins. The work is done in one piece: between two stages the terminal is drawn and an
   * interruption is heard.
   */
  readonly say: (doing: string) => Promise<void>;
  /** Takes the line away; what was done stays as a line of its own where it is given. */
  readonly end: (done?: string) => void;
}

/**
 * Makes the progress of one command.
 *
 * @param watched - The terminal that a person watches; `null` where none does, and nothing is said.
 */
export function progressOn(watched: Writable | null): Progress {
  if (watched === null) return { say: () => Promise.resolve(), end: () => {} };
  const spinner: Spinner = yoctoSpinner({ stream: watched });
  return {
    say: async (doing) => {
      const text = `${oneLine(doing)} ...`;
      if (spinner.isSpinning) spinner.text = text;
      else spinner.start(text);
      await setImmediate();
    },
    end: (done) => {
      spinner.stop();
      if (done !== undefined) watched.write(`${oneLine(done)}\n`);
    },
  };
}
