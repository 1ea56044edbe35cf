import type { GroundReaction } from "../../force/index.js";
import { isGaitKineticsError } from "../../units/index.js";
import type {
  ForceOptions,
  MarkerOptions,
  ReadingOptions,
  RecordingOptions,
} from "../options/inputOptions.js";
import { readGround } from "./readGround.js";
import type { TrialSource } from "./trialSource.js";
import { USED_BY_SOME, type UsedBySome } from "./unusedOptions.js";

/** How both files are read. */
type Options = ReadingOptions & ForceOptions & MarkerOptions;

/**
 * A name that a file has no column for, or an option that it does not use (then the name is empty), and how
 * that was refused.
 */
interface Missed {
  readonly option: UsedBySome;
  readonly name: string;
  readonly refusal: unknown;
}

/** One file, read or not. */
interface Read {
  readonly missed: readonly Missed[];
  readonly result: () => GroundReaction;
}

/**
 * Reads files with the same options, of which each takes those that it uses and the names that it has columns for: an
 * option must be for one of them, a name a column of one of them.
 *
 * @param sources - One or more.
 * @param starting - Called before a file is read.
 * @throws GaitKineticsError as {@link readGround}.
 */
export async function readGrounds(
  sources: readonly TrialSource[],
  options: Options,
  starting: (source: TrialSource) => Promise<void>,
): Promise<GroundReaction[]> {
  const read: Read[] = [];
  for (const source of sources) {
    await starting(source);
    const one = await readWithOwnOptions(source, options);
    if (one.missed.length === 0) one.result();
    read.push(one);
  }
  const [first, ...others] = read;
  const nowhere = first?.missed.find(({ option, name }) =>
    others.every(({ missed }) => missed.some((other) => other.option === option && other.name === name)),
  );
  if (nowhere !== undefined) throw nowhere.refusal;
  return read.map(({ result }) => result());
}

async function readWithOwnOptions({ path, own }: TrialSource, options: Options): Promise<Read> {
  const missed: Missed[] = [];
  let taken = { own, options };
  for (;;) {
    try {
      const ground = await readGround(path, taken.own, taken.options);
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
      taken = without(taken, miss);
    }
  }
}

function missedBy(refusal: unknown): Missed | null {
  if (!isGaitKineticsError(refusal) || refusal.where === undefined) return null;
  const option = USED_BY_SOME.find((name) => name === refusal.argument);
  if (option === undefined) return null;
  if (refusal.code === "conflict" && refusal.values?.unused === true) return { option, name: "", refusal };
  const name = refusal.values?.given;
  return refusal.code === "out-of-range" && typeof name === "string" ? { option, name, refusal } : null;
}

/** The options without one of them, or without one of its names. */
function without(
  { own, options }: { readonly own: RecordingOptions; readonly options: Options },
  { option, name }: Missed,
): { readonly own: RecordingOptions; readonly options: Options } {
  if (option === "rate") return { own: { ...own, rate: undefined }, options };
  if (name === "") return { own, options: { ...options, [option]: undefined } };
  if (option === "ignore") {
    return { own, options: { ...options, ignore: options.ignore?.filter((other) => other !== name) } };
  }
  const { [name]: _, ...rest } = (options[option] ?? {}) as Readonly<Record<string, string>>;
  return { own, options: { ...options, [option]: rest } };
}
