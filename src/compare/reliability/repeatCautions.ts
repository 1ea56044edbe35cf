import type { Trial } from "../../trial/index.js";
import type { Caution } from "../../units/index.js";
import { freedomWords, isFew } from "../detectableChange.js";
import { relativeDifference, SAME } from "../obstacles.js";
import { MASS_RATIO_TOLERANCE } from "../options.js";
import { digits, listed } from "../wording.js";
import { massOf } from "./massOf.js";
import type { RunnerTrials } from "./options.js";
import { trialName } from "./requireRepeats.js";

/** Slopes closer than this, rise over run, are one slope. */
const SAME_GRADE = 0.005;

/** Something that must not change between a runner's trials. */
interface Aspect {
  readonly code: string;
  readonly what: string;
  readonly of: (trial: Trial) => number | string | null;
  readonly differ: (one: number | string | null, other: number | string | null) => boolean;
}

/** Says what, beside the runner, could have moved the numbers from trial to trial, and where there is too little to go by. */
export function repeatCautions(runners: readonly RunnerTrials[], speedTolerance: number): Caution[] {
  return [
    ...aspects(speedTolerance).flatMap((aspect) => aspectCaution(runners, aspect)),
    ...fewTrials(runners),
    ...ownCautions(runners),
  ];
}

function aspects(speedTolerance: number): readonly Aspect[] {
  const other = (one: unknown, two: unknown) => one !== two;
  const apartBy = (share: number) => (one: unknown, two: unknown) =>
    one !== null && two !== null && relativeDifference(one as number, two as number) > share + SAME;
  return [
    {
      code: "speeds-differ",
      what: `speeds more than ${digits(100 * speedTolerance)} % apart: what the speed did counts as error`,
      of: ({ settings }) => settings.speed,
      differ: apartBy(speedTolerance),
    },
    {
      code: "thresholds-differ",
      what: "contacts read at different thresholds, which moves times and impulses: analyse all with the largest",
      of: ({ settings }) => settings.events.threshold,
      differ: apartBy(0),
    },
    {
      code: "event-filters-differ",
      what: "contacts found on copies with different filters, which moves their times",
      of: ({ settings }) => settings.events.cutoff,
      differ: other,
    },
    {
      code: "sample-rates-differ",
      what: "different sampling rates, on which loading rates and impact peaks depend",
      of: ({ settings }) => settings.sampleRate,
      differ: other,
    },
    {
      code: "surfaces-differ",
      what: "different surfaces",
      of: ({ settings }) => settings.surface,
      differ: other,
    },
    {
      code: "grades-differ",
      what: "different slopes, which move braking, propulsion and work",
      of: ({ settings }) => settings.grade,
      differ: (one, two) => Math.abs((one as number) - (two as number)) > SAME_GRADE,
    },
    {
      code: "footwear-differs",
      what: "different footwear",
      of: ({ settings }) => settings.footwear,
      differ: other,
    },
    {
      code: "masses-differ",
      what: `masses more than ${digits(100 * MASS_RATIO_TOLERANCE)} % apart: loads in SI units grow with the mass, and what that did counts as error`,
      of: massOf,
      differ: apartBy(MASS_RATIO_TOLERANCE),
    },
    {
      code: "force-scales-differ",
      what: `mass by force over stated mass more than ${digits(100 * MASS_RATIO_TOLERANCE)} % apart: the forces are not on one scale, or a stated mass is not right`,
      of: massRatio,
      differ: apartBy(MASS_RATIO_TOLERANCE),
    },
  ];
}

function massRatio({ settings: { mass, massStated, massByForce } }: Trial): number | null {
  return massStated && mass !== null && massByForce !== null ? massByForce / mass : null;
}

/** One caution for all runners of whom two trials differ. */
function aspectCaution(runners: readonly RunnerTrials[], { code, what, of, differ }: Aspect): Caution[] {
  const found = runners.flatMap(({ runner, trials }) => {
    const values = trials.map(of);
    const other = values.findIndex((value, i) =>
      values.slice(0, i).some((earlier) => differ(earlier, value)),
    );
    if (other === -1) return [];
    const one = values.find((earlier) => differ(earlier, values[other] ?? null)) ?? null;
    return [{ runner, one, other: values[other] ?? null }];
  });
  const [first] = found;
  if (first === undefined) return [];
  const names = found.map(({ runner }) => runner);
  return [
    {
      code,
      message: `the trials of ${listed(names)} have ${what}`,
      where: names.join(", "),
      values: { ...first },
    },
  ];
}

/** Of the error, of all runners together. */
export function degreesOfFreedom(runners: readonly RunnerTrials[]): number {
  return runners.length * ((runners[0] as RunnerTrials).trials.length - 1);
}

function fewTrials(runners: readonly RunnerTrials[]): Caution[] {
  const trials = (runners[0] as RunnerTrials).trials.length;
  const freedom = degreesOfFreedom(runners);
  if (!isFew(freedom)) return [];
  const of = runners.length === 1 ? "one runner" : `${runners.length} runners`;
  return [
    {
      code: "few-trials",
      message: `${trials} trials of ${of} tell little of the error (${freedomWords(freedom)}): a comparison keeps what strides ask for where that is larger; see how wide the intervals of the smallest detectable changes are, and record more trials or runners`,
      values: { runners: runners.length, trials },
    },
  ];
}

/** The trials' own cautions; what several say alike is said once, with where. */
function ownCautions(runners: readonly RunnerTrials[]): Caution[] {
  const found = new Map<string, { readonly caution: Caution; readonly where: string[] }>();
  for (const runner of runners) {
    for (const [place, trial] of runner.trials.entries()) {
      for (const caution of trial.cautions) {
        const key = JSON.stringify([caution.code, caution.message, caution.where ?? ""]);
        const entry = found.get(key) ?? { caution, where: [] };
        entry.where.push(trialName(runner, place));
        found.set(key, entry);
      }
    }
  }
  return [...found.values()].map(({ caution, where }) => ({
    ...caution,
    where: [where.join(", "), ...(caution.where === undefined ? [] : [caution.where])].join("; "),
  }));
}
