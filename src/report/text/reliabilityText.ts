import type { MetricReliability, Reliability } from "../../compare/index.js";
import { withDefaults } from "../../units/index.js";
import { SERIES_REPORT_DEFAULTS, type SeriesReportOptions } from "../options.js";
import { capitalised } from "../wording/capitalised.js";
import { counted } from "../wording/counted.js";
import { decimalsFor } from "../wording/decimalsFor.js";
import { formatNumber } from "../wording/formatNumber.js";
import { levelWords } from "../wording/intervalWords.js";
import { labelled } from "../wording/labelled.js";
import { metricName } from "../wording/metricName.js";
import { cautionLines } from "./cautionLines.js";
import { healthLines } from "./healthLines.js";
import { notComputedLines } from "./notComputedLines.js";
import { tableHead } from "./tableHead.js";
import { type Column, tableRow } from "./tableRow.js";
import { wrap } from "./wrap.js";

/**
 * Writes how well metrics repeat as text of at most 80 columns: smallest detectable change and standard error of every
 * metric, then intraclass correlations and limits of agreement with their intervals where several runners give them.
 *
 * Units: as each row says.
 * Limits: correlations carry no words such as high or low: they depend on how much the runners differ.
 * Source: layout of this library.
 * @param reliability - As `reliability` gives it.
 * @param options - {@link SERIES_REPORT_DEFAULTS} where left out.
 * @throws GaitKineticsError `unknown-option`.
 * @example
 * reliabilityText(reliability([baseline, changed])).split("\n").every((line) => line.length <= 80) // true
 */
export function reliabilityText(reliability: Reliability, options: SeriesReportOptions = {}): string {
  const { metrics } = withDefaults<SeriesReportOptions>(SERIES_REPORT_DEFAULTS, options);
  const { settings, notCompared, cautions } = reliability;
  const nameOf = (id: string) => metricName(id, metrics);
  const level = levelWords(settings.level);
  const columns: readonly Column[] = [
    { heading: "Repeatability", width: 27, left: true },
    { heading: "mean", width: 8 },
    { heading: "SEM", width: 8 },
    { heading: "SDC", width: 8 },
    { heading: `${level} interval`, width: 17 },
    { heading: "%", width: 5 },
  ];
  const lines = [
    ...tableHead(columns),
    ...reliability.metrics.flatMap((metric) => tableRow(columns, changeCells(metric, nameOf))),
    ...wrap(
      "SEM: standard error of measurement, of agreement; SDC: smallest detectable change, 1.96 √2 times that; %: of the mean.",
    ),
    "",
    ...reliability.metrics.flatMap((metric) => agreementLines(metric, level, nameOf)),
    ...wrap(settings.design, "Design             "),
    ...wrap(`gait-kinetics ${settings.version}`, "Computed with      "),
    "",
    ...notComputedLines("Not computed", notCompared, nameOf),
    ...cautionLines(cautions, nameOf),
    ...healthLines(),
  ];
  return `${lines.join("\n")}\n`;
}

function changeCells(metric: MetricReliability, nameOf: (id: string) => string): readonly string[] {
  const { id, unit, mean, standardError, smallestDetectableChange } = metric;
  const { value, percent, interval } = smallestDetectableChange;
  const decimals = decimalsFor(Math.max(Math.abs(mean), value), value);
  const write = (number: number) => formatNumber(number, decimals);
  return [
    `  ${capitalised(labelled(nameOf(id), unit))}`,
    write(mean),
    write(standardError.agreement),
    write(value),
    interval === null ? "" : `${write(interval.low)} to ${write(interval.high)}`,
    percent === null ? "" : percent.toFixed(1),
  ];
}

/** Correlations and limits of agreement of one metric; nothing where there are none. */
function agreementLines(
  { id, unit, runners, trials, correlations, limitsOfAgreement: limits }: MetricReliability,
  level: string,
  nameOf: (id: string) => string,
): string[] {
  if (correlations.length === 0 && limits === null) return [];
  const between = ({ low, high }: { readonly low: number; readonly high: number }, decimals: number) =>
    `${formatNumber(low, decimals)} to ${formatNumber(high, decimals)}`;
  const agreement = () => {
    if (limits === null) return [];
    const { bias, low, high, biasInterval, lowInterval, highInterval } = limits;
    const decimals = decimalsFor(Math.max(Math.abs(low), Math.abs(high)), (high - low) / 2);
    const write = (value: number, interval: typeof biasInterval) =>
      `${formatNumber(value, decimals)} (${between(interval, decimals)})`;
    return wrap(
      `limits of agreement, ${unit}: ${write(low, lowInterval)} and ${write(high, highInterval)}, bias ${write(bias, biasInterval)}`,
      "  ",
    );
  };
  return [
    ...wrap(
      `${capitalised(nameOf(id))}: ${counted(runners, "runner")}, ${counted(trials, "trial")} each; with ${level} intervals`,
    ),
    ...correlations.flatMap(({ form, alsoCalled, value, interval }) =>
      wrap(`${form}, also called ${alsoCalled}: ${value.toFixed(3)} (${between(interval, 3)})`, "  "),
    ),
    ...agreement(),
    "",
  ];
}
