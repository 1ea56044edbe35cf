import type { MarkerSettings } from "../../force/index.js";

/** Says which markers stand for heel and toe of each foot. */
export function footMarkerWords({ feet = {} }: MarkerSettings): string {
  return (["left", "right"] as const)
    .flatMap((side) => {
      const foot = feet[side];
      return foot === undefined ? [] : [`${side} heel ${mean(foot.heel)}, toe ${mean(foot.toe)}`];
    })
    .join("; ");
}

/** Says which markers stand for the centre of mass. */
export function centreMarkerWords({ centreOfMass = [] }: MarkerSettings): string {
  return mean(centreOfMass);
}

function mean(names: readonly string[]): string {
  return names.length === 1 ? (names[0] as string) : `mean of ${names.join(", ")}`;
}
