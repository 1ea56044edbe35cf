import { describe, expect, it } from "vitest";
import { toGroundReaction } from "../../src/force/index.js";
import type { Recording } from "../../src/recording/index.js";
import { type SyntheticRunOptions, syntheticRun } from "../../src/synthetic/index.js";

/** Synthetic runs cut off at a limit, and rounded as converters and text files do. */
const RUN: SyntheticRunOptions = { contacts: 24, noise: { force: 1 }, variability: { contactTime: 0.01 } };
const changed = (
  recording: Recording,
  direction: string | null,
  change: (value: number, i: number) => number,
): Recording => ({
  ...recording,
  channels: recording.channels.map((channel) =>
    channel.quantity === "force" && (direction === null || channel.direction === direction)
      ? { ...channel, samples: channel.samples.map(change) }
      : channel,
  ),
});
const saturated = (recording: Recording) =>
  toGroundReaction(recording).cautions.filter(({ code }) => code === "saturated");
const rounded = (step: number) => (value: number) => step * Math.round(value / step);

describe("a limit is said, with the channel and its level", () => {
  const { recording, truth } = syntheticRun(RUN);
  it.each([
    ["up", 1, 1500],
    ["forward", 1, 140],
    ["forward", -1, -100],
    ["right", 1, 15],
    ["right", -1, -40],
  ])("%s at %d × its limit of %d N, below 20 N too", (direction, sign, limit) => {
    const cut = changed(recording, direction, (value) =>
      sign > 0 ? Math.min(value, limit) : Math.max(value, limit),
    );
    const cautions = saturated(cut);
    expect(cautions.map(({ where }) => where)).toEqual([direction]);
    expect(cautions[0]?.values?.level).toBe(limit);
    expect(cautions[0]?.values?.plateaus).toBeGreaterThan(10);
  });
  it("in one contact alone (was not said)", () => {
    const { initialContact, toeOff } = truth.contacts[7] as { initialContact: number; toeOff: number };
    const within = (i: number) => i / 1000 > initialContact && i / 1000 < toeOff;
    // The others stay below the level, as where one landing was harder.
    const cut = changed(recording, "up", (value, i) => (within(i) ? Math.min(1.15 * value, 1710) : value));
    const largest = Math.max(...(recording.channels[1]?.samples ?? []));
    expect(largest).toBeLessThan(1710);
    expect(saturated(cut)[0]?.values?.plateaus).toBe(1);
  });
  it("at 300 Hz, and in a file of whole newtons", () => {
    const slow = syntheticRun({ ...RUN, sampleRate: 300 }).recording;
    expect(saturated(changed(slow, "up", (value) => Math.min(Math.round(value), 1500))).length).toBe(1);
  });
});

describe("no limit is seen in a rounded peak (100 runs in all)", () => {
  const digits = (value: number) => Number(value.toPrecision(4));
  it.each([
    ["5 N a step, 1 N of noise", { noise: { force: 1 } }, rounded(5)],
    ["5 N a step, 0.3 N of noise", { noise: { force: 0.3 } }, rounded(5)],
    ["20 N a step, no noise", { noise: { force: 0 } }, rounded(20)],
    ["12 bits over 5 kN, 10 kHz", { contacts: 6, sampleRate: 10_000 }, rounded(5000 / 4096)],
    ["four digits a number, as some text files have", {}, digits],
  ] as const)("%s", (_, more, change) => {
    for (let seed = 1; seed <= 20; seed++) {
      const { recording } = syntheticRun({ ...RUN, ...more, seed });
      expect(saturated(changed(recording, null, change)), `seed ${seed}`).toEqual([]);
    }
  });
  it("a level kept in flight, as where a file sets it to zero, is none", () => {
    const { recording } = syntheticRun(RUN);
    const zeroed = changed(recording, "up", (value) => (value < 20 ? 0 : value));
    expect(saturated(zeroed)).toEqual([]);
    expect(saturated(changed(zeroed, "up", (value) => value + 35))).toEqual([]);
  });
});
