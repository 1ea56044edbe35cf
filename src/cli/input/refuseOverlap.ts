import { realpathSync } from "node:fs";
import { InvalidArgumentError } from "commander";
import type { TrialSource } from "./trialSource.js";

/**
 * Refuses one and the same file, whatever path leads to it, twice over windows that overlap: it would be held against itself.
 *
 * @throws InvalidArgumentError.
 */
export function refuseOverlap(sources: readonly TrialSource[]): void {
  const places = sources.map(({ path }) => placeOf(path));
  sources.forEach((source, k) => {
    const before = sources.find((other, j) => j < k && places[j] === places[k] && overlap(other, source));
    if (before === undefined) return;
    const same = before.path === source.path ? "" : `, which is the same file as ${before.path}`;
    throw new InvalidArgumentError(
      `${source.path}${same} is compared with itself: give another recording, or parts of it that do not overlap, such as --from "0 s, 15 s" --to "15 s, 30 s"`,
    );
  });
}

/** A file that is not there is missed when it is read. */
function placeOf(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    return path;
  }
}

/** An end that is not stated is that of the recording. */
function overlap({ own: one }: TrialSource, { own: other }: TrialSource): boolean {
  const from = Math.max(one.from ?? 0, other.from ?? 0);
  return from < Math.min(one.to ?? Number.POSITIVE_INFINITY, other.to ?? Number.POSITIVE_INFINITY);
}
