import { type DetectEventsOptions, detectEvents } from "../../src/events/index.js";
import { type GroundReaction, lowPassGroundReaction } from "../../src/force/index.js";
import { mean, seededRandom, standardDeviation } from "../../src/statistics/index.js";
import fixture from "../fixtures/events/contacts.json" with { type: "json" }; // events.py, NumPy 2.4.6
import { groundOf } from "../helpers.js";
import { crossing, type WalkOptions, walkOnOneBelt } from "./walkOnOneBelt.js";

/** Mean and standard deviation of errors, ms. */
interface EventErrors {
  readonly n: number;
  readonly mean: number;
  readonly sd: number;
}

/** Errors of single contacts against the true zeros of the force. */
interface ThresholdRow {
  /** N, or a share of body weight in words. */
  readonly threshold: string;
  /** SD of the noise, N. */
  readonly noise: number;
  /** Net cutoff of the copy that events are read from, Hz; `null` for none. */
  readonly cutoff: number | null;
  readonly initialContact: EventErrors;
  readonly toeOff: EventErrors;
  /** Trials in which not exactly one contact was found. */
  readonly failures: number;
}

const MASS = 70;
const WEIGHT = MASS * 9.80665;
const CONTACT = 0.245;
const TRIALS = 150;
const BEFORE = 0.1;

/** Thresholds by their names. */
export const THRESHOLDS: Readonly<Record<string, DetectEventsOptions>> = {
  "10 N": { threshold: 10 },
  "20 N": { threshold: 20 },
  "50 N": { threshold: 50 },
  "100 N": { threshold: 100 },
  "5 % BW": { thresholdShare: 0.05 },
};
export const NOISES: readonly number[] = [0, 2, 5, 10];
/** Those of the metrics' copy, a wider and a narrower one, and none. */
export const CUTOFFS: readonly (number | null)[] = [null, 100, 50, 20];

/** Vertical force of the fixture's analytic stance: 70 kg, impact 0.9 body weights at 28 ms, contact 0.245 s, step 0.36 s. */
function stance(t: number): number {
  const raised = (A: number, B: number) =>
    Math.abs(t - B) <= B ? (A / 2) * (1 + Math.cos((Math.PI * (t - B)) / B)) : 0;
  return raised(0.9 * WEIGHT, 0.028) + raised((WEIGHT * 0.36 - 0.9 * WEIGHT * 0.028) / 0.1225, 0.1225);
}

/** One row: 150 contacts at 1 kHz, each sampled at a phase of its own. */
export function thresholdRow(threshold: string, noise: number, cutoff: number | null): ThresholdRow {
  const random = seededRandom(17);
  const on: number[] = [];
  const off: number[] = [];
  let failures = 0;
  for (let trial = 0; trial < TRIALS; trial++) {
    const start = -BEFORE + random.uniform() / 1000;
    const up = Array.from({ length: 445 }, (_, i) => stance(start + i / 1000) + noise * random.normal());
    const whole = groundOf({ up, sampleRate: 1000, mass: MASS });
    const ground: GroundReaction = cutoff === null ? whole : lowPassGroundReaction(whole, { cutoff });
    const { contacts } = detectEvents(ground, { ...THRESHOLDS[threshold], gait: "running" });
    const [contact] = contacts;
    if (contacts.length !== 1 || contact === undefined) {
      failures++;
      continue;
    }
    on.push(1000 * (contact.initialContact + start));
    off.push(1000 * (contact.toeOff + start - CONTACT));
  }
  return { threshold, noise, cutoff, initialContact: errorsOf(on), toeOff: errorsOf(off), failures };
}

/** Every threshold, noise and cutoff. */
function thresholdRows(): ThresholdRow[] {
  return CUTOFFS.flatMap((cutoff) =>
    NOISES.flatMap((noise) =>
      Object.keys(THRESHOLDS).map((threshold) => thresholdRow(threshold, noise, cutoff)),
    ),
  );
}

/** NumPy's row for the same threshold and noise, unfiltered, with another generator of noise; `undefined` where it has none. */
export function numpyRow(
  threshold: string,
  noise: number,
): (typeof fixture.thresholdNoise.rows)[number] | undefined {
  return fixture.thresholdNoise.rows.find(
    (row) => `${row.thresholdN} N` === threshold && row.noiseSdN === noise,
  );
}

/** Errors of the events of walkers on one belt, against each foot's own crossings of 20 N. */
export interface SharedRow {
  readonly walk: string;
  /** Whether the centre of pressure along `forward` was there. */
  readonly forward: boolean;
  readonly cutoff: number | null;
  readonly initialContact: EventErrors;
  readonly toeOff: EventErrors;
  readonly wrongSides: number;
  /** Contacts of the walk that were not found among the complete ones. */
  readonly missed: number;
}

const NOISE = { force: 2, cop: 0.001 };
/** Walks by what is special of them. */
const WALKS: Readonly<Record<string, WalkOptions>> = {
  "1.35 m/s, no noise": {},
  "1.35 m/s": { noise: NOISE },
  "1.35 m/s, noise 5 N, 3 mm": { noise: { force: 5, cop: 0.003 } },
  "1.35 m/s, sways 5 cm, steps vary 3 %": { noise: NOISE, sway: 0.05, variation: 0.03 },
  "1.35 m/s, feet 6 cm apart": { noise: NOISE, width: 0.06 },
  "0.6 m/s, stance 70 %": { noise: NOISE, strideTime: 1.8, stanceShare: 0.7, speed: 0.6 },
  "2 m/s, stance 58 %": { noise: NOISE, strideTime: 0.9, stanceShare: 0.58, speed: 2 },
  "1.35 m/s, 100 Hz": { noise: NOISE, sampleRate: 100 },
};

/** One walk of 40 steps. */
function sharedRow(walk: string, forward: boolean, cutoff: number | null): SharedRow {
  const { ground: whole, truth } = walkOnOneBelt(WALKS[walk]);
  const copy = cutoff === null ? whole : lowPassGroundReaction(whole, { cutoff });
  const { right: _right, ...sideways } = copy.moment ?? {};
  const { contacts } = detectEvents(forward ? copy : { ...copy, moment: sideways }, { threshold: 20 });
  const on: number[] = [];
  const off: number[] = [];
  let wrongSides = 0;
  for (const contact of contacts) {
    const own = truth.find(({ from }) => Math.abs(from - contact.initialContact) < 0.15);
    if (own === undefined) continue;
    if (own.side !== contact.side) wrongSides++;
    on.push(1000 * (contact.initialContact - crossing(own, 20, "from")));
    off.push(1000 * (contact.toeOff - crossing(own, 20, "to")));
  }
  const end = whole.force.up.length / whole.sampleRate;
  const inside = truth.filter(({ from, to }) => from > 0 && to < end).length;
  return {
    walk,
    forward,
    cutoff,
    initialContact: errorsOf(on),
    toeOff: errorsOf(off),
    wrongSides,
    missed: inside - on.length,
  };
}

/** Every walk, with and without the centre of pressure along `forward`, unfiltered and behind the default filter. */
export function sharedRows(): SharedRow[] {
  return Object.keys(WALKS).flatMap((walk) =>
    [true, false].flatMap((forward) =>
      // The default filter needs more than 100 Hz.
      (walk.endsWith("100 Hz") ? [null] : [null, 50]).map((cutoff) => sharedRow(walk, forward, cutoff)),
    ),
  );
}

function errorsOf(errors: readonly number[]): EventErrors {
  const { length: n } = errors;
  return {
    n,
    mean: n === 0 ? Number.NaN : mean(errors),
    sd: n < 2 ? Number.NaN : standardDeviation(errors),
  };
}

/** Both tables as a section of a page; `shown` prints a number, ms. */
export function eventsSection(shown: (value: number) => string): string {
  const pair = ({ n, mean: bias, sd }: EventErrors) => (n < 2 ? "–" : `${shown(bias)} ± ${shown(sd)}`);
  const copy = (cutoff: number | null) => (cutoff === null ? "none" : `${cutoff} Hz`);
  const rows = thresholdRows().map((row) => {
    const { threshold, noise, cutoff, initialContact, toeOff, failures } = row;
    const numpy = cutoff === null ? numpyRow(threshold, noise) : undefined;
    const theirs =
      numpy?.contactBiasMs === undefined
        ? ""
        : `${shown(numpy.contactBiasMs)} ± ${shown(numpy.contactSdMs ?? 0)} / ${shown(numpy.toeOffBiasMs ?? 0)} ± ${shown(numpy.toeOffSdMs ?? 0)}`;
    return `| ${copy(cutoff)} | ${noise} | ${threshold} | ${pair(initialContact)} | ${pair(toeOff)} | ${failures} | ${theirs} |`;
  });
  const shared = sharedRows().map(
    ({ walk, forward, cutoff, initialContact, toeOff, wrongSides, missed }) =>
      `| ${walk} | ${forward ? "both" : "sideways"} | ${copy(cutoff)} | ${initialContact.n} | ${pair(initialContact)} | ${pair(toeOff)} | ${wrongSides} | ${missed} |`,
  );
  return `## Events by a force threshold

Mean ± SD of the errors of single contacts, ms, against the true zeros of the vertical force: ${TRIALS} contacts of 0.245 s at 1 kHz, 70 kg, each
sampled at a phase of its own, with white noise. A threshold cuts off what lies below it, hence the bias; noise that comes within four
standard deviations of the threshold is bridged to the contact, and its event moves by tens of milliseconds with one contact still
found. The last column is NumPy's own run of the same study, unfiltered (initial contact / toe-off).

| filter | noise SD, N | threshold | initial contact | toe-off | not one contact | NumPy |
|---|---|---|---|---|---|---|
${rows.join("\n")}

## Both feet of a walker on one belt

Mean ± SD of the errors of single contacts, ms, against the crossings of 20 N of each foot's own force, which is known because the walk is
made: forces by a formula, centres of pressure that roll unevenly along the foot and to its side, 40 steps, noise of 2 N on each
force and 1 mm on the centre of pressure where nothing else is said. Contacts that could not be told are left out of the trial and
counted as missed. No open recording with both feet on one plate was at hand.

| walk | centre of pressure | filter | contacts | initial contact | toe-off | wrong foot | missed |
|---|---|---|---|---|---|---|---|
${shared.join("\n")}
`;
}
