import type { ComparisonSettings } from "../../compare/index.js";

/** Says which interval readings are taken from, and what the bootstrap drew. */
export function methodWords({ method, bootstrap }: Pick<ComparisonSettings, "method" | "bootstrap">): string {
  const drawn = `${bootstrap.resamples} resamples, seed ${bootstrap.seed}`;
  return method === "student"
    ? `Student's t decides; a studentised block bootstrap (${drawn}) stands beside it`
    : `a studentised block bootstrap (${drawn}) decides; Student's t stands beside it`;
}
