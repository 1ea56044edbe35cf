import { readFileSync } from "node:fs";
import { readCsv } from "../../src/io/index.js";
import type { Marker, Recording } from "../../src/recording/index.js";

const file = (name: string) => readFileSync(new URL(`../fixtures/${name}`, import.meta.url), "utf8");

/** Columns of a table by their names. */
function columnsOf(text: string): ReadonlyMap<string, Float64Array> {
  const [head = "", ...lines] = text.trimEnd().split("\n");
  const rows = lines.map((line) => line.split("\t").map(Number));
  return new Map(
    head.split("\t").map((name, c) => [name, Float64Array.from(rows, (row) => row[c] as number)]),
  );
}

/**
 * Open recording: 10 s on a treadmill at 2.5 m/s, force at 300 Hz and markers at 150 Hz: four of the pelvis, of which the way
 * forward alone is in the fixture, heel and first metatarsal of each foot. Fukuchi RK, Fukuchi CA, Duarte M (2017), PeerJ
 * 5:e3298, doi 10.7717/peerj.3298 (CC BY 4.0).
 */
export function markedRun(): Recording {
  const force = file("treadmill-run/forces-2.5ms.txt").split("\n").slice(0, 3001).join("\n");
  const recording = readCsv(force, {
    ignore: ["Time"],
    sampleRate: 300,
    axes: { x: "forward", y: "up", z: "right" },
    units: { Fx: "N", Fy: "N", Fz: "N", COPx: "mm", COPy: "mm", COPz: "mm", Ty: "N mm" },
  });
  const pelvis = columnsOf(file("landing/markers.txt"));
  const feet = columnsOf(file("markers/run-2.5ms-10s.txt"));
  const marker = (name: string, columns: ReadonlyMap<string, Float64Array>, perMetre: number): Marker => {
    const along = (axis: string) =>
      columns.get(`${name}${axis}`)?.map((value) => value / perMetre) ??
      new Float64Array(1500).fill(Number.NaN);
    return { name, forward: along("X"), up: along("Y"), right: along("Z") };
  };
  const markers = [
    ...PELVIS.map((name) => marker(name, pelvis, 1000)),
    ...["L", "R"].flatMap((leg) => [
      marker(`${leg}.Heel.Bottom`, feet, 10_000),
      marker(`${leg}.MT1`, feet, 10_000),
    ]),
  ];
  return {
    ...recording,
    surface: "belt",
    speed: 2.5,
    subject: { mass: 80, height: 1.83 },
    markers: { sampleRate: 150, startTime: recording.startTime, markers },
  };
}

/** Names of the markers of the pelvis. */
export const PELVIS: readonly string[] = ["R.ASIS", "L.ASIS", "R.PSIS", "L.PSIS"];
/** Names of the markers at both ends of each foot. */
export const FEET = {
  left: { heel: "L.Heel.Bottom", toe: "L.MT1" },
  right: { heel: "R.Heel.Bottom", toe: "R.MT1" },
} as const;
