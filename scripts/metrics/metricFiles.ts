import * as metrics from "../../src/metrics/index.js";
import { explanationFile } from "./explanationFile.js";
import { metricPage } from "./metricPage.js";
import { readExplanations } from "./readExplanations.js";

/** The two files that follow from the catalogue and the doc comments of its functions. */
export function metricFiles(root: string): readonly { readonly path: string; readonly text: string }[] {
  const explanations = readExplanations(
    root,
    metrics.CATALOGUE.map(({ id }) => id),
    metrics,
  );
  return [explanationFile(explanations), { path: "docs/metrics.md", text: metricPage(explanations) }];
}
