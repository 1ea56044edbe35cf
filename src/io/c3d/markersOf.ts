import type { Marker } from "../../recording/index.js";
import type { Caution } from "../../units/index.js";
import { refuseAbsurd } from "../largestValue.js";
import type { C3dFile, C3dPoint } from "./c3dFile.js";
import type { LabAxes } from "./labAxes.js";
import type { ParameterTable } from "./parameterTable.js";
import { quoted } from "./refuse.js";

/** Parameters of the group POINT by which files name points that are no positions (common practice). */
const OTHER_QUANTITIES = ["ANGLES", "FORCES", "MOMENTS", "POWERS", "SCALARS", "REACTIONS"] as const;

/**
 * Brings the points of a file into the library's frame, in metres. Points that the file lists as angles, forces and the
 * like are left out, with a `Caution`.
 *
 * @param exact - Frames with markers, where those behind them only fill the file up.
 * @param zerosAreGaps - Whether a point at exactly 0 0 0, seen by no camera and without residual, was not seen.
 */
export function markersOf(
  { points }: C3dFile,
  table: ParameterTable,
  axes: LabAxes,
  toMetres: number,
  exact: number | undefined,
  zerosAreGaps: boolean,
): { readonly markers: readonly Marker[]; readonly cautions: readonly Caution[] } {
  const others = new Set(
    OTHER_QUANTITIES.flatMap((name) => table.texts("POINT", name).filter((label) => label !== "")),
  );
  const positions = points.filter(({ name }) => !others.has(name));
  const cautions: Caution[] = [];
  if (positions.length < points.length) {
    const left = points.length - positions.length;
    cautions.push({
      code: "points-left-out",
      message: `${left} of ${points.length} points are no positions by POINT:ANGLES, FORCES, MOMENTS, POWERS, SCALARS or REACTIONS and were left out`,
      where: "POINT",
      values: { count: left },
    });
  }
  let zeros = 0;
  const markers = positions.map((point, k): Marker => {
    const gaps = zerosAreGaps ? zeroFrames(point) : null;
    zeros += gaps?.count ?? 0;
    const along = (direction: "forward" | "up" | "right") => {
      const { axis, sign } = axes.along(direction);
      const length = Math.min(exact ?? point[axis].length, point[axis].length);
      const factor = sign * toMetres;
      const samples = new Float64Array(length);
      for (let i = 0; i < length; i++) samples[i] = (point[axis][i] as number) * factor + 0;
      if (gaps !== null && gaps.count > 0) {
        for (let i = 0; i < length; i++) if (gaps.isGap(i)) samples[i] = Number.NaN;
      }
      return samples;
    };
    const name = point.name || `point ${k + 1}`;
    const marker = { name, forward: along("forward"), up: along("up"), right: along("right") };
    for (const way of [marker.forward, marker.up, marker.right]) {
      refuseAbsurd(way, "m", "lengthUnit", (i) => `marker ${quoted(name)}, frame ${i + 1}`);
    }
    return marker;
  });
  if (zeros > 0) {
    cautions.push({
      code: "zeros-as-gaps",
      message: `${zeros} positions are exactly 0 0 0, without a camera or a residual; they were taken as not seen`,
      where: "POINT",
      values: { count: zeros },
    });
  }
  return { markers, cautions };
}

function zeroFrames({ x, y, z, residual, cameras }: C3dPoint): {
  readonly count: number;
  readonly isGap: (frame: number) => boolean;
} {
  const isGap = (i: number) =>
    x[i] === 0 && y[i] === 0 && z[i] === 0 && residual[i] === 0 && cameras[i] === 0;
  let count = 0;
  for (let i = 0; i < x.length; i++) if (isGap(i)) count++;
  return { count, isGap };
}
