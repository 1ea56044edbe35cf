import type { ValueScale } from "./scaleOver.js";
import { textWidth } from "./textWidth.js";
import { SMALL_SIZE, words } from "./words.js";

/** Space between two labels. */
const BETWEEN = 6;

/**
 * Writes the labels of a level axis: as many as have room beside each other, the one of zero among them, and none beyond the
 * edges of the drawing.
 *
 * @param ticks - Of the scale.
 * @param y - Of the base line of the words.
 * @param width - Of the drawing.
 * @param signed - Whether positive values carry a plus sign, as differences do.
 */
export function tickWords(
  ticks: ValueScale["ticks"],
  y: number,
  width: number,
  signed: boolean = false,
): readonly string[] {
  const labels = ticks.map(({ value, at, label }) => {
    const text = signed && value > 0 ? `+${label}` : label;
    return { at, text, half: textWidth(text, SMALL_SIZE) / 2 };
  });
  const widest = Math.max(0, ...labels.map(({ half }) => 2 * half)) + BETWEEN;
  const distance = Math.abs((ticks[1]?.at ?? width) - (ticks[0]?.at ?? 0));
  const every = Math.max(1, Math.ceil(widest / Math.max(distance, 1)));
  const zero = Math.max(
    0,
    ticks.findIndex(({ value }) => value === 0),
  );
  return labels
    .filter((_, i) => (i - zero) % every === 0)
    .map(({ at, text, half }) =>
      words(Math.min(Math.max(at, half), width - half), y, text, { "text-anchor": "middle" }),
    );
}
