import type { NotComputed } from "../../trial/index.js";

/** A reason and the metrics that are missing for it. */
export interface ReasonGroup {
  readonly reason: string;
  readonly names: readonly string[];
}

/**
 * Gathers what was not computed by its reason, in the order in which the reasons first appear.
 *
 * @param notComputed - As a trial lists it.
 * @param nameOf - Gives a metric's name for its id.
 */
export function reasonGroups(
  notComputed: readonly NotComputed[],
  nameOf: (id: string) => string,
): readonly ReasonGroup[] {
  const reasons = [...new Set(notComputed.map(({ message }) => message))];
  return reasons.map((reason) => {
    const names = notComputed
      .filter(({ message }) => message === reason)
      .map(({ id }) => withoutComma(nameOf(id)));
    return { reason: names.length > 1 ? reason.replace(/^it describes\b/, "they describe") : reason, names };
  });
}

/** A name that reads as one in a list of names: `elastic energy (upper bound)`. */
function withoutComma(name: string): string {
  return name.replace(/, (.+)$/, " ($1)");
}
