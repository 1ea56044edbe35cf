import { readFileSync } from "node:fs";
import { detectEvents, type Events } from "../../../src/events/index.js";
import { type GroundReaction, toGroundReaction } from "../../../src/force/index.js";
import { readCsv } from "../../../src/io/index.js";
import type { Marker, MarkerSet } from "../../../src/recording/index.js";

/** Markers and force of one open recording. */
export interface OpenRecording {
  readonly markers: MarkerSet;
  readonly ground: GroundReaction;
  readonly events: Events;
}

const fixture = (path: string) => readFileSync(new URL(`../../fixtures/${path}`, import.meta.url), "utf8");

/** Columns of a table by their names. */
function columnsOf(text: string): ReadonlyMap<string, Float64Array> {
  const [head = "", ...rows] = text.trimEnd().split("\n");
  const cells = rows.map((row) => row.split("\t").map(Number));
  return new Map(
    head.split("\t").map((name, c) => [name, Float64Array.from(cells, (row) => row[c] as number)]),
  );
}

/** Markers whose columns are in tenths of a millimetre and named by marker and axis; x forward, y up, z right. */
function markersOf(
  columns: ReadonlyMap<string, Float64Array>,
  names: readonly string[],
  axes: string,
): Marker[] {
  const [x = "", y = "", z = ""] = axes;
  return names.map((name) => {
    const metres = (axis: string) => {
      const samples = columns.get(name + axis);
      // Left out of the fixture: gaps, which only fail a test that would read them.
      return samples === undefined
        ? new Float64Array(columns.values().next().value?.length ?? 0).fill(Number.NaN)
        : samples.map((value) => value / 10_000);
    };
    return { name, forward: metres(x), up: metres(y), right: metres(z) };
  });
}

/** 10 s on a treadmill at 2.5 m/s: markers at 150 Hz, force at 300 Hz. */
export function treadmillRun(): OpenRecording {
  const columns = columnsOf(fixture("markers/run-2.5ms-10s.txt"));
  const names = [...new Set([...columns.keys()].map((name) => name.slice(0, -1)))];
  const force = fixture("treadmill-run/forces-2.5ms.txt").split("\n").slice(0, 3001).join("\n");
  const recording = readCsv(force, {
    ignore: ["Time"],
    units: { Fx: "N", Fy: "N", Fz: "N", COPx: "mm", COPy: "mm", COPz: "mm", Ty: "N mm" },
    axes: { x: "forward", y: "up", z: "right" },
    sampleRate: 300,
  });
  const ground = toGroundReaction(recording);
  return {
    markers: { sampleRate: 150, startTime: ground.startTime, markers: markersOf(columns, names, "XYZ") },
    ground,
    events: detectEvents(ground),
  };
}

/** One step over a plate, walking; markers of the leg that steps on it, both at 150 Hz. */
export function walk(trial: "d" | "n"): OpenRecording {
  const text = fixture(`markers/walk-${trial}.txt`);
  const columns = columnsOf(text);
  const up = columns.get("Fy") as Float64Array;
  const ground: GroundReaction = {
    sampleRate: 150,
    startTime: 0,
    force: { up, forward: columns.get("Fx") as Float64Array, right: columns.get("Fz") as Float64Array },
    subject: {},
    gravity: 9.80665,
    settings: { driftRemoved: false, flights: 0, filter: null },
    cautions: [],
  };
  return {
    markers: {
      sampleRate: 150,
      startTime: 0,
      markers: markersOf(columns, ["FH", "LE", "LM", "CA", "FM", "VM"], "xyz"),
    },
    ground,
    events: detectEvents(ground, { threshold: 20 }),
  };
}
