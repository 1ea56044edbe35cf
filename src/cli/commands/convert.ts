import { convertedFiles } from "../convert/convertedFiles.js";
import type { Target } from "../convert/target.js";
import { naming, namingLater } from "../input/naming.js";
import { readRecordingFile } from "../input/readRecordingFile.js";
import { refuseEmptyWindow } from "../input/refuseEmptyWindow.js";
import type { ForceOptions, ReadingOptions, RecordingOptions } from "../options/inputOptions.js";
import { note } from "../output/note.js";
import { refuseExisting } from "../output/refuseExisting.js";
import { refuseOverInput } from "../output/refuseOverInput.js";
import { writeFilesWhole } from "../output/writeFilesWhole.js";
import type { Terminal } from "../terminal.js";

/** What only a conversion takes. */
export interface ConvertOptions {
  readonly overwrite?: true | undefined;
}

/** Writes one recording in another format, and says what that format does not hold. */
export async function convert(
  file: string,
  target: Target,
  options: RecordingOptions & ReadingOptions & ForceOptions & ConvertOptions,
  terminal: Terminal,
): Promise<void> {
  refuseEmptyWindow(options);
  const refuse = (path: string): void => {
    refuseOverInput(path, [file], "other file");
    refuseExisting(path, options.overwrite === true);
  };
  refuse(target.path);
  await terminal.progress.say(`reading ${file}`);
  const recording = await namingLater(file, () => readRecordingFile(file, options, options));
  const { files, notes } = naming(file, () => convertedFiles(recording, target, options));
  for (const { path } of files) refuse(path);
  writeFilesWhole(files);
  for (const sentence of notes) note(terminal, target.path, sentence);
  terminal.progress.end(`wrote ${files.map(({ path }) => path).join(", ")}`);
}
