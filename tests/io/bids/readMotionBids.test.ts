import { describe, expect, it } from "vitest";
import { toGroundReaction } from "../../../src/force/index.js";
import { readMotionBids } from "../../../src/io/index.js";
import { type Channel, channelOf, type Recording } from "../../../src/recording/index.js";
import { filesOf, LAB } from "./files.js";

const N = Number.NaN;
const samplesOf = (recording: Recording, name: string): number[] => [
  ...(recording.channels.find((channel) => channel.name === name) as Channel).samples,
];
const codesOf = (recording: Recording): string[] => recording.cautions.map(({ code }) => code);
const close = (given: readonly number[], expected: readonly number[]): void => {
  expect(given).toHaveLength(expected.length);
  for (const [k, value] of expected.entries()) {
    if (Number.isNaN(value)) expect(given[k]).toBeNaN();
    else expect(given[k]).toBeCloseTo(value, 12);
  }
};

describe("another laboratory's files, by hand (x right, y forward, z up; kN, mm, Nm)", () => {
  const recording = readMotionBids(LAB);

  it("force on the runner, in N, along the library's directions", () => {
    expect(channelOf(recording, "force", "right")?.name).toBe("Fx");
    expect(channelOf(recording, "force", "forward")?.name).toBe("Fy");
    close(samplesOf(recording, "Fx"), [12, 13, -2, 0]);
    close(samplesOf(recording, "Fy"), [-150, -160.5, 80, 100]);
    close(samplesOf(recording, "Fz"), [700, 900, 10, 1200]);
  });

  it("centre of pressure in m, its height dropped; the free moment about the vertical", () => {
    close(samplesOf(recording, "COPx"), [0.01, 0.011, N, 0.012]);
    close(samplesOf(recording, "COPy"), [0.25, 0.26, N, 0.28]);
    expect(recording.channels.map(({ name }) => name)).not.toContain("COPz");
    // x right, y forward, z up is right-handed, so the sign stays.
    close(samplesOf(recording, "Tz"), [1.5, 2, N, -0.5]);
    expect(channelOf(recording, "free-moment", "up")?.unit).toBe("N m");
  });

  it("time by its latencies, the marker, the event, and what is no force", () => {
    expect(recording).toMatchObject({
      sampleRate: 100,
      startTime: 0.5,
      origin: { format: "motion-bids", rows: 4 },
    });
    const [heel] = recording.markers?.markers ?? [];
    expect(recording.markers).toMatchObject({ sampleRate: 100, startTime: 0.5 });
    expect(heel?.name).toBe("heel");
    close([...(heel?.right ?? [])], [0.1, N, 0.12, 0.13]);
    close([...(heel?.forward ?? [])], [0.9, N, 0.88, 0.87]);
    close([...(heel?.up ?? [])], [0, N, 0.035, 0.06]);
    expect(recording.events).toEqual([{ label: "jump", time: 0.52 }]);
    const other = recording.channels.find(({ quantity }) => quantity === "other");
    expect(other).toMatchObject({ name: "shank_acc_x", unit: "m/s^2", direction: null });
    expect(recording.cautions).toEqual([]);
  });

  it("goes on to the force between foot and ground", () => {
    const ground = toGroundReaction(recording, { offset: "none", drift: "never" });
    close([...ground.force.up], [700, 900, 10, 1200]);
  });
});

describe("axes", () => {
  const rows = ["Fx x MISC plate N", "Fz z MISC plate N"];
  const levels = (SpatialAxes: unknown) =>
    JSON.stringify({ reference_frame: { Levels: { lab: { SpatialAxes } } } });

  it.each<[string, string, number, number]>([
    ["FLU", "forward", 1, 1],
    ["ALS", "forward", 1, 1],
    ["BRU", "forward", -1, 1],
    ["PRI", "forward", -1, -1],
    ["L_D", "right", -1, -1],
  ])("%s at the one level of the file", (letters, direction, first, second) => {
    const read = readMotionBids({ ...filesOf(rows, "3\t700"), channelsSidecar: levels(letters) });
    expect(read.channels[0]).toMatchObject({ direction, samples: new Float64Array([3 * first]) });
    expect(read.channels[1]).toMatchObject({ direction: "up", samples: new Float64Array([700 * second]) });
  });

  it("by the channel's own frame, where there are several", () => {
    const heading = "name component type tracked_point units reference_frame";
    const files = filesOf(["Fx x MISC p N a", "Fz x MISC p N b"], "3\t700", undefined, heading);
    const channelsSidecar = JSON.stringify({
      reference_frame: { Levels: { a: { SpatialAxes: "FLU" }, b: { SpatialAxes: "URB" } } },
    });
    const read = readMotionBids({ ...files, channelsSidecar });
    expect(read.channels.map(({ direction }) => direction)).toEqual(["forward", "up"]);
  });

  it("by the option, which counts before the file and says so", () => {
    const files = { ...filesOf(rows, "3\t700"), channelsSidecar: levels("FLU") };
    const read = readMotionBids(files, { axes: { x: "backward", z: "up" } });
    expect(read.channels[0]?.samples).toEqual(new Float64Array([-3]));
    expect(codesOf(read)).toEqual(["option-over-file"]);
    expect(codesOf(readMotionBids(files, { axes: { x: "forward", z: "up" } }))).toEqual([]);
  });

  it.each([undefined, levels("XYZ"), levels(3), '{"reference_frame":"lab"}', "{}"])(
    "unknown with %s: refused, with how to state them",
    (channelsSidecar) => {
      const files = { ...filesOf(rows, "3\t700"), channelsSidecar };
      expect(() => readMotionBids(files)).toThrow(
        expect.objectContaining({
          code: "unknown-axes",
          argument: "axes",
          where: "Fx",
          message: expect.stringMatching(/axes: \{ x: "forward".*"SpatialAxes"/),
        }),
      );
    },
  );

  it("a moment is an axial vector: a left-handed frame turns its sign, the force keeps its own", () => {
    const files = filesOf(["Fz z MISC p N", "Tz z MISC p N*m"], "700\t5");
    const free = (axes: object) => samplesOf(readMotionBids(files, { axes }), "Tz");
    expect(free({ x: "forward", y: "left", z: "up" })).toEqual([5]);
    expect(free({ x: "forward", y: "right", z: "up" })).toEqual([-5]);
    expect(free({ x: "forward", y: "right", z: "down" })).toEqual([-5]);
    expect(() => free({ z: "up" })).toThrow(expect.objectContaining({ code: "unknown-axes", where: "Tz" }));
  });

  it("forceOn: the force on the ground is negated, with the free moment and not the centre of pressure", () => {
    const files = filesOf(["Fz z MISC p N", "Tz z MISC p Nm", "COPx x MISC p m"], "-700\t5\t0.1");
    const read = readMotionBids(files, { axes: { x: "forward", y: "left", z: "up" }, forceOn: "ground" });
    expect(read.channels.map(({ samples }) => samples[0])).toEqual([700, -5, 0.1]);
  });

  it("are not asked for where nothing lies along one", () => {
    expect(readMotionBids(filesOf(["EMG n/a MISC leg mV"], "3")).channels[0]).toMatchObject({
      quantity: "other",
      unit: "mV",
    });
  });
});

describe("what a channel is", () => {
  const axes = { x: "forward", y: "left", z: "up" } as const;
  const kindOf = (row: string) => readMotionBids(filesOf([row], "0"), { axes }).channels[0]?.quantity;

  it.each([
    ["Fz z MISC plate N", "force"],
    ["left_GRF_vertical z MISC plate lbf", "force"],
    ["plateForceZ z MISC plate kN", "force"],
    ["CoP_x x MISC plate mm", "centre-of-pressure"],
    ["centre_of_pressure x MISC plate m", "centre-of-pressure"],
    ["free_moment z MISC plate N*m", "free-moment"],
    ["Tz z MISC plate Nm", "free-moment"],
    ["offset z MISC plate N", "other"],
    ["Fz z MISC plate V", "other"],
    ["Mz z MISC plate Nm", "other"],
    ["Fz n/a MISC plate N", "other"],
    ["knee x JNTANG knee deg", "other"],
    ["speed x VEL belt m/s", "other"],
    ["heel x POS heel m", "other"],
  ])("%s: %s", (row, quantity) => expect(kindOf(row)).toBe(quantity));

  it("says which channels of force it left alone, and how to state them", () => {
    const files = filesOf(["plate~z z MISC plate N"], "700");
    const [caution] = readMotionBids(files, { axes }).cautions;
    expect(caution).toMatchObject({ code: "channel-not-mapped", where: "plate z" });
    expect(caution?.message).toContain('columns, as { "plate z": "force" }');
    const stated = readMotionBids(files, { axes, columns: { "plate z": "force" } });
    expect(stated.channels[0]).toMatchObject({ quantity: "force", direction: "up" });
    expect(stated.cautions).toEqual([]);
    expect(readMotionBids(files, { columns: { "plate z": "up" } }).channels[0]?.direction).toBe("up");
  });

  it("takes tracked points for plates where there are several, and not where there is one", () => {
    const two = filesOf(["left_Fz z MISC left N", "right_Fz z MISC right N"], "700\t0");
    expect(readMotionBids(two, { axes }).channels.map(({ plate }) => plate)).toEqual(["left", "right"]);
    expect(readMotionBids(filesOf(["Fz z MISC plate N"], "1"), { axes }).channels[0]).not.toHaveProperty(
      "plate",
    );
  });

  it("keeps a point without three coordinates, and one tracked a second time, as channels", () => {
    const rows = [
      "a_x x POS a mm",
      "a_y y POS a mm",
      "b_x x POS b m",
      "b_y y POS b m",
      "b_z z POS b m",
      "b2_z z POS b m",
    ];
    const read = readMotionBids(filesOf(rows, "1\t2\t3\t4\t5\t6"), { axes });
    expect(read.markers?.markers.map(({ name }) => name)).toEqual(["b"]);
    expect(read.channels.map(({ name, unit }) => `${name} ${unit}`)).toEqual(["a_x mm", "a_y mm", "b2_z m"]);
  });

  it("takes the number that stands for a value not there as a gap, of a marker in all three coordinates", () => {
    const rows = ["b_x x POS b m", "b_y y POS b m", "b_z z POS b m"];
    const motion = "0\t0\t0\n0\t1\t2\nn/a\t1\tNaN";
    const upOf = (sidecar: object) => [
      ...(readMotionBids(filesOf(rows, motion, sidecar), { axes }).markers?.markers[0]?.up ?? []),
    ];
    expect(upOf({ TaskName: "run", SamplingFrequency: 100, MissingValues: "0" })).toEqual([N, 2, N]);
    expect(upOf({ TaskName: "run", SamplingFrequency: 100, MissingValues: "n/a" })).toEqual([0, 2, N]);
  });

  it("says what the table marks: a bad channel, another rate, an unknown type; a gap of force", () => {
    const heading = "name component type tracked_point units status sampling_frequency";
    const files = filesOf(["Fz z MISC p N bad 50", "q n/a FORCE p N good n/a"], "n/a\t1", undefined, heading);
    expect(codesOf(readMotionBids(files, { axes }))).toEqual([
      "unknown-type",
      "bad-channel",
      "sampling-frequency-differs",
      "channel-not-mapped",
      "gap",
    ]);
  });
});

describe("rate and start", () => {
  const timed = (stamps: readonly number[], sidecar: object = { TaskName: "run", SamplingFrequency: 100 }) =>
    readMotionBids(
      filesOf(
        ["t n/a LATENCY n/a s", "EMG n/a MISC leg V"],
        stamps.map((time) => `${time}\t1`).join("\n"),
        sidecar,
      ),
    );
  const even = (rate: number, n = 1000) =>
    Array.from({ length: n }, (_, i) => Number((2 + i / rate).toFixed(6)));

  it("latencies on the stated grid keep the stated rate", () =>
    expect(timed(even(100))).toMatchObject({ sampleRate: 100, startTime: 2, cautions: [] }));

  it("latencies on another even grid give the rate, and the difference is said", () => {
    const read = timed(even(99.8));
    expect(read.sampleRate).toBeCloseTo(99.8, 6);
    expect(codesOf(read)).toEqual(["sampling-frequency-differs"]);
  });

  it.each([
    ["a sample missing", [...even(100).slice(0, 400), ...even(100).slice(401)]],
    ["time standing still", Array<number>(20).fill(1)],
    ["a gap", [0, Number.NaN, 0.02]],
  ])("%s is refused", (_, stamps) =>
    expect(() => timed(stamps)).toThrow(expect.objectContaining({ code: "uneven-time", argument: "motion" })),
  );

  // 2026-11-25: only the distance from the grid was looked at, so that dropped samples became a rate of their own.
  const thousand = { TaskName: "run", SamplingFrequency: 1000 };
  const full = even(1000, 2001);
  it.each<[string, readonly number[], RegExp]>([
    [
      "one of 2001 samples dropped in the middle (read as 999.5 Hz)",
      full.filter((_, i) => i !== 1000),
      /^row 1001: time 3\.001 s is 2\.00 sampling periods after the row above, and 1\.00 off the even grid of 1000 Hz/,
    ],
    [
      "100 of 2001 samples dropped evenly (read as 950 Hz)",
      full.filter((_, i) => i % 20 !== 10),
      /^row 11: time 2\.011 s is 2\.00 sampling periods/,
    ],
    [
      "steps of 1.4, 0.2, 1.8 and 0.2 periods, all near the grid",
      full.map((time, i) => time + [0, 0.0004, -0.0004, 0.0004][i % 4]!),
      /^row 3: .* is 0\.20 sampling periods after the row above/,
    ],
    ["a row without a time", full.map((time, i) => (i === 7 ? Number.NaN : time)), /^row 8: it has no time/],
  ])("2026-11-25: %s is refused", (_, stamps, message) =>
    expect(() => timed(stamps, thousand)).toThrow(
      expect.objectContaining({ code: "uneven-time", message: expect.stringMatching(message) }),
    ),
  );
  it("stamps of three decimals at 300 Hz lie within the tolerance", () => {
    const stamps = even(300).map((time) => Number(time.toFixed(3)));
    expect(timed(stamps, { TaskName: "run", SamplingFrequency: 300 })).toMatchObject({
      sampleRate: 300,
      cautions: [],
    });
  });

  it("an effective rate that differs is said; a missing task name too", () =>
    expect(codesOf(timed(even(100), { SamplingFrequency: 100, SamplingFrequencyEffective: 99 }))).toEqual([
      "missing-metadata",
      "sampling-frequency-differs",
    ]));
});

it("states runner and trial by options", () => {
  const files = filesOf(["EMG n/a MISC leg V"], "1");
  const options = {
    mass: 70,
    height: 1.8,
    speed: 3,
    surface: "belt",
    grade: 0.02,
    firstFoot: "left",
  } as const;
  const { mass, height, ...trial } = options;
  expect(readMotionBids(files, options)).toMatchObject({ subject: { mass, height }, ...trial });
});
