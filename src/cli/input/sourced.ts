import { InvalidArgumentError } from "commander";
import type { SourcedChange } from "../../compare/index.js";
import type { Metric } from "../../metrics/index.js";
import type { TypedChange } from "../options/smallestChanges.js";

/**
 * Puts the source that was typed beside each change.
 *
 * @param metrics - That are compared; all where `undefined`.
 * @throws InvalidArgumentError: one without the other, or a metric that is not compared.
 */
export function sourced(
  changes: Readonly<Record<string, TypedChange>> | undefined,
  source: string | undefined,
  flag: string,
  sourceFlag: string,
  metrics: readonly Metric[] | undefined,
): Readonly<Record<string, SourcedChange>> | undefined {
  if (changes === undefined && source === undefined) return undefined;
  if (source === undefined) {
    throw new InvalidArgumentError(
      `${flag} names metrics without ${sourceFlag}; state who measured or chose it, such as a paper, as it is printed beside every answer`,
    );
  }
  if (changes === undefined) {
    throw new InvalidArgumentError(`${sourceFlag} is given without metrics in ${flag}`);
  }
  const lost = Object.keys(changes).find((id) => metrics?.every((metric) => metric.id !== id));
  if (lost !== undefined) {
    throw new InvalidArgumentError(`${flag} names ${lost}, which --metrics leaves out`);
  }
  return Object.fromEntries(Object.entries(changes).map(([id, change]) => [id, { ...change, source }]));
}
