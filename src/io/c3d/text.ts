import type { C3dEncoding } from "./c3dFile.js";

/** Reads the texts of one file and remembers how they were stored. */
export interface TextReader {
  /** Reads the bytes from one place to before another, without blanks and zeros at the end. */
  readonly read: (from: number, to: number) => string;
  readonly encoding: () => C3dEncoding;
}

/** Makes a reader of texts: UTF-8 where the bytes are just that, else Latin-1. */
export function textReader(bytes: Uint8Array): TextReader {
  let encoding: C3dEncoding = "utf-8";
  return {
    read: (from, to) => {
      let end = to;
      while (end > from && (bytes[end - 1] === 0x20 || bytes[end - 1] === 0)) end--;
      const { text, isUtf8 } = decode(bytes.subarray(from, end));
      if (!isUtf8) encoding = "latin-1";
      return text;
    },
    encoding: () => encoding,
  };
}

/**
 * Stores a text: Latin-1 where the file is so and the text comes back from it, else UTF-8.
 * Half of a surrogate pair, which no encoding can hold, becomes U+FFFD.
 */
export function encodeText(text: string, encoding: C3dEncoding): Uint8Array {
  if (encoding === "latin-1" && !/[^\0-\xff]/.test(text)) {
    const bytes = Uint8Array.from(text, (character) => character.charCodeAt(0));
    if (decode(bytes).text === text) return bytes;
  }
  const escaped = encodeURIComponent(text.replace(/\p{Surrogate}/gu, "\ufffd"));
  const bytes = new Uint8Array(escaped.length);
  let length = 0;
  for (let i = 0; i < escaped.length; i++) {
    if (escaped[i] === "%") {
      bytes[length++] = Number.parseInt(escaped.slice(i + 1, i + 3), 16);
      i += 2;
    } else bytes[length++] = escaped.charCodeAt(i);
  }
  return bytes.subarray(0, length);
}

function decode(bytes: Uint8Array): { readonly text: string; readonly isUtf8: boolean } {
  let text = "";
  let plain = true;
  for (const byte of bytes) {
    if (byte > 0x7f) plain = false;
    text += String.fromCharCode(byte);
  }
  if (plain) return { text, isUtf8: true };
  let escaped = "";
  for (const byte of bytes) escaped += `%${byte.toString(16).padStart(2, "0")}`;
  try {
    return { text: decodeURIComponent(escaped), isUtf8: true };
  } catch {
    return { text, isUtf8: false };
  }
}
