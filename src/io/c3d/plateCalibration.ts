import type { PlatformChannel } from "../../recording/index.js";
import type { Loads } from "./loadedDistance.js";
import { momentUnit } from "./momentUnit.js";
import type { ParameterTable } from "./parameterTable.js";
import { LEAST_LOAD, type PlatformSource, type Say } from "./platformSource.js";

/**
 * The matrix of a platform of type 4, with moments in N m/V. The file's own rows of moments are N m/V, or N mm/V where
 * lengths are in mm; it does not say which, the loads do. A text says why there is none.
 */
export function plateCalibration(
  { table, length, own }: PlatformSource,
  plate: number,
  channels: readonly PlatformChannel[],
  halfSide: number,
  say: Say,
): readonly (readonly number[])[] | string {
  const matrix = calibrationOf(table, plate);
  if (typeof matrix === "string") return matrix;
  if (own !== null) return matrix;
  const row = (k: number, i: number) => {
    let sum = 0;
    for (const [column, factor] of (matrix[k] as readonly number[]).entries()) {
      sum += factor * (channels[column]?.samples[i] as number);
    }
    return sum;
  };
  const loads: Loads = {
    samples: channels[0]?.samples.length ?? 0,
    vertical: (i) => row(2, i),
    moments: (i) => [row(3, i), row(4, i)],
  };
  const found = momentUnit(loads, halfSide, LEAST_LOAD);
  const toSi = found?.toSi ?? (length.toMetres === 0.001 ? 0.001 : 1);
  const why =
    found === null
      ? `no load shows it, so the unit of POINT:UNITS, ${length.name}, counted`
      : `by which the loads lie ${(found.distance * toSi).toPrecision(2)} m from the transducer in the median`;
  say(
    "moment-unit-deduced",
    `the rows of its CAL_MATRIX that give moments were taken as ${toSi === 1 ? "N m/V" : "N mm/V"}: ${why}`,
    { toSi, distance: found?.distance ?? null },
  );
  return matrix.map((values, k) => (k < 3 ? values : values.map((value) => value * toSi)));
}

/**
 * The matrix by rows: the file holds it by columns, the first index running fastest, then one matrix behind the other. Where
 * plates of several types stand in a file, all have the size of the largest, and a smaller one is its beginning.
 */
function calibrationOf(table: ParameterTable, plate: number): readonly (readonly number[])[] | string {
  const dimensions = table.get("FORCE_PLATFORM", "CAL_MATRIX")?.dimensions;
  if (dimensions === undefined) return "is of type 4 and has no FORCE_PLATFORM:CAL_MATRIX";
  const [rows = 0, columns = 0] = dimensions;
  const size = dimensions.join(" × ") || "none";
  const needed = "type 4 needs a matrix of at least 6 × 6 for each platform";
  if (rows < 6 || columns < 6) return `has a FORCE_PLATFORM:CAL_MATRIX of dimensions ${size}; ${needed}`;
  const from = rows * columns * plate;
  const numbers = table.numbers("FORCE_PLATFORM", "CAL_MATRIX").slice(from, from + rows * columns);
  if (numbers.length < rows * columns) {
    return `is not among the matrices of FORCE_PLATFORM:CAL_MATRIX, of dimensions ${size}; ${needed}`;
  }
  return Array.from({ length: 6 }, (_, row) =>
    Array.from({ length: 6 }, (_, column) => numbers[row + rows * column] as number),
  );
}
