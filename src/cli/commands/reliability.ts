import { reliability as reliabilityOf } from "../../compare/index.js";
import { writeJson } from "../../exchange/index.js";
import { reliabilityText } from "../../report/index.js";
import { loadTrials, type TrialFileOptions } from "../input/loadTrials.js";
import { sourcesOf } from "../input/sourcesOf.js";
import type { OutputOptions, RecordingOptions } from "../options/inputOptions.js";
import { withOptionWords } from "../output/withOptionWords.js";
import type { Terminal } from "../terminal.js";

/** Says how well trials of one runner repeat, between which nothing was changed. */
export async function reliability(
  files: readonly string[],
  options: RecordingOptions & TrialFileOptions & Pick<OutputOptions, "json">,
  terminal: Terminal,
): Promise<void> {
  const sources = sourcesOf(files, options, 2);
  const { trials } = await loadTrials(sources, options, terminal);
  await terminal.progress.say("comparing");
  const found = reliabilityOf(trials, { metrics: options.metrics });
  terminal.out(options.json ? `${writeJson(found)}\n` : reliabilityText(withOptionWords(found)));
}
