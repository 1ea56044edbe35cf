import type { Comparison } from "../../compare/index.js";

/** Why no metric that speaks has a straight line through its strides; empty where one has. */
export function whyNoDrift({ metrics, settings }: Comparison): string {
  if (metrics.some(({ drift }) => drift !== undefined)) return "";
  return settings.design.kind === "one trial each"
    ? "Not read: no metric that speaks has strides enough for a straight line."
    : "Not read: with several trials of a condition the trials themselves tell what varies between them.";
}

/** Why whole curves are not compared, where they are not. */
export function whyNoCurves({ settings }: Comparison): string {
  return settings.design.kind === "one trial each"
    ? "Not compared: that takes the force of both recordings itself, which stored trials do not hold."
    : "Not compared: which curves of several trials stand for their condition, no rule says.";
}
