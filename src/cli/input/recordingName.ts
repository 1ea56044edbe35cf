import { basename } from "node:path";
import type { RecordingOptions } from "../options/inputOptions.js";
import { oneLine } from "../output/oneLine.js";

/** Names a recording by its file, without the folders it lies in, and, where a window was cut out, by its times. */
export function recordingName(path: string, window: RecordingOptions): string {
  return withWindow(basename(path), window);
}

/** Names a recording by its whole path, where the file's name alone does not tell it from another. */
export function recordingPath(path: string, window: RecordingOptions): string {
  return withWindow(path, window);
}

function withWindow(name: string, { from, to }: RecordingOptions): string {
  const plain = oneLine(name);
  if (from === undefined && to === undefined) return plain;
  return `${plain}, ${from ?? 0} s to ${to === undefined ? "the end" : `${to} s`}`;
}
