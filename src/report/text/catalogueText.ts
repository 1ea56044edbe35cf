import type { Metric } from "../../metrics/index.js";
import { metricGroups } from "../wording/metricGroups.js";
import { wrap } from "./wrap.js";

/**
 * Lists metrics as text of at most 80 columns: id, unit, definition and source, by component and family.
 *
 * Limits: entries of one id are all listed.
 * Source: layout of this library.
 * @param metrics - Catalogue entries, own ones included.
 * @example
 * catalogueText([]) // "\n"
 */
export function catalogueText(metrics: readonly Metric[]): string {
  const groups = metricGroups(
    metrics.map(({ id }) => id),
    metrics,
  );
  const entryOf = (id: string) => metrics.filter((metric) => metric.id === id);
  return `${groups
    .flatMap((group) => [
      group.heading,
      ...group.metrics.flatMap(({ id }) => entryOf(id)).flatMap(listed),
      "",
    ])
    .join("\n")
    .trimEnd()}\n`;
}

function listed({ id, unit, definition, source, primary, component }: Metric): string[] {
  const speaks = primary ? `, speaks for ${component === "none" ? "work" : "its component"}` : "";
  const head = `${id}${unit === "1" ? "" : ` [${unit}]`}${speaks}`;
  return [...wrap(head, "  "), ...wrap(definition, "      "), ...wrap(`Source: ${source}`, "      ")];
}
