import type { PlatformChannel } from "../../recording/index.js";
import { type Loads, momentUnit } from "./momentUnit.js";
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
  if (matrix === null) return "is of type 4 and has no FORCE_PLATFORM:CAL_MATRIX";
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

/** The matrix by rows: the file holds it by columns, the first index running fastest. */
function calibrationOf(table: ParameterTable, plate: number): readonly (readonly number[])[] | null {
  const numbers = table.numbers("FORCE_PLATFORM", "CAL_MATRIX").slice(36 * plate, 36 * plate + 36);
  if (numbers.length < 36) return null;
  return Array.from({ length: 6 }, (_, row) =>
    Array.from({ length: 6 }, (_, column) => numbers[row + 6 * column] as number),
  );
}
