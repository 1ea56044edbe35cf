/** What bytes seem to be: a format that is read here, or a name for one that is not. */
export type SeenFormat =
  | { readonly kind: "c3d" }
  | { readonly kind: "text" }
  | { readonly kind: "foreign"; readonly name: string };

/**
 * First bytes of formats that people hand over for a recording. Source: the formats' own descriptions, from memory.
 */
const SIGNATURES: readonly (readonly [name: string, bytes: readonly number[]])[] = [
  ["a ZIP archive or a spreadsheet (xlsx, ods)", [0x50, 0x4b, 0x03, 0x04]],
  ["an empty ZIP archive", [0x50, 0x4b, 0x05, 0x06]],
  ["an older spreadsheet or document (xls, doc)", [0xd0, 0xcf, 0x11, 0xe0]],
  ["a gzip archive", [0x1f, 0x8b]],
  ["a bzip2 archive", [0x42, 0x5a, 0x68]],
  ["an xz archive", [0xfd, 0x37, 0x7a, 0x58, 0x5a]],
  ["a zstd archive", [0x28, 0xb5, 0x2f, 0xfd]],
  ["a 7z archive", [0x37, 0x7a, 0xbc, 0xaf]],
  ["a RAR archive", [0x52, 0x61, 0x72, 0x21]],
  ["a PDF document", [0x25, 0x50, 0x44, 0x46]],
  ["a PNG image", [0x89, 0x50, 0x4e, 0x47]],
  ["a JPEG image", [0xff, 0xd8, 0xff]],
  ["a GIF image", [0x47, 0x49, 0x46, 0x38]],
  ["a RIFF file (sound or video)", [0x52, 0x49, 0x46, 0x46]],
  ["an HDF5 file", [0x89, 0x48, 0x44, 0x46]],
  ["a SQLite database", [0x53, 0x51, 0x4c, 0x69, 0x74, 0x65]],
  ["a Parquet file", [0x50, 0x41, 0x52, 0x31]],
  ["a NumPy array", [0x93, 0x4e, 0x55, 0x4d, 0x50, 0x59]],
];

/** Bytes of a C3D file's header, and as many as tell a text. */
const HEADER = 512;

/** Tells what bytes are by what they hold, never by a name. */
export function formatOf(bytes: Uint8Array): SeenFormat {
  const foreign = signatureOf(bytes);
  if (foreign !== null) return { kind: "foreign", name: foreign };
  const hasMark = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  if (hasMark) return { kind: "text" };
  if (bytes.subarray(0, HEADER).includes(0)) {
    // Byte 2 is 0x50 in every C3D file, whose header has zeros in its reserved words. In a text it is the letter P.
    if (bytes[1] === 0x50) return { kind: "c3d" };
    return { kind: "foreign", name: "a binary file, or a text in UTF-16 without a byte order mark" };
  }
  return textOrForeign(bytes);
}

/** The name of a format that is not read here, by its first bytes; `null` where they are of none that is known. */
export function signatureOf(bytes: Uint8Array): string | null {
  for (const [name, signature] of SIGNATURES) {
    if (signature.every((byte, i) => bytes[i] === byte)) return name;
  }
  return null;
}

/** Formats of text that are no tables. */
function textOrForeign(bytes: Uint8Array): SeenFormat {
  const hasMark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  const start = String.fromCharCode(...bytes.subarray(hasMark ? 3 : 0, HEADER)).trimStart();
  if (/^[{[]\s*(?:["{[\]}]|-?\d|$)/.test(start)) return { kind: "foreign", name: "JSON" };
  if (/^<[!?a-z]/i.test(start)) return { kind: "foreign", name: "XML or HTML" };
  if (start.startsWith("{\\rtf")) return { kind: "foreign", name: "a formatted document (RTF)" };
  return { kind: "text" };
}
