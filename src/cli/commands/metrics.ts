import { CATALOGUE } from "../../metrics/index.js";
import { catalogueText, metricText } from "../../report/index.js";
import type { Terminal } from "../terminal.js";

/** Lists the catalogue, or explains one metric. */
export function metrics(
  id: string | undefined,
  terminal: Terminal,
  refuse: (message: string) => never,
): void {
  if (id === undefined) {
    terminal.out(`${catalogueText(CATALOGUE)}\ngait-kinetics metrics ID explains one on a page.\n`);
    return;
  }
  const entry = CATALOGUE.find((candidate) => candidate.id === id);
  if (entry === undefined) {
    refuse(`"${id}" is no metric; the metrics are ${CATALOGUE.map((metric) => metric.id).join(", ")}`);
  }
  terminal.out(metricText(entry));
}
