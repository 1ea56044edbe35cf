import { type CurveComparison, compareStanceCurves, compareTrials } from "../../compare/index.js";
import { metricsToCsv, writeJson } from "../../exchange/index.js";
import type { GroundReaction } from "../../force/index.js";
import { comparisonHtml, comparisonMarkdown, comparisonText } from "../../report/index.js";
import type { Trial } from "../../trial/index.js";
import { type ChangeOptions, knownChanges } from "../input/knownChanges.js";
import { knownMargins, type MarginOptions } from "../input/knownMargins.js";
import { loadTrials } from "../input/loadTrials.js";
import { refuseOverlap } from "../input/refuseOverlap.js";
import { sourceNames } from "../input/sourceNames.js";
import { refuseTwice } from "../input/sourcesOf.js";
import type { TrialSource } from "../input/trialSource.js";
import type { Both } from "../options/both.js";
import type {
  AnalysisOptions,
  ComparedOptions,
  ForceOptions,
  MarkerOptions,
  OutputOptions,
  ReadingOptions,
  RecordingOptions,
} from "../options/inputOptions.js";
import { refuseOverInput } from "../output/refuseOverInput.js";
import { withOptionWords } from "../output/withOptionWords.js";
import { writeReport } from "../output/writeReport.js";
import type { Terminal } from "../terminal.js";

/** What only a comparison takes. */
export interface CompareOptions extends ChangeOptions, MarginOptions {
  readonly baselineAlso?: readonly string[] | undefined;
  readonly changedAlso?: readonly string[] | undefined;
  readonly method?: "student" | "bootstrap" | undefined;
  readonly speedEffect?: "kept" | "removed" | undefined;
  readonly minimumStrides?: number | undefined;
  readonly minimumStridesCorrelated?: number | undefined;
}

/** Compares two recordings, with one filter and one contact threshold for both, and prints the answer. */
export async function compare(
  files: Both<string>,
  options: Partial<ComparedOptions> &
    ReadingOptions &
    ForceOptions &
    MarkerOptions &
    AnalysisOptions &
    OutputOptions &
    CompareOptions,
  terminal: Terminal,
): Promise<void> {
  const { json, csv, markdown, report, metrics, minimumStrides, minimumStridesCorrelated } = options;
  const baselines = [files.baseline, ...(options.baselineAlso ?? [])];
  const changes = [files.changed, ...(options.changedAlso ?? [])];
  refuseTwice(baselines);
  refuseTwice(changes);
  const sources: readonly TrialSource[] = [
    ...baselines.map((path) => ({ path, own: statedOf(options, "baseline") })),
    ...changes.map((path) => ({ path, own: statedOf(options, "changed") })),
  ];
  refuseOverInput(
    report,
    sources.map(({ path }) => path),
  );
  const known = { ...knownMargins(options), smallestDetectableChange: knownChanges(options) };
  const { trials, grounds } = await loadTrials(sources, options, terminal);
  refuseOverlap(sources);
  await terminal.progress.say("comparing");
  const before = trials.slice(0, baselines.length);
  const after = trials.slice(baselines.length);
  const comparison = compareTrials(before, after, {
    metrics,
    minimumStrides,
    minimumStridesCorrelated,
    ...known,
    method: options.method,
    speedEffect: options.speedEffect,
  });
  const each = sourceNames(sources);
  const names = {
    baseline: each.slice(0, baselines.length).join(" and "),
    changed: each.slice(baselines.length).join(" and "),
  };
  const shown = withOptionWords(comparison);
  const curves = json && report === undefined ? [] : curvesOf(trials, grounds);
  const text = json
    ? `${writeJson(comparison)}\n`
    : csv
      ? metricsToCsv(comparison)
      : (markdown ? comparisonMarkdown : comparisonText)(shown, { names, curves });
  if (report !== undefined) {
    await terminal.progress.say("drawing the page");
    const pages = [before.map(withOptionWords), after.map(withOptionWords)] as const;
    const content = comparisonHtml(shown, ...pages, { names, curves });
    writeReport([{ path: report, content }], terminal);
  }
  terminal.out(text);
}

/** Of one recording each: which curves of several stand for their condition, no rule says. */
function curvesOf(
  [baseline, changed, ...more]: readonly Trial[],
  grounds: readonly GroundReaction[] | null,
): readonly CurveComparison[] {
  const [before, after] = grounds ?? [];
  if (!baseline || !changed || more.length > 0 || !before || !after) return [];
  return compareStanceCurves({ ground: before, trial: baseline }, { ground: after, trial: changed }).curves;
}

function statedOf(options: Partial<ComparedOptions>, which: keyof Both<unknown>): RecordingOptions {
  const { mass, height, speed, surface, grade, firstFoot, footwear, rate, from, to } = options;
  return {
    mass: mass?.[which],
    height: height?.[which],
    speed: speed?.[which],
    surface: surface?.[which],
    grade: grade?.[which],
    firstFoot: firstFoot?.[which],
    footwear: footwear?.[which],
    rate: rate?.[which],
    from: from?.[which],
    to: to?.[which],
  };
}
