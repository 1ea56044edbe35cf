/** The decoder that engines share beyond the language itself. */
declare const TextDecoder: new (
  encoding: string,
  options: { readonly fatal: boolean; readonly ignoreBOM: boolean },
) => { readonly decode: (bytes: Uint8Array) => string };

/** Characters made at a time: an engine takes so many arguments. */
const BLOCK = 8192;

/** Decodes UTF-8, a byte order mark included; `null` where it is none. */
export function decoded8(bytes: Uint8Array): string | null {
  if (bytes.length === 0) return "";
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** Decodes ISO 8859-1, in which each byte is the number of its character. */
export function decodedLatin1(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let from = 0; from < bytes.length; from += BLOCK) {
    parts.push(String.fromCharCode(...bytes.subarray(from, from + BLOCK)));
  }
  return parts.join("");
}

/** Decodes UTF-16, two bytes a unit, a byte order mark included. */
export function decoded16(bytes: Uint8Array, bigEndian: boolean): string {
  const units = new Uint16Array(bytes.length >> 1);
  const [high, low] = bigEndian ? [0, 1] : [1, 0];
  for (let i = 0; i < units.length; i++) {
    units[i] = ((bytes[2 * i + high] as number) << 8) | (bytes[2 * i + low] as number);
  }
  const parts: string[] = [];
  for (let from = 0; from < units.length; from += BLOCK) {
    parts.push(String.fromCharCode(...units.subarray(from, from + BLOCK)));
  }
  return parts.join("");
}
