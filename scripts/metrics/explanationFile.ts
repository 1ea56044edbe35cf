import type { MetricExplanation, MetricOption } from "../../src/metrics/explanation.js";
import { CATALOGUE } from "../../src/metrics/index.js";

const HEAD = `// biome-ignore-all format: written by scripts/metrics.ts from the doc comments of the metrics' functions; a test holds it to them.
import type { MetricExplanation } from "./explanation.js";

/**
 * Formula, limits and options of every metric of the catalogue by its id. Kept apart from the catalogue, so that an
 * application that only computes does not carry the words.
 */
export const METRIC_EXPLANATIONS: Readonly<Record<string, MetricExplanation | undefined>> = {
`;

/** The source file that holds the explanations, and the path it belongs at. */
export function explanationFile(explanations: Readonly<Record<string, MetricExplanation>>): {
  readonly path: string;
  readonly text: string;
} {
  const entries = CATALOGUE.map(({ id }) => {
    const { formula, limits, optionsOf, options } = explanations[id] as MetricExplanation;
    return [
      `  ${id}: {`,
      `    formula: ${JSON.stringify(formula)},`,
      `    limits: ${JSON.stringify(limits)},`,
      `    optionsOf: ${JSON.stringify(optionsOf)},`,
      `    options: [${options.map(optionText).join(", ")}],`,
      "  },",
    ].join("\n");
  });
  return { path: "src/metrics/explanations.ts", text: `${HEAD}${entries.join("\n")}\n};\n` };
}

function optionText({ name, standard, choices, meaning }: MetricOption): string {
  return `{ name: ${JSON.stringify(name)}, standard: ${JSON.stringify(standard)}, choices: ${JSON.stringify(choices)}, meaning: ${JSON.stringify(meaning)} }`;
}
