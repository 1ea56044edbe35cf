import { toGroundReaction } from "../../src/force/index.js";
import { CATALOGUE } from "../../src/metrics/index.js";
import { analyseTrial } from "../../src/trial/index.js";
import { type HeldValues, type MetricErrors, metricErrors } from "./metricErrors.js";
import { footForce, WALKS, type Walk, walkContacts, walkRecording } from "./walk.js";

/** Step of the sums over a stride, s. */
const GRID = 1e-4;

/** Analyses every walk and holds the metrics of walking against its formulas. */
export function measureWalking(asItComes: boolean): readonly MetricErrors[] {
  const walking = CATALOGUE.filter(({ family }) => family === "walking");
  const pairs = WALKS.flatMap((walk, k): HeldValues[] => {
    const ground = toGroundReaction(walkRecording(walk, asItComes ? 2 : 0, 200 + k));
    const trial = analyseTrial(ground, {
      metrics: walking,
      events: { gait: "walking" },
      ...(asItComes ? {} : { filter: null }),
    });
    const truth = trueValues(walk, trial.settings.events.threshold);
    const starts = walkContacts(walk).map(({ initialContact }) => initialContact);
    return trial.steps.flatMap(({ initialContact, values }) =>
      starts.some((start) => Math.abs(start - initialContact) < 0.05) ? [{ values, truth }] : [],
    );
  });
  return metricErrors(pairs);
}

/** What every contact of a walk has, times as the threshold sees them. */
function trueValues(walk: Walk, threshold: number): Readonly<Record<string, number>> {
  const { strideTime, stanceTime } = walk;
  const up = (time: number) => footForce(walk, time).up;
  const late = crossing(up, threshold, 0, 0.1);
  const contactTime = stanceTime - 2 * late;
  const times = Array.from({ length: Math.floor(stanceTime / GRID) }, (_, i) => i * GRID);
  const half = times.filter((time) => time < stanceTime / 2);
  const first = Math.max(...half.map(up));
  const top = half.find((time) => up(time) === first) as number;
  // The formula of the vertical force is the same forward and backward in time: both peaks are one number.
  return {
    firstVerticalPeak: first,
    midstanceTrough: Math.min(...times.filter((time) => time > top && time < stanceTime - top).map(up)),
    secondVerticalPeak: first,
    doubleSupportTime: contactTime - strideTime / 2,
    singleSupportTime: strideTime - contactTime,
    stanceShare: contactTime / strideTime,
    energyRecovery: recovery(walk),
  };
}

function crossing(force: (time: number) => number, level: number, from: number, to: number): number {
  let [low, high] = [from, to];
  while (high - low > 1e-12) {
    const middle = (low + high) / 2;
    if (force(middle) < level) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Recovery over one stride: velocities by sums of the force of both feet, their means taken to the speed and to 0. */
function recovery(walk: Walk): number {
  const { mass, speed, strideTime } = walk;
  const count = Math.round(strideTime / GRID);
  const step = strideTime / count;
  const sums = Array.from({ length: count }, (_, i) => {
    const time = (i + 0.5) * step;
    const feet = [time, time - strideTime / 2, time + strideTime / 2].map((since) => footForce(walk, since));
    const sum = (part: "forward" | "up") => feet.reduce((total, foot) => total + foot[part], 0);
    return { forward: sum("forward") / mass, up: sum("up") / mass };
  });
  const forward = integral(
    sums.map((one) => one.forward),
    step,
  ).map((v) => v + speed);
  const rise = integral(
    sums.map((one) => one.up),
    step,
  );
  const height = integral(rise, step);
  const weight = sums.reduce((total, { up }) => total + up, 0) / count;
  const alongs = forward.map((v) => (mass * v * v) / 2);
  const heights = rise.map((v, i) => (mass * v * v) / 2 + mass * weight * (height[i] as number));
  const both = alongs.map((energy, i) => energy + (heights[i] as number));
  const apart = risesOf(alongs) + risesOf(heights);
  return (apart - risesOf(both)) / apart;
}

/** Running sum at the middle of each step, its mean and that of what is summed taken off. */
function integral(values: readonly number[], step: number): number[] {
  const average = values.reduce((sum, value) => sum + value, 0) / values.length;
  let total = 0;
  const sums = values.map((value) => {
    const before = total;
    total += (value - average) * step;
    return (before + total) / 2;
  });
  const middle = sums.reduce((sum, value) => sum + value, 0) / sums.length;
  return sums.map((value) => value - middle);
}

function risesOf(energies: readonly number[]): number {
  return energies.reduce(
    (sum, energy, i) => sum + Math.max(0, energy - (energies[i - 1] ?? (energies.at(-1) as number))),
    0,
  );
}
