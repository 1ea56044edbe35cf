/** Bold letters are wider. */
const BOLD = 1.1;

/**
 * Estimates how wide a text will be in a sans-serif font, on the safe side, in the unit of the size.
 *
 * Advance widths as shares of the size are those of wide sans-serif fonts (rounded up from the tables of such a font), since
 * the reader's font is not known.
 *
 * @param text - One line.
 * @param size - Of the font.
 * @param bold - Whether it is set bold.
 */
export function textWidth(text: string, size: number, bold: boolean = false): number {
  let sum = 0;
  for (const character of text) sum += shareOf(character);
  return sum * size * (bold ? BOLD : 1);
}

function shareOf(character: string): number {
  if (/[ .,:;'|!ijl\u00a0\u2009]/.test(character)) return 0.33;
  if (/[ftrIJ()[\]-]/.test(character)) return 0.4;
  if (/[mwMW%@…—]/.test(character)) return 0.98;
  if (/[+=<>−±~]/.test(character)) return 0.84;
  if (/[A-Z&]/.test(character)) return 0.72;
  return (character.codePointAt(0) ?? 0) < 0x1100 ? 0.64 : 1.02;
}
