import type { Metric } from "../metrics/index.js";
import { fail } from "../units/index.js";
import { isRecord, shown } from "./given.js";

const DIRECTIONS: readonly unknown[] = ["higher", "lower", "none"] satisfies Metric["moreLoad"][];

/** Refuses a list of metrics that holds anything but catalogue entries. */
export function requireEntries(metrics: unknown): void {
  const odd = Array.isArray(metrics) ? metrics.findIndex((entry) => !isEntry(entry)) : null;
  if (odd === -1) return;
  const given = odd === null ? `metrics is ${shown(metrics)}` : oddEntry(odd, (metrics as unknown[])[odd]);
  fail("wrong-type", `${given}; a list of catalogue entries is needed, such as [metricById("contactTime")]`, {
    argument: "metrics",
    ...(odd !== null && { where: `metrics[${odd}]` }),
  });
}

/** What a comparison takes from an entry. */
function isEntry(entry: unknown): boolean {
  return (
    isRecord(entry) &&
    ["id", "name", "unit", "family", "component"].every((field) => typeof entry[field] === "string") &&
    Array.isArray(entry.needs) &&
    DIRECTIONS.includes(entry.moreLoad)
  );
}

function oddEntry(index: number, entry: unknown): string {
  const lacks = isRecord(entry) ? " without id, name, unit, family, component, needs or moreLoad" : "";
  return `metrics[${index}] is ${shown(entry)}${lacks}`;
}
