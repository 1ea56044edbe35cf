import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { c3dToRecording, parseC3d, readC3d, recordingToC3d, writeC3d } from "../../../src/io/index.js";
import { channelOf, type Direction, type Platform, type Recording } from "../../../src/recording/index.js";
import { parsed } from "./files.js";
import { KINDS, recordings } from "./recordings.js";
import { FORMS } from "./sampleFile.js";

/** What 32 bits hold; −0 and 0 are one number. */
const float32 = (value: number) => Math.fround(value) + 0;
/** Series of a recording without −0, which a change of sign makes of 0. */
const positive = (values: Float64Array) => values.map((value) => value + 0);
const tidy = ({ channels, platforms: plates, markers, ...rest }: Recording): Recording => ({
  ...rest,
  channels: channels.map((one) => ({ ...one, samples: positive(one.samples) })),
  ...(plates && {
    platforms: plates.map((one) => ({
      ...one,
      channels: one.channels.map((channel) => ({ ...channel, samples: positive(channel.samples) })),
      corners: one.corners.map(({ forward, up, right }) => ({
        forward: forward + 0,
        up: up + 0,
        right: right + 0,
      })) as never,
    })),
  }),
  ...(markers && {
    markers: {
      ...markers,
      markers: markers.markers.map((one) => ({
        ...one,
        forward: positive(one.forward),
        up: positive(one.up),
        right: positive(one.right),
      })),
    },
  }),
});
const wave = (length: number, value: (i: number) => number) =>
  Float64Array.from({ length }, (_, i) => value(i));
const recording = (change: Partial<Recording> = {}): Recording => ({
  sampleRate: 1000,
  startTime: 0,
  channels: KINDS.map(([quantity, direction, unit], k) => ({
    name: `c${k}`,
    quantity,
    direction,
    unit,
    samples: wave(30, (i) => Math.sin(i + k) * (unit === "m" ? 0.8 : 700.1)),
  })),
  subject: {},
  origin: { format: "csv" },
  cautions: [],
  ...change,
});

it("property: a recording comes back from all three byte orders; event times within 2 µs, clocks within rounding", () =>
  fc.assert(
    fc.property(
      recordings,
      fc.constantFrom("intel" as const, "dec" as const, "mips" as const),
      (recording, processor) => {
        const back = tidy(readC3d(writeC3d(recordingToC3d(recording), { processor })));
        const { startTime, markers, events, sampleRate, ...rest } = back;
        const {
          startTime: givenStart,
          markers: givenMarkers,
          events: givenEvents,
          sampleRate: givenRate,
          ...given
        } = recording;
        expect(rest).toEqual(given);
        expect(sampleRate).toBe(givenRate);
        expect(Math.abs(startTime - givenStart)).toBeLessThan(1e-8);
        expect(markers?.markers).toEqual(givenMarkers?.markers);
        expect(Math.abs((markers?.startTime ?? 0) - (givenMarkers?.startTime ?? 0))).toBeLessThan(1e-8);
        expect(Math.abs((markers?.sampleRate ?? 1) / (givenMarkers?.sampleRate ?? 1) - 1)).toBeLessThan(1e-7);
        expect(events?.map(({ label, side }) => [label, side])).toEqual(
          givenEvents?.map(({ label, side }) => [label, side]),
        );
        for (const [k, { time }] of (events ?? []).entries())
          expect(Math.abs(time - (givenEvents?.[k]?.time as number))).toBeLessThan(3e-6);
      },
    ),
    { numRuns: 300, seed: 20 },
  ));

it("samples come back to 32-bit precision from a floating file, to half a step from an integer one", () => {
  const given = recording();
  for (const form of FORMS) {
    const back = readC3d(writeC3d(recordingToC3d(given), form));
    for (const [k, { samples }] of given.channels.entries()) {
      const largest = samples.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
      const bound = form.storage === "float" ? largest * 2 ** -24 : largest / 32_000 / 2 + 1e-9;
      for (const [i, value] of samples.entries()) {
        expect(Math.abs((back.channels[k]?.samples[i] as number) - value)).toBeLessThanOrEqual(bound);
      }
    }
  }
});

describe("force channels of a plate", () => {
  const file = recordingToC3d(recording());
  const value = (name: string) =>
    file.groups.find((group) => group.name === "FORCE_PLATFORM")?.parameters.find((one) => one.name === name)
      ?.data;
  it("become a platform of type 1 for other programs, with the action on a plate whose z points down", () => {
    // Without this library's own group: as any other program reads it.
    const foreign = { ...file, groups: file.groups.filter(({ name }) => name !== "GAIT_KINETICS") };
    const read = c3dToRecording(parseC3d(writeC3d(foreign)), { axes: { x: "forward", y: "left", z: "up" } });
    const [platform] = read.platforms as [Platform];
    expect(platform.type).toBe(1);
    expect(read.channels).toEqual([]);
    const [c1, c2, c3, c4] = platform.corners;
    const middle = (axis: Direction) => (c1[axis] + c2[axis] + c3[axis] + c4[axis]) / 4;
    expect([middle("forward"), middle("right"), middle("up")]).toEqual([0, 0, 0]);
    // x = corner 1 − corner 2 is forward, y = corner 1 − corner 4 is right: their cross product points down.
    expect([c1.forward - c2.forward > 0, c1.right - c4.right > 0]).toEqual([true, true]);
    const of = (quantity: "force" | "centre-of-pressure" | "free-moment", direction: Direction) =>
      channelOf(recording(), quantity, direction)?.samples as Float64Array;
    const expected = [
      of("force", "forward").map((one) => -one),
      of("force", "right").map((one) => -one),
      of("force", "up"),
      of("centre-of-pressure", "forward"),
      of("centre-of-pressure", "right"),
      of("free-moment", "up"),
    ];
    for (const [k, samples] of expected.entries())
      expect(positive(platform.channels[k]?.samples as Float64Array)).toEqual(samples.map(float32));
    // The plate is large enough for its centre of pressure.
    expect(c1.forward).toBeGreaterThanOrEqual(
      Math.max(...of("centre-of-pressure", "forward").map(Math.abs)) - 1e-3,
    );
    expect(value("TYPE")).toEqual([1]);
  });
  it("stay plain channels where one of the six is missing: nothing is written as zero", () => {
    const { channels } = recording();
    const some = recordingToC3d(recording({ channels: channels.slice(0, 5) }));
    expect(
      some.groups
        .find(({ name }) => name === "FORCE_PLATFORM")
        ?.parameters.find(({ name }) => name === "USED")?.data,
    ).toEqual([0]);
    expect(some.analogue.channels).toHaveLength(5);
    expect(readC3d(writeC3d(some)).channels.map(({ quantity, direction }) => [quantity, direction])).toEqual(
      KINDS.slice(0, 5).map(([quantity, direction]) => [quantity, direction]),
    );
  });
  it("of two plates become two platforms, and go back to their plates", () => {
    const { channels } = recording();
    const both = recording({
      channels: ["left", "right"].flatMap((plate) => channels.map((channel) => ({ ...channel, plate }))),
    });
    const back = readC3d(writeC3d(recordingToC3d(both)));
    expect(back.channels.map(({ plate }) => plate)).toEqual(both.channels.map(({ plate }) => plate));
    expect(back.platforms).toBeUndefined();
  });
});

it("a real file as a recording, written and read again, is the same recording", () => {
  for (const path of ["walk-pi", "type-4", "type-3-120"]) {
    const given = c3dToRecording(parsed(`standard/${path}.c3d`), {
      axes: { x: "forward", y: "left", z: "up" },
    });
    const back = tidy(readC3d(writeC3d(recordingToC3d(given))));
    for (const [k, platform] of (given.platforms ?? []).entries()) {
      const other = back.platforms?.[k] as Platform;
      expect([other.name, other.type, other.zero]).toEqual([platform.name, platform.type, platform.zero]);
      for (const [c, { samples, unit }] of platform.channels.entries()) {
        expect(other.channels[c]?.unit).toBe(unit);
        expect(other.channels[c]?.samples).toEqual(samples.map(float32));
      }
      expect(other.corners).toEqual(
        platform.corners.map(({ forward, up, right }) => ({
          forward: float32(forward),
          up: float32(up),
          right: float32(right),
        })),
      );
      expect(other.calibration).toEqual(platform.calibration?.map((row) => row.map(Math.fround)));
    }
    expect(back.markers?.markers.map(({ up }) => up)).toEqual(
      given.markers?.markers.map(({ up }) => up.map(float32)),
    );
    expect([back.subject, back.sampleRate, back.startTime]).toEqual([
      given.subject,
      given.sampleRate,
      given.startTime,
    ]);
  }
});

it("markers that are shorter or longer than the channels keep their length", () => {
  for (const frames of [3, 8, 11]) {
    const axis = wave(frames, (i) => i);
    const given = recording({
      markers: {
        sampleRate: 250,
        startTime: 0,
        markers: [{ name: "m", forward: axis, up: axis, right: axis }],
      },
    });
    const back = readC3d(writeC3d(recordingToC3d(given)));
    expect(back.channels[0]?.samples).toHaveLength(30);
    expect(back.markers?.markers[0]?.right).toEqual(axis);
  }
});

it("refuses markers that no frame of the file could hold, and other axes than its own", () => {
  const axis = wave(5, () => 1);
  const markers = (sampleRate: number, startTime: number) =>
    recording({
      markers: { sampleRate, startTime, markers: [{ name: "m", forward: axis, up: axis, right: axis }] },
    });
  const refused = (given: Recording, message: RegExp) =>
    expect(() => recordingToC3d(given)).toThrow(
      expect.objectContaining({ code: "conflict", message: expect.stringMatching(message) }),
    );
  refused(markers(300, 0), /300 Hz and channels at 1000 Hz/);
  refused(markers(2000, 0), /2000 Hz and channels at 1000 Hz/);
  refused(markers(250, 0.5), /start at 0.5 s/);
  const bytes = writeC3d(recordingToC3d(recording()));
  expect(() => readC3d(bytes, { axes: { x: "right", y: "forward", z: "up" } })).toThrow(
    expect.objectContaining({ code: "conflict", argument: "axes" }),
  );
  expect(readC3d(bytes, { axes: { x: "forward", y: "left", z: "up" } })).toEqual(readC3d(bytes));
});

it("a file that another program took a channel out of is refused, with what to do", () => {
  const file = recordingToC3d(recording());
  const fewer = { ...file, analogue: { ...file.analogue, channels: file.analogue.channels.slice(1) } };
  expect(() => c3dToRecording(fewer)).toThrow(
    expect.objectContaining({ code: "unreadable-file", where: "GAIT_KINETICS:CHANNELS" }),
  );
});
