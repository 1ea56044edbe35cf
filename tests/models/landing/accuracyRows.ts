import { takeOffDistance, touchdownDistance } from "../../../src/metrics/index.js";
import { LANDING_MARGIN, landingFromForce, type ToeShape } from "../../../src/models/index.js";
import { meanAndSd, measuredRun, runAt, truthOf } from "./runs.js";
import { RUNNERS, springLegRecord } from "./springLeg.js";
import { MARKER_TIME, markersAt, treadmillRun } from "./treadmillRun.js";

/** Mean and SD of the errors of single contacts, mm. */
interface LandingErrors {
  readonly n: number;
  readonly mean: number;
  readonly sd: number;
}

/** One row of the table of synthetic runs. */
interface LandingRow {
  readonly surface: "ground" | "belt";
  /** Hz. */
  readonly sampleRate: number;
  /** SD of the noise on each force, N. */
  readonly noise: number;
  /** km/h. */
  readonly speed: number;
  readonly touchdown: LandingErrors;
  readonly takeOff: LandingErrors;
}

const SPEEDS: readonly number[] = [8, 13, 18];

/** Errors against the truth of synthetic runs, at the zeros of the force. */
function syntheticRows(): LandingRow[] {
  return (["ground", "belt"] as const).flatMap((surface) =>
    [1000, 300].flatMap((sampleRate) =>
      [0, 2, 5].flatMap((noise) => SPEEDS.map((speed) => syntheticRow(surface, sampleRate, noise, speed))),
    ),
  );
}

function syntheticRow(
  surface: "ground" | "belt",
  sampleRate: number,
  noise: number,
  speed: number,
): LandingRow {
  const cop = noise / 2000;
  const { ground, steps, truth } = measuredRun({
    ...runAt(speed),
    surface,
    sampleRate,
    noise: { force: noise, cop, freeMoment: 0.15 * noise },
  });
  const errors = (metric: typeof touchdownDistance) =>
    steps.flatMap((step) => {
      const value = metric(ground, step);
      return value === null
        ? []
        : [1000 * (value - truthOf(truth, step).values[metric.name as "touchdownDistance"])];
    });
  return {
    surface,
    sampleRate,
    noise,
    speed,
    touchdown: meanAndSd(errors(touchdownDistance)),
    takeOff: meanAndSd(errors(takeOffDistance)),
  };
}

/** Errors against a simulated trunk on a spring leg, by runner. */
function springLegRows(): { runner: string; touchdown: LandingErrors; takeOff: LandingErrors }[] {
  return RUNNERS.map(([runner, simulated]) => {
    const { record, contacts } = springLegRecord(simulated);
    const options = { speed: simulated.speed, height: simulated.centreOfMassHeight / 0.55 };
    const errors = contacts.slice(0, -2).flatMap((contact, k) => {
      const landing = landingFromForce(record, contact, contacts[k + 2] as typeof contact, options);
      const truth = simulated.contacts[k];
      if (landing.refused !== undefined || truth === undefined) return [];
      return [
        {
          first: 1000 * (landing.touchdown - (truth.place - truth.bodyAtFirst)),
          last: 1000 * (landing.takeOff - (truth.bodyAtLast - truth.place)),
        },
      ];
    });
    return {
      runner,
      touchdown: meanAndSd(errors.map(({ first }) => first)),
      takeOff: meanAndSd(errors.map(({ last }) => last)),
    };
  });
}

/** The open recording with markers, mm: by force, with the pelvis markers, and the closing law. */
interface MarkerRow {
  readonly strides: number;
  readonly refused: number;
  /** Of all strides with a distance. */
  readonly touchdown: LandingErrors;
  readonly takeOff: LandingErrors;
  readonly copTravel: LandingErrors;
  /** Of the strides that the markers cover. */
  readonly touchdownByForce: LandingErrors;
  readonly touchdownByMarkers: LandingErrors;
  readonly difference: LandingErrors;
  /** Centre of mass by force less pelvis, at both touches. */
  readonly place: LandingErrors;
  readonly correlation: number;
  /** Sum of the three, and travel of the pelvis over the belt. */
  readonly sum: LandingErrors;
  readonly pelvisTravel: LandingErrors;
}

/** Both distances of the open recording by one rule for the toe and one foot level, mm. */
interface ToeRow {
  readonly toe: ToeShape;
  /** N. */
  readonly footLevel: number;
  readonly touchdown: LandingErrors;
  readonly takeOff: LandingErrors;
}

/** What the rule for the toe and the foot level make of the open recording. */
export function toeRows(): ToeRow[] {
  const { ground, steps } = treadmillRun();
  return (["curve", "line"] as const).flatMap((toe) =>
    [250, 400, 600].map((footLevel) => {
      const values = (metric: typeof touchdownDistance) =>
        meanAndSd(
          steps.flatMap((step) => {
            const value = metric(ground, step, { toe, footLevel });
            return value === null ? [] : [1000 * value];
          }),
        );
      return { toe, footLevel, touchdown: values(touchdownDistance), takeOff: values(takeOffDistance) };
    }),
  );
}

/** Holds the open recording against its markers; the pelvis is put at the centre of mass by its mean offset at the touches. */
function markerRow(): MarkerRow {
  const { ground, steps } = treadmillRun();
  const { pelvis } = markersAt();
  const { force, moment } = ground.unfiltered ?? ground;
  const record = { sampleRate: ground.sampleRate, force, ...(moment && { moment }) };
  const strides = steps.filter(({ nextSameSide }) => nextSameSide !== undefined);
  const found = strides.flatMap(({ contact, nextSameSide }) => {
    const landing = landingFromForce(record, contact, nextSameSide ?? contact, {
      surface: "belt",
      speed: 2.5,
      height: 1.83,
      threshold: contact.threshold,
    });
    return landing.refused === undefined ? [landing] : [];
  });
  const seen = found.filter(({ lastTouch }) => lastTouch < MARKER_TIME);
  const carried = ({ firstTouch, lastTouch }: (typeof seen)[number]) => 2.5 * (lastTouch - firstTouch);
  const places = seen.flatMap((landing) => [
    [landing.bodyPlace, pelvis(landing.firstTouch)] as const,
    [landing.bodyPlace + landing.bodyTravel - carried(landing), pelvis(landing.lastTouch)] as const,
  ]);
  const offset = meanAndSd(places.map(([byForce, byMarkers]) => byForce - byMarkers)).mean;
  const [f, m] = [0, 1].map((which) => meanAndSd(places.map((pair) => pair[which] as number)));
  const products = places.reduce((sum, [a, b]) => sum + (a - (f?.mean ?? 0)) * (b - (m?.mean ?? 0)), 0);
  const spread = (values: readonly number[]) => meanAndSd(values.map((value) => 1000 * value));
  const byMarkers = seen.map(
    ({ touchdown, bodyPlace, firstTouch }) => touchdown + bodyPlace - (pelvis(firstTouch) + offset),
  );
  return {
    strides: strides.length,
    refused: strides.length - found.length,
    touchdown: spread(found.map(({ touchdown }) => touchdown)),
    takeOff: spread(found.map(({ takeOff }) => takeOff)),
    copTravel: spread(found.map(({ copTravel }) => copTravel)),
    touchdownByForce: spread(seen.map(({ touchdown }) => touchdown)),
    touchdownByMarkers: spread(byMarkers),
    difference: spread(seen.map(({ touchdown }, k) => touchdown - (byMarkers[k] as number))),
    place: spread(places.map(([a, b]) => a - b)),
    correlation: products / ((places.length - 1) * (f?.sd ?? 0) * (m?.sd ?? 0)),
    sum: spread(seen.map(({ touchdown, takeOff, copTravel }) => touchdown + takeOff + copTravel)),
    pelvisTravel: spread(
      seen.map((landing) => pelvis(landing.lastTouch) - pelvis(landing.firstTouch) + carried(landing)),
    ),
  };
}

/** The three as a section of a page; `shown` prints a number, mm. */
export function landingSection(shown: (value: number) => string): string {
  const pair = ({ mean, sd }: LandingErrors) => `${shown(mean)} ± ${shown(sd)}`;
  const rows = syntheticRows().map(
    ({ surface, sampleRate, noise, speed, touchdown, takeOff }) =>
      `| ${surface} | ${sampleRate} | ${noise} | ${speed} | ${touchdown.n} | ${pair(touchdown)} | ${pair(takeOff)} |`,
  );
  const legs = springLegRows().map(
    ({ runner, touchdown, takeOff }) =>
      `| ${runner} | ${touchdown.n} | ${pair(touchdown)} | ${pair(takeOff)} |`,
  );
  const real = markerRow();
  const whole = ({ mean, sd }: LandingErrors) => `${mean.toFixed(0)} ± ${sd.toFixed(0)}`;
  const millimetres = (metres: number) => (1000 * metres).toFixed(0);
  const toes = toeRows().map(
    ({ toe, footLevel, touchdown, takeOff }) =>
      `| ${toe} | ${footLevel} | ${touchdown.n} | ${whole(touchdown)} | ${whole(takeOff)} |`,
  );
  return `## Touchdown and take-off distance by force alone

Mean ± SD of the errors of single contacts, mm, against the place of foot and centre of mass at the zeros of the vertical
force. Noise of the centre of pressure is 0.5 mm for each newton of force noise.

| surface | Hz | noise, N | km/h | contacts | touchdown | take-off |
|---|---|---|---|---|---|---|
${rows.join("\n")}

A rigid trunk on a spring leg, simulated with its own rotation, without noise:

| runner | contacts | touchdown | take-off |
|---|---|---|---|
${legs.join("\n")}

An open recording (Fukuchi et al. 2017, 2.5 m/s on a belt, 300 Hz; markers for the first 10 s), mm: touchdown ${whole(real.touchdown)}, take-off
${whole(real.takeOff)}, travel of the centre of pressure under the foot ${whole(real.copTravel)} over ${real.strides - real.refused} contacts; ${real.refused} of ${real.strides} strides refused. Where markers were recorded, touchdown
by force ${whole(real.touchdownByForce)}, with the pelvis markers put at the centre of mass by their mean offset ${whole(real.touchdownByMarkers)}; difference ${pair(real.difference)}.
Centre of mass by force against the pelvis at both touches: r ${real.correlation.toFixed(3)}, SD ${shown(real.place.sd)}. Touchdown + take-off + travel under the
foot ${real.sum.mean.toFixed(0)}, travel of the pelvis over the belt ${real.pelvisTravel.mean.toFixed(0)}.

The absolute values belong to the rule for the toe, how the force is carried on to zero, and to the foot level: on this
recording the force rises and falls slowly, and the centre of pressure is poor there. Neither markers nor the closing law tell which
is right, since both use the same touches. The margin of a trial is therefore ${millimetres(LANDING_MARGIN.touchdown)} mm at touchdown and ${millimetres(LANDING_MARGIN.takeOff)} mm at take-off, before
forward force and speed; differences between conditions, read by one rule, are steadier. By default a curve and 250 N; mm, mean ± SD:

| toe | foot level, N | contacts | touchdown | take-off |
|---|---|---|---|---|
${toes.join("\n")}
`;
}
