import { compareSessions } from "../../compare/index.js";
import { writeJson } from "../../exchange/index.js";
import { sessionsHtml, sessionsText } from "../../report/index.js";
import { type ChangeOptions, knownChanges } from "../input/knownChanges.js";
import { loadTrials, type TrialFileOptions } from "../input/loadTrials.js";
import { sourceNames } from "../input/sourceNames.js";
import { sourcesOf } from "../input/sourcesOf.js";
import type { OutputOptions, RecordingOptions } from "../options/inputOptions.js";
import { refuseOverInput } from "../output/refuseOverInput.js";
import { withOptionWords } from "../output/withOptionWords.js";
import { writeReport } from "../output/writeReport.js";
import type { Terminal } from "../terminal.js";

/** What only a series of sessions takes. */
export interface SessionsOptions extends ChangeOptions {
  readonly baseline?: "first" | "moving" | undefined;
  readonly baselineSessions?: number | undefined;
}

/** Holds each session of one runner, in the order given, against the runner's own baseline. */
export async function sessions(
  files: readonly string[],
  options: RecordingOptions & TrialFileOptions & Pick<OutputOptions, "json" | "report"> & SessionsOptions,
  terminal: Terminal,
): Promise<void> {
  const { json, report, metrics, baseline, baselineSessions } = options;
  const sources = sourcesOf(files, options, 2);
  refuseOverInput(report, files);
  const smallestDetectableChange = knownChanges(options);
  const { trials } = await loadTrials(sources, options, terminal);
  await terminal.progress.say("comparing");
  const names = sourceNames(sources);
  const series = compareSessions(
    trials.map((trial, k) => ({ name: names[k] as string, trials: trial })),
    { metrics, baseline, baselineSessions, smallestDetectableChange },
  );
  const shown = withOptionWords(series);
  if (report !== undefined) {
    await terminal.progress.say("drawing the page");
    writeReport([{ path: report, content: sessionsHtml(shown) }], terminal);
  }
  terminal.out(json ? `${writeJson(series)}\n` : sessionsText(shown));
}
