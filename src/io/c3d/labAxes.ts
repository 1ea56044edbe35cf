import {
  type Axes,
  axisMapping,
  type Direction,
  type MappedAxis,
  type Position,
} from "../../recording/index.js";
import { fail } from "../../units/index.js";
import type { C3dFile } from "./c3dFile.js";
import type { ParameterTable } from "./parameterTable.js";
import { quoted } from "./refuse.js";
import { seenAxes } from "./seenAxes.js";

/** The laboratory's axes in the library's frame, all three. */
export interface LabAxes {
  readonly x: MappedAxis;
  readonly y: MappedAxis;
  readonly z: MappedAxis;
  /** Brings a point of the file into the frame and to metres. */
  readonly position: (x: number, y: number, z: number, toMetres: number) => Position;
  /** The file's axis that lies along a direction of the frame. */
  readonly along: (direction: Direction) => { readonly axis: "x" | "y" | "z"; readonly sign: 1 | -1 };
}

const NAMES = ["x", "y", "z"] as const;

/** Takes the axes from the option, else from the file's own statement; refuses a file without either. */
export function labAxes(
  file: C3dFile,
  table: ParameterTable,
  option: Axes | null,
  stated: Axes | undefined,
): LabAxes {
  if (option !== null && stated !== undefined) refuseOther(option, stated);
  const given = option ?? stated;
  if (given === undefined) {
    fail(
      "unknown-axes",
      `the file does not say where its axes point; state all three, such as axes: { x: "right", y: "forward", z: "up" }. ${seenAxes(file, table)}`,
      { argument: "axes", where: "POINT" },
    );
  }
  const { x, y, z, handedness } = axisMapping(given);
  if (x === undefined || y === undefined || z === undefined) {
    const missing = NAMES.filter((name) => given[name] === undefined);
    fail(
      "unknown-axes",
      `axes do not say where ${missing.join(" and ")} ${missing.length === 1 ? "points" : "point"}; a C3D file needs all three, such as { x: "right", y: "forward", z: "up" }`,
      { argument: "axes", values: { given } },
    );
  }
  if (handedness === -1) {
    fail(
      "unknown-axes",
      `the axes ${NAMES.map((name) => `${name}: ${given[name]}`).join(", ")} are left-handed, and those of a C3D file are right-handed: one of them points the other way`,
      { argument: "axes", values: { given } },
    );
  }
  const axes = { x, y, z };
  const along = (direction: Direction) => {
    const axis = NAMES.find((name) => axes[name].direction === direction) as "x" | "y" | "z";
    return { axis, sign: axes[axis].sign };
  };
  const [forward, up, right] = [along("forward"), along("up"), along("right")];
  return {
    ...axes,
    along,
    position: (px, py, pz, toMetres) => {
      const point = { x: px * toMetres, y: py * toMetres, z: pz * toMetres };
      return {
        forward: forward.sign * point[forward.axis],
        up: up.sign * point[up.axis],
        right: right.sign * point[right.axis],
      };
    },
  };
}

/** A file of this library has its axes in its channels too: another statement would turn a part of it only. */
function refuseOther(option: Axes, stated: Axes): void {
  axisMapping(option);
  const other = NAMES.find((name) => option[name] !== undefined && option[name] !== stated[name]);
  if (other === undefined) return;
  fail(
    "conflict",
    `axes say that ${other} points ${option[other]}; the file, which this library wrote, says ${quoted(String(stated[other]))}: leave axes out`,
    { argument: "axes", where: other, values: { file: stated, option } },
  );
}
