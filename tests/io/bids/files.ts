import { readFileSync } from "node:fs";
import type { MotionBidsRecording } from "../../../src/io/index.js";

const text = (name: string): string =>
  readFileSync(new URL(`../../fixtures/bids/sub-01_task-run_${name}`, import.meta.url), "utf8");

/** Another laboratory's files: a force plate, a marker and an accelerometer. */
export const LAB = {
  motion: text("tracksys-lab_motion.tsv"),
  channels: text("tracksys-lab_channels.tsv"),
  sidecar: text("tracksys-lab_motion.json"),
  channelsSidecar: text("tracksys-lab_channels.json"),
  events: text("events.tsv"),
} as const satisfies MotionBidsRecording;

/** Files with the channels given as rows, such as `Fz z MISC plate N`, with `~` for a blank in a name. */
export function filesOf(
  rows: readonly string[],
  motion: string,
  sidecar: object = { TaskName: "run", SamplingFrequency: 100 },
  heading = "name component type tracked_point units",
): MotionBidsRecording & { readonly motion: string; readonly channels: string; readonly sidecar: string } {
  const line = (row: string): string => row.split(" ").join("\t").replaceAll("~", " ");
  return {
    motion,
    channels: `${heading.replaceAll(" ", "\t")}\n${rows.map(line).join("\n")}\n`,
    sidecar: JSON.stringify(sidecar),
  };
}
