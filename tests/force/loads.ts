import { expect } from "vitest";
import type { Channel, Platform, Position, Recording } from "../../src/recording/index.js";
import type { Load, Placement } from "./statics.js";

export const recordingOf = (
  platforms: readonly Platform[],
  channels: readonly Channel[] = [],
): Recording => ({
  sampleRate: 500,
  startTime: 0,
  channels,
  platforms,
  subject: {},
  origin: { format: "test" },
  cautions: [],
});
/** A foot on the ground from sample to sample: half sines of force, a point that rolls forward. */
export const step = (from: number, to: number, place: Position, length = 1500, scale = 1): Load => {
  const at = Array.from({ length }, (_, i) => (i > from && i < to ? (i - from) / (to - from) : -1));
  const wave = (u: number, n: number) => (u < 0 ? 0 : scale * Math.sin(n * Math.PI * u));
  return {
    force: at.map((u) => ({ forward: -180 * wave(u, 2), up: 1500 * wave(u, 1), right: -70 * wave(u, 1) })),
    point: at.map((u) => ({ ...place, forward: place.forward + 0.2 * Math.max(0, u) })),
    freeMoment: at.map((u) => 6 * wave(u, 2)),
  };
};
export const at = (forward: number, right: number, up = 0): Placement => ({
  centre: { forward, up, right },
  yaw: 0.4,
  origin: [0.002, -0.001, -0.04],
  size: [0.6, 0.5],
});
export const place = (forward: number, right: number, up = 0): Position => ({ forward, up, right });
export const withOffsets = (platform: Platform, offsets: readonly number[]): Platform => ({
  ...platform,
  channels: platform.channels.map((channel, k) => ({
    ...channel,
    samples: channel.samples.map((value) => value + (offsets[k] as number)),
  })),
});
export const closeTo = (
  given: ArrayLike<number> | undefined,
  wanted: ArrayLike<number> | undefined,
  within: number,
): void => {
  expect(given?.length).toBe(wanted?.length);
  let worst = 0;
  for (let i = 0; i < (wanted?.length ?? 0); i++) {
    worst = Math.max(worst, Math.abs((given?.[i] as number) - (wanted?.[i] as number)));
  }
  expect(worst).toBeLessThanOrEqual(within);
};
