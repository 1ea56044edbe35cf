import { descriptionText } from "../../report/index.js";
import { describeFile } from "../input/describeFile.js";
import { namingLater } from "../input/naming.js";
import { recordingName } from "../input/recordingName.js";
import { refuseEmptyWindow } from "../input/refuseEmptyWindow.js";
import type { ReadingOptions, RecordingOptions } from "../options/inputOptions.js";
import { optionWords } from "../output/optionWords.js";
import type { Terminal } from "../terminal.js";

/** Says what is in a file, as text or JSON. */
export async function describe(
  file: string,
  options: RecordingOptions & ReadingOptions & { readonly json?: true | undefined },
  terminal: Terminal,
): Promise<void> {
  refuseEmptyWindow(options);
  await terminal.progress.say(`reading ${file}`);
  const found = await namingLater(file, () => describeFile(file, options, options));
  const description = {
    ...found,
    toState: found.toState.map(optionWords),
    cautions: found.cautions.map((caution) => ({ ...caution, message: optionWords(caution.message) })),
  };
  const title = recordingName(file, options);
  terminal.out(
    options.json
      ? `${JSON.stringify(description, (_, value: unknown) => (typeof value === "number" ? Number(value.toPrecision(12)) : value))}\n`
      : descriptionText(description, title),
  );
}
