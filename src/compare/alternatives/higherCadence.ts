import { type PublishedCadenceChange, publishedCadenceChanges } from "../../models/index.js";
import type { ComponentName } from "../comparison.js";
import type { Alternative, AlternativeEffect } from "./alternative.js";
import { type CadenceEstimates, cadenceEstimates, type EstimateRange } from "./cadenceEstimates.js";
import { changesOf, directionOf } from "./directionOf.js";
import { said, signed, strideMean, type TrialPair } from "./pair.js";

/** Cadences closer than this share are one. A judgement: below what a metronome asks of a runner. */
const SAME_CADENCE = 0.01;

const MODEL = "this library's spring-mass model";

/** Published quantities: whether they are load, cost or motion, and the metric that measures them here. */
const QUANTITIES: Readonly<
  Record<string, { readonly kind: AlternativeEffect["kind"]; readonly metric: string | null }>
> = {
  "braking impulse": { kind: "load", metric: "brakingImpulse" },
  "energy absorbed at the knee": { kind: "load", metric: null },
  "peak knee extension moment": { kind: "load", metric: null },
  "hip flexor moment": { kind: "cost", metric: null },
  "metabolic cost (very limited evidence)": { kind: "cost", metric: null },
  "vertical excursion of the centre of mass": { kind: "motion", metric: "verticalOscillation" },
  "step length": { kind: "motion", metric: "stepLength" },
  "leg stiffness": { kind: "motion", metric: "legStiffness" },
};

/** Forces that the model alone speaks of. */
const MODELLED = {
  peakBrakingForce: "peak braking force",
  peakVerticalForce: "peak vertical force",
} as const;

const KINDS: readonly AlternativeEffect["kind"][] = ["load", "cost", "motion"];

/** A cadence above the baseline's at the same speed; `null` where the changed trial had it already. */
export function higherCadence(
  { baseline, changed }: TrialPair,
  change: number,
  higher: readonly ComponentName[],
): Alternative | null {
  const own = strideMean(baseline, "cadence");
  const tried = strideMean(changed, "cadence");
  if (own !== null && tried !== null && tried >= own * (1 + change - SAME_CADENCE)) return null;
  const estimates = cadenceEstimates(baseline, change);
  const published = publishedCadenceChanges("higher");
  const percent = said(100 * change);
  const steps = own === null ? "" : ` (${said(own)} to ${said(own * (1 + change))} steps/min)`;
  const effects = [
    ...publishedEffects(published, estimates),
    ...modelledEffects(estimates),
    moreSteps(percent, estimates),
  ];
  return {
    id: `cadence-${percent}-percent-higher`,
    name: `a higher cadence at the same speed, about ${percent} %${steps}`,
    sentence: [
      `To try and to measure again: about ${percent} % more steps a minute than in the baseline, at the same speed.`,
      "Groups of runners braked less and bent the knee less under load; the hip flexors worked harder, and the run may cost more oxygen.",
      estimates.missing === null ? "" : `No estimate for this runner: ${estimates.missing}.`,
      higher.includes("mediolateral")
        ? "None of these experiments tells what it does to the mediolateral force, which rose here."
        : "",
    ]
      .filter((part) => part !== "")
      .join(" "),
    effects: KINDS.flatMap((kind) => effects.filter((effect) => effect.kind === kind)),
    sources: [...new Set(effects.flatMap(({ source }) => source.split("; ")))].filter((name) =>
      /\d{4}/.test(name),
    ),
  };
}

/** One effect a quantity: what several experiments found of it stands together. */
function publishedEffects(
  published: readonly PublishedCadenceChange[],
  { quantities }: CadenceEstimates,
): AlternativeEffect[] {
  const names = [...new Set(published.map(({ quantity }) => quantity))];
  return names.map((quantity) => {
    const found = published.filter((entry) => entry.quantity === quantity);
    const { kind, metric } = QUANTITIES[quantity] ?? { kind: "motion", metric: null };
    const estimate = metric === null ? undefined : quantities[metric];
    return {
      metric,
      quantity,
      kind,
      direction: (found[0] as PublishedCadenceChange).effect,
      finding: found.map(finding).join("; "),
      source: found.map(({ source, read }) => `${source} (${read})`).join("; "),
      ...(estimate !== undefined && { estimate: estimate.range }),
    };
  });
}

function finding({ effect, values, unit, condition, participants }: PublishedCadenceChange): string {
  const where = `${condition}; ${participants}`;
  if (values.length === 0 || unit === null) return `${effect} (${where}; no numbers in the abstract)`;
  const change = values.length === 1;
  return `${values.map(change ? signed : said).join(", ")} ${unit} (${where})`;
}

function modelledEffects({ quantities }: CadenceEstimates): AlternativeEffect[] {
  return Object.entries(MODELLED).flatMap(([metric, quantity]) => {
    const estimate = quantities[metric];
    if (estimate === undefined) return [];
    const { range, perKilometre } = estimate;
    return {
      metric,
      quantity,
      ...directionOf(range),
      finding: `${span(range)} % a step${perKilometre === null ? "" : `, ${span(perKilometre)} % a kilometre`}, by a model without impact, from the same share of contact to a stiffer leg`,
      source: MODEL,
      estimate: range,
    };
  });
}

/** "−3.1 to 0" per cent of what it starts from. */
function span(range: EstimateRange): string {
  const [least, most] = changesOf(range).map(signed);
  return least === most ? `${least}` : `${least} to ${most}`;
}

function moreSteps(percent: string, { stepsPerKilometre }: CadenceEstimates): AlternativeEffect {
  return {
    metric: null,
    quantity: "steps a kilometre",
    kind: "cost",
    direction: "higher",
    finding: `${percent} % more steps for the same distance: a load that falls by less than that a step adds up to more a kilometre`,
    source: "definition of cadence",
    ...(stepsPerKilometre !== null && { estimate: stepsPerKilometre }),
  };
}
