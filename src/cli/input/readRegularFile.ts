import { readFileSync } from "node:fs";
import { requireRegularFile } from "./requireRegularFile.js";

/**
 * Reads a file whole.
 *
 * @throws What the system says, see `openFailure`; the same of a device or pipe, which may never end.
 */
export function readRegularFile(path: string): Uint8Array {
  requireRegularFile(path);
  return readFileSync(path);
}
