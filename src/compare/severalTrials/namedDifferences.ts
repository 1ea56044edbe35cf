import type { Trial } from "../../trial/index.js";
import type { Settings } from "../options.js";
import { trialDifferences } from "../trialDifferences.js";

/** Two trials and whose they are, or of which session. */
export interface NamedPair {
  readonly name: string;
  readonly one: Trial;
  readonly other: Trial;
}

/** One kind of difference beside the technique and where it is. */
export interface NamedDifference {
  /** That of the caution of two trials. */
  readonly code: string;
  /** Behind "differ in". */
  readonly what: string;
  readonly names: readonly string[];
}

const WORDS: Readonly<Record<string, string>> = {
  "speeds-differ": "speed",
  "surfaces-differ": "surface",
  "grades-differ": "slope",
  "footwear-differs": "footwear",
  "thresholds-differ": "contact threshold",
  "event-filters-differ": "filter of the events",
  "sample-rates-differ": "sampling rate",
  "versions-differ": "version of the library",
  "mass-ratios-differ": "scale of the force",
  "masses-differ": "mass",
};

/** Finds in what pairs of trials differ beside the technique, each kind once with its names. */
export function namedDifferences(pairs: readonly NamedPair[], settings: Settings): NamedDifference[] {
  const found = pairs.flatMap(({ name, one, other }) =>
    trialDifferences(one, other, settings).map(({ caution }) => ({ name, code: caution.code })),
  );
  return [...new Set(found.map(({ code }) => code))].map((code) => ({
    code,
    what: WORDS[code] ?? code.replaceAll("-", " "),
    names: [...new Set(found.filter((one) => one.code === code).map(({ name }) => name))],
  }));
}
