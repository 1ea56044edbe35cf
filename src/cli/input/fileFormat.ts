/** The formats that files come in. */
export type FileFormat = "table" | "c3d" | "motion-bids" | "result";

/** How each is called in a message. */
export const FORMAT_NAMES: Readonly<Record<FileFormat, string>> = {
  table: "a table of text",
  c3d: "C3D",
  "motion-bids": "Motion-BIDS",
  result: "JSON",
};

/** Bytes from the start of a file that tell its format. */
export const HEAD_LENGTH = 2;

/** `{`, which no heading of a table begins with. */
const BRACE = 0x7b;

/**
 * Tells a file's format: Motion-BIDS, C3D and results as JSON by their name, under any other name C3D by its second byte,
 * which is 80, and JSON by its brace; everything else is taken as a table of text.
 *
 * @param path - Of the file.
 * @param head - Its first bytes.
 */
export function fileFormat(path: string, head: Uint8Array): FileFormat {
  if (/_motion\.tsv$/i.test(path)) return "motion-bids";
  if (/\.c3d$/i.test(path)) return "c3d";
  if (/\.json$/i.test(path)) return "result";
  // The first byte says in which block the parameters are, mostly 2. "P" is the second byte of texts as well, a tab their first.
  const [first = 0, second = 0] = head;
  if (second === 80 && first > 1 && first < 9) return "c3d";
  return first === BRACE ? "result" : "table";
}
