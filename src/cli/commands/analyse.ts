import { stepsToCsv, writeJson } from "../../exchange/index.js";
import { trialHtml, trialText } from "../../report/index.js";
import { analyseTrial } from "../../trial/index.js";
import { naming } from "../input/naming.js";
import { readGround } from "../input/readGround.js";
import { recordingName } from "../input/recordingName.js";
import { refuseEmptyWindow } from "../input/refuseEmptyWindow.js";
import { trialOptions } from "../input/trialOptions.js";
import type {
  AnalysisOptions,
  ForceOptions,
  OutputOptions,
  ReadingOptions,
  RecordingOptions,
} from "../options/inputOptions.js";
import { progress } from "../output/progress.js";
import { refuseOverInput } from "../output/refuseOverInput.js";
import { writeFilesWhole } from "../output/writeFilesWhole.js";
import type { Terminal } from "../terminal.js";

/** Analyses one recording and prints its numbers. */
export async function analyse(
  file: string,
  options: RecordingOptions & ReadingOptions & ForceOptions & AnalysisOptions & OutputOptions,
  terminal: Terminal,
): Promise<void> {
  const { json, csv, report } = options;
  const settings = trialOptions(options);
  refuseEmptyWindow(options);
  refuseOverInput(report, [file]);
  progress(terminal, `reading ${file}`);
  const ground = await readGround(file, options, options);
  progress(terminal, "analysing");
  const trial = naming(file, () => analyseTrial(ground, settings));
  const title = recordingName(file, options);
  const text = json ? `${writeJson(trial)}\n` : csv ? stepsToCsv(trial) : trialText(trial, { title });
  if (report !== undefined) {
    writeFilesWhole([{ path: report, content: trialHtml(trial, { title }) }]);
    progress(terminal, `wrote ${report}`);
  }
  terminal.out(text);
}
