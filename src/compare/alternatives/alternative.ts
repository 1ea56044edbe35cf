/** One quantity that a published experiment or a model says would move. */
export interface AlternativeEffect {
  /** A metric's id where the library measures it, so that it can be tried and measured; `null` otherwise. */
  readonly metric: string | null;
  readonly quantity: string;
  /** `cost`: what gets dearer or larger elsewhere, which is said as plainly. */
  readonly kind: "load" | "cost" | "motion";
  /** `unclear`: the source tells no direction that holds for all. */
  readonly direction: "lower" | "higher" | "unclear";
  /** As the source gives it, in words with numbers where there are some. */
  readonly finding: string;
  /** Author, year, journal; "this library's spring-mass model" for an estimate. */
  readonly source: string;
  /** This runner's estimate by the model; absent where there is none. */
  readonly estimate?: {
    readonly unit: string;
    readonly from: number;
    readonly low: number;
    readonly high: number;
  };
}

/** Something that published experiments support trying where a change shifted or raised the load. */
export interface Alternative {
  readonly id: string;
  /** Begins with a verb in the form "to try": "a higher cadence at the same speed, about 5 % (168 to 176 steps/min)". */
  readonly name: string;
  /** One or two sentences: to try and to measure, never a treatment. */
  readonly sentence: string;
  readonly effects: readonly AlternativeEffect[];
  readonly sources: readonly string[];
}
