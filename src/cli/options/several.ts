import { fileName } from "./readers.js";

/** Collects the names of files from an option that may be given again and again. */
export function severalFiles(text: string, before: readonly string[] = []): readonly string[] {
  return [...before, fileName(text)];
}
