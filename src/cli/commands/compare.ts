import { basename } from "node:path";
import { compareTrials } from "../../compare/index.js";
import { metricsToCsv, writeJson } from "../../exchange/index.js";
import type { GroundReaction } from "../../force/index.js";
import { comparisonHtml, comparisonText } from "../../report/index.js";
import { type AnalyseTrialOptions, analyseTrial, analyseTrials, type Trial } from "../../trial/index.js";
import { isGaitKineticsError } from "../../units/index.js";
import { explainingNoContact } from "../input/explainingNoContact.js";
import { naming } from "../input/naming.js";
import { readGrounds } from "../input/readGrounds.js";
import { recordingName, recordingPath } from "../input/recordingName.js";
import { refuseEmptyWindow } from "../input/refuseEmptyWindow.js";
import { refuseHighEventCutoff } from "../input/refuseHighEventCutoff.js";
import { refuseWithoutEffect } from "../input/refuseWithoutEffect.js";
import { trialOptions } from "../input/trialOptions.js";
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
import { progress } from "../output/progress.js";
import { refuseOverInput } from "../output/refuseOverInput.js";
import { withOptionWords } from "../output/withOptionWords.js";
import { writeReport } from "../output/writeReport.js";
import type { Terminal } from "../terminal.js";

/** What only a comparison takes. */
export interface MinimumOptions {
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
    MinimumOptions,
  terminal: Terminal,
): Promise<void> {
  const { json, csv, report, metrics, minimumStrides, minimumStridesCorrelated } = options;
  const settings = trialOptions(options);
  const own = forBoth((which) => statedOf(options, which));
  forBoth((which) => refuseEmptyWindow(own[which]));
  refuseOverInput(report, [files.baseline, files.changed]);
  const nameOf =
    basename(files.baseline) === basename(files.changed) && files.baseline !== files.changed
      ? recordingPath
      : recordingName;
  const names = forBoth((which) => nameOf(files[which], own[which]));
  const grounds = await readGrounds(files, own, options, (which) =>
    progress(terminal, `reading ${recordingPath(files[which], own[which])}`),
  );
  progress(terminal, "analysing and comparing");
  forBoth((which) => naming(files[which], () => refuseHighEventCutoff(options.eventCutoff, grounds[which])));
  const trials = analyseBoth(grounds, files, settings, options.forceOn);
  refuseWithoutEffect(options, [trials.baseline, trials.changed]);
  const comparison = compareTrials(trials.baseline, trials.changed, {
    metrics,
    minimumStrides,
    minimumStridesCorrelated,
  });
  const shown = withOptionWords(comparison);
  const text = json
    ? `${writeJson(comparison)}\n`
    : csv
      ? metricsToCsv(comparison)
      : comparisonText(shown, { names });
  if (report !== undefined) {
    const pages = forBoth((which) => withOptionWords(trials[which]));
    const content = comparisonHtml(shown, pages.baseline, pages.changed, { names });
    writeReport([{ path: report, content }], terminal);
  }
  terminal.out(text);
}

function forBoth<T>(make: (which: keyof Both<T>) => T): Both<T> {
  return { baseline: make("baseline"), changed: make("changed") };
}

/** Both trials with one threshold; where that fails, the recording that it fails for is named. */
function analyseBoth(
  grounds: Both<GroundReaction>,
  files: Both<string>,
  options: AnalyseTrialOptions,
  forceOn: ReadingOptions["forceOn"],
): Both<Trial> {
  try {
    const [baseline, changed] = analyseTrials([grounds.baseline, grounds.changed], options) as [Trial, Trial];
    return { baseline, changed };
  } catch (caught) {
    if (isGaitKineticsError(caught))
      forBoth((which) =>
        naming(files[which], () => explainingNoContact(forceOn, () => analyseTrial(grounds[which], options))),
      );
    throw caught;
  }
}

function statedOf(options: Partial<ComparedOptions>, which: keyof Both<unknown>): RecordingOptions {
  const { mass, height, speed, surface, grade, firstFoot, rate, from, to } = options;
  return {
    mass: mass?.[which],
    height: height?.[which],
    speed: speed?.[which],
    surface: surface?.[which],
    grade: grade?.[which],
    firstFoot: firstFoot?.[which],
    rate: rate?.[which],
    from: from?.[which],
    to: to?.[which],
  };
}
