import type { DescribedPoint, PlatformPlace } from "./description.js";

/**
 * Finds size and middle of a plate.
 *
 * Formula: length |corner 1 − corner 2|, width |corner 1 − corner 4|, middle the mean of all four.
 * @param corners - Four, in the order of the C3D format.
 * @param names - Of the axes.
 */
export function platformPlace(corners: readonly DescribedPoint[], names: readonly string[]): PlatformPlace {
  const part = (corner: number, name: string): number => corners[corner]?.[name] ?? Number.NaN;
  const between = (one: number, two: number): number =>
    Math.hypot(...names.map((name) => part(one, name) - part(two, name)));
  return {
    length: between(0, 1),
    width: between(0, 3),
    corners,
    middle: Object.fromEntries(
      names.map((name) => [name, corners.reduce((sum, corner) => sum + (corner[name] ?? 0), 0) / 4]),
    ),
  };
}
