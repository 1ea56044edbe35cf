import type { GroundReaction } from "../../src/force/index.js";
import { seededRandom } from "../../src/statistics/index.js";

/** How a walk with both feet on one belt is made. */
export interface WalkOptions {
  /** Steps in the recording. */
  readonly steps?: number;
  readonly strideTime?: number;
  /** Contact ÷ stride. */
  readonly stanceShare?: number;
  readonly speed?: number;
  /** Between the lines of the feet, m. */
  readonly width?: number;
  /** Travel of the centre of pressure along the foot, m, and to its outside and back towards the big toe, m. */
  readonly roll?: number;
  readonly sideRoll?: number;
  /** Standard deviation of noise on force, N, and on the centre of pressure at one body weight, m. */
  readonly noise?: { readonly force: number; readonly cop: number };
  /** Slow sway of the walker's place on the belt, m. */
  readonly sway?: number;
  /** Relative standard deviation of step times. */
  readonly variation?: number;
  readonly sampleRate?: number;
  /** On standing ground the feet stay, on a belt they travel backward. */
  readonly surface?: "belt" | "ground";
  readonly seed?: number;
}

/** One contact of the walk: its times at the zeros of the force and at a level, s. */
export interface WalkContact {
  readonly side: "left" | "right";
  readonly from: number;
  readonly to: number;
  /** Vertical force of this foot at a time, N. */
  readonly up: (time: number) => number;
}

/** Weight of the walker, 70 kg. */
const WALKER_WEIGHT: number = 70 * 9.80665;

/** The shape of the vertical force of one foot over its contact, by the formula of walking.py; mean 2.1/π + 0.2/π + 0.012/π. */
function shape(u: number): number {
  const s = (n: number) => Math.sin(n * Math.PI * u);
  return 1.05 * s(1) + 0.3 * s(3) + 0.03 * s(5);
}
const SHAPE_MEAN = (2 * (1.05 + 0.3 / 3 + 0.03 / 5)) / Math.PI;

/**
 * Makes a walk whose two feet load one plate: forces by the formula of walking.py (scaled so that whole strides carry the body
 * weight), centres of pressure that roll along the foot unevenly, as on a real foot, and to the side.
 */
export function walkOnOneBelt(options: WalkOptions = {}): { ground: GroundReaction; truth: WalkContact[] } {
  const { steps = 40, strideTime = 1.06, stanceShare = 0.62, speed = 1.35, width = 0.11 } = options;
  const { roll = 0.2, sideRoll = 0.01, noise = { force: 0, cop: 0 }, sway = 0, variation = 0 } = options;
  const { sampleRate = 1000, surface = "belt", seed = 6 } = options;
  const random = seededRandom(seed);
  const step = strideTime / 2;
  const stance = stanceShare * strideTime;
  const truth: WalkContact[] = [];
  const places: number[] = [];
  let time = -2 * step;
  for (let k = 0; k < steps + 4; k++) {
    const from = time;
    const scale = (WALKER_WEIGHT * step) / (stance * SHAPE_MEAN);
    truth.push({
      side: k % 2 === 0 ? "right" : "left",
      from,
      to: from + stance,
      up: (t) => (t <= from || t >= from + stance ? 0 : scale * shape((t - from) / stance)),
    });
    places.push(surface === "belt" ? 0 : speed * (time + 2 * step));
    time += step * (1 + variation * random.normal());
  }
  const length = Math.round(steps * step * sampleRate);
  const [up, aboutForward, aboutRight, forward, right] = Array.from(
    { length: 5 },
    () => new Float64Array(length),
  );
  for (let i = 0; i < length; i++) {
    const t = i / sampleRate;
    for (const [k, contact] of truth.entries()) {
      const force = contact.up(t);
      if (force === 0) continue;
      const u = (t - contact.from) / stance;
      const out = contact.side === "right" ? 1 : -1;
      // Quick over the heel, slow over midfoot, quick to the forefoot, slow on the toes.
      const along =
        (places[k] as number) +
        roll * (u + 0.07 * Math.sin(4 * Math.PI * u)) -
        (surface === "belt" ? speed * (t - contact.from) : 0);
      const beside =
        out * (width / 2 + sideRoll * Math.sin(2 * Math.PI * Math.min(1, u + 0.1))) +
        sway * Math.sin((2 * Math.PI * t) / 9);
      const s = (n: number) => Math.sin(n * Math.PI * u);
      (up as Float64Array)[i] = (up?.[i] as number) + force;
      (aboutRight as Float64Array)[i] = (aboutRight?.[i] as number) + force * along;
      (aboutForward as Float64Array)[i] = (aboutForward?.[i] as number) - force * beside;
      (forward as Float64Array)[i] =
        (forward?.[i] as number) - 0.2 * WALKER_WEIGHT * s(2) * (1 - 0.25 * Math.cos(2 * Math.PI * u));
      (right as Float64Array)[i] =
        (right?.[i] as number) - out * WALKER_WEIGHT * (0.055 * s(1) + 0.015 * s(3));
    }
    const turned = noise.cop * WALKER_WEIGHT;
    for (const channel of [up, forward, right])
      (channel as Float64Array)[i] = (channel?.[i] as number) + noise.force * random.normal();
    for (const channel of [aboutForward, aboutRight])
      (channel as Float64Array)[i] = (channel?.[i] as number) + turned * random.normal();
  }
  const ground: GroundReaction = {
    sampleRate,
    startTime: 0,
    force: { up: up as Float64Array, forward: forward as Float64Array, right: right as Float64Array },
    moment: { forward: aboutForward as Float64Array, right: aboutRight as Float64Array },
    subject: { mass: 70 },
    speed,
    surface,
    gravity: 9.80665,
    settings: { driftRemoved: false, flights: 0, filter: null },
    cautions: [],
  };
  return { ground, truth };
}

/** The time at which a contact's own force crosses a level, s: on the rise where `end` is "from", else on the fall. */
export function crossing(contact: WalkContact, level: number, end: "from" | "to"): number {
  let outside = contact[end];
  let inside = contact[end] + (end === "from" ? 0.05 : -0.05);
  for (let k = 0; k < 60; k++) {
    const middle = (outside + inside) / 2;
    if (contact.up(middle) < level) outside = middle;
    else inside = middle;
  }
  return inside;
}
