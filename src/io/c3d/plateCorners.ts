import type { ParameterTable } from "./parameterTable.js";

/** A point of the file, in its unit. */
export type Triple = readonly [number, number, number];

/** The corners of each force platform as stored; `null` where the file lacks them or they are not finite. */
export function plateCorners(
  table: ParameterTable,
): readonly (readonly [Triple, Triple, Triple, Triple] | null)[] {
  const numbers = table.numbers("FORCE_PLATFORM", "CORNERS");
  const used = table.count("FORCE_PLATFORM", "USED") ?? 0;
  return Array.from({ length: Math.min(used, 255) }, (_, plate) => {
    const own = numbers.slice(12 * plate, 12 * plate + 12);
    if (own.length < 12 || !own.every(Number.isFinite)) return null;
    const corner = (k: number): Triple => [
      own[3 * k] as number,
      own[3 * k + 1] as number,
      own[3 * k + 2] as number,
    ];
    return [corner(0), corner(1), corner(2), corner(3)];
  });
}

/** The vector at right angles to a plate's surface: the cross product of its diagonals. */
export function plateNormal([a, b, c, d]: readonly [Triple, Triple, Triple, Triple]): Triple {
  const one = [a[0] - c[0], a[1] - c[1], a[2] - c[2]] as const;
  const two = [b[0] - d[0], b[1] - d[1], b[2] - d[2]] as const;
  return [
    one[1] * two[2] - one[2] * two[1],
    one[2] * two[0] - one[0] * two[2],
    one[0] * two[1] - one[1] * two[0],
  ];
}
