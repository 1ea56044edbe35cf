/** A change that an experiment found when the same runners ran at another step rate or stride length. */
export interface PublishedCadenceChange {
  /** Which way the step rate went, as `effect` tells it. */
  readonly cadence: "higher" | "lower";
  /** What was changed, and by how much. */
  readonly condition: string;
  readonly quantity: string;
  /** What became of the quantity under the condition. */
  readonly effect: "lower" | "higher";
  /** Values in the order of the condition, where numbers were read. */
  readonly values: readonly number[];
  /** Of `values`; `null` where no numbers were read. */
  readonly unit: string | null;
  readonly participants: string;
  readonly source: string;
  /** What was read of the source. */
  readonly read: "abstract" | "table";
}

/**
 * Gives the published changes with step rate: the main line of an answer to "what if I ran at another cadence?".
 *
 * Formula: none; the entries are transcribed.
 * Units: each entry names its own.
 * Limits: means of groups, each at its own speed and with its own definitions; one runner may answer otherwise.
 * Source: each entry names its own.
 * @param cadence - Which way the step rate goes.
 * @example
 * publishedCadenceChanges("higher").find(({ quantity }) => quantity === "braking impulse").effect // "lower"
 */
export function publishedCadenceChanges(cadence: "higher" | "lower"): readonly PublishedCadenceChange[] {
  if (cadence === "lower") return [thompson("peak vertical force"), thompson("peak horizontal force")];
  return [
    heiderscheit("braking impulse"),
    heiderscheit("vertical excursion of the centre of mass"),
    heiderscheit("step length"),
    heiderscheit("energy absorbed at the knee"),
    heiderscheit("peak knee flexion", [46.3, 44.1, 42.8], "deg"),
    heiderscheit("peak hip adduction", [10.4, 9.5, 8.7], "deg"),
    heiderscheit("peak knee extension moment", [2.5, 2.4, 2.2], "N m/kg"),
    lieberman("distance of the foot ahead of the hip at landing", "lower", -5.9),
    lieberman("hip flexor moment", "higher", 5.8),
    anderson("step length", "lower", -0.93),
    anderson("peak knee flexion", "lower", -0.66),
    anderson("peak knee extension moment", "lower", -0.5),
    anderson("peak hip adduction", "lower", -0.4),
    anderson("metabolic cost (very limited evidence)", "higher", 0.84),
    {
      cadence: "higher",
      condition: "26 % below to 36 % above the preferred stride frequency at 2.5 m/s",
      quantity: "leg stiffness",
      effect: "higher",
      values: [7.0, 16.3],
      unit: "kN/m",
      participants: "not in the abstract as read",
      source: "Farley & González 1996, J Biomech 29:181",
      read: "abstract",
    },
  ];
}

function heiderscheit(quantity: string, values: readonly number[] = [], unit: string | null = null) {
  return {
    cadence: "higher",
    condition:
      values.length === 0
        ? "step rate 5 and 10 % above preferred"
        : "preferred step rate, 5 % above, 10 % above",
    quantity,
    effect: "lower",
    values,
    unit,
    participants: "45 runners",
    source: "Heiderscheit et al. 2011, Med Sci Sports Exerc 43:296",
    read: values.length === 0 ? "abstract" : "table",
  } satisfies PublishedCadenceChange;
}

function lieberman(quantity: string, effect: "lower" | "higher", percent: number) {
  return {
    cadence: "higher",
    condition: "5 strides/min more at 3.0 m/s",
    quantity,
    effect,
    values: [percent],
    unit: "% of itself",
    participants: "14 runners",
    source: "Lieberman et al. 2015, J Exp Biol 218:3406",
    read: "abstract",
  } satisfies PublishedCadenceChange;
}

function anderson(quantity: string, effect: "lower" | "higher", difference: number) {
  return {
    cadence: "higher",
    condition: "higher step rate",
    quantity,
    effect,
    values: [difference],
    unit: "standardised mean difference",
    participants: "37 studies",
    source: "Anderson et al. 2022, Sports Med Open (systematic review)",
    read: "abstract",
  } satisfies PublishedCadenceChange;
}

function thompson(quantity: string) {
  return {
    cadence: "lower",
    condition: "stride length 10 % longer, whatever the foot strike",
    quantity,
    effect: "higher",
    values: [],
    unit: null,
    participants: "15 runners",
    source: "Thompson et al. 2022, Front Sports Act Living 4:768801",
    read: "abstract",
  } satisfies PublishedCadenceChange;
}
