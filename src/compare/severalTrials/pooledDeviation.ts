import { standardDeviation } from "../../statistics/index.js";

/** Standard deviation of strides within trials, √[Σ (nⱼ − 1) sⱼ²/Σ (nⱼ − 1)]; `null` where no trial has two. */
export function pooledDeviation(trials: readonly (readonly number[])[]): number | null {
  let squares = 0;
  let df = 0;
  for (const values of trials) {
    if (values.length < 2) continue;
    squares += (values.length - 1) * standardDeviation(values) ** 2;
    df += values.length - 1;
  }
  return df === 0 ? null : Math.sqrt(squares / df);
}
