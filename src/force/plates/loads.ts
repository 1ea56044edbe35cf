import type { Newtons, Seconds } from "../../units/index.js";
import type { GroundReaction } from "../groundReaction.js";

/**
 * Load above which a plate counts as stood on here, N: above offsets and crosstalk, below any step. A
 * judgement.
 */
const STOOD_ON: Newtons = 50;
/** What is shorter is no step, s. */
const SHORTEST: Seconds = 0.05;

/** Samples during which a plate was loaded, from the first to before the last. */
export interface Load {
  readonly from: number;
  readonly to: number;
  /** By an end of the recording. */
  readonly cut: boolean;
}

/** The stretches in which somebody stood on a plate. */
export function loadsOf(plate: GroundReaction): Load[] {
  return stretchesAbove(plate, STOOD_ON, SHORTEST);
}

/** The stretches in which the vertical force stays above a level for long enough. */
export function stretchesAbove(
  { force: { up }, sampleRate }: GroundReaction,
  level: Newtons,
  shortest: Seconds,
): Load[] {
  const stretches: Load[] = [];
  let from = -1;
  for (let i = 0; i <= up.length; i++) {
    const loaded = i < up.length && (up[i] as number) > level;
    if (loaded && from < 0) from = i;
    if (loaded || from < 0) continue;
    if (i - from >= shortest * sampleRate)
      stretches.push({ from, to: i, cut: from === 0 || i === up.length });
    from = -1;
  }
  return stretches;
}
