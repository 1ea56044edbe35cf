/** What would settle it, each once: advice that another begins with says nothing besides. */
export function settleWords(toSettle: readonly string[] = []): readonly string[] {
  return toSettle.filter((one, k) =>
    toSettle.every((other, j) => j === k || !(other === one ? j < k : other.startsWith(`${one}, `))),
  );
}
