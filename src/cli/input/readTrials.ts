import { readTrial } from "../../exchange/index.js";
import type { Trial } from "../../trial/index.js";
import { fail } from "../../units/index.js";
import { OPTIONS_OF_RECORDINGS } from "../options/inputOptions.js";
import type { Terminal } from "../terminal.js";
import { naming } from "./naming.js";
import { openFile } from "./openFile.js";
import { readUtf8 } from "./readUtf8.js";
import type { TrialSource } from "./trialSource.js";

/**
 * Reads files that hold trials, as `analyse --json` prints them; `null` where the files are recordings.
 *
 * @param sources - One or more.
 * @param options - As typed; those of recordings are refused for trials.
 * @throws GaitKineticsError `unreadable-file`: a file that is not there, or holds no trial; `conflict`: recordings beside
 * trials, or an option of recordings.
 */
export async function readTrials(
  sources: readonly TrialSource[],
  options: object,
  terminal: Terminal,
): Promise<readonly Trial[] | null> {
  const [first] = sources;
  if (first === undefined) return [];
  const areTrials = isResult(first);
  const trials: Trial[] = [];
  for (const { path, own } of sources) {
    if (isResult({ path, own }) !== areTrials) refuseMixed(first.path, path, areTrials);
    if (!areTrials) continue;
    refuseOptions(path, { ...options, ...own });
    await terminal.progress.say(`reading ${path}`);
    const text = readUtf8(path);
    trials.push(naming(path, () => readTrial(text)));
  }
  return areTrials ? trials : null;
}

function isResult({ path }: TrialSource): boolean {
  return naming(path, () => openFile(path).format === "result");
}

function refuseMixed(first: string, other: string, firstIsTrial: boolean): never {
  const [trial, recording] = firstIsTrial ? [first, other] : [other, first];
  fail(
    "conflict",
    `${trial} holds a trial that was analysed before, ${recording} a recording; give recordings alone, which are analysed alike, or trials alone`,
    { where: other },
  );
}

function refuseOptions(path: string, options: object): void {
  const given = Object.entries(options).find(
    ([name, value]) => value !== undefined && OPTIONS_OF_RECORDINGS.includes(name),
  );
  if (given === undefined) return;
  const flag = given[0].replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
  fail(
    "conflict",
    `--${flag} is for recordings, and ${path} holds a trial that was analysed before; leave it out`,
    { argument: given[0], where: path },
  );
}
