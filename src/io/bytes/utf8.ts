/** Bytes of a character by its first byte; 0 where none begins with it. */
function lengthOf(first: number): number {
  if (first < 0x80) return 1;
  if (first < 0xc2) return 0;
  if (first < 0xe0) return 2;
  if (first < 0xf0) return 3;
  return first < 0xf5 ? 4 : 0;
}

/** Whether a second byte may follow the first: overlong forms, surrogates and characters beyond U+10FFFF may not. */
function maySecond(first: number, second: number): boolean {
  if (first === 0xe0) return second >= 0xa0 && second <= 0xbf;
  if (first === 0xed) return second >= 0x80 && second <= 0x9f;
  if (first === 0xf0) return second >= 0x90 && second <= 0xbf;
  if (first === 0xf4) return second >= 0x80 && second <= 0x8f;
  return second >= 0x80 && second <= 0xbf;
}

/**
 * Bytes from the start that are well-formed UTF-8.
 * Source: the table of well-formed byte sequences of the Unicode Standard, chapter 3 (from memory).
 */
export function wellFormedLength(bytes: Uint8Array): number {
  let at = 0;
  while (at < bytes.length) {
    const first = bytes[at] as number;
    const length = lengthOf(first);
    if (length === 0 || at + length > bytes.length) return at;
    for (let k = 1; k < length; k++) {
      const next = bytes[at + k] as number;
      if (k === 1 ? !maySecond(first, next) : next < 0x80 || next > 0xbf) return at;
    }
    at += length;
  }
  return at;
}

/** Bytes before a character that the end may have cut. */
export function wholeLength(bytes: Uint8Array): number {
  for (let back = 1; back <= 3 && back <= bytes.length; back++) {
    const byte = bytes[bytes.length - back] as number;
    if (byte < 0x80) return bytes.length;
    if (byte >= 0xc0) return lengthOf(byte) > back ? bytes.length - back : bytes.length;
  }
  return bytes.length;
}
