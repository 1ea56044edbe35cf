import type { Comparison } from "../../compare/index.js";

/** Says which interval readings are taken from, and what the bootstrap drew. */
export function methodWords({ settings, metrics }: Comparison): string {
  const { method, bootstrap, design } = settings;
  if (method === "student" && !hasBootstrap({ metrics })) {
    return `Student's t decides; no bootstrap stands beside it: ${design.kind === "one trial each" ? "no metric that speaks could be resampled" : "with several trials of a condition it is made only where it decides"}`;
  }
  const drawn = `${bootstrap.resamples} resamples, seed ${bootstrap.seed}`;
  return method === "student"
    ? `Student's t decides; a studentised block bootstrap (${drawn}) stands beside it`
    : `a studentised block bootstrap (${drawn}) decides; Student's t stands beside it`;
}

/** Whether the bootstrap was made for any metric. */
export function hasBootstrap({ metrics }: Pick<Comparison, "metrics">): boolean {
  return metrics.some(({ bootstrapInterval }) => bootstrapInterval !== undefined);
}
