import type { GroundReaction } from "../../force/index.js";
import { type AnalyseTrialOptions, analyseTrial, analyseTrials, type Trial } from "../../trial/index.js";
import { isGaitKineticsError } from "../../units/index.js";
import type {
  AnalysisOptions,
  ForceOptions,
  MarkerOptions,
  ReadingOptions,
} from "../options/inputOptions.js";
import type { Terminal } from "../terminal.js";
import { explainingNoContact } from "./explainingNoContact.js";
import { naming } from "./naming.js";
import { readGrounds } from "./readGrounds.js";
import { readTrials } from "./readTrials.js";
import { recordingPath } from "./recordingName.js";
import { refuseEmptyWindow } from "./refuseEmptyWindow.js";
import { refuseHighEventCutoff } from "./refuseHighEventCutoff.js";
import { refuseWithoutEffect } from "./refuseWithoutEffect.js";
import { trialOptions } from "./trialOptions.js";
import type { TrialSource } from "./trialSource.js";

/** How recordings become trials. */
export type TrialFileOptions = ReadingOptions & ForceOptions & MarkerOptions & AnalysisOptions;

/** Trials in the order of their files. */
export interface LoadedTrials {
  readonly trials: readonly Trial[];
  /** What they were analysed from; `null` where trials were read as they are. */
  readonly grounds: readonly GroundReaction[] | null;
}

/**
 * Reads files that are to be held against each other: recordings, analysed with one filter and one contact threshold for
 * all, or trials that were analysed before.
 *
 * @param sources - One or more.
 * @param options - How recordings are read and analysed.
 * @throws GaitKineticsError as the stages do, with the file's name in front; `conflict`: recordings beside trials, or
 * options of recordings for trials. InvalidArgumentError: options that exclude each other.
 */
export async function loadTrials(
  sources: readonly TrialSource[],
  options: TrialFileOptions,
  terminal: Terminal,
): Promise<LoadedTrials> {
  const settings = trialOptions(options);
  for (const { own } of sources) refuseEmptyWindow(own);
  const read = await readTrials(sources, options, terminal);
  if (read !== null) return { trials: read, grounds: null };
  const grounds = await readGrounds(sources, options, ({ path, own }) =>
    terminal.progress.say(`reading ${recordingPath(path, own)}`),
  );
  await terminal.progress.say(`analysing ${grounds.length} recordings`);
  for (const [k, { path }] of sources.entries()) {
    naming(path, () => refuseHighEventCutoff(options.eventCutoff, grounds[k] as GroundReaction));
  }
  const trials = analyseAll(grounds, sources, settings, options.forceOn);
  refuseWithoutEffect(options, trials);
  return { trials, grounds };
}

/** All trials with one threshold; where that fails, the recording that it fails for is named. */
function analyseAll(
  grounds: readonly GroundReaction[],
  sources: readonly TrialSource[],
  options: AnalyseTrialOptions,
  forceOn: ReadingOptions["forceOn"],
): readonly Trial[] {
  try {
    return analyseTrials(grounds, options);
  } catch (caught) {
    if (isGaitKineticsError(caught)) {
      for (const [k, { path }] of sources.entries()) {
        naming(path, () =>
          explainingNoContact(forceOn, () => analyseTrial(grounds[k] as GroundReaction, options)),
        );
      }
    }
    throw caught;
  }
}
