import { type Caution, fail } from "../../units/index.js";
import type { C3dFile } from "./c3dFile.js";
import type { ParameterTable } from "./parameterTable.js";
import { plateCorners } from "./plateCorners.js";
import { quoted } from "./refuse.js";
import { unitOf } from "./unitOf.js";

/** Sides that a force platform has, m. Source: judgement of this library. */
const PLATE_SIDES = { from: 0.2, to: 3 } as const;
/** Farthest coordinate of a marker, m: beyond the first it is no metre, below the second no millimetre. A judgement. */
const FARTHEST = { metres: 30, millimetres: 200 } as const;

/** The unit of positions and platform corners. */
export interface LengthUnit {
  readonly name: string;
  readonly toMetres: number;
}

/** Finds the unit of positions: the option's, POINT:UNITS, or the one that plates and markers have a likely size in. */
export function lengthUnit(
  file: C3dFile,
  table: ParameterTable,
  option: "mm" | "cm" | "m" | null,
): { readonly unit: LengthUnit; readonly cautions: readonly Caution[] } {
  const written = table.text("POINT", "UNITS")?.trim() ?? "";
  const stated = unitOf(written);
  const inFile = stated?.dimension === "length" ? stated.toSi : null;
  if (option !== null) {
    const toMetres = { mm: 0.001, cm: 0.01, m: 1 }[option];
    const cautions: Caution[] =
      inFile === null || inFile === toMetres
        ? []
        : [
            {
              code: "option-over-file",
              message: `POINT:UNITS is ${quoted(written)}, the option ${option}; the option was used`,
              where: "POINT:UNITS",
              values: { file: written, option },
            },
          ];
    return { unit: { name: option, toMetres }, cautions };
  }
  if (inFile !== null) return { unit: { name: nameOf(inFile), toMetres: inFile }, cautions: [] };
  const deduced = deduce(file, table);
  if (deduced === null) {
    fail(
      "unknown-unit",
      `POINT:UNITS is ${quoted(written)}, and neither plates nor markers show the unit of length; state lengthUnit: "mm", "cm" or "m"`,
      {
        argument: "lengthUnit",
        where: "POINT:UNITS",
        values: { given: written, allowed: ["mm", "cm", "m"] },
      },
    );
  }
  const caution: Caution = {
    code: "unit-deduced",
    message: `POINT:UNITS is ${quoted(written)}; ${deduced.name} was taken, in which ${deduced.why}; state lengthUnit if that is wrong`,
    where: "POINT:UNITS",
    values: { unit: deduced.name },
  };
  return { unit: deduced, cautions: [caution] };
}

/** The unit's own symbol: files cut its name to four letters. */
function nameOf(toMetres: number): string {
  return { 0.001: "mm", 0.01: "cm", 1: "m", 0.0254: "in", 0.3048: "ft" }[toMetres] ?? `${toMetres} m`;
}

function deduce(file: C3dFile, table: ParameterTable): (LengthUnit & { readonly why: string }) | null {
  const sides = plateCorners(table).flatMap((corners) => {
    if (corners === null) return [];
    const [a, b, c] = corners;
    const side = (p: readonly number[], q: readonly number[]) =>
      Math.hypot(
        (p[0] as number) - (q[0] as number),
        (p[1] as number) - (q[1] as number),
        (p[2] as number) - (q[2] as number),
      );
    return [side(a, b), side(b, c)];
  });
  if (sides.length > 0) {
    const [shortest, longest] = [Math.min(...sides), Math.max(...sides)];
    for (const [name, toMetres] of [
      ["mm", 0.001],
      ["m", 1],
      ["cm", 0.01],
    ] as const) {
      if (shortest * toMetres >= PLATE_SIDES.from && longest * toMetres <= PLATE_SIDES.to) {
        const why = `the plates' sides are ${(shortest * toMetres).toFixed(2)} m to ${(longest * toMetres).toFixed(2)} m`;
        return { name, toMetres, why };
      }
    }
    return null;
  }
  let farthest = 0;
  for (const { x, y, z } of file.points) {
    for (const axis of [x, y, z]) {
      for (let i = 0; i < axis.length; i++) {
        const distance = Math.abs(axis[i] as number);
        if (distance > farthest) farthest = distance;
      }
    }
  }
  const why = (toMetres: number) => `the farthest marker lies at ${(farthest * toMetres).toFixed(2)} m`;
  if (farthest >= FARTHEST.millimetres) return { name: "mm", toMetres: 0.001, why: why(0.001) };
  if (farthest > 0 && farthest <= FARTHEST.metres) return { name: "m", toMetres: 1, why: why(1) };
  return null;
}
