import { textWidth } from "./textWidth.js";

/**
 * Cuts a text that is too long for its place, with an ellipsis at its end.
 *
 * @param text - One line.
 * @param width - Of its place.
 * @param size - Of the font.
 * @param bold - Whether it is set bold.
 */
export function fitted(text: string, width: number, size: number, bold: boolean = false): string {
  if (textWidth(text, size, bold) <= width) return text;
  const characters = [...text];
  while (characters.length > 1 && textWidth(`${characters.join("")}…`, size, bold) > width) characters.pop();
  return `${characters.join("").trimEnd()}…`;
}
