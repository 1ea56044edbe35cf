import { fail } from "../../units/index.js";

/** Characters that are worked on at a time. */
const PIECE = 65_536;

/** Cuts a text that comes in parts into pieces that do not depend on the parts. */
export interface TextPieces {
  readonly push: (part: string) => void;
  readonly finish: () => void;
}

/**
 * Hands on pieces of one size, with lines ending in `\n`, without a byte order mark and without the lines to skip, so that
 * a text gives the same result in whatever parts it comes.
 *
 * @param take - Takes a piece, and the number of lines taken off before it.
 */
export function textPieces(
  skip: number,
  take: (piece: string, skipped: number, isLast: boolean) => void,
): TextPieces {
  let waiting = "";
  let first = true;
  let toSkip = skip;
  let skippedNow = 0;
  let endsInReturn = false;

  const handOn = (raw: string, isLast: boolean): void => {
    let piece = first && raw.startsWith("\uFEFF") ? raw.slice(1) : raw;
    first = false;
    if (endsInReturn) piece = `\r${piece}`;
    endsInReturn = !isLast && piece.endsWith("\r");
    if (endsInReturn) piece = piece.slice(0, -1);
    if (piece.includes("\r")) piece = piece.replace(/\r\n?/g, "\n");
    let from = 0;
    while (toSkip > 0) {
      const newline = piece.indexOf("\n", from);
      if (newline < 0) {
        from = piece.length;
        break;
      }
      from = newline + 1;
      toSkip--;
      skippedNow++;
    }
    take(piece.slice(from), skippedNow, isLast);
    skippedNow = 0;
    if (isLast && toSkip > 0) {
      fail(
        "unreadable-file",
        `the file has no more than ${skip - toSkip + 1} lines and ${skip} are to be left out; nothing is left to read`,
        { argument: "skip", values: { given: skip } },
      );
    }
  };

  return {
    push: (part) => {
      let from = 0;
      if (waiting.length + part.length <= PIECE) {
        waiting += part;
        return;
      }
      if (waiting !== "") {
        from = PIECE - waiting.length;
        handOn(waiting + part.slice(0, from), false);
        waiting = "";
      }
      // The last piece waits: it may be the file's last.
      for (; part.length - from > PIECE; from += PIECE) handOn(part.slice(from, from + PIECE), false);
      waiting = part.slice(from);
    },
    finish: () => handOn(waiting, true),
  };
}
