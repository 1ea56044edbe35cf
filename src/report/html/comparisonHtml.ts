import type { Comparison, ComponentComparison, ComponentName, OverallReading } from "../../compare/index.js";
import type { Metric } from "../../metrics/index.js";
import type { Curve, Trial } from "../../trial/index.js";
import { withDefaults } from "../../units/index.js";
import { curveFigure } from "../figures/curveFigure.js";
import { differenceFigure } from "../figures/differenceFigure.js";
import { COMPARISON_REPORT_DEFAULTS, type ComparisonReportOptions } from "../options.js";
import { capitalised } from "../wording/capitalised.js";
import { type Compared, comparedRow } from "../wording/comparedRow.js";
import { comparisonFacts } from "../wording/comparisonFacts.js";
import { labelled } from "../wording/labelled.js";
import { methodsParagraph } from "../wording/methodsParagraph.js";
import { type MetricGroup, metricGroups } from "../wording/metricGroups.js";
import { plainNumber } from "../wording/plainNumber.js";
import { speakerWords } from "../wording/speakerWords.js";
import { bulletList } from "./bulletList.js";
import { cautionList } from "./cautionList.js";
import { factList } from "./factList.js";
import { figureBlock } from "./figureBlock.js";
import { healthSection } from "./healthSection.js";
import { missingList } from "./missingList.js";
import { page } from "./page.js";
import { paragraph } from "./paragraph.js";
import { section } from "./section.js";
import { table } from "./table.js";

const CHANNELS = { vertical: "up", anteroposterior: "forward", mediolateral: "right" } as const;

/** Narrow enough to be read on a telephone. */
const PANEL = { width: 360, height: 270 } as const;

const HEADINGS: Readonly<Record<OverallReading, string>> = {
  shifted: "The load shifted",
  reduced: "The load was reduced",
  raised: "The load was raised",
  unsettled: "Unsettled",
  "no clear change": "No clear change",
};

/**
 * Writes a comparison as one self-contained HTML page: the answer first with its uncertainty, then every component
 * with its difference, mean curves of both trials and numbers, timing, placement and work, cautions, methods and
 * health cautions. It loads nothing and runs nothing.
 *
 * Units: as each row says.
 * Limits: text from a file is shown as text, whatever markup it holds.
 * Source: layout of this library.
 * @param comparison - As `compareTrials` gives it.
 * @param baseline - The first of the trials that were compared, for its curves.
 * @param changed - The second.
 * @param options - {@link COMPARISON_REPORT_DEFAULTS} where left out.
 * @throws GaitKineticsError `unknown-option`; `missing-channel`, `missing-value`: a trial made by hand whose curves are
 * empty.
 * @example
 * comparisonHtml(compareTrials(baseline, changed), baseline, changed).startsWith("<!doctype html>") // true
 */
export function comparisonHtml(
  comparison: Comparison,
  baseline: Trial,
  changed: Trial,
  options: ComparisonReportOptions = {},
): string {
  const { metrics, names } = withDefaults<ComparisonReportOptions>(COMPARISON_REPORT_DEFAULTS, options);
  const { overall, settings, components, work, cautions } = comparison;
  const groups = metricGroups(
    comparison.metrics.map(({ id }) => id),
    metrics,
  );
  const facts = comparisonFacts(comparison, names);
  const heading = `${HEADINGS[overall.reading]}${readsOtherwisePerKilometre(overall) ? " per step" : ""}`;
  return page({
    title: names === null ? heading : `${heading}: ${names.baseline}, ${names.changed}`,
    kind: names === null ? "Two recordings compared" : `${names.baseline} compared with ${names.changed}`,
    heading,
    answer: overall.sentence,
    version: settings.version,
    sections: [
      settle(overall.toSettle),
      section(
        "The three components",
        bulletList(components.map(({ sentence }) => sentence)),
        differences(comparison, metrics),
        readings(comparison, metrics),
      ),
      ...groups
        .filter(({ key }) => key !== "work")
        .map((group) =>
          section(group.heading, curves(group.key, baseline, changed), numbers(comparison, group)),
        ),
      section(
        "Work and spring",
        paragraph(work.sentence),
        workTable(comparison),
        ...groups.filter(({ key }) => key === "work").map((group) => numbers(comparison, group)),
      ),
      section("Not compared", missingList(comparison.notCompared, metrics)),
      section("Data quality and cautions", cautionList(cautions, metrics)),
      section("What was compared", factList(facts)),
      section(
        "Methods and settings",
        paragraph(`Baseline. ${methodsParagraph(baseline.settings)}`),
        paragraph(`Changed. ${methodsParagraph(changed.settings)}`),
      ),
      healthSection(),
    ],
  });
}

/** Whether the reading would be taken for more than it says: it is of the load per step. */
function readsOtherwisePerKilometre({ reading, perKilometre }: Comparison["overall"]): boolean {
  const { lower, higher } = perKilometre;
  return reading === "raised"
    ? lower.length > 0
    : reading === "no clear change" && lower.length + higher.length > 0;
}

function differences(comparison: Comparison, metrics: readonly Metric[]): string {
  const drawable = comparison.components.some(({ metric }) =>
    comparison.metrics.some(({ id, percent }) => id === metric && percent !== null),
  );
  if (!drawable) return "";
  return figureBlock(
    [differenceFigure(comparison, { metrics, width: PANEL.width })],
    "Differences of the metric that speaks for each component. A line that crosses zero settles nothing by itself: not shown to differ is not the same.",
  );
}

function settle(toSettle: readonly string[] = []): string {
  return section("What would settle it", bulletList(toSettle.map(capitalised)));
}

function workTable(comparison: Comparison): string {
  const { perMetre } = comparison.work;
  if (perMetre === undefined) return "";
  return table(
    "Positive external work per metre",
    ["", ...differenceHeadings(comparison)],
    [{ cells: [`per metre, ${perMetre.unit}`, ...rowCells(perMetre)] }],
  );
}

function readings(comparison: Comparison, metrics: readonly Metric[]): string {
  const rows = comparison.components.flatMap((component) => componentRows(component, comparison, metrics));
  return table(
    "Readings, per step and per kilometre",
    ["", "reading", ...differenceHeadings(comparison)],
    rows,
  );
}

function componentRows(
  component: ComponentComparison,
  comparison: Comparison,
  metrics: readonly Metric[],
): readonly { cells: readonly string[] }[] {
  const { metric: id, reading, perKilometre } = component;
  const metric = comparison.metrics.find((candidate) => candidate.id === id);
  const heading = `${capitalised(component.component)}: ${speakerWords(component, metric?.unit ?? null, metrics)}`;
  if (metric === undefined) return [{ cells: [heading] }];
  return [
    { cells: [heading] },
    { cells: ["per step", reading ?? "", ...rowCells(metric)] },
    ...(metric.perKilometre === undefined
      ? []
      : [{ cells: ["per kilometre", perKilometre ?? "", ...rowCells(metric.perKilometre)] }]),
  ];
}

function curves(key: MetricGroup["key"], baseline: Trial, changed: Trial): string {
  if (key !== "vertical" && key !== "anteroposterior" && key !== "mediolateral") return "";
  const unit = baseline.settings.mass === null || changed.settings.mass === null ? "N" : "BW";
  const drawings = sidesOfBoth(key, baseline, changed).map((side) =>
    curveFigure(baseline, { component: key, changed, side, unit, ...PANEL }),
  );
  const all = [baseline, changed].flatMap((trial): Curve[] =>
    Object.values(trial.curves[CHANNELS[key]] ?? {}),
  );
  const bands = all.some(({ sd }) => sd !== null)
    ? "; the bands are one standard deviation between contacts"
    : "";
  return figureBlock(drawings, `Mean curves of stance, baseline solid and changed dashed${bands}.`);
}

/** Feet that both trials tell apart; `null` for the curve of both feet where neither does. */
function sidesOfBoth(
  key: ComponentName,
  baseline: Trial,
  changed: Trial,
): readonly ("left" | "right" | null)[] {
  const [one, other] = [baseline, changed].map((trial) => trial.curves[CHANNELS[key]] ?? {});
  const sides = (["left", "right"] as const).filter(
    (side) => one?.[side] !== undefined && other?.[side] !== undefined,
  );
  if (sides.length > 0) return sides;
  const together = [one, other].every(
    (curvesBySide) => curvesBySide !== undefined && Object.keys(curvesBySide).join() === "unknown",
  );
  return together ? [null] : [];
}

function numbers(comparison: Comparison, { heading, metrics }: MetricGroup): string {
  const rows = metrics.flatMap(({ id, name, primary }) => {
    const metric = comparison.metrics.find((candidate) => candidate.id === id);
    if (metric === undefined) return [];
    return [
      {
        primary,
        cells: [labelled(name, metric.unit), ...rowCells(metric), effect(metric.effectSize)],
      },
    ];
  });
  return table(
    `${heading}: means over strides; difference is changed less baseline`,
    ["", ...differenceHeadings(comparison), "Hedges' g"],
    rows,
  );
}

function rowCells(compared: Compared): string[] {
  const { baseline, changed, difference, interval, percent } = comparedRow(compared);
  return [baseline, changed, difference, interval, percent];
}

function differenceHeadings({ settings }: Comparison): readonly string[] {
  return ["baseline", "changed", "difference", `${plainNumber(100 * settings.shownLevel)} % interval`, "%"];
}

function effect(value: number | null): string {
  return value === null ? "" : value.toFixed(2);
}
