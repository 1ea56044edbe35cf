import type { Contact, Step } from "../../src/events/index.js";
import type { GroundReaction } from "../../src/force/index.js";
import running from "../fixtures/metrics/running.json" with { type: "json" }; // running.py, NumPy 2.4.6, SciPy 1.17.1
import { contactOver, groundOf } from "../helpers.js";

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
  const ground = groundOf({
    up: repeat(up),
    forward: repeat(forward),
    right: repeat(right),
    sampleRate: running.sampleRate,
    speed: running.speed,
    surface: "belt",
  });
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
  const ground = groundOf({
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
  const contacts = Array.from({ length: 2 * strides }, (_, k) =>
    contactOver(k * stepTime, k * stepTime + contactTime, (k % 2 === 0) === (side === 1) ? "right" : "left"),
  );
  return { ground, steps: stepsThrough(contacts) };
}

export { running };
