import { InvalidArgumentError } from "commander";
import { CATALOGUE, type Metric } from "../../metrics/index.js";
import { list } from "./readers.js";

/** Reads ids of metrics with commas between, and gives their entries in the catalogue's order. */
export function metricIds(text: string): readonly Metric[] {
  const ids = list(text);
  const known = CATALOGUE.map(({ id }) => id);
  const odd = ids.find((id) => !known.includes(id));
  if (ids.length === 0 || odd !== undefined) {
    const what = odd === undefined ? "It must name at least one metric" : `"${odd}" is no metric`;
    throw new InvalidArgumentError(`${what}; the metrics are ${known.join(", ")}.`);
  }
  const twice = ids.find((id, i) => ids.indexOf(id) < i);
  if (twice !== undefined) throw new InvalidArgumentError(`"${twice}" stands twice.`);
  return CATALOGUE.filter(({ id }) => ids.includes(id));
}
