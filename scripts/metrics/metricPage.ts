import type { MetricExplanation } from "../../src/metrics/explanation.js";
import { CATALOGUE, METRIC_INFLUENCES, type Metric } from "../../src/metrics/index.js";
import { capitalised } from "../../src/report/wording/capitalised.js";
import { type MetricFact, metricFacts } from "../../src/report/wording/metricFacts.js";
import { metricGroups } from "../../src/report/wording/metricGroups.js";

/** Gives `docs/metrics.md`: one section a metric of the catalogue. */
export function metricPage(explanations: Readonly<Record<string, MetricExplanation>>): string {
  const groups = metricGroups(
    CATALOGUE.map(({ id }) => id),
    CATALOGUE,
  );
  const entryOf = (id: string) => CATALOGUE.find((entry) => entry.id === id) as Metric;
  const contents = groups.map(
    ({ heading, metrics }) =>
      `- ${heading}: ${metrics.map(({ id }) => `[${id}](#${anchor(id)})`).join(", ")}`,
  );
  const sections = groups.map(({ heading, metrics }) =>
    [
      `## ${heading}`,
      ...metrics.map(({ id }) =>
        section(entryOf(id), metricFacts(entryOf(id), explanations[id], METRIC_INFLUENCES[id])),
      ),
    ].join("\n\n"),
  );
  return `# Metrics

Every number that the library gives of a step, by component of the force and family: ${CATALOGUE.length} of them. Each is an exported
function of the name that heads its section, \`(ground, step, options)\`; the same word stands in tables, JSON and CSV.
\`gait-kinetics metrics ID\` prints a section. How far each lies from the truth, and what it was held against, is in
[accuracy.md](accuracy.md). "Abstract" behind a source says that no more of it was read.

${contents.join("\n")}

${sections.join("\n\n")}
`;
}

function section({ id, name }: Metric, facts: readonly MetricFact[]): string {
  const rows = facts.map(({ label, texts }) => `| ${label} | ${texts.map(cell).join("<br>")} |`);
  return [`### ${id}`, `${capitalised(name)}.`, ["| | |", "|---|---|", ...rows].join("\n")].join("\n\n");
}

/** A bar, a star or an underscore of a formula is itself, not a mark of the page. */
function cell(text: string): string {
  return text.replace(/[|*_<>[\]]/g, (mark) =>
    mark === "|" ? "&#124;" : mark === "<" ? "&lt;" : `\\${mark}`,
  );
}

function anchor(id: string): string {
  return id.toLowerCase();
}
