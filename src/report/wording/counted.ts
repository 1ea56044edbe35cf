/** Writes a number and what it counts: `1 stride`, `2 pairs of contacts`. */
export function counted(n: number, noun: string): string {
  return `${n} ${n === 1 ? noun : pluralOf(noun)}`;
}

/** The plural of a noun; of `pair of contacts` that of the pair. */
export function pluralOf(noun: string): string {
  return noun.replace(/(?= of |$)/, "s");
}
