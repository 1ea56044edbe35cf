import type { Direction, Side } from "../recording/index.js";
import type { Complete } from "../units/index.js";
import { buildStance, type ExtraImpulse, NO_EXTRA, type Runner } from "./buildStance.js";
import { landingDistance } from "./landingDistance.js";
import type { SyntheticStance } from "./options.js";
import { outward, type Stance } from "./stance.js";
import { type Motion, travel, type Vector, vectorOf, velocityChange } from "./stanceMotion.js";

/** One contact with the flight behind it, where it is in time and space. */
export interface LaidStep {
  readonly stance: Stance;
  readonly initialContact: number;
  /** In the frame that moves with the ground. */
  readonly motion: Motion;
  /** Centre of pressure ahead of the centre of mass at the contact, m. */
  readonly landing: number;
  /** Centre of pressure at the contact, m from the runner's first place in the frame that moves with the ground. */
  readonly foot: { readonly forward: number; readonly right: number };
}

/** What the steps of a run are laid out from. */
export interface StepPlan {
  readonly runner: Runner;
  readonly speed: number;
  readonly means: Readonly<Record<Side, Complete<SyntheticStance>>>;
  readonly draw: (side: Side) => Complete<SyntheticStance>;
  readonly firstFoot: Side;
  readonly firstContact: number;
  /** Whether a contact of this number (from 0) and time belongs to the run. */
  readonly wanted: (index: number, time: number) => boolean;
}

/** Height of the centre of mass at the first contact, share of body height. Common practice. */
const CENTRE_OF_MASS_HEIGHT = 0.55;
/** Share of a deviation of place (forward, up) that the next step's velocity takes back. */
const RETURN = 0.2;
/** Shares of a deviation of velocity and of place to the right that a step's impulse takes back. */
const RETURN_RIGHT: { readonly velocity: number; readonly place: number } = { velocity: 0.3, place: 0.03 };

/**
 * Lays out the steps of a run one after another.
 *
 * A steady run repeats its stride exactly. Where quantities vary, a step leaves the runner a little ahead, high or to the
 * side; the next impulses take a share of it back, so that place and velocity keep returning to those of the steady run.
 */
export function layOutSteps(plan: StepPlan): LaidStep[] {
  const { runner, speed, means, firstFoot } = plan;
  const steady = steadyMotion(plan);
  const steps: LaidStep[] = [];
  let side = firstFoot;
  let time = plan.firstContact;
  let place: Vector = vectorOf(() => 0);
  let rate: Vector = vectorOf(() => 0);
  for (let index = 0; plan.wanted(index, time); index++) {
    const base = steady[side];
    const where = `contact ${index + 1} (${side})`;
    const extra = takenBack(runner.mass, means[side].stepTime, place, rate);
    const stance = buildStance(side, plan.draw(side), runner, extra, where);
    const motion: Motion = {
      ...base.motion,
      position: vectorOf((d) => base.motion.position[d] + place[d]),
      velocity: vectorOf((d) => base.motion.velocity[d] + rate[d]),
    };
    const onGround = overGround(motion, speed, time - plan.firstContact);
    const landing = landingDistance(stance, onGround);
    steps.push({
      stance,
      initialContact: time,
      motion: onGround,
      landing,
      foot: {
        forward: onGround.position.forward + landing,
        right: place.right + outward(side) * stance.copWidth,
      },
    });
    const { stepTime } = stance;
    place = vectorOf((d) => place[d] + travel(stance, motion, d, stepTime) - base.travel[d]);
    rate = vectorOf((d) => rate[d] + velocityChange(stance, motion, d, stepTime) - base.change[d]);
    time += stepTime;
    side = other(side);
  }
  return steps;
}

/** From the frame that moves at the mean speed to that of the ground. */
function overGround(motion: Motion, speed: number, since: number): Motion {
  const { position, velocity } = motion;
  return {
    ...motion,
    position: { ...position, forward: position.forward + speed * since },
    velocity: { ...velocity, forward: velocity.forward + speed },
  };
}

function other(side: Side): Side {
  return side === "right" ? "left" : "right";
}

/** Impulse by which a step answers a deviation of place and velocity at its contact. */
function takenBack(mass: number, stepTime: number, place: Vector, rate: Vector): ExtraImpulse {
  const aimed = (d: Direction) => mass * (-(RETURN * place[d]) / stepTime - rate[d]);
  return {
    forward: aimed("forward"),
    up: aimed("up"),
    right: -mass * (RETURN_RIGHT.velocity * rate.right + (RETURN_RIGHT.place * place.right) / stepTime),
  };
}

/** A side's contact in the steady run, with what its step adds to place and velocity. */
interface SteadySide {
  readonly motion: Motion;
  readonly travel: Vector;
  readonly change: Vector;
}

/** Motion of the steady run at each foot's contact: the one that repeats after a stride. */
function steadyMotion({ runner, means, firstFoot }: StepPlan): Record<Side, SteadySide> {
  const stanceOf = (side: Side): Stance =>
    buildStance(side, means[side], runner, NO_EXTRA, `the ${side} foot`);
  const first = stanceOf(firstFoot);
  const second = stanceOf(other(firstFoot));
  const strideTime = first.stepTime + second.stepTime;
  const still: Motion = { mass: runner.mass, position: ORIGIN, velocity: ORIGIN, against: ORIGIN };
  const against = vectorOf(
    (d) =>
      (velocityChange(first, still, d, first.stepTime) + velocityChange(second, still, d, second.stepTime)) /
      strideTime,
  );
  const falling: Motion = { ...still, against };
  const change = vectorOf((d) => velocityChange(first, falling, d, first.stepTime));
  const velocity = vectorOf(
    (d) =>
      -(
        travel(first, falling, d, first.stepTime) +
        change[d] * second.stepTime +
        travel(second, falling, d, second.stepTime)
      ) / strideTime,
  );
  const sideOf = (stance: Stance, motion: Motion): SteadySide => ({
    motion,
    travel: vectorOf((d) => travel(stance, motion, d, stance.stepTime)),
    change: vectorOf((d) => velocityChange(stance, motion, d, stance.stepTime)),
  });
  const begin = sideOf(first, {
    mass: runner.mass,
    position: {
      forward: 0,
      up: CENTRE_OF_MASS_HEIGHT * runner.height,
      right: -(velocity.right * first.stepTime + travel(first, falling, "right", first.stepTime)) / 2,
    },
    velocity,
    against,
  });
  const middle = sideOf(second, {
    mass: runner.mass,
    position: vectorOf((d) => begin.motion.position[d] + begin.travel[d]),
    velocity: vectorOf((d) => velocity[d] + change[d]),
    against,
  });
  return firstFoot === "right" ? { right: begin, left: middle } : { right: middle, left: begin };
}

const ORIGIN: Vector = { forward: 0, up: 0, right: 0 };
