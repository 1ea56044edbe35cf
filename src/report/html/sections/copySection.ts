import { copyBlock } from "../copyBlock.js";
import { paragraph } from "../paragraph.js";

/** A text to copy out. */
export interface Copy {
  /** Plain text: what it is. */
  readonly name: string;
  /** `null` where it is too long for a page. */
  readonly text: string | null;
}

/** Writes texts to copy out, each folded away; one that is too long for a page is named instead. */
export function copySection(copies: readonly Copy[]): string {
  return copies
    .map(({ name, text }) =>
      text === null
        ? paragraph(`${name}: too long for this page; the library and the command line write it to a file.`)
        : copyBlock(name, text),
    )
    .join("");
}
