import { type Caution, fail } from "../../units/index.js";
import { decoded8, decoded16, decodedLatin1 } from "./decode.js";
import { wellFormedLength, wholeLength } from "./utf8.js";

/** Turns bytes into text as they come. */
export interface IncrementalDecoder {
  readonly push: (bytes: Uint8Array) => string;
  readonly finish: () => string;
  readonly cautions: readonly Caution[];
}

type Encoding = "utf-8" | "utf-16le" | "utf-16be" | "latin-1";

/**
 * Makes a decoder: UTF-16 where a byte order mark says so, else UTF-8, and from the first byte on that is none, Latin-1 (ISO
 * 8859-1), with a `Caution`. The text does not depend on where the bytes were cut.
 */
export function textDecoder(): IncrementalDecoder {
  const cautions: Caution[] = [];
  let encoding: Encoding | null = null;
  let kept = new Uint8Array(0);
  let place = 0;

  const toLatin1 = (bytes: Uint8Array, from: number): string => {
    encoding = "latin-1";
    const byte = place + from + 1;
    cautions.push({
      code: "not-utf-8",
      message: `byte ${byte} of the file is no UTF-8; from there on it was read as Latin-1: save it as UTF-8 if letters look wrong`,
      where: `byte ${byte}`,
      values: { byte },
    });
    return (decoded8(bytes.subarray(0, from)) ?? "") + decodedLatin1(bytes.subarray(from));
  };

  const decode = (bytes: Uint8Array, isLast: boolean): string => {
    switch (encoding) {
      case "latin-1":
        return decodedLatin1(bytes);
      case "utf-16le":
      case "utf-16be": {
        const whole = bytes.length - (bytes.length % 2);
        if (isLast && whole < bytes.length) {
          fail("unreadable-file", "the file is UTF-16 and ends within a character; it may have been cut off");
        }
        kept = bytes.slice(whole);
        return decoded16(bytes.subarray(0, whole), encoding === "utf-16be");
      }
      default: {
        const whole = isLast ? bytes.length : wholeLength(bytes);
        const text = decoded8(bytes.subarray(0, whole));
        if (text === null) return toLatin1(bytes, wellFormedLength(bytes));
        kept = bytes.slice(whole);
        return text;
      }
    }
  };

  const push = (bytes: Uint8Array, isLast: boolean): string => {
    const all = kept.length === 0 ? bytes : joined(kept, bytes);
    kept = new Uint8Array(0);
    if (encoding === null) {
      if (!isLast && all.length < 2) {
        kept = all.slice();
        return "";
      }
      encoding = encodingOf(all);
    }
    const text = decode(all, isLast);
    place += all.length - kept.length;
    return text;
  };

  return { push: (bytes) => push(bytes, false), finish: () => push(new Uint8Array(0), true), cautions };
}

function encodingOf(bytes: Uint8Array): Encoding {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return "utf-16le";
  return first === 0xfe && second === 0xff ? "utf-16be" : "utf-8";
}

function joined(one: Uint8Array, two: Uint8Array): Uint8Array<ArrayBuffer> {
  const both = new Uint8Array(one.length + two.length);
  both.set(one);
  both.set(two, one.length);
  return both;
}
