import { openFailure } from "../input/openFailure.js";

/** Says why a path cannot be written. */
export function writeFailure(caught: unknown): string {
  const code = (caught as { code?: unknown } | null)?.code;
  return code === "EACCES" ? "this user may not write there" : openFailure(caught);
}
