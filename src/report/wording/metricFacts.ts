import type { Metric, MetricExplanation, MetricInfluence, MetricOption } from "../../metrics/index.js";
import { capitalised } from "./capitalised.js";
import { needWords } from "./needWords.js";

/** What is said of a metric under one word; several texts stand on lines of their own. */
export interface MetricFact {
  readonly label: string;
  readonly texts: readonly string[];
}

const MORE_LOAD: Readonly<Record<Metric["moreLoad"], string>> = {
  higher: "a higher value",
  lower: "a lower value",
  none: "neither direction",
};

/**
 * Says all that is known of a metric, in the order of its page.
 *
 * @param metric - A catalogue entry, or one's own.
 * @param explanation - Formula, limits and options, where there are any.
 * @param influences - What raises and lowers it, where that is known.
 */
export function metricFacts(
  metric: Metric,
  explanation: MetricExplanation | undefined,
  influences: readonly MetricInfluence[] = [],
): readonly MetricFact[] {
  const { symbol, unit, normalised, component, family, primary, needs, nullWhen, gaits } = metric;
  const by = (effect: MetricInfluence["effect"]) =>
    influences.filter((one) => one.effect === effect).map(({ what, source }) => `${what} [${source}]`);
  const facts: readonly (readonly [string, ...string[]])[] = [
    ["Definition", metric.definition],
    ["Formula", ...(explanation === undefined ? [] : [words(explanation.formula)])],
    ["Symbol", symbol],
    ["Unit", unit === "1" ? "none (a ratio)" : unit],
    ["Normalised", normalised === undefined ? "not" : `${normalised.unit}, divided by ${normalised.by}`],
    ["Component", component === "none" ? `none; it belongs to ${family}` : component],
    ["Gait", gaits === undefined ? "any" : gaits.join(", ")],
    ["More load", MORE_LOAD[metric.moreLoad]],
    ["In a comparison", ...(primary ? ["its difference makes the reading"] : [])],
    ["Per kilometre", metric.perKilometre ? "value × steps per kilometre" : "not given"],
    ["Needs", ["the vertical force", ...needs.map(needWords)].join(", ")],
    ["No value", nullWhen === undefined ? "only where a need is not met" : nullWhen.message],
    ["Limits", ...(explanation === undefined ? [] : [capitalised(words(explanation.limits))])],
    ["Raised by", ...by("raises")],
    ["Lowered by", ...by("lowers")],
    ["Options", ...(explanation === undefined ? [] : optionLines(explanation))],
    ["Source", metric.source],
  ];
  return facts.flatMap(([label, ...texts]) => (texts.length === 0 ? [] : [{ label, texts }]));
}

function optionLines({ optionsOf, options }: MetricExplanation): string[] {
  return options.length === 0 ? [] : [words(optionsOf, "none"), ...options.map(optionLine)];
}

function optionLine({ name, standard, choices, meaning }: MetricOption): string {
  const what = meaning === "" ? "" : ` ${words(meaning, "none").replace(/\.$/, "")};`;
  const others = choices.length === 0 ? "" : `, one of ${choices.join(", ")}`;
  const byDefault = standard === "null" ? "none" : standard.replaceAll('"', "");
  return `${name}:${what} ${byDefault} by default${others}`;
}

/** The words of a doc comment without its marks of code. */
function words(text: string, absent: string = "no value"): string {
  return text.replaceAll("`null`", absent).replaceAll("`", "");
}
