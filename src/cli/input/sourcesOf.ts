import { InvalidArgumentError } from "commander";
import type { RecordingOptions } from "../options/inputOptions.js";
import type { TrialSource } from "./trialSource.js";

/**
 * The files of a command that takes trials of one runner in a row, each with what is stated of all of them.
 *
 * @param least - Fewest of them.
 * @throws InvalidArgumentError: too few, or one that is given twice.
 */
export function sourcesOf(
  paths: readonly string[],
  own: RecordingOptions,
  least: number,
): readonly TrialSource[] {
  if (paths.length < least) {
    throw new InvalidArgumentError(`${paths.length} file is given; at least ${least} are needed`);
  }
  refuseTwice(paths);
  return paths.map((path) => ({ path, own: statedOfAll(own) }));
}

/** What is stated of all recordings of a command, and nothing else of its options. */
export function statedOfAll(options: RecordingOptions): RecordingOptions {
  const { mass, height, speed, surface, grade, firstFoot, footwear, rate, from, to } = options;
  return { mass, height, speed, surface, grade, firstFoot, footwear, rate, from, to };
}

/**
 * Refuses a file that stands twice among the trials of one condition.
 *
 * @throws InvalidArgumentError.
 */
export function refuseTwice(paths: readonly string[]): void {
  const twice = paths.find((path, k) => paths.indexOf(path) < k);
  if (twice !== undefined) throw new InvalidArgumentError(`${twice} is given twice; each trial counts once`);
}
