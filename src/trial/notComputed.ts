import type { Step } from "../events/index.js";
import type { GroundReaction } from "../force/index.js";
import type { Metric, MetricNeed } from "../metrics/index.js";
import type { NotComputed, StepRow } from "./trial.js";

const REASONS: Readonly<Record<MetricNeed, { code: string; message: string }>> = {
  forward: { code: "missing-channel", message: "the forward force was not recorded" },
  right: { code: "missing-channel", message: "the mediolateral force was not recorded" },
  copForward: { code: "missing-channel", message: "the anteroposterior centre of pressure was not recorded" },
  copRight: { code: "missing-channel", message: "the mediolateral centre of pressure was not recorded" },
  freeMoment: { code: "missing-channel", message: "the free moment was not recorded" },
  side: { code: "side-unknown", message: "left and right are not told apart" },
  foot: { code: "missing-foot", message: "the place of heel and toes is not known" },
  mass: { code: "missing-mass", message: "the mass is neither stated nor to be had from whole strides" },
  height: { code: "missing-height", message: "the runner's height is not stated" },
  speed: { code: "missing-speed", message: "no speed above 0 is stated" },
  surface: {
    code: "missing-surface",
    message: "it is not stated whether the runner is on the ground or on a belt",
  },
  oneFoot: {
    code: "feet-share-plate",
    message: "both feet shared a plate in double support, where the force under one foot is not known",
  },
  next: { code: "no-next-contact", message: "no contact is followed by another one of the other foot" },
  nextSameSide: { code: "no-stride", message: "the recording holds no whole stride" },
  coefficient: {
    code: "missing-coefficient",
    message: "no cost coefficient is stated: it is no constant, and is measured on the runner near the speed",
  },
};

/** The first need of a metric that this trial does not meet; `null` where all are met. */
export function unmetNeed(metric: Metric, ground: GroundReaction, steps: readonly Step[]): MetricNeed | null {
  const met: Readonly<Record<MetricNeed, boolean>> = {
    forward: ground.force.forward !== undefined,
    right: ground.force.right !== undefined,
    copForward: ground.moment?.right !== undefined,
    copRight: ground.moment?.forward !== undefined,
    freeMoment: ground.moment?.up !== undefined,
    side: steps.some(({ contact }) => contact.side !== "unknown"),
    foot: ground.feet !== undefined,
    mass: ground.subject.mass !== undefined || ground.massByForce !== undefined,
    height: ground.subject.height !== undefined,
    speed: (ground.speed ?? 0) > 0,
    surface: ground.surface !== undefined,
    oneFoot: !steps.some(({ contact }) => contact.shared),
    next: steps.some(({ next }) => next !== undefined),
    nextSameSide: steps.some(({ nextSameSide }) => nextSameSide !== undefined),
    coefficient: false,
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

/** The entry for a metric that single contacts have, and no stride at both of its contacts. */
export function noStrideHas({ id }: Metric): NotComputed {
  return { id, code: "no-stride", message: "no stride has a value at both of its contacts" };
}
