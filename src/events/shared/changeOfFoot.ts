import type { Newtons, Seconds } from "../../units/index.js";
import { type FootPath, fitFootPath, type PressurePath, shareOnSecond } from "./footPath.js";
import type { FootSpan } from "./footSpans.js";

/** The events of a change from one foot to the other. */
export interface ChangeOfFoot {
  /** Of the foot that takes over. */
  readonly initialContact: Seconds;
  /** Of the foot that leaves. */
  readonly toeOff: Seconds;
  /** Level of the vertical force under one foot that both are read at. */
  readonly level: Newtons;
}

/** Time before and after a double support that the way of a foot is read from, s. */
const WINDOW = 0.08;
/** Fewest samples of that time. */
const WINDOW_SAMPLES = 6;
/** Kept clear between it and the double support, s. */
const CLEAR = 0.01;
/** Times that events and ways are worked out from each other. */
const PASSES = 4;
/** Standard deviations of the other foot's force, where it must be zero, that the level of its events stays above. */
const NOISE_FACTOR = 4;
/**
 * Events that would have to be read at a higher level are not told: on synthetic walks they lie ten milliseconds and more
 * beside the truth, N.
 */
const HIGHEST_LEVEL: Newtons = 60;
/** A shorter time on a foot, as where the recording begins within a double support, shows nothing of its way, s. */
const SHORTEST_SPAN = 0.2;

/** Works out when the next foot lands and the one before leaves; `null` where either cannot be told. */
export function changeOfFoot(
  path: PressurePath,
  here: FootSpan,
  next: FootSpan,
  threshold: Newtons,
): ChangeOfFoot | null {
  if (here.to - here.from < SHORTEST_SPAN || next.to - next.from < SHORTEST_SPAN) return null;
  const window = Math.max(WINDOW, WINDOW_SAMPLES / path.sampleRate);
  let one = ofMiddleThird(path, here);
  let other = ofMiddleThird(path, next);
  let change: ChangeOfFoot | null = null;
  for (let pass = 0; pass < PASSES; pass++) {
    if (one === null || other === null) return null;
    const noise = change === null ? 0 : noiseOf(path, one, other, change, window);
    change = crossingsOf(path, one, other, here, next, Math.max(threshold, NOISE_FACTOR * noise));
    if (change === null) return null;
    one = fitFootPath(path, change.initialContact - CLEAR - window, change.initialContact - CLEAR);
    other = fitFootPath(path, change.toeOff + CLEAR, change.toeOff + CLEAR + window);
  }
  return change !== null && change.level <= Math.max(threshold, HIGHEST_LEVEL) ? change : null;
}

/** Clear of any double support that leaves a third of the step to one foot. */
function ofMiddleThird(path: PressurePath, { from, to }: FootSpan): FootPath | null {
  const third = (to - from) / 3;
  return fitFootPath(path, from + third, to - third);
}

/** Where, on the way out from the middle of the change, the force under the one foot and the other falls below the level. */
function crossingsOf(
  path: PressurePath,
  one: FootPath,
  other: FootPath,
  here: FootSpan,
  next: FootSpan,
  level: Newtons,
): ChangeOfFoot | null {
  const { sampleRate, first, load } = path;
  const middle = Math.round(next.from * sampleRate) - first;
  const earliest = Math.max(0, Math.round(((here.from + here.to) / 2) * sampleRate) - first);
  const latest = Math.min(load.length - 1, Math.round(((next.from + next.to) / 2) * sampleRate) - first);
  const on = (i: number) => (load[i] as number) * shareOnSecond(path, i, one, other);
  const off = (i: number) => (load[i] as number) - on(i);
  if (on(middle) < level || off(middle) < level) return null;
  let landed = middle;
  while (landed > earliest && on(landed - 1) >= level) landed--;
  let left = middle;
  while (left < latest && off(left + 1) >= level) left++;
  if (landed === earliest || left === latest) return null;
  const rise = on(landed) - on(landed - 1);
  const fall = off(left) - off(left + 1);
  return {
    initialContact: (first + landed - (on(landed) - level) / rise) / sampleRate,
    toeOff: (first + left + (off(left) - level) / fall) / sampleRate,
    level,
  };
}

/** Standard deviation about zero of the force that each foot is given while the other stands alone, the larger of both, N. */
function noiseOf(
  path: PressurePath,
  one: FootPath,
  other: FootPath,
  { initialContact, toeOff }: ChangeOfFoot,
  window: Seconds,
): Newtons {
  const { sampleRate, first, load } = path;
  const deviation = (from: Seconds, force: (i: number) => number): number => {
    const begin = Math.max(0, Math.ceil(from * sampleRate) - first);
    const end = Math.min(load.length - 1, Math.floor((from + window) * sampleRate) - first);
    let squares = 0;
    for (let i = begin; i <= end; i++) squares += force(i) ** 2;
    return Math.sqrt(squares / Math.max(1, end - begin + 1));
  };
  const before = deviation(
    initialContact - CLEAR - window,
    (i) => (load[i] as number) * shareOnSecond(path, i, one, other),
  );
  const behind = deviation(
    toeOff + CLEAR,
    (i) => (load[i] as number) * (1 - shareOnSecond(path, i, one, other)),
  );
  return Math.max(before, behind);
}
