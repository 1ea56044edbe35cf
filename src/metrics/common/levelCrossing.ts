/**
 * Finds the first place at which a force rises to a level, or the last at which it falls from it, on the straight lines between
 * samples; `null` where no sample reaches the level.
 *
 * @param samples - The force.
 * @param from - First sample looked at.
 * @param to - Last sample looked at.
 * @param level - In the unit of the samples.
 * @param end - Which of the two.
 */
export function levelCrossing(
  samples: Float64Array,
  from: number,
  to: number,
  level: number,
  end: "first" | "last",
): number | null {
  const step = end === "first" ? 1 : -1;
  let i = end === "first" ? from : to;
  while (i >= from && i <= to && (samples[i] as number) < level) i += step;
  if (i < from || i > to) return null;
  const inside = samples[i] as number;
  const outside = samples[i - step];
  return outside === undefined || outside >= level ? i : i - (step * (inside - level)) / (inside - outside);
}
