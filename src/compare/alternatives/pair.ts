import { mean } from "../../statistics/index.js";
import { strideValues, type Trial } from "../../trial/index.js";

/** The usual technique and the changed one. */
export interface TrialPair {
  readonly baseline: Trial;
  readonly changed: Trial;
}

/** Mean of a metric over a trial's strides; `null` where no stride has it. */
export function strideMean(trial: Trial, id: string): number | null {
  const values = strideValues(trial.steps, id, trial);
  return values.length === 0 ? null : mean(values);
}

/** Three significant digits without needless zeros, as a person would say a number. */
export function said(value: number): string {
  return String(Number(value.toPrecision(3)));
}

/** "+5.8", "−3.1", "0": three significant digits with a sign. */
export function signed(value: number): string {
  return `${value > 0 ? "+" : value < 0 ? "−" : ""}${said(Math.abs(value))}`;
}
