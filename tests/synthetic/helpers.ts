import type { Direction, Recording } from "../../src/recording/index.js";
import { forceAt, type TrueContact } from "../../src/synthetic/index.js";

/** The samples of a column. */
export function column(recording: Recording, name: string): Float64Array {
  const channel = recording.channels.find((candidate) => candidate.name === name);
  if (channel === undefined) throw new Error(`no column ${name}`);
  return channel.samples;
}

/** Integral of a smooth function by Simpson's rule on 2000 parts. */
function simpson(value: (time: number) => number, from: number, to: number): number {
  const parts = 2000;
  const width = (to - from) / parts;
  let sum = value(from) + value(to);
  for (let i = 1; i < parts; i++) sum += (i % 2 === 1 ? 4 : 2) * value(from + i * width);
  return (sum * width) / 3;
}

/** The times at which the model's pulses begin and end, s since the contact. */
function breaks({ stance }: TrueContact): number[] {
  const { contactTime, impactTime, crossTime, lateralTime } = stance;
  return [0, 2 * impactTime, crossTime, lateralTime, 0.85 * contactTime, contactTime].sort((a, b) => a - b);
}

/** Integral over a contact of a function of time since the contact, by Simpson's rule between the pulses' ends. */
export function overContact(contact: TrueContact, value: (since: number) => number): number {
  const times = breaks(contact);
  return times.slice(1).reduce((sum, to, i) => sum + simpson(value, times[i] as number, to), 0);
}

/** Impulse of the true force over a contact, N·s. */
export function impulse(contact: TrueContact, direction: Direction): number {
  return overContact(contact, (since) => forceAt(contact, contact.initialContact + since)[direction]);
}

/** Variability of every quantity, within what one runner shows. */
export const LIVELY = {
  stepTime: 0.01,
  contactTime: 0.015,
  impactAmplitude: 0.06,
  impactTime: 0.04,
  brakingAmplitude: 0.06,
  crossShare: 0.02,
  lateralAmplitude: 0.15,
  lateralTime: 0.08,
  medialAmplitude: 0.1,
  copRoll: 0.03,
  copWidth: 0.15,
  freeMomentAmplitude: 0.12,
} as const;
