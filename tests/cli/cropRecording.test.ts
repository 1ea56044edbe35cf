import fc from "fast-check";
import { expect, it } from "vitest";
import { cropRecording } from "../../src/cli/input/cropRecording.js";
import type { Recording } from "../../src/recording/index.js";

const recording = (samples: number, sampleRate: number): Recording => ({
  sampleRate,
  startTime: 2,
  channels: [
    {
      name: "up",
      quantity: "force",
      direction: "up",
      unit: "N",
      samples: Float64Array.from({ length: samples }, (_, i) => i),
    },
  ],
  subject: {},
  firstFoot: "left",
  origin: { format: "csv" },
  cautions: [],
});
const samplesOf = ({ channels }: Recording) => Array.from(channels[0]?.samples ?? []);

it("property: windows that meet hold every sample once, each at its own time", () =>
  fc.assert(
    fc.property(
      fc.integer({ min: 10, max: 400 }),
      fc.constantFrom(7, 50, 300, 1000, 1024),
      fc.double({ min: 0.2, max: 0.8, noNaN: true }),
      (samples, sampleRate, share) => {
        const whole = recording(samples, sampleRate);
        const cut = (share * samples) / sampleRate;
        const [first, second] = [cropRecording(whole, 0, cut), cropRecording(whole, cut)];
        expect([...samplesOf(first), ...samplesOf(second)]).toEqual(samplesOf(whole));
        expect(second.startTime).toBeCloseTo(2 + (samplesOf(second)[0] ?? 0) / sampleRate, 12);
      },
    ),
  ));

it("keeps what the file says of its first foot only where its first contact is kept", () => {
  const whole = recording(300, 300);
  expect(cropRecording(whole, 0, 0.5).firstFoot).toBe("left");
  expect(cropRecording(whole, 0.5, 1)).not.toHaveProperty("firstFoot");
});

it("takes the whole duration as a window's end though the last sample lies before it", () => {
  expect(samplesOf(cropRecording(recording(300, 300), 0, 1))).toHaveLength(300);
});

it("cuts platforms, markers and events with the channels; a zero stretch stays named only where it is whole", () => {
  const ramp = Float64Array.from({ length: 300 }, (_, i) => i);
  const frames = Float64Array.from({ length: 30 }, (_, i) => i);
  const corner = { forward: 0, up: 0, right: 0 };
  const whole: Recording = {
    ...recording(300, 300),
    platforms: [
      {
        name: "1",
        type: 2,
        channels: [{ name: "Fz", unit: "N", samples: ramp }],
        corners: [corner, corner, corner, corner],
        origin: [0, 0, 0],
        zero: { from: 160, to: 170 },
      },
    ],
    markers: {
      sampleRate: 30,
      startTime: 2,
      markers: [{ name: "heel", forward: frames, up: frames, right: frames }],
    },
    events: [2.1, 2.5, 2.7, 2.9].map((time) => ({ label: "strike", time })),
  };
  const part = cropRecording(whole, 0.5, 0.9);
  expect(Array.from(part.platforms?.[0]?.channels[0]?.samples ?? [])).toEqual(samplesOf(part));
  expect(part.platforms?.[0]?.zero).toEqual({ from: 10, to: 20 });
  expect(Array.from(part.markers?.markers[0]?.up ?? [])).toEqual(Array.from(frames.slice(15, 27)));
  expect(part.markers?.startTime).toBeCloseTo(2.5, 12);
  expect(part.events?.map(({ time }) => time)).toEqual([2.5, 2.7]);
  expect(cropRecording(whole, 0.54, 0.9).platforms?.[0]).not.toHaveProperty("zero");
});

it.each([
  [0.5, 0.5],
  [0.6, 0.5],
  [0, 1.1],
  [1.5, undefined],
] as const)("refuses the window %s to %s s of 1 s", (from, to) => {
  expect(() => cropRecording(recording(300, 300), from, to)).toThrow(
    expect.objectContaining({ code: "out-of-range" }),
  );
});
