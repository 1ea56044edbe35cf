import { stepsToCsv, writeJson } from "../../exchange/index.js";
import { trialHtml, trialMarkdown, trialText } from "../../report/index.js";
import { analyseTrial } from "../../trial/index.js";
import { explainingNoContact } from "../input/explainingNoContact.js";
import { naming } from "../input/naming.js";
import { readGround } from "../input/readGround.js";
import { recordingName } from "../input/recordingName.js";
import { refuseEmptyWindow } from "../input/refuseEmptyWindow.js";
import { refuseHighEventCutoff } from "../input/refuseHighEventCutoff.js";
import { refuseWithoutEffect } from "../input/refuseWithoutEffect.js";
import { trialOptions } from "../input/trialOptions.js";
import type {
  AnalysisOptions,
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

/** Analyses one recording and prints its numbers. */
export async function analyse(
  file: string,
  options: RecordingOptions & ReadingOptions & ForceOptions & MarkerOptions & AnalysisOptions & OutputOptions,
  terminal: Terminal,
): Promise<void> {
  const { json, csv, markdown, report } = options;
  const settings = trialOptions(options);
  refuseEmptyWindow(options);
  refuseOverInput(report, [file]);
  await terminal.progress.say(`reading ${file}`);
  const ground = await readGround(file, options, options);
  await terminal.progress.say("analysing");
  const trial = naming(file, () => {
    refuseHighEventCutoff(options.eventCutoff, ground);
    const analysed = explainingNoContact(options.forceOn, () => analyseTrial(ground, settings));
    refuseWithoutEffect(options, [analysed]);
    return analysed;
  });
  const title = recordingName(file, options);
  const shown = withOptionWords(trial);
  const text = json
    ? `${writeJson(trial)}\n`
    : csv
      ? stepsToCsv(trial)
      : (markdown ? trialMarkdown : trialText)(shown, { title });
  if (report !== undefined) {
    writeReport([{ path: report, content: trialHtml(shown, { title }) }], terminal);
  }
  terminal.out(text);
}
