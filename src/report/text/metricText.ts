import {
  METRIC_EXPLANATIONS,
  METRIC_INFLUENCES,
  type Metric,
  type MetricExplanation,
  type MetricInfluence,
} from "../../metrics/index.js";
import { type Complete, withDefaults } from "../../units/index.js";
import { capitalised } from "../wording/capitalised.js";
import { metricFacts } from "../wording/metricFacts.js";
import { wrap } from "./wrap.js";

/** What is known of metrics beyond their entries, by id. */
export interface MetricTextOptions {
  readonly explanations?: Readonly<Record<string, MetricExplanation | undefined>> | undefined;
  readonly influences?: Readonly<Record<string, readonly MetricInfluence[] | undefined>> | undefined;
}

/** What the library knows of its own metrics. */
export const METRIC_TEXT_DEFAULTS: Complete<MetricTextOptions> = {
  explanations: METRIC_EXPLANATIONS,
  influences: METRIC_INFLUENCES,
};

/**
 * Explains one metric on a page of text of at most 80 columns: definition, formula, unit, which way is more load, what it
 * needs, when it has no value, its limits, what raises and lowers it, its options and its source.
 *
 * Limits: formula, limits, influences and options are looked up by the id; of an entry of one's own they are left out,
 * unless they are stated.
 * Source: layout of this library.
 * @param metric - A catalogue entry, or one's own.
 * @param options - {@link METRIC_TEXT_DEFAULTS} where left out.
 * @throws GaitKineticsError `unknown-option`.
 * @example
 * metricText(metricById("contactTime")).split("\n")[0] // "Contact time (contactTime)"
 */
export function metricText(metric: Metric, options: MetricTextOptions = {}): string {
  const { explanations, influences } = withDefaults<MetricTextOptions>(METRIC_TEXT_DEFAULTS, options);
  const { id, name } = metric;
  const facts = metricFacts(metric, explanations[id], influences[id]);
  const lines = [
    ...wrap(capitalised(`${name} (${id})`)),
    "",
    ...facts.flatMap(({ label, texts }) =>
      texts.flatMap((text, i) => wrap(text, (i === 0 ? label : "").padEnd(17))),
    ),
  ];
  return `${lines.join("\n")}\n`;
}
