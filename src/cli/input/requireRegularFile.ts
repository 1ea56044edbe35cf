import { statSync } from "node:fs";

/**
 * Looks at a path before it is opened: devices and pipes may never end, and never begin.
 *
 * @returns Its size, bytes.
 * @throws What the system says of it, in the form that `openFailure` reads.
 */
export function requireRegularFile(path: string): number {
  const found = statSync(path);
  if (found.isFile()) return found.size;
  throw Object.assign(new Error(), { code: found.isDirectory() ? "EISDIR" : "ENOTFILE" });
}
