import { fitted } from "./fitted.js";
import { textWidth } from "./textWidth.js";

/**
 * Breaks a text into lines at its spaces; a word too long for a line is cut, and so is what is left after the last line
 * allowed.
 *
 * @param text - Any length.
 * @param width - Of a line.
 * @param size - Of the font.
 * @param most - Number of lines.
 */
export function wrapped(text: string, width: number, size: number, most: number = 3): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line === "" || lines.length === most - 1 || textWidth(longer, size) <= width) line = longer;
    else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line].map((one) => fitted(one, width, size));
}
