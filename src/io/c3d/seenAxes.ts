import { axisMapping } from "../../recording/index.js";
import type { C3dFile } from "./c3dFile.js";
import type { ParameterTable } from "./parameterTable.js";
import { plateCorners, plateNormal } from "./plateCorners.js";
import { quoted } from "./refuse.js";

const NAMES = ["x", "y", "z"] as const;
type Name = (typeof NAMES)[number];

/** One axis, with the way along it. */
interface Way {
  readonly axis: Name;
  readonly sign: 1 | -1;
  /** In the file's unit. */
  readonly size: number;
}

/**
 * Says in words what a file shows of its axes: the way the force platforms face, the side of them that the markers are on,
 * the way the markers go, and the axes of its screen. It is for a person to decide by; nothing is taken from it.
 */
export function seenAxes(file: C3dFile, table: ParameterTable): string {
  const vertical = verticalOf(file, table);
  const travel = vertical === null ? null : travelOf(file, vertical.axis, vertical.side);
  const screens = (["X_SCREEN", "Y_SCREEN"] as const).flatMap((name) => {
    const text = table.text("POINT", name)?.trim() ?? "";
    return text === "" ? [] : [`POINT:${name} is ${quoted(text)}`];
  });
  const unit = (file.points[0]?.unit ?? "").trim().slice(0, 12);
  const seen = [
    ...(vertical === null ? [] : [vertical.words]),
    ...(travel === null
      ? []
      : [
          `the markers go ${Number(travel.size.toPrecision(3))}${unit && ` ${unit}`} along ${signed(travel)}`,
        ]),
    ...screens,
  ];
  if (seen.length === 0) return "Nothing in the file shows how they lie";
  const fitting =
    vertical === null || travel === null || vertical.sign === null
      ? null
      : { ...vertical, sign: vertical.sign };
  const example =
    fitting === null || travel === null
      ? ""
      : `; if the runner faces the way the markers go, the axes are ${axesFrom(fitting, travel)}`;
  return `Seen in the file: ${seen.join("; ")}${example}`;
}

function signed({ axis, sign }: { readonly axis: Name; readonly sign: 1 | -1 }): string {
  return `${sign > 0 ? "+" : "-"}${axis}`;
}

/** The axis that the platforms face, and the way along it that the markers are on. */
function verticalOf(
  file: C3dFile,
  table: ParameterTable,
): {
  readonly axis: Name;
  readonly sign: 1 | -1 | null;
  readonly side: number;
  readonly words: string;
} | null {
  const plates = plateCorners(table).filter((corners) => corners !== null);
  const axes = plates.map((corners) => {
    const normal = plateNormal(corners).map(Math.abs) as [number, number, number];
    const largest = Math.max(...normal);
    return largest > 0 ? NAMES[normal.indexOf(largest)] : undefined;
  });
  const [axis] = axes;
  if (axis === undefined || axes.some((other) => other !== axis)) return null;
  const at = NAMES.indexOf(axis);
  const surface = plates.flat().reduce((sum, corner) => sum + corner[at as 0], 0) / (4 * plates.length);
  const heights = file.points.flatMap((point) => mean(point[axis]) ?? []);
  const above = heights.filter((height) => height > surface).length;
  const sign =
    heights.length === 0 || above * 2 === heights.length ? null : above * 2 > heights.length ? 1 : -1;
  const placed = sign === null ? "" : `, most markers lie on its ${signed({ axis, sign })} side`;
  const side = Math.max(...plates.map(([a, b, c]) => Math.max(apart(a, b), apart(b, c))));
  return { axis, sign, side, words: `the force platforms face along ${axis}${placed}` };
}

function apart(one: readonly number[], two: readonly number[]): number {
  return Math.hypot(...one.map((value, k) => value - (two[k] as number)));
}

function mean(values: Float64Array): number | null {
  let sum = 0;
  let count = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    if (Number.isNaN(value)) continue;
    sum += value;
    count++;
  }
  return count === 0 ? null : sum / count;
}

/** The horizontal way of the points between where each is seen first and last, by the median point. */
function travelOf({ points }: C3dFile, vertical: Name, side: number): Way | null {
  const ways = NAMES.filter((axis) => axis !== vertical).map((axis): Way => {
    const lengths = points
      .flatMap((point) => {
        const values = point[axis];
        const first = values.findIndex((value) => !Number.isNaN(value));
        if (first < 0) return [];
        let last = values.length - 1;
        while (Number.isNaN(values[last])) last--;
        return [(values[last] as number) - (values[first] as number)];
      })
      .sort((one, two) => one - two);
    const length = lengths[Math.floor(lengths.length / 2)] ?? 0;
    return { axis, sign: length < 0 ? -1 : 1, size: Math.abs(length) };
  });
  const [one, two] = ways as [Way, Way];
  const way = one.size >= two.size ? one : two;
  // Going somewhere, not standing or swaying: farther than a platform, and along one axis far more than along the other.
  return way.size > side && way.size > 3 * Math.min(one.size, two.size) ? way : null;
}

function axesFrom(
  vertical: { readonly axis: Name; readonly sign: 1 | -1 },
  travel: { readonly axis: Name; readonly sign: 1 | -1 },
): string {
  const third = NAMES.find((name) => name !== vertical.axis && name !== travel.axis) as Name;
  const words = {
    [vertical.axis]: vertical.sign > 0 ? "up" : "down",
    [travel.axis]: travel.sign > 0 ? "forward" : "backward",
    [third]: "right",
  } as Record<Name, "up" | "down" | "forward" | "backward" | "right" | "left">;
  if (axisMapping(words).handedness === -1) words[third] = "left";
  return `{ ${NAMES.map((name) => `${name}: "${words[name]}"`).join(", ")} }`;
}
