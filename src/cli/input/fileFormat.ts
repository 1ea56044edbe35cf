/** The formats that files come in. */
export type FileFormat = "table" | "c3d" | "motion-bids";

/** How each is called in a message. */
export const FORMAT_NAMES: Readonly<Record<FileFormat, string>> = {
  table: "a table of text",
  c3d: "C3D",
  "motion-bids": "Motion-BIDS",
};

/** Bytes from the start of a file that tell its format. */
export const HEAD_LENGTH = 2;

/**
 * Tells a file's format: Motion-BIDS and C3D by their name, C3D under any other name by its second byte, which is 80;
 * everything else is taken as a table of text.
 *
 * @param path - Of the file.
 * @param head - Its first bytes.
 */
export function fileFormat(path: string, head: Uint8Array): FileFormat {
  if (/_motion\.tsv$/i.test(path)) return "motion-bids";
  if (/\.c3d$/i.test(path)) return "c3d";
  // The first byte says in which block the parameters are, mostly 2. "P" is the second byte of texts as well, a tab their first.
  const [first = 0, second = 0] = head;
  return second === 80 && first > 1 && first < 9 ? "c3d" : "table";
}
