import {
  dingwellKneeExtensionEvents,
  fellinEvents,
  footAngularRateEvents,
  handsakerAccelerationEvents,
  oConnorVelocityEvents,
  tibialAccelerationContacts,
  zeniCoordinateEvents,
  zeniVelocityEvents,
} from "../../../src/events/index.js";
import type { MarkerSet, Side } from "../../../src/recording/index.js";
import { mean, seededRandom, standardDeviation } from "../../../src/statistics/index.js";
import { footRateFromMarkers, tibiaFromMarkers } from "../inertial/sensorsFromMarkers.js";
import { MADE_RUN, MADE_WALK, type MadeGaitOptions, madeGait } from "./madeGait.js";
import { type OpenRecording, treadmillRun, walk } from "./openRecordings.js";

/** How far events without force lie from the truth: found less true, so that late is positive. */
export interface AccuracyRow {
  /** Function and what it was told. */
  readonly method: string;
  readonly event: "initial contact" | "toe-off";
  readonly against: string;
  /** Events that have a true one within 150 ms. */
  readonly contacts: number;
  /** True events without one, and found ones without a true one where all true ones are known. */
  readonly missed: number;
  readonly extra: number;
  readonly meanMs: number;
  /** `null` for one event. */
  readonly sdMs: number | null;
}

/** Times of one foot. */
interface FootTimes {
  readonly initialContacts: readonly number[];
  readonly toeOffs: readonly number[];
}

/** One foot's events and what they should be. */
interface Trial {
  readonly found: FootTimes;
  readonly truth: FootTimes;
}

/** Farther from a true event, an event is another's, s. */
const REACH = 0.15;

/** Standard deviations of noise added to each co-ordinate, m. */
const ADDED_NOISE = [0.0005, 0.001, 0.002] as const;

/** Every method against every truth that its markers allow. */
export function accuracyRows(): AccuracyRow[] {
  const run = treadmillRun();
  return [
    ...runRows(run, 0),
    ...ADDED_NOISE.flatMap((noise) => runRows(run, noise)),
    ...walkRows([walk("d"), walk("n")]),
    ...madeRows(),
  ];
}

const feet: readonly (readonly [Side, string])[] = [
  ["right", "R"],
  ["left", "L"],
];

function runRows({ markers: recorded, events }: OpenRecording, noise: number): AccuracyRow[] {
  const markers = noise === 0 ? recorded : noisy(recorded, noise);
  const against = `force, treadmill run at 2.5 m/s, markers 150 Hz${noise === 0 ? "" : `, ${1000 * noise} mm of noise added`}`;
  const truth = (side: Side): FootTimes => {
    const complete = events.contacts.filter((contact) => contact.side === side);
    return {
      initialContacts: complete.map(({ initialContact }) => initialContact),
      toeOffs: complete.map(({ toeOff }) => toeOff),
    };
  };
  const both = (detect: (letter: string) => FootTimes): Trial[] =>
    feet.map(([side, letter]) => ({ found: detect(letter), truth: truth(side) }));
  const rightLeg = (detect: () => FootTimes): Trial[] => [{ found: detect(), truth: truth("right") }];
  const foot = (letter: string) => ({ heel: `${letter}.Heel.Bottom`, toe: `${letter}.MT1` });
  const pelvis = ["R.PSIS", "L.PSIS"];
  const leg = {
    heel: "R.Heel.Bottom",
    thigh: { upper: "R.Thigh.Top.Lateral", lower: "R.Thigh.Bottom.Lateral" },
    shank: { upper: "R.Shank.Top.Lateral", lower: "R.Shank.Bottom.Lateral" },
  };
  const rate = (letter: string) => footRateFromMarkers(markers, `${letter}.Heel.Bottom`, `${letter}.MT1`);
  // Noise of markers, differentiated, is not a sensor's: no row with noise added.
  const sensors: readonly (readonly [string, readonly Trial[]])[] = [
    ["footAngularRateEvents, rate from markers", both((letter) => footAngularRateEvents(rate(letter), 150))],
    [
      "footAngularRateEvents, zero, rate from markers",
      both((letter) => footAngularRateEvents(rate(letter), 150, { contactFeature: "zero" })),
    ],
    [
      "tibialAccelerationContacts, acceleration from markers",
      rightLeg(() =>
        tibialAccelerationContacts(
          tibiaFromMarkers(markers, "R.Shank.Top.Lateral", "R.Shank.Bottom.Lateral"),
          150,
          { cutoff: null },
        ),
      ),
    ],
  ];
  const table: typeof sensors = [
    ["zeniCoordinateEvents", both((letter) => zeniCoordinateEvents(markers, { ...foot(letter), pelvis }))],
    [
      "zeniVelocityEvents, belt",
      both((letter) => zeniVelocityEvents(markers, foot(letter), { surface: "belt" })),
    ],
    ["oConnorVelocityEvents", both((letter) => oConnorVelocityEvents(markers, foot(letter)))],
    ["fellinEvents", rightLeg(() => fellinEvents(markers, leg))],
    [
      "fellinEvents, lowest heel",
      both((letter) => fellinEvents(markers, foot(letter), { contactFeature: "lowest heel" })),
    ],
    ["handsakerAccelerationEvents", both((letter) => handsakerAccelerationEvents(markers, foot(letter)))],
    ["dingwellKneeExtensionEvents", rightLeg(() => dingwellKneeExtensionEvents(markers, leg))],
    ...(noise === 0 ? sensors : []),
  ];
  // Contacts that the recording's ends cut are not in the truth, so that events there are no extra ones.
  return table.flatMap(([method, trials]) => rowsOf(method, against, trials, false));
}

function walkRows(walks: readonly OpenRecording[]): AccuracyRow[] {
  const leg = {
    heel: "CA",
    toe: "FM",
    pelvis: "FH",
    thigh: { upper: "FH", lower: "LE" },
    shank: { upper: "LE", lower: "LM" },
  };
  const table: readonly (readonly [string, (markers: MarkerSet) => FootTimes])[] = [
    ["zeniCoordinateEvents", (markers) => zeniCoordinateEvents(markers, leg)],
    ["zeniVelocityEvents, ground", (markers) => zeniVelocityEvents(markers, leg, { surface: "ground" })],
    ["oConnorVelocityEvents", (markers) => oConnorVelocityEvents(markers, leg)],
    [
      "dingwellKneeExtensionEvents",
      (markers) => ({ ...dingwellKneeExtensionEvents(markers, leg), toeOffs: [] }),
    ],
  ];
  return table.flatMap(([method, detect]) => {
    const trials = walks.map(({ markers, events }) => ({
      found: detect(markers),
      truth: {
        initialContacts: events.contacts.map(({ initialContact }) => initialContact),
        toeOffs: events.contacts.map(({ toeOff }) => toeOff),
      },
    }));
    return rowsOf(method, "force, two walking steps over a plate, markers 150 Hz", trials, false);
  });
}

function madeRows(): AccuracyRow[] {
  const leg = { heel: "heel", toe: "toe", pelvis: "pelvis" };
  const walking = [["zeniCoordinateEvents", zeniCoordinateEvents]] as const;
  const running = [
    ["fellinEvents", fellinEvents],
    ["handsakerAccelerationEvents", handsakerAccelerationEvents],
  ] as const;
  return [0, ...ADDED_NOISE].flatMap((noise) => {
    const rows = (gait: string, options: MadeGaitOptions, methods: typeof walking | typeof running) => {
      const made = madeGait({ ...options, noise });
      const against = `made ${gait}, markers 150 Hz, ${1000 * noise} mm of noise`;
      return methods.flatMap(([method, detect]) =>
        rowsOf(method, against, [{ found: detect(made.markers, leg), truth: made }], true),
      );
    };
    return [...rows("walk", MADE_WALK, walking), ...rows("run", MADE_RUN, running)];
  });
}

/** A set of markers with noise on every co-ordinate, the same each time. */
function noisy(set: MarkerSet, noise: number): MarkerSet {
  const { normal } = seededRandom(11);
  const shaken = (samples: Float64Array) => samples.map((value) => value + noise * normal());
  return {
    ...set,
    markers: set.markers.map(({ name, forward, up, right }) => ({
      name,
      forward: shaken(forward),
      up: shaken(up),
      right: shaken(right),
    })),
  };
}

function rowsOf(method: string, against: string, trials: readonly Trial[], allKnown: boolean): AccuracyRow[] {
  return (["initial contact", "toe-off"] as const).flatMap((event) => {
    const name = event === "toe-off" ? "toeOffs" : "initialContacts";
    const found = trials.reduce((sum, trial) => sum + trial.found[name].length, 0);
    if (found === 0) return [];
    const errors = trials.flatMap((trial) => errorsOf(trial.found[name], trial.truth[name]));
    const truths = trials.reduce((sum, trial) => sum + trial.truth[name].length, 0);
    return [
      {
        method,
        event,
        against,
        contacts: errors.length,
        missed: truths - errors.length,
        extra: allKnown ? found - errors.length : 0,
        meanMs: mean(errors),
        sdMs: errors.length > 1 ? standardDeviation(errors) : null,
      },
    ];
  });
}

/** For each true time the nearest one found, if within reach: found less true, ms. */
function errorsOf(found: readonly number[], truth: readonly number[]): number[] {
  return truth.flatMap((time) => {
    const errors = found.map((other) => other - time);
    const nearest = errors.reduce((best, e) => (Math.abs(e) < Math.abs(best) ? e : best), REACH);
    return Math.abs(nearest) < REACH ? [1000 * nearest] : [];
  });
}
