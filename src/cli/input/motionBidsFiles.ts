import { basename, dirname, join } from "node:path";
import type { MotionBidsFiles, MotionBidsRecording } from "../../io/index.js";
import { fail } from "../../units/index.js";
import { openFailure } from "./openFailure.js";
import { readRegularFile } from "./readRegularFile.js";

/** Label of the tracking system that holds markers beside one of force, as the writer names it. */
const MARKERS = "markers";

/** The endings of the names of the files of one tracking system. */
const ENDINGS = {
  channels: "_channels.tsv",
  sidecar: "_motion.json",
  channelsSidecar: "_channels.json",
} as const;

/**
 * Reads the files beside a `_motion.tsv`: its columns and its rate are needed; the description of its axes, the events of
 * the recording, and markers in a system of their own (`tracksys-markers`) are taken where they are there.
 *
 * @param path - Of the motion file.
 * @param motion - What it holds.
 * @throws GaitKineticsError `unreadable-file`: one that is needed is not there, or one that is there cannot be opened.
 */
export function readMotionBidsFiles(path: string, motion: Uint8Array): MotionBidsRecording {
  const name = basename(path);
  const beside = (other: string): string => join(dirname(path), other);
  const events = optional(
    beside(name.replace(/_tracksys-[^_]+/, "").replace(/_motion\.tsv$/i, "_events.tsv")),
  );
  const markersPath = beside(name.replace(/_tracksys-[^_]+/, `_tracksys-${MARKERS}`));
  const markers = basename(markersPath) === name ? undefined : optional(markersPath);
  return {
    ...systemOf(path, motion),
    ...(events && { events }),
    ...(markers && { markers: systemOf(markersPath, markers) }),
  };
}

function systemOf(path: string, motion: Uint8Array): MotionBidsFiles {
  const beside = (ending: string): string => path.replace(/_motion\.tsv$/i, ending);
  const channelsSidecar = optional(beside(ENDINGS.channelsSidecar));
  return {
    motion,
    channels: needed(beside(ENDINGS.channels), "what each column holds"),
    sidecar: needed(beside(ENDINGS.sidecar), "the sampling rate"),
    ...(channelsSidecar && { channelsSidecar }),
  };
}

function needed(path: string, what: string): Uint8Array {
  try {
    return readRegularFile(path);
  } catch (caught) {
    return fail(
      "unreadable-file",
      `${basename(path)}, which says ${what}, is needed beside it and cannot be opened: ${openFailure(caught)}`,
      { where: path },
    );
  }
}

function optional(path: string): Uint8Array | undefined {
  try {
    return readRegularFile(path);
  } catch (caught) {
    if ((caught as NodeJS.ErrnoException).code === "ENOENT") return undefined;
    return fail("unreadable-file", `${basename(path)} beside it cannot be opened: ${openFailure(caught)}`, {
      where: path,
    });
  }
}
