import type { Contact, Step } from "../../src/events/index.js";
import type { GroundReaction } from "../../src/force/index.js";
import running from "../fixtures/metrics/running.json" with { type: "json" }; // running.py, NumPy 2.4.6, SciPy 1.17.1
import { contactOver, groundOf } from "../helpers.js";

/** First contact of the sampled run at 0 N, s. */
const START = 0.1234;

/**
 * Gives a run on the belt a height, and centre of pressure, free moment and feet by the formulas of feet.py: `start` and `step` in s,
 * the first foot right for 1 and left for −1.
 */
function withFeet(ground: GroundReaction, start: number, step: number, firstFoot: 1 | -1): GroundReaction {
  const { forward: along, up, right: aside } = ground.force as Required<GroundReaction["force"]>;
  const series = () => new Float64Array(up.length);
  const moment = { forward: series(), up: series(), right: series() };
  const track = () => ({ forward: series(), right: series() });
  const feet = { left: { heel: track(), toe: track() }, right: { heel: track(), toe: track() } };
  for (let i = 0; i < up.length; i++) {
    const since = i / ground.sampleRate - start;
    const k = Math.max(0, Math.floor(since / step + 1e-9));
    const u = since - k * step;
    const s = u / running.contactTime;
    const w = firstFoot * (k % 2 === 0 ? 1 : -1);
    const { heel, toe } = feet[w === 1 ? "right" : "left"];
    heel.forward[i] = 0.2 - running.speed * u;
    toe.forward[i] = 0.48 - running.speed * u;
    heel.right[i] = 0.05 * w;
    toe.right[i] = 0.09 * w;
    if (s < 0 || s > 1) continue;
    const [copForward, copRight] = [0.25 + 0.15 * s - running.speed * u, w * (0.06 + 0.01 * s)];
    const free = w * (5 * Math.sin(Math.PI * s) - 4 * Math.sin(2 * Math.PI * s));
    moment.forward[i] = -copRight * (up[i] as number);
    moment.right[i] = copForward * (up[i] as number);
    moment.up[i] = copRight * (along[i] as number) - copForward * (aside[i] as number) + free;
  }
  return { ...ground, moment, feet, subject: { ...ground.subject, height: 1.75 } };
}

/** Puts contacts into steps: the next one is of the other foot, the one after it of the same. */
export function stepsThrough(contacts: readonly Contact[]): Step[] {
  return contacts.map((contact, i) => {
    const next = contacts[i + 1];
    const nextSameSide = contacts[i + 2];
    return { contact, ...(next && { next }), ...(nextSameSide && { nextSameSide }) };
  });
}

/** The sampled run of the fixture, right foot first, with the contacts that NumPy found at a threshold. */
export function sampledRun(threshold = 20): { ground: GroundReaction; steps: Step[] } {
  const repeat = (stride: readonly number[]): Float64Array => {
    const samples = new Float64Array(running.samples);
    for (let i = 0; i < 4 * stride.length; i++) {
      samples[running.firstSample + i] = stride[i % stride.length] as number;
    }
    return samples;
  };
  const { forward, up, right } = running.stride;
  const force = groundOf({
    up: repeat(up),
    forward: repeat(forward),
    right: repeat(right),
    sampleRate: running.sampleRate,
    speed: running.speed,
    surface: "belt",
  });
  const ground = withFeet(force, START, running.stepTime, 1);
  const contacts = running.sampled
    .filter((row) => row.threshold === threshold)
    .map((row) => contactOver(row.initialContact, row.toeOff, row.side as "left" | "right"));
  return { ground, steps: stepsThrough(contacts) };
}

type Leg = (typeof running.legs)[number];

const raised = (t: number, peak: number, centre: number, half: number): number =>
  Math.abs(t - centre) <= half ? (peak / 2) * (1 + Math.cos(((t - centre) / half) * Math.PI)) : 0;
const lobe = (t: number, from: number, to: number, peak: number): number =>
  t >= from && t <= to ? peak * Math.sin((Math.PI * (t - from)) / (to - from)) : 0;

/** The run's formulas at any rate: both feet from one leg, mirrored. Contacts are the formulas' own, at 0 N. */
export function mirroredRun(
  sampleRate: number,
  strides: number,
  leg: Leg = running.legs[0] as Leg,
): { ground: GroundReaction; steps: Step[] } {
  const { contactTime, stepTime } = running;
  const length = Math.round(2 * strides * stepTime * sampleRate) + 1;
  const series = (force: (t: number, mirror: number) => number): Float64Array =>
    Float64Array.from({ length }, (_, i) => {
      const k = Math.floor(i / sampleRate / stepTime + 1e-9);
      return force(Math.max(0, i / sampleRate - k * stepTime), k % 2 === 0 ? 1 : -1);
    });
  const side = leg.side === "right" ? 1 : -1;
  const force = groundOf({
    up: series(
      (t) => raised(t, leg.impact, 0.028, 0.028) + raised(t, leg.main, contactTime / 2, contactTime / 2),
    ),
    forward: series((t) => lobe(t, leg.turn, contactTime, leg.propel) - lobe(t, 0, leg.turn, leg.brake)),
    right: series(
      (t, mirror) => side * mirror * (lobe(t, 0, 0.03, leg.lateral) - lobe(t, 0.03, contactTime, leg.medial)),
    ),
    sampleRate,
    speed: running.speed,
    surface: "belt",
  });
  const ground = withFeet(force, 0, stepTime, side);
  const contacts = Array.from({ length: 2 * strides }, (_, k) =>
    contactOver(k * stepTime, k * stepTime + contactTime, (k % 2 === 0) === (side === 1) ? "right" : "left"),
  );
  return { ground, steps: stepsThrough(contacts) };
}

export { running };
