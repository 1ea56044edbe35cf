import { InvalidArgumentError } from "commander";
import type { RecordingOptions } from "../options/inputOptions.js";

/**
 * Refuses a window that ends where it begins or before, whatever the recording holds.
 *
 * @throws InvalidArgumentError --from is not before --to.
 */
export function refuseEmptyWindow({ from, to }: RecordingOptions): void {
  if (to === undefined || from === undefined || from < to) return;
  throw new InvalidArgumentError(`--from is ${from} s and --to ${to} s; --from must come before --to`);
}
