import { describe, expect, it } from "vitest";
import {
  type C3dFile,
  c3dToRecording,
  parseC3d,
  type ReadC3dOptions,
  readC3d,
  readRecording,
  recordingToC3d,
  writeC3d,
} from "../../../src/io/index.js";
import type { Recording } from "../../../src/recording/index.js";
import { refusal } from "../csv/fixtures.js";
import { changed, units } from "./changed.js";
import { bytesOf, parsed } from "./files.js";
import { KINDS } from "./recordings.js";

const axes = { x: "right", y: "forward", z: "up" } as const;
const two = parsed("standard/type-2.c3d");
const read = (options: ReadC3dOptions, file: C3dFile = two): Recording =>
  c3dToRecording(file, { axes, ...options });

describe("2026-11-25: units for no channel, or that are no units, were taken in silence", () => {
  it.each<[string, Readonly<Record<string, string>>, string, RegExp]>([
    [
      "a word",
      { "F*": "banana" },
      "unknown-unit",
      /^units states "banana" for channel "FX1", which is no unit/,
    ],
    ["another kind", { FZ1: "lb" }, "unknown-unit", /holds force, such as N$/],
    ["volts", { FZ1: "V" }, "unit-mismatch", /a unit of voltage; .* holds force, such as N$/],
    ["a force for a moment", { "*": "N" }, "unit-mismatch", /channel "MX1", a unit of force; .*moment/],
    ["no channel", { Nosuch: "N" }, "out-of-range", /^units names "Nosuch", .*it has "FX1", "FY1"/],
    ["the beginning of two", { FZ: "N" }, "out-of-range", /"FZ\*" stands for several$/],
    ["no pattern that fits", { "G*": "N" }, "out-of-range", /^units names "G\*"/],
  ])("%s is refused", (_, stated, code, message) => {
    expect(refusal(() => read({ units: stated }))).toMatchObject({
      code,
      argument: "units",
      message: expect.stringMatching(message),
    });
  });
  it("a pattern states several, an exact name counts before it, and what the file states otherwise is said", () => {
    const plain = read({}).platforms?.[0]?.channels.map(({ samples }) => samples[1644] as number) ?? [];
    const stated = read({ units: { "F*": "lbf", FZ1: "N" } });
    const ratios = stated.platforms?.[0]?.channels.map(
      ({ samples }, k) => (samples[1644] as number) / (plain[k] as number),
    );
    const pound = 4.4482216152605;
    expect(ratios?.map((one) => Number(one.toPrecision(14)))).toEqual([pound, pound, 1, 1, 1, 1]);
    expect(stated.cautions.filter(({ code }) => code === "option-over-file")).toEqual([
      expect.objectContaining({
        message:
          'force platform 1: ANALOG:UNITS states "N" for "FX1", the option "lbf"; the option was used; likewise for 1 more',
      }),
    ]);
    expect(read({ units: { "F*": "N", "M*": "N mm" } })).toEqual(read({}));
  });
  it("the unit of a channel of no platform is what was stated", () => {
    const loose = changed(two, { "FORCE_PLATFORM:TYPE": { data: [9] } });
    expect(read({ units: { FX1: "mV" } }, loose).channels.map(({ unit }) => unit)[0]).toBe("mV");
  });
  it("a channel that this library wrote has its unit", () => {
    const file = recordingToC3d(sixChannels());
    expect(refusal(() => c3dToRecording(file, { units: { Fz1: "kN" } })).code).toBe("conflict");
    expect(c3dToRecording(file, { units: { "F*": "N" } })).toEqual(c3dToRecording(file));
  });
});

it("2026-11-25: an absurd force in a channel was met only by its consequences", () => {
  const file = {
    ...two,
    analogue: {
      ...two.analogue,
      channels: two.analogue.channels.map((one, k) =>
        k === 2 ? { ...one, samples: one.samples.map((value, i) => (i === 41 ? 1e30 : value)) } : one,
      ),
    },
  };
  expect(refusal(() => read({}, file))).toMatchObject({
    code: "out-of-range",
    where: 'channel "FZ1", sample 42',
    message: expect.stringMatching(
      /holds 1e\+30 N, and no recording goes beyond 100000 N: is its unit right/,
    ),
  });
  const small = parsed("worked/intel_float.c3d");
  const far = { ...small, points: small.points.map((one) => ({ ...one, y: one.y.map(() => -1e13) })) };
  expect(refusal(() => read({}, far)).where).toMatch(/^marker ".*", frame 1$/);
});

const sixChannels = (change: Partial<Recording> = {}): Recording => ({
  sampleRate: 1000,
  startTime: 0,
  channels: KINDS.map(([quantity, direction, unit]) => ({
    name: quantity === "force" ? direction : `${quantity} ${direction}`,
    quantity,
    direction,
    unit,
    samples: Float64Array.from({ length: 20 }, (_, i) => (unit === "m" ? 0.155 * i : i)),
  })),
  subject: {},
  origin: { format: "csv" },
  cautions: [],
  ...change,
});

describe("2026-11-25: a converted file held channels named forward and right with their sign turned", () => {
  const file = recordingToC3d(sixChannels());
  const labels = ({ analogue }: C3dFile) => analogue.channels.map(({ name }) => name);
  it("they are labelled by the axes of the plate", () => {
    expect(labels(parseC3d(writeC3d(file)))).toEqual(["Fx1", "Fz1", "Fy1", "Px1", "Py1", "Mz1"]);
    const [fx, fz] = file.analogue.channels;
    expect([fx?.samples[3], fz?.samples[3]]).toEqual([-3, 3]);
    expect(fx?.samples.some((value) => Object.is(value, -0))).toBe(false);
  });
  it("their names come back", () => {
    const back = readC3d(writeC3d(file));
    expect(back.channels.map(({ name }) => name)).toEqual(sixChannels().channels.map(({ name }) => name));
    expect(back.cautions).toEqual([]);
  });
  it("two plates are numbered, and a number whose labels a channel has is passed over", () => {
    const { channels } = sixChannels();
    const both = ["left", "right"].flatMap((plate) => channels.map((one) => ({ ...one, plate })));
    const other = { ...channels[0], name: "Px1", quantity: "other", direction: null } as never;
    const written = recordingToC3d(sixChannels({ channels: [...both, other] }));
    expect(labels(written).filter((name) => name.startsWith("Fz"))).toEqual(["Fz2", "Fz3"]);
    expect(labels(written)[12]).toBe("Px1");
    expect(readC3d(writeC3d(written)).channels.map(({ name }) => name)[12]).toBe("Px1");
  });
  it("the plate, which is invented, is said", () => {
    expect(file.cautions).toEqual([
      {
        code: "platform-made",
        message:
          "the recording states no force platform for its channels; one of type 1, 6 m × 6 m about the origin, was written for other programs, with the channels Fx1, Fy1, Fz1, Px1, Py1, Mz1 along its own axes: x forward, y right, z down, the force on the platform",
        where: "FORCE_PLATFORM",
        values: { side: 6, number: 1 },
      },
    ]);
    expect(recordingToC3d(sixChannels({ channels: sixChannels().channels.slice(0, 3) })).cautions).toEqual(
      [],
    );
  });
});

it.each<[string, readonly number[], string]>([
  ["PDF", [0x25, 0x50, 0x44, 0x46], "a PDF document"],
  ["PNG", [0x89, 0x50, 0x4e, 0x47], "a PNG image"],
  ["ZIP", [0x50, 0x4b, 0x03, 0x04], "a ZIP archive"],
])("2026-11-25: a %s named .c3d was told that its parameters begin in block 37 or 137", (_, mark, name) => {
  const bytes = new Uint8Array(200 * 512);
  bytes.set(mark);
  for (const size of [bytes, bytes.subarray(0, 600), bytes.subarray(0, 4)]) {
    const error = refusal(() => readC3d(size, { axes }));
    expect(error.code).toBe("unreadable-file");
    expect(error.message).toContain(`the file looks like ${name}`);
  }
});

it("2026-11-25: a unit that the file cuts to four letters was printed so", () => {
  const corners = two.groups
    .find(({ name }) => name === "FORCE_PLATFORM")
    ?.parameters.find(({ name }) => name === "CORNERS")?.data as readonly number[];
  const file = changed(two, {
    "POINT:UNITS": units("mete"),
    "FORCE_PLATFORM:TYPE": { data: [1] },
    "FORCE_PLATFORM:CORNERS": { data: corners.map((value) => value / 1000) },
    "FORCE_PLATFORM:ORIGIN": null,
  });
  const blank = {
    ...file,
    analogue: { ...file.analogue, channels: file.analogue.channels.map((one) => ({ ...one, unit: "" })) },
  };
  const messages = read({}, blank).cautions.map(({ message }) => message);
  expect(messages.some((message) => message.includes("taken in m, the unit of POINT:UNITS"))).toBe(true);
  expect(messages.join()).not.toMatch(/\bmete\b/);
});

it("2026-11-25: a mass of the file and one of an option stood beside each other without unit", () => {
  const file = changed(two, { "SUBJECT:MASS": { type: "float", data: [82.7], dimensions: [] } });
  expect(read({ mass: 82.55381134000001 }, file).cautions.map(({ message }) => message)).toContain(
    "the file states mass 82.7 kg, the option 82.5538 kg; the option was used",
  );
});

it("2026-11-25: an ArrayBuffer was called an object", () => {
  const { buffer } = bytesOf("standard/type-2.c3d");
  for (const call of [() => readC3d(buffer as never), () => readRecording(buffer as never)]) {
    expect(refusal(call).message).toMatch(/^bytes are an ArrayBuffer; .*new Uint8Array\(buffer\) makes one/);
  }
  expect(refusal(() => readC3d(null as never)).message).toContain("bytes are null;");
  expect(refusal(() => readC3d("text" as never)).message).toContain("bytes are a string;");
});
