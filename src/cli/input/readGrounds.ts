import type { GroundReaction } from "../../force/index.js";
import { isGaitKineticsError } from "../../units/index.js";
import type { Both } from "../options/both.js";
import type { AnalysisOptions, RecordingOptions } from "../options/inputOptions.js";
import { readGround } from "./readGround.js";

/** The options that name columns. */
type Naming = "ignore" | "units" | "columns";

/** A name that a file has no column for, and how that was refused. */
interface Missed {
  readonly option: Naming;
  readonly name: string;
  readonly refusal: unknown;
}

/** One file, read or not. */
interface Read {
  readonly missed: readonly Missed[];
  readonly result: () => GroundReaction;
}

/**
 * Reads two files with the same options, of which each takes the names that it has columns for: a name must be a
 * column of one of them.
 *
 * @param starting - Called before a file is read.
 * @throws GaitKineticsError as {@link readGround}.
 */
export function readGrounds(
  paths: Both<string>,
  own: Both<RecordingOptions>,
  analysis: AnalysisOptions,
  starting: (which: keyof Both<unknown>) => void,
): Both<GroundReaction> {
  const read = (which: keyof Both<unknown>): Read => {
    starting(which);
    return readWithOwnNames(paths[which], own[which], analysis);
  };
  const baseline = read("baseline");
  if (baseline.missed.length === 0) baseline.result();
  const changed = read("changed");
  const nowhere = baseline.missed.find(({ option, name }) =>
    changed.missed.some((other) => other.option === option && other.name === name),
  );
  if (nowhere !== undefined) throw nowhere.refusal;
  return { baseline: baseline.result(), changed: changed.result() };
}

function readWithOwnNames(path: string, own: RecordingOptions, analysis: AnalysisOptions): Read {
  const missed: Missed[] = [];
  let options = analysis;
  for (;;) {
    try {
      const ground = readGround(path, own, options);
      return { missed, result: () => ground };
    } catch (caught) {
      const miss = missedBy(caught);
      if (miss === null) {
        return {
          missed,
          result: () => {
            throw caught;
          },
        };
      }
      missed.push(miss);
      options = without(options, miss);
    }
  }
}

function missedBy(refusal: unknown): Missed | null {
  if (!isGaitKineticsError(refusal) || refusal.code !== "out-of-range" || refusal.where === undefined)
    return null;
  const option = (["ignore", "units", "columns"] as const).find((name) => name === refusal.argument);
  const name = refusal.values?.given;
  return option === undefined || typeof name !== "string" ? null : { option, name, refusal };
}

function without(options: AnalysisOptions, { option, name }: Missed): AnalysisOptions {
  if (option === "ignore") return { ...options, ignore: options.ignore?.filter((other) => other !== name) };
  const { [name]: _, ...rest } = options[option] ?? {};
  return { ...options, [option]: rest };
}
