import type { Metric, MetricNeed } from "../../metrics/index.js";
import { capitalised } from "../wording/capitalised.js";
import { wrap } from "./wrap.js";

const NEEDS: Readonly<Record<MetricNeed, string>> = {
  forward: "the anteroposterior force",
  right: "the mediolateral force",
  side: "which foot made the contact",
  mass: "the mass",
  speed: "the speed",
  surface: "the surface (belt or ground)",
  next: "the next contact",
  nextSameSide: "the next contact of the same foot",
};

const MORE_LOAD: Readonly<Record<Metric["moreLoad"], string>> = {
  higher: "a higher value",
  lower: "a lower value",
  none: "neither direction",
};

/**
 * Explains one metric as text of at most 80 columns: definition, unit, normalised unit, which way is more load, what it
 * needs, when it has no value, and its source.
 *
 * Limits: the formula is what the definition says in words.
 * Source: layout of this library.
 * @param metric - A catalogue entry, or one's own.
 * @example
 * metricText(metricById("contactTime")).split("\n")[0] // "Contact time (contactTime)"
 */
export function metricText(metric: Metric): string {
  const { id, name, symbol, unit, normalised, component, family, primary, needs, nullWhen } = metric;
  const facts: readonly (readonly [string, string])[] = [
    ["Definition", metric.definition],
    ["Symbol", symbol],
    ["Unit", unit === "1" ? "none (a ratio)" : unit],
    ["Normalised", normalised === undefined ? "not" : `${normalised.unit}, divided by ${normalised.by}`],
    ["Component", component === "none" ? `none; it belongs to ${family}` : component],
    ["More load", MORE_LOAD[metric.moreLoad]],
    ...(primary ? [["In a comparison", "its difference makes the reading"] as const] : []),
    ["Per kilometre", metric.perKilometre ? "value × steps per kilometre" : "not given"],
    ["Needs", ["the vertical force", ...needs.map((need) => NEEDS[need])].join(", ")],
    ["No value", nullWhen === undefined ? "only where a need is not met" : nullWhen.message],
    ["Source", metric.source],
  ];
  const lines = [
    ...wrap(capitalised(`${name} (${id})`)),
    "",
    ...facts.flatMap(([label, text]) => wrap(text, label.padEnd(17))),
  ];
  return `${lines.join("\n")}\n`;
}
