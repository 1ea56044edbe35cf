/** An option of a metric's function. */
export interface MetricOption {
  readonly name: string;
  /** What a metric of the catalogue is computed with, as one writes it. */
  readonly standard: string;
  /** What else may stand there, where that is a word out of a list. */
  readonly choices: readonly string[];
  /** What it does; empty where its name and {@link MetricExplanation.optionsOf} say it. */
  readonly meaning: string;
}

/** What is said of a metric beyond its entry: the text of its function's doc comment. */
export interface MetricExplanation {
  readonly formula: string;
  /** When there is no value, what else moves it, what it is not. */
  readonly limits: string;
  /** What the options are about; empty where there are none. */
  readonly optionsOf: string;
  readonly options: readonly MetricOption[];
}

/** Something that is known to raise or lower a metric. */
export interface MetricInfluence {
  readonly effect: "raises" | "lowers";
  readonly what: string;
  readonly source: string;
}
