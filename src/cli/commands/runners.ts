import { compareRunners } from "../../compare/index.js";
import { writeJson } from "../../exchange/index.js";
import { runnersHtml, runnersText } from "../../report/index.js";
import { knownMargins, type MarginOptions } from "../input/knownMargins.js";
import { loadTrials, type TrialFileOptions } from "../input/loadTrials.js";
import { naming } from "../input/naming.js";
import { readRunnersTable } from "../input/readRunnersTable.js";
import { readUtf8 } from "../input/readUtf8.js";
import { statedOfAll } from "../input/sourcesOf.js";
import { type StudyDesign, studyOf } from "../input/studyOf.js";
import type { OutputOptions, RecordingOptions } from "../options/inputOptions.js";
import { refuseOverInput } from "../output/refuseOverInput.js";
import { withOptionWords } from "../output/withOptionWords.js";
import { writeReport } from "../output/writeReport.js";
import type { Terminal } from "../terminal.js";

/** What only a comparison of runners takes. */
export interface RunnersOptions extends MarginOptions {
  readonly design?: StudyDesign | undefined;
  readonly minimumRunners?: number | undefined;
}

/** Compares two conditions over many runners, whose recordings a table names. */
export async function runners(
  table: string,
  options: RecordingOptions & TrialFileOptions & Pick<OutputOptions, "json" | "report"> & RunnersOptions,
  terminal: Terminal,
): Promise<void> {
  const { json, report, metrics, design, minimumRunners } = options;
  const margins = knownMargins(options);
  const text = readUtf8(table);
  const rows = naming(table, () => readRunnersTable(text, table, statedOfAll(options)));
  const files = [table, ...rows.map(({ path }) => path)];
  refuseOverInput(report, files);
  const { trials } = await loadTrials(rows, options, terminal);
  await terminal.progress.say("comparing");
  const study = naming(table, () => studyOf(rows, trials, design));
  const comparison = compareRunners(study, { metrics, minimumRunners, ...margins });
  const shown = withOptionWords(comparison);
  if (report !== undefined) {
    await terminal.progress.say("drawing the page");
    writeReport([{ path: report, content: runnersHtml(shown) }], terminal);
  }
  terminal.out(json ? `${writeJson(comparison)}\n` : runnersText(shown));
}
