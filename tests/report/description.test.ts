import { describe, expect, it } from "vitest";
import type { Marker, Platform, Position, Recording } from "../../src/recording/index.js";
import { describeRecording, descriptionText } from "../../src/report/index.js";

const at = (forward: number, up: number, right: number): Position => ({ forward, up, right });
const seen = (...values: number[]) => Float64Array.from(values);
const marker = (name: string, up: Float64Array): Marker => ({ name, forward: up, up, right: up });

/** A plate of 0.6 by 0.4 m whose middle lies 1 m ahead and 0.3 m to the right. */
const plate: Platform = {
  name: "2",
  type: 2,
  channels: ["Fx", "Fy", "Fz", "Mx", "My", "Mz"].map((name, k) => ({
    name,
    unit: k < 3 ? "N" : "N m",
    samples: seen(0, k, -k, 2 * k),
  })),
  corners: [at(1.3, 0, 0.5), at(0.7, 0, 0.5), at(0.7, 0, 0.1), at(1.3, 0, 0.1)],
  origin: [0.001, -0.002, -0.04],
  zero: { from: 0, to: 2 },
  side: "left",
};

const recording: Recording = {
  sampleRate: 4,
  startTime: 3,
  channels: [
    { name: "Fz", quantity: "force", direction: "up", unit: "N", samples: seen(-3, 800, 12, 5) },
    {
      name: "cx",
      quantity: "centre-of-pressure",
      direction: "forward",
      unit: "m",
      samples: seen(Number.NaN, 0.2, Number.NaN, Number.NaN),
    },
    {
      name: "muscle",
      quantity: "other",
      direction: null,
      unit: "mV",
      samples: new Float64Array(4).fill(Number.NaN),
    },
  ],
  platforms: [plate],
  markers: {
    sampleRate: 2,
    startTime: 3,
    markers: [
      marker("heel", seen(Number.NaN, Number.NaN, 1, Number.NaN, 2, 3)),
      marker("toe", new Float64Array(6)),
      marker("lost", new Float64Array(6).fill(Number.NaN)),
    ],
  },
  events: [{ label: "heel strike", time: 3.25, side: "right" }],
  subject: { mass: 70 },
  speed: 3.3,
  surface: "belt",
  origin: { format: "c3d" },
  cautions: [{ code: "gap", message: '"cx" has blank cells' }],
};
const description = describeRecording(recording);

describe("describeRecording", () => {
  it("counted by hand: samples, duration, ranges without the blanks, and how many are blank", () => {
    expect(description).toMatchObject({ samples: 4, duration: 1, sampleRate: 4, startTime: 3, framed: true });
    expect(description.channels.slice(0, 3)).toEqual([
      { name: "Fz", holds: "force up", unit: "N", least: -3, most: 800, blank: 0, plate: null },
      {
        name: "cx",
        holds: "centre of pressure forward",
        unit: "m",
        least: 0.2,
        most: 0.2,
        blank: 3,
        plate: null,
      },
      { name: "muscle", holds: null, unit: "mV", least: null, most: null, blank: 4, plate: null },
    ]);
    expect(description.channels[4]).toEqual({
      name: "Fy",
      holds: null,
      unit: "N",
      least: -1,
      most: 2,
      blank: 0,
      plate: "2",
    });
  });

  it("by hand: a plate's size is its sides, its middle the mean of its corners", () => {
    const [platform] = description.platforms;
    expect(platform?.place?.length).toBeCloseTo(0.6, 12);
    expect(platform?.place?.width).toBeCloseTo(0.4, 12);
    expect(platform?.place?.middle.forward).toBeCloseTo(1, 12);
    expect(platform?.place?.middle.right).toBeCloseTo(0.3, 12);
    expect(platform).toMatchObject({ name: "2", type: 2, zero: { from: 0, to: 2 }, side: "left" });
  });

  it("counts frames in which a marker was not seen, the gaps they make and the longest", () => {
    expect(description.markers).toEqual({
      sampleRate: 2,
      frames: 6,
      markers: [
        { name: "heel", missing: 3, gaps: 2, longest: 2 },
        { name: "toe", missing: 0, gaps: 0, longest: 0 },
        { name: "lost", missing: 6, gaps: 1, longest: 6 },
      ],
    });
  });

  it("is plain data: JSON gives it back", () => {
    expect(JSON.parse(JSON.stringify(description))).toEqual(description);
  });

  it("a recording of markers alone lasts as long as they do", () => {
    const { markers } = recording;
    const alone = describeRecording({
      ...recording,
      channels: [],
      platforms: [],
      ...(markers && { markers }),
    });
    expect(alone).toMatchObject({ samples: 0, duration: 3, channels: [], platforms: [] });
    expect(descriptionText(alone)).toMatch(/^Duration +3 s, of markers alone$/m);
  });

  it("refuses what is no recording", () => {
    expect(() => describeRecording({ ...recording, sampleRate: 0 })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });
});

describe("descriptionText", () => {
  const text = descriptionText(description, "walk.c3d");
  it("says it all in 80 columns", () => {
    expect(Math.max(...text.split("\n").map((line) => [...line].length))).toBeLessThanOrEqual(80);
    for (const line of [
      /^walk\.c3d$/m,
      /^Duration +1 s: 4 samples at 4 Hz, from 3 s of the file's clock$/m,
      /^Runner +mass 70 kg$/m,
      /^Trial +speed 3\.3 m\/s, on a belt$/m,
      /^Fz +force up +N +-3\.000 +800\.0$/m,
      /^ {4}blank in 3 of 4 samples$/m,
      /^Platform 2\n {2}type +2, under the left foot$/m,
      /^ {2}size +0\.6 by 0\.4 m$/m,
      /^ {2}middle +forward 1, up 0, right 0\.3 m$/m,
      /^ {2}zero +samples 0 to 1 \(0 to 0\.5 s\) are named as unloaded$/m,
      /^Markers: 3, 6 frames at 2 Hz$/m,
      /^ {2}seen throughout: toe$/m,
      /^ {2}heel: not seen in 3 of 6 frames, 2 gaps, the longest 1 s$/m,
      /^ {2}lost: never seen$/m,
      /^ {2}3\.250 s heel strike, right$/m,
      /^Cautions\n- "cx" has blank cells\.$/m,
    ])
      expect(text).toMatch(line);
  });

  it("shows names from a file harmless", () => {
    const evil = {
      ...description,
      channels: description.channels.map((one) => ({ ...one, name: "a\u001b[31m" })),
    };
    expect(descriptionText(evil)).not.toContain("\u001b");
  });

  it("says of a recording of which nothing is stated that nothing is", () => {
    const { speed: _, surface: __, ...rest } = recording;
    const bare = descriptionText(describeRecording({ ...rest, subject: {} }));
    expect(bare).toMatch(/^Runner +nothing stated$/m);
    expect(bare).toMatch(/^Trial +nothing stated$/m);
  });
});

it("2026-11-25: a command line is set so that a shell takes it, no word of it cut", () => {
  const commandLine = `gait-kinetics analyse ${"a".repeat(60)}.csv --units "Ty=N mm,Fx=N" --rate "? Hz"`;
  const text = descriptionText({ ...describeRecording(recording), toState: ["something"], commandLine });
  expect(text).toMatch(/put a number where a \? stands/);
  const lines = text.split("\n");
  const first = lines.findIndex((line) => line.startsWith("  gait-kinetics"));
  const shown = lines.slice(first, lines.indexOf("", first));
  expect(shown.length).toBeGreaterThan(1);
  expect(shown.slice(0, -1).every((line) => line.endsWith(" \\"))).toBe(true);
  expect(shown.map((line) => line.replace(/ \\$/, "").trim()).join(" ")).toBe(commandLine);
});
