import { describe, expect, it } from "vitest";
import { type C3dFile, c3dToRecording, parseC3d, readC3d } from "../../../src/io/index.js";
import expected from "../../fixtures/c3d/worked/expected.json" with { type: "json" }; // independent_writer.py
import { type Change, changed, units } from "./changed.js";
import { bytesOf, parsed, patched } from "./files.js";

const WALK = { axes: { x: "right", y: "forward", z: "up" } } as const;
const STEP = { axes: { x: "forward", y: "left", z: "up" } } as const;
const codes = ({ cautions }: { readonly cautions: readonly { readonly code: string }[] }) =>
  cautions.map(({ code }) => code);
const digits = (values: readonly number[], places: number) =>
  values.map((value) => Number(value.toFixed(places)));

const walk = parsed("standard/walk-pi.c3d");
const two = parsed("standard/type-2.c3d");
const rod = parsed("standard/type-3-120.c3d");

describe("axes", () => {
  it("that nobody states are refused, with what the file shows of them", () => {
    const seen = (file: C3dFile, message: RegExp) =>
      expect(() => c3dToRecording(file)).toThrow(
        expect.objectContaining({
          code: "unknown-axes",
          argument: "axes",
          message: expect.stringMatching(message),
        }),
      );
    seen(
      walk,
      /face along z, most markers lie on its \+z side; the markers go 2160 mm along \+y.*X_SCREEN is "\+Y".*Y_SCREEN is "\+Z".*\{ x: "right", y: "forward", z: "up" \}$/,
    );
    seen(two, /go 3790 mm along \+x.*\{ x: "forward", y: "left", z: "up" \}$/);
    // A rod that is held in place goes nowhere, so nothing is said of forward.
    seen(rod, /face along z, most markers lie on its \+z side$/);
    seen({ ...rod, groups: [], points: [] }, /Nothing in the file shows how they lie$/);
  });
  it("must be all three, on lines of their own, and right-handed", () => {
    const refused = (axes: object, message: RegExp) =>
      expect(() => c3dToRecording(walk, { axes })).toThrow(
        expect.objectContaining({ code: "unknown-axes", message: expect.stringMatching(message) }),
      );
    refused({ y: "forward", z: "up" }, /do not say where x points/);
    refused({ z: "up" }, /where x and y point/);
    refused({ x: "left", y: "forward", z: "up" }, /left-handed/);
    refused({ x: "up", y: "forward", z: "up" }, /lie on one line/);
  });
  it("by which a plate stands upright raise a caution", () => {
    expect(codes(c3dToRecording(walk, { axes: { x: "forward", y: "up", z: "right" } }))).toContain(
      "axes-doubtful",
    );
    expect(codes(c3dToRecording(walk, WALK))).not.toContain("axes-doubtful");
  });
});

it("standard sample set 01: markers, plates and events in the library's frame", () => {
  const recording = c3dToRecording(walk, WALK);
  expect([recording.sampleRate, recording.startTime, recording.markers?.sampleRate]).toEqual([200, 0, 50]);
  const marker = recording.markers?.markers.find(({ name }) => name === "PV1");
  expect(digits([marker?.forward[225], marker?.up[225], marker?.right[225]] as number[], 6)).toEqual([
    0.771417, 0.919583, 0.289917,
  ]);
  const [, second] = recording.platforms ?? [];
  expect(second?.channels.map(({ unit }) => unit)).toEqual(["N", "N", "N", "N m", "N m", "N m"]);
  expect(digits(second?.channels.map(({ samples }) => samples[900] as number) ?? [], 4)).toEqual([
    -10.608, 33.15, -836.248, 40.8924, 104.2712, -0.096,
  ]);
  // CORNERS and ORIGIN of the file, mm, x to the right, y forward, z up.
  expect(Object.values(second?.corners[0] ?? {}).map((value) => Number(value.toFixed(6)))).toEqual([
    1.139998, 0.00192, 0.053655,
  ]);
  expect(digits(second?.origin ?? [], 6)).toEqual([-0.00406, 0.00381, -0.02006]);
  // ZERO is 1 to 10: ten frames of four samples.
  expect(second?.zero).toEqual({ from: 0, to: 40 });
  const [fx, fy, fz, ...moments] = (recording.platforms?.[0]?.channels ?? []).map(({ samples }) => samples);
  const mean = (values: Float64Array | undefined) =>
    (values ?? new Float64Array(0)).subarray(0, 10).reduce((sum, value) => sum + value / 10, 0);
  expect(digits([fx, fy, fz].map(mean), 4)).toEqual([-26.187, 0, -21.2784]);
  expect(digits(moments.map(mean), 4)).toEqual([-6.4148, -0.9223, -1.1891]);
  expect(recording.channels.map(({ name, quantity, unit }) => [name, quantity, unit])).toEqual([
    ["CH7", "other", "d.u."],
    ["CH8", "other", "d.u."],
    ["CH15", "other", "d.u."],
    ["CH16", "other", "d.u."],
  ]);
  expect(recording.events?.map(({ label, time }) => [label, Number(time.toFixed(2))])).toEqual([
    ["RIC", 2.72],
    ["RHS", 5.4],
    ["RTO", 7.32],
  ]);
  // WEIGHT says UNITS=kg; HEIGHT 1.63 says UNITS=mm, which is no height.
  expect(recording.subject).toEqual({ mass: 82.7, height: 1.63 });
  expect(codes(recording)).toEqual(["mass-from-file", "height-from-file"]);
  expect(recording.origin).toEqual({ format: "c3d" });
});

it("standard sample set 15: type 3 in metres, whose unit is cut to four letters", () => {
  const recording = c3dToRecording(rod, STEP);
  const [platform] = recording.platforms ?? [];
  expect(platform?.type).toBe(3);
  expect(digits(platform?.channels.map(({ samples }) => samples[860] as number) ?? [], 6)).toEqual([
    -49.948532, 13.379753, -39.331627, 21.709364, 249.273972, 28.880533, -8.267164, 14.574438,
  ]);
  expect(platform?.corners[0]).toEqual({ forward: Math.fround(0.9), up: 0, right: -Math.fround(0.6) });
  expect(platform?.zero).toBeUndefined();
  expect(recording.markers?.markers[0]?.up[0]).toBeCloseTo(0.810717, 6);
  expect(codes(recording)).toEqual([]);
});

it.each(expected.files.map(({ file }) => file))("independent writer: %s as a recording", (name) => {
  const recording = readC3d(bytesOf(`worked/${name}`), { axes: { x: "backward", y: "right", z: "up" } });
  const [platform] = recording.platforms ?? [];
  expect(platform?.origin).toEqual(expected.forcePlatform.origin.map((value) => Math.fround(value) * 0.001));
  expect(
    platform?.corners.map(({ forward, right, up }) =>
      [-forward * 1000, right * 1000, up * 1000].map(Math.round),
    ),
  ).toEqual(expected.forcePlatform.corners);
  // ZERO 1 0 is none.
  expect(platform?.zero).toBeUndefined();
  expect(recording.events?.map(({ label, side, time }) => [label, side, Number(time.toFixed(6))])).toEqual(
    expected.events.map(({ label, context, timeS }) => [label, context.toLowerCase(), timeS]),
  );
});

describe("the clock", () => {
  const cropped = () => {
    const bytes = bytesOf("worked/intel_integer.c3d");
    const view = new DataView(bytes.buffer);
    view.setUint16(6, 101, true);
    view.setUint16(8, 106, true);
    return bytes;
  };
  it("counts from frame 1 of the trial: a cropped file starts later, events of EVENT do not move", () => {
    const recording = readC3d(cropped(), STEP);
    expect([recording.startTime, recording.markers?.startTime]).toEqual([0.4, 0.4]);
    expect(recording.events?.map(({ time }) => Number(time.toFixed(4)))).toEqual([0.0123, 0.0456]);
  });
  it("events of the header count from the file's first frame", () => {
    const file = { ...parseC3d(cropped()) };
    const header = { ...file.header, events: [{ label: "RHS", time: 0.01, displayFlag: 1 }] };
    const recording = c3dToRecording(changed({ ...file, header }, { "EVENT:TIMES": null }), STEP);
    expect(recording.events?.map(({ label, time }) => [label, Number(time.toFixed(12))])).toEqual([
      ["RHS", 0.41],
    ]);
  });
  it("minutes count sixty seconds, and a time that is no number is left out with a caution", () => {
    const file = changed(two, {
      "EVENT:TIMES": { data: [2, 3.5, 0, Number.NaN], dimensions: [2, 2] },
      "EVENT:LABELS": units("Strike", "Off"),
      "EVENT:CONTEXTS": units("LEFT", "General"),
    });
    const recording = c3dToRecording(file, STEP);
    expect(recording.events).toEqual([{ label: "Strike", time: 123.5, side: "left" }]);
    expect(codes(recording)).toContain("event-without-time");
  });
});

describe("runner and trial", () => {
  const subject = (changes: Parameters<typeof changed>[1], options = {}) =>
    c3dToRecording(changed(two, changes), { ...STEP, ...options });
  it("options count before the file, with a caution", () => {
    const recording = c3dToRecording(walk, {
      ...WALK,
      mass: 80,
      speed: 1.2,
      surface: "ground",
      grade: 0,
      firstFoot: "left",
    });
    expect(recording).toMatchObject({
      subject: { mass: 80, height: 1.63 },
      speed: 1.2,
      surface: "ground",
      grade: 0,
      firstFoot: "left",
    });
    expect(codes(recording)).toEqual(["height-from-file", "option-over-file"]);
  });
  it.each<[string, Change, number | undefined]>([
    ["PROCESSING:Bodymass", { data: [70.5] }, 70.5],
    ["SUBJECT:MASS", { data: [154], description: "mass in lb" }, 154 * 0.45359237],
    ["SUBJECT:WEIGHT", { data: [700], description: "Newton" }, 700 / 9.80665],
    ["SUBJECTS:MASS", { type: "character", data: ["68.2 kg"] }, 68.2],
    ["SUBJECT:MASS", { data: [700] }, undefined],
    ["SUBJECT:MASS", { data: [0] }, undefined],
    ["SUBJECT:MASS", { data: [70, 80] }, undefined],
    ["SUBJECT:MASS", { type: "character", data: ["heavy"] }, undefined],
  ])("%s %j is a mass of %j kg", (path, change, mass) => {
    const recording = subject({ [path]: change });
    expect(recording.subject.mass === undefined).toBe(mass === undefined);
    expect(Math.abs((recording.subject.mass ?? 0) - (mass ?? 0))).toBeLessThan(1e-9);
    expect(codes(recording).includes("mass-from-file")).toBe(mass !== undefined);
  });
  it.each([
    [178, 1.78],
    [1780, 1.78],
    [1.78, 1.78],
  ])("a height of %d is 1.78 m", (value, height) => {
    expect(subject({ "SUBJECT:HEIGHT": { data: [Math.fround(value)] } }).subject.height).toBeCloseTo(
      height,
      9,
    );
  });
  it("refuses options that are none", () => {
    expect(() => subject({}, { mass: -1 })).toThrow(expect.objectContaining({ code: "out-of-range" }));
    expect(() => subject({}, { units: { FZ1: 3 } })).toThrow(expect.objectContaining({ code: "wrong-type" }));
    expect(() => subject({}, { lengthUnit: "inch" })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    expect(() => subject({}, { weight: 3 })).toThrow(expect.objectContaining({ code: "unknown-option" }));
  });
});

describe("markers and other channels", () => {
  it("points that the file lists as angles or forces are left out", () => {
    const recording = c3dToRecording(
      changed(two, { "POINT:ANGLES": units("RK", "LK"), "POINT:FORCES": units("RF") }),
      STEP,
    );
    expect(recording.markers?.markers).toHaveLength(10);
    expect(codes(recording)).toContain("points-left-out");
  });
  it("a position of exactly 0 0 0 without camera or residual was not seen", () => {
    const zero = (values: Float64Array | Uint8Array) => values.map((value, i) => (i < 3 ? 0 : value));
    const points = two.points.map((point, k) =>
      k > 0
        ? point
        : {
            ...point,
            x: zero(point.x),
            y: zero(point.y),
            z: zero(point.z),
            residual: zero(point.residual),
            cameras: zero(point.cameras),
          },
    ) as C3dFile["points"];
    const recording = c3dToRecording({ ...two, points }, STEP);
    expect(recording.markers?.markers[0]?.up.subarray(0, 3)).toEqual(new Float64Array(3).fill(Number.NaN));
    expect(recording.cautions.find(({ code }) => code === "zeros-as-gaps")?.values).toEqual({ count: 3 });
  });
  it("channels of one name, or none, get names of their own; samples that are no finite numbers are gaps", () => {
    const names = ["A", "", "A", "B", "", "A"];
    const channels = two.analogue.channels.map((one, k) => ({
      ...one,
      name: names[k] as string,
      samples:
        k === 3 ? one.samples.map((value, i) => (i === 1 ? Number.POSITIVE_INFINITY : value)) : one.samples,
    }));
    const file = changed(
      { ...two, analogue: { ...two.analogue, channels } },
      { "FORCE_PLATFORM:USED": { data: [0] } },
    );
    const recording = c3dToRecording(file, STEP);
    expect(recording.channels.map(({ name }) => name)).toEqual([
      "A",
      "channel 2",
      "A (2)",
      "B",
      "channel 5",
      "A (3)",
    ]);
    expect(recording.channels[3]?.samples[1]).toBeNaN();
    expect(codes(recording)).toContain("gap");
  });
  it("a file with markers alone is a recording of markers", () => {
    const recording = c3dToRecording(
      {
        ...two,
        groups: [],
        analogue: { ...two.analogue, channels: [] },
        points: two.points.map((one) => ({ ...one })),
      },
      { ...STEP, lengthUnit: "mm" },
    );
    expect([recording.sampleRate, recording.channels.length, recording.markers?.markers.length]).toEqual([
      60, 0, 13,
    ]);
  });
  it("a file with nothing in it is refused", () => {
    expect(() =>
      c3dToRecording({ ...two, groups: [], points: [], analogue: { ...two.analogue, channels: [] } }, STEP),
    ).toThrow(expect.objectContaining({ code: "missing-channel" }));
  });
});

it("what the parser says of a file stands on the recording", () => {
  const bytes = patched(bytesOf("worked/intel_integer.c3d"), 1, "SCALE", (data) =>
    data.setFloat32(0, 0.5, true),
  );
  expect(codes(readC3d(bytes, STEP))).toContain("header-disagrees");
});
