/** Bytes of an input: of one file, or of all texts of a recording of several. */
export function sizeOf(bytes: unknown): number {
  if (typeof bytes === "string" || bytes instanceof Uint8Array) return bytes.length;
  if (typeof bytes !== "object" || bytes === null) return 0;
  return Object.values(bytes).reduce<number>((sum, part) => sum + sizeOf(part), 0);
}
