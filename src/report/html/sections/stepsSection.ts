import type { Metric } from "../../../metrics/index.js";
import type { Trial } from "../../../trial/index.js";
import { stepSeriesFigure } from "../../figures/stepSeriesFigure.js";
import { capitalised } from "../../wording/capitalised.js";
import type { DriftWords } from "../../wording/driftSentences.js";
import { labelled } from "../../wording/labelled.js";
import { chooser, type Panel } from "../chooser.js";
import { figureBlock } from "../figureBlock.js";
import { paragraph } from "../paragraph.js";
import { section } from "../section.js";
import { table } from "../table.js";

/** Drawn beside the metrics that speak for a component or for work, where a trial has them. */
const BESIDES: readonly string[] = [
  "contactTime",
  "cadence",
  "touchdownDistance",
  "instantaneousLoadingRate",
];

/**
 * Writes the section of single steps: a reader chooses the metric and its unit.
 *
 * @param trial - The first, or only one.
 * @param changed - The second; `null` where there is one trial.
 * @param metrics - Entries that name and order the metrics.
 * @param drift - What moves within either trial.
 * @param noDrift - Why nothing is said of that; empty where it is.
 */
export function stepsSection(
  trial: Trial,
  changed: Trial | null,
  metrics: readonly Metric[],
  drift: readonly DriftWords[],
  noDrift: string = "",
): string {
  const listed = [
    ...metrics.filter(({ primary }) => primary === true),
    ...BESIDES.flatMap((id) => metrics.filter((metric) => metric.id === id && metric.primary !== true)),
  ];
  const panels = listed.flatMap((metric) => panelsOf(trial, changed, metric, metrics));
  return section(
    "Step by step",
    chooser("series", "Show", panels),
    driftTable(drift),
    noDrift === "" ? "" : paragraph(`Drift within a trial. ${noDrift}`),
  );
}

function driftTable(drift: readonly DriftWords[]): string {
  return table(
    "Drift, from first stride to last by a straight line, with its interval at the level of readings",
    ["metric", "baseline", "changed"],
    drift.map(({ name, unit, baseline, changed }) => ({ cells: [labelled(name, unit), baseline, changed] })),
  );
}

function panelsOf(
  trial: Trial,
  changed: Trial | null,
  { id, name }: Metric,
  metrics: readonly Metric[],
): readonly Panel[] {
  const summary = trial.summary.metrics[id];
  if (summary === undefined) return [];
  const other = changed === null ? summary : changed.summary.metrics[id];
  const units = [
    { unit: "SI", label: summary.unit },
    ...(summary.normalised === undefined || other?.normalised === undefined
      ? []
      : [{ unit: "normalised", label: summary.normalised.unit } as const]),
  ] as const;
  return units.flatMap(({ unit, label }): Panel[] => {
    const drawing = stepSeriesFigure(trial, {
      metric: id,
      changed,
      unit,
      metrics,
      id: `steps-${unit}-${idOf(id)}`,
      width: WIDTH,
      height: HEIGHT,
    });
    if (drawing === null) return [];
    const trials = changed === null ? "" : ", baseline and changed on one scale";
    return [
      {
        label: labelled(capitalised(name), label),
        content: figureBlock([drawing], `${capitalised(name)} of each contact in turn${trials}.`),
      },
    ];
  });
}

/** Wide enough for two trials beside each other, narrow enough for a telephone. */
const WIDTH = 420;
const HEIGHT = 250;

/** An own metric's id may hold what an id of a page must not. */
function idOf(id: string): string {
  return id.replace(/[^\w-]/g, "-");
}
