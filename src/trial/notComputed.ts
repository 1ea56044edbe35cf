import type { Step } from "../events/index.js";
import type { GroundReaction } from "../force/index.js";
import type { Metric, MetricNeed } from "../metrics/index.js";
import type { NotComputed, StepRow } from "./trial.js";

const REASONS: Readonly<Record<MetricNeed, { code: string; message: string }>> = {
  forward: { code: "missing-channel", message: "the forward force was not recorded" },
  right: { code: "missing-channel", message: "the mediolateral force was not recorded" },
  side: { code: "side-unknown", message: "left and right are not told apart" },
  mass: { code: "missing-mass", message: "the mass is neither stated nor to be had from whole strides" },
  speed: { code: "missing-speed", message: "no speed above 0 is stated" },
  surface: {
    code: "missing-surface",
    message: "it is not stated whether the runner is on the ground or on a belt",
  },
  next: { code: "no-next-contact", message: "no contact is followed by another one of the other foot" },
  nextSameSide: { code: "no-stride", message: "the recording holds no whole stride" },
};

/** The first need of a metric that this trial does not meet; `null` where all are met. */
export function unmetNeed(metric: Metric, ground: GroundReaction, steps: readonly Step[]): MetricNeed | null {
  const met: Readonly<Record<MetricNeed, boolean>> = {
    forward: ground.force.forward !== undefined,
    right: ground.force.right !== undefined,
    side: steps.some(({ contact }) => contact.side !== "unknown"),
    mass: ground.subject.mass !== undefined || ground.massByForce !== undefined,
    speed: (ground.speed ?? 0) > 0,
    surface: ground.surface !== undefined,
    next: steps.some(({ next }) => next !== undefined),
    nextSameSide: steps.some(({ nextSameSide }) => nextSameSide !== undefined),
  };
  return metric.needs.find((need) => !met[need]) ?? null;
}

/** The entry for a metric whose need is not met. */
export function reasonOf({ id }: Metric, need: MetricNeed): NotComputed {
  return { id, ...REASONS[need] };
}

/** The entry for a metric that has no value at any contact; `null` where one has. */
export function nowhere({ id, nullWhen }: Metric, rows: readonly StepRow[]): NotComputed | null {
  if (rows.some(({ values }) => values[id] != null)) return null;
  return nullWhen === undefined
    ? { id, code: "no-value", message: "no contact has a value" }
    : { id, code: nullWhen.code, message: `no contact has a value: ${nullWhen.message}` };
}
