import type { RecordingOptions } from "../options/inputOptions.js";

/** Names a recording by its file and, where a window was cut out, its times. */
export function recordingName(path: string, { from, to }: RecordingOptions): string {
  if (from === undefined && to === undefined) return path;
  return `${path}, ${from ?? 0} s to ${to === undefined ? "the end" : `${to} s`}`;
}
