import { readFileSync } from "node:fs";
import { detectEvents, type Step, stepsOf } from "../../../src/events/index.js";
import { type GroundReaction, lowPassGroundReaction, toGroundReaction } from "../../../src/force/index.js";
import { readCsv } from "../../../src/io/index.js";

const file = (name: string) => readFileSync(new URL(`../../fixtures/${name}`, import.meta.url), "utf8");

/**
 * Open recording: running on a level treadmill at 2.5 m/s, 300 Hz, with markers at 150 Hz for the first 10 s. Fukuchi RK,
 * Fukuchi CA, Duarte M (2017), PeerJ 5:e3298, doi 10.7717/peerj.3298 (CC BY 4.0).
 */
export function treadmillRun(): { readonly ground: GroundReaction; readonly steps: readonly Step[] } {
  const recording = readCsv(file("treadmill-run/forces-2.5ms.txt"), {
    ignore: ["Time"],
    sampleRate: 300,
    axes: { x: "forward", y: "up", z: "right" },
    units: { Fx: "N", Fy: "N", Fz: "N", COPx: "mm", COPy: "mm", COPz: "mm", Ty: "N mm" },
  });
  const ground = lowPassGroundReaction(
    toGroundReaction({ ...recording, subject: { mass: 80, height: 1.83 }, surface: "belt", speed: 2.5 }),
    { cutoff: 50 },
  );
  return { ground, steps: stepsOf(detectEvents(ground).contacts) };
}

/** Seconds that the markers were recorded for. */
export const MARKER_TIME = 9.99;

/** Places along `forward`, m, at a time: the mean of the four pelvis markers, and each heel. */
export function markersAt(): {
  pelvis: (time: number) => number;
  heel: (side: string, time: number) => number;
} {
  const [heading = "", ...lines] = file("landing/markers.txt").trimEnd().split("\n");
  const rows = lines.map((line) => line.split("\t").map((cell) => Number(cell) / 1000));
  const column = (name: string) => heading.split("\t").indexOf(name);
  const read = (columns: readonly number[], time: number) => {
    const place = time * 150;
    const before = Math.floor(place);
    const at = (row: number) =>
      columns.reduce((sum, c) => sum + (rows[row]?.[c] ?? Number.NaN), 0) / columns.length;
    return at(before) + (place - before) * (at(before + 1) - at(before));
  };
  const pelvis = ["R.ASISX", "L.ASISX", "R.PSISX", "L.PSISX"].map(column);
  return {
    pelvis: (time) => read(pelvis, time),
    heel: (side, time) => read([column(side === "right" ? "R.Heel.BottomX" : "L.Heel.BottomX")], time),
  };
}
