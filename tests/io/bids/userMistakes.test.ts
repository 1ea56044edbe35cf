import { describe, expect, it } from "vitest";
import { readMotionBids, writeMotionBids } from "../../../src/io/index.js";
import type { Recording } from "../../../src/recording/index.js";
import { refusal } from "../csv/fixtures.js";
import { filesOf } from "./files.js";

const axes = { x: "backward", y: "left", z: "up" } as const;
const FZ = "Fz z MISC plate N";
const rows = (count: number) => "700\n".repeat(count);
const recording: Recording = {
  sampleRate: 200,
  startTime: 0,
  channels: [
    { name: "Fz", quantity: "force", direction: "up", unit: "N", samples: new Float64Array(1800).fill(700) },
  ],
  subject: {},
  origin: { format: "none" },
  cautions: [],
};

describe("2026-11-25: a table of samples cut between two rows was read without a word", () => {
  const written = writeMotionBids(recording);
  it("what the sidecar states and what the rows give is said", () => {
    const cut = { ...written, motion: written.motion.split("\n").slice(0, 441).join("\n") };
    expect(readMotionBids(cut).cautions).toEqual([
      {
        code: "recording-duration-differs",
        message:
          '"RecordingDuration" is 9 s, and 441 rows at 200 Hz are 2.205 s: the file may be cut off, or samples are missing',
        where: "RecordingDuration",
        values: { stated: 9, duration: 2.205, rows: 441 },
      },
    ]);
    expect(readMotionBids(written).cautions).toEqual([]);
  });
  const codes = (count: number, RecordingDuration: unknown) =>
    readMotionBids(
      filesOf([FZ], rows(count), { TaskName: "run", SamplingFrequency: 100, RecordingDuration }),
      {
        axes,
      },
    ).cautions.map(({ code }) => code);
  it("another program's duration may be rounded to its last digit, or counted between first and last sample", () => {
    for (const stated of [9, 9.4, 9.39, 9.38, "9.2", null, 0]) expect(codes(939, stated)).toEqual([]);
    for (const stated of [10, 9.5, 9.35, 9.45]) {
      expect(codes(939, stated)).toEqual(["recording-duration-differs"]);
    }
  });
});

it("2026-11-25: an absurd force was met only by its consequences", () => {
  expect(refusal(() => readMotionBids(filesOf([FZ], "700\n1e300\n"), { axes }))).toMatchObject({
    code: "out-of-range",
    where: 'row 2, channel "Fz"',
    message: expect.stringContaining("no recording goes beyond 100000 N: is its unit right"),
  });
  const knee = ["x", "y", "z"].map((axis) => `k${axis} ${axis} POS knee m`);
  expect(refusal(() => readMotionBids(filesOf(knee, "1\t2e6\t1\n"), { axes })).where).toBe(
    'row 1, channel "ky"',
  );
});

it("2026-11-25: a turned sign made -0 of 0", () => {
  const files = filesOf([FZ, "Fx x MISC plate N"], "700\t0\n");
  const forward = readMotionBids(files, { axes }).channels[1]?.samples[0];
  expect(Object.is(forward, 0)).toBe(true);
});

it("2026-11-25: a mass of the file and one of an option stood beside each other without unit", () => {
  const own = writeMotionBids({ ...recording, subject: { mass: 82.7 } });
  expect(readMotionBids(own, { mass: 82.55381134000001 }).cautions.map(({ message }) => message)).toEqual([
    '"GaitKinetics" of the sidecar states mass 82.7 kg, the option 82.5538 kg; the option was used',
  ]);
});
