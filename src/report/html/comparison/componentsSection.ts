import type { Comparison, ComponentComparison } from "../../../compare/index.js";
import type { Metric } from "../../../metrics/index.js";
import { differenceFigure } from "../../figures/differenceFigure.js";
import { type BehindReading, behindReading } from "../../wording/behindReading.js";
import { besideSpeed } from "../../wording/besideSpeed.js";
import { capitalised } from "../../wording/capitalised.js";
import { levelWords } from "../../wording/intervalWords.js";
import { labelled } from "../../wording/labelled.js";
import { speakers } from "../../wording/speakers.js";
import { speakerWords } from "../../wording/speakerWords.js";
import { speedSentences } from "../../wording/speedSentences.js";
import { bulletList } from "../bulletList.js";
import { chooser, type Panel } from "../chooser.js";
import { figureBlock } from "../figureBlock.js";
import { section } from "../section.js";
import { twoColumns } from "../sections/twoColumns.js";
import { type TableRow, table } from "../table.js";
import type { Compared } from "./compared.js";
import { differenceHeadings, rowCells } from "./rowCells.js";

/** Writes the section of the three components: differences drawn, readings in words and numbers, and what they rest on. */
export function componentsSection({ comparison, metrics }: Compared): string {
  return section(
    "The three components",
    twoColumns(
      differences(comparison, metrics),
      bulletList(comparison.components.map(({ sentence }) => sentence)) +
        bulletList(speedSentences(comparison, metrics)) +
        behind(comparison),
    ),
    readings(comparison, metrics),
  );
}

function differences(comparison: Comparison, metrics: readonly Metric[]): string {
  const spoken = speakers(comparison).map(({ metric }) => metric);
  const drawn = (unit: "percent" | "si" | "normalised", drawable: boolean): string =>
    drawable
      ? figureBlock(
          [differenceFigure(comparison, { metrics, unit, id: `differences-${unit}`, width: WIDTH })],
          "Differences of the metric that speaks for each component. A line that crosses zero settles nothing by itself: not shown to differ is not the same.",
        )
      : "";
  const panels: readonly Panel[] = [
    {
      label: "per cent of the baseline",
      content: drawn(
        "percent",
        spoken.some(({ percent }) => percent !== null),
      ),
    },
    { label: "units of each metric", content: drawn("si", spoken.length > 0) },
    {
      label: "per body weight",
      content: drawn(
        "normalised",
        spoken.some(({ normalised }) => normalised !== undefined),
      ),
    },
  ];
  return chooser("differences", "Differences in", panels);
}

/** Narrow enough for a telephone. */
const WIDTH = 420;

function readings(comparison: Comparison, metrics: readonly Metric[]): string {
  return table(
    "Readings, per step and per kilometre",
    ["per", "reading", ...differenceHeadings(comparison)],
    comparison.components.flatMap((component) => componentRows(component, comparison, metrics)),
  );
}

function componentRows(
  component: ComponentComparison,
  comparison: Comparison,
  metrics: readonly Metric[],
): readonly TableRow[] {
  const { metric: id, reading, perKilometre } = component;
  const metric = comparison.metrics.find((candidate) => candidate.id === id);
  const heading = `${capitalised(component.component)}: ${speakerWords(component, metric?.unit ?? null, metrics)}`;
  if (metric === undefined) return [{ cells: [heading] }];
  return [
    { cells: [heading] },
    { cells: [`per step${besideSpeed(metric)}`, reading ?? "", ...rowCells(metric)] },
    ...(metric.perKilometre === undefined
      ? []
      : [{ cells: ["per kilometre", perKilometre ?? "", ...rowCells(metric.perKilometre)] }]),
  ];
}

/** What the readings rest on, a column a component: narrow enough to stand beside the figure. */
function behind(comparison: Comparison): string {
  const spoken = speakers(comparison);
  const words = spoken.map(({ metric }) => behindReading(metric));
  const rows: readonly (readonly [string, (one: BehindReading) => string])[] = [
    [`${levelWords(comparison.settings.readingLevel)} interval`, ({ interval }) => interval],
    ["the same by bootstrap", ({ bootstrap }) => bootstrap],
    ["smallest detectable change", ({ smallestDetectableChange }) => smallestDetectableChange],
    ["margin", ({ margin }) => margin],
    ["no rise beyond the margin", ({ noRiseBeyondMargin }) => noRiseBeyondMargin],
  ];
  return table(
    "What the readings per step rest on",
    [
      "of each component",
      ...spoken.map(({ component, metric }) => labelled(component.component, metric.unit)),
    ],
    spoken.length === 0 ? [] : rows.map(([label, cell]) => ({ cells: [label, ...words.map(cell)] })),
  );
}
