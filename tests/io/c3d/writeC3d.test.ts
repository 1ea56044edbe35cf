import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type C3dFile, type C3dParameter, parseC3d, writeC3d } from "../../../src/io/index.js";
import expected from "../../fixtures/c3d/worked/expected.json" with { type: "json" }; // independent_writer.py
import read from "../../fixtures/c3d/written/read.json" with { type: "json" }; // independent_reader.py
import { bytesOf, content, distance, parsed } from "./files.js";
import { FORMS, sampleFile } from "./sampleFile.js";

it.each(expected.files.map(({ file }) => file))(
  "independent writer (independent_writer.py): %s, read and written again, is equal byte for byte",
  (name) => expect(writeC3d(parsed(`worked/${name}`))).toEqual(bytesOf(`worked/${name}`)),
);

it.each(
  expected.files
    .filter(({ unsigned }) => !unsigned)
    .map(({ file, processor, storage }) => [file, processor, storage] as const),
)(
  "independent writer: any of the files, written in another form, is %s byte for byte",
  (name, code, storage) => {
    const processor = (["intel", "dec", "mips"] as const)[code - 84] as "intel";
    for (const from of expected.files.filter(({ unsigned }) => !unsigned)) {
      const form = { processor, storage: storage as "integer" | "float" };
      expect(writeC3d(parsed(`worked/${from.file}`), form)).toEqual(bytesOf(`worked/${name}`));
    }
  },
);

describe.each(FORMS)("%o", (form) => {
  const name = `${form.processor}-${form.storage}.c3d` as keyof typeof read;
  const found = read[name];
  it("independent reader (independent_reader.py): reads what went in", () => {
    expect(writeC3d(sampleFile, form)).toEqual(bytesOf(`written/${name}`));
    expect([found.processor, found.storage, found.frames]).toEqual([
      form.processor,
      form.storage,
      sampleFile.frames,
    ]);
    expect(found.header.events).toEqual(
      sampleFile.header.events.map((event) => ({ ...event, time: Math.fround(event.time) })),
    );
    expect([found.header.firstFrame, found.header.lastFrame, found.header.frameRate]).toEqual([
      101, 107, 125,
    ]);
    const [, more] = sampleFile.groups;
    for (const parameter of more?.parameters ?? []) {
      const { type, dimensions, data, description, locked } =
        found.parameters.MORE[parameter.name as "BYTES"];
      expect([description, locked]).toEqual([parameter.description, parameter.locked]);
      expect(type).toBe({ character: -1, byte: 1, integer: 2, float: 4 }[parameter.type]);
      expect(data).toEqual(parameter.data);
      // "Größe" is two bytes wider in UTF-8 than its five letters.
      expect(dimensions).toEqual(parameter.name === "TEXTS" ? [7, 2] : parameter.dimensions);
    }
    expect(found.parameters.POINT[""]).toEqual({ description: "Punkte, größer", locked: true });
    expect(found.parameters.POINT.LABELS.data).toEqual(["RHEE", "RTOE"]);
    expect(found.parameters.ANALOG.UNITS.data).toEqual(["N", "Nmm", "V"]);
    for (const [k, { x, y, z, residual, cameras }] of sampleFile.points.entries()) {
      for (let frame = 0; frame < sampleFile.frames; frame++) {
        const plain = (value: number | undefined) => (Number.isNaN(value) ? null : value);
        expect(found.points[frame]?.[k]).toEqual([plain(x[frame]), plain(y[frame]), plain(z[frame])]);
        expect(found.residual[frame]?.[k]).toEqual(plain(residual[frame]));
        expect(found.mask[frame]?.[k]).toBe(cameras[frame]);
      }
    }
    for (const [k, { samples }] of sampleFile.analogue.channels.entries()) {
      expect(found.analogue.map((row) => row[k])).toEqual([...samples]);
    }
  });
  it("reads back equal", () => {
    const once = parseC3d(writeC3d(sampleFile, form));
    expect(once.points).toEqual(sampleFile.points);
    expect(once.analogue).toEqual(sampleFile.analogue);
    expect([once.processor, once.storage]).toEqual([form.processor, form.storage]);
    expect(content(parseC3d(writeC3d(once)))).toEqual(content(once));
  });
  it.each(["walk-pi", "walk-vr-60", "type-2", "type-4", "type-3-120"])(
    "the sample file %s in this form keeps its numbers",
    (path) => {
      const file = parsed(`standard/${path}.c3d`);
      const again = parseC3d(writeC3d(file, form));
      const own = file.storage === form.storage;
      for (const [k, point] of file.points.entries()) {
        const other = again.points[k] as C3dFile["points"][0];
        for (const axis of ["x", "y", "z"] as const) {
          // Between forms: half a step of the chosen scale, or 24 bits.
          const largest = point[axis].reduce((most, value) => Math.max(most, Math.abs(value) || 0), 0);
          expect(distance(other[axis], point[axis])).toBeLessThanOrEqual(own ? 0 : largest * 4e-5 + 1e-4);
        }
      }
      for (const [k, { samples }] of file.analogue.channels.entries()) {
        const largest = samples.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
        expect(distance(again.analogue.channels[k]?.samples as Float64Array, samples)).toBeLessThanOrEqual(
          own ? 0 : largest / 60_000,
        );
      }
    },
  );
});

it.each([
  "walk-pi",
  "walk-pr-60",
  "walk-si-60",
  "walk-sr-60",
  "walk-vi-60",
  "walk-vr-60",
  "type-2",
  "type-4",
  "type-3-120",
])("the sample file %s comes back equal, every parameter included", (path) => {
  const file = parsed(`standard/${path}.c3d`);
  expect(content(parseC3d(writeC3d(file)))).toEqual(content(file));
});

/** The DEC form has no number between 0 and 2^−128, nor −0. */
const number32 = fc
  .float({ noNaN: true, noDefaultInfinity: true, min: -Math.fround(1e30), max: Math.fround(1e30) })
  .map((value) => (Math.abs(value) < 2 ** -126 ? 0 : value));
const text = fc
  .string({ unit: "grapheme", maxLength: 12 })
  .filter((one) => one === one.replace(/[ \0]+$/, "") && !/\p{Surrogate}/u.test(one));
const identifier = fc.stringMatching(/^[A-Z][A-Z_]{0,15}$/);
const parameters: fc.Arbitrary<C3dParameter> = fc
  .tuple(
    identifier,
    text,
    fc.boolean(),
    fc.array(fc.integer({ min: 0, max: 4 }), { maxLength: 4 }),
    fc.constantFrom("character", "byte", "integer", "float"),
  )
  .chain(([name, description, locked, sizes, type]) => {
    const count = sizes.reduce((product, one) => product * one, 1);
    const head = { name: `X${name}`, description, locked };
    const many = <T>(one: fc.Arbitrary<T>) => fc.array(one, { minLength: count, maxLength: count });
    if (type === "character") {
      return many(text).map((data): C3dParameter => {
        const width = Math.max(1, ...data.map((one) => new TextEncoder().encode(one).length));
        return { ...head, type, dimensions: [width, ...sizes], data };
      });
    }
    const one = {
      byte: fc.integer({ min: -128, max: 127 }),
      integer: fc.integer({ min: -32768, max: 32767 }),
      float: number32,
    };
    return many(one[type]).map((data): C3dParameter => ({ ...head, type, dimensions: sizes, data }));
  });

const files: fc.Arbitrary<C3dFile> = fc
  .record({
    frames: fc.integer({ min: 1, max: 12 }),
    points: fc.integer({ min: 0, max: 3 }),
    channels: fc.integer({ min: 0, max: 3 }),
    samplesPerFrame: fc.integer({ min: 1, max: 4 }),
    form: fc.constantFrom(...FORMS),
    format: fc.constantFrom("signed" as const, "unsigned" as const),
    scale: fc.constantFrom(0.5, 0.0625, 2),
    firstFrame: fc.integer({ min: 1, max: 70_000 }),
    parameters: fc.uniqueArray(parameters, { maxLength: 5, selector: ({ name }) => name }),
    names: fc.array(text, { minLength: 6, maxLength: 6 }),
    noise: fc.infiniteStream(fc.integer({ min: 0, max: 32767 })),
    gap: fc.integer({ min: 0, max: 12 }),
  })
  .map(
    ({
      frames,
      points,
      channels,
      samplesPerFrame,
      form,
      format,
      scale,
      firstFrame,
      parameters: list,
      names,
      noise,
      gap,
    }) => {
      const next = () => noise.next().value as number;
      const series = (length: number, value: () => number) => Float64Array.from({ length }, value);
      const makePoint = (k: number) => {
        const blank = (values: Float64Array) => values.map((value, i) => (i === gap ? Number.NaN : value));
        const axis = () => blank(series(frames, () => (next() - 16384) * scale));
        return {
          name: names[k] as string,
          description: "",
          unit: "mm",
          x: axis(),
          y: axis(),
          z: axis(),
          residual: blank(series(frames, () => (next() & 255) * scale)),
          cameras: Uint8Array.from({ length: frames }, (_, i) => (i === gap ? 0 : next() & 127)),
        };
      };
      const makeChannel = (k: number) => ({
        name: names[3 + k] as string,
        description: names[k] as string,
        unit: "N",
        scale: -0.25,
        offset: format === "unsigned" ? 40_000 : -3,
        samples: series(frames * samplesPerFrame, () => ((next() >> 1) - 8192) * -0.25 * 2),
      });
      return {
        ...form,
        encoding: "utf-8" as const,
        header: { ...sampleFile.header, scale, events: [] },
        groups: [
          {
            id: 1,
            name: "POINT",
            description: "",
            locked: false,
            parameters: [
              {
                name: "SCALE",
                description: "",
                locked: false,
                type: "float" as const,
                dimensions: [],
                data: [scale],
              },
            ],
          },
          { id: 2, name: "OTHER", description: "", locked: false, parameters: list },
        ],
        frameRate: 100,
        frames,
        firstFrame,
        points: Array.from({ length: points }, (_, k) => makePoint(k)),
        analogue: {
          sampleRate: 100 * samplesPerFrame,
          samplesPerFrame,
          generalScale: channels === 0 ? 1 : 2,
          format: channels === 0 ? ("signed" as const) : format,
          channels: Array.from({ length: channels }, (_, k) => makeChannel(k)),
        },
        cautions: [],
      };
    },
  );

it("property: what is written comes back equal, and once more byte for byte", () =>
  fc.assert(
    fc.property(files, (file) => {
      const bytes = writeC3d(file);
      const back = parseC3d(bytes);
      expect(back.points).toEqual(file.points);
      expect(back.analogue).toEqual(file.analogue);
      expect([back.processor, back.storage, back.frames, back.firstFrame]).toEqual([
        file.processor,
        file.storage,
        file.frames,
        file.firstFrame,
      ]);
      expect(back.groups.find(({ name }) => name === "OTHER")).toEqual(file.groups[1]);
      expect(back.cautions).toEqual([]);
      expect(writeC3d(back)).toEqual(bytes);
    }),
    { numRuns: 200, seed: 20 },
  ));

const bare = (frames: number, channels: number): C3dFile => ({
  ...sampleFile,
  storage: "float",
  groups: [],
  frames,
  firstFrame: 1,
  points: [],
  header: { ...sampleFile.header, events: [] },
  analogue: {
    ...sampleFile.analogue,
    sampleRate: 125,
    samplesPerFrame: 1,
    channels: Array.from({ length: channels }, (_, k) => ({
      name: `channel ${k + 1}`,
      description: k === channels - 1 ? "last" : "",
      unit: "V",
      scale: 1,
      offset: k % 7,
      samples: Float64Array.from({ length: frames }, (_, i) => (i % 1000) + k),
    })),
  },
});

it("more than 65 535 frames are counted in TRIAL and POINT:LONG_FRAMES, and come back", () => {
  const file = { ...bare(70_001, 1), firstFrame: 66_000 };
  const back = parseC3d(writeC3d(file));
  const value = (group: string, name: string) =>
    back.groups.find((one) => one.name === group)?.parameters.find((one) => one.name === name)?.data;
  expect([back.frames, back.firstFrame]).toEqual([70_001, 66_000]);
  expect(value("POINT", "FRAMES")).toEqual([-1]);
  expect(value("POINT", "LONG_FRAMES")).toEqual([70_001]);
  // 66000 = 464 + 1 × 65536; 66000 + 70001 − 1 = 136000 = 4928 + 2 × 65536.
  expect(value("TRIAL", "ACTUAL_START_FIELD")).toEqual([464, 1]);
  expect(value("TRIAL", "ACTUAL_END_FIELD")).toEqual([4928, 2]);
  expect(
    distance(
      back.analogue.channels[0]?.samples as Float64Array,
      file.analogue.channels[0]?.samples as Float64Array,
    ),
  ).toBe(0);
  expect(back.cautions).toEqual([]);
});

it("lists longer than 255 go on in LABELS2, SCALE2, … and come back", () => {
  const file = bare(2, 600);
  const back = parseC3d(writeC3d(file));
  const names = back.groups.find(({ name }) => name === "ANALOG")?.parameters.map(({ name }) => name);
  expect(names).toEqual(
    expect.arrayContaining(["LABELS", "LABELS2", "LABELS3", "DESCRIPTIONS3", "UNITS2", "SCALE2", "OFFSET3"]),
  );
  expect(back.analogue).toEqual({ ...file.analogue });
  expect(content(parseC3d(writeC3d(back)))).toEqual(content(back));
});

it("a channel taken out of a file takes its name, scale and unit with it", () => {
  const file = parsed("worked/intel_float.c3d");
  const [, ...rest] = file.analogue.channels;
  const back = parseC3d(writeC3d({ ...file, analogue: { ...file.analogue, channels: rest } }));
  expect(back.analogue.channels).toEqual(rest);
  expect(back.points).toEqual(file.points);
});

it("Latin-1 files stay so, with the texts that Latin-1 can hold", () => {
  const file: C3dFile = {
    ...sampleFile,
    encoding: "latin-1",
    analogue: {
      ...sampleFile.analogue,
      channels: sampleFile.analogue.channels.map((one, k) => ({
        ...one,
        name: ["é", "Ã©", "Ω"][k] as string,
      })),
    },
  };
  const bytes = writeC3d(file);
  const back = parseC3d(bytes);
  expect(back.analogue.channels.map(({ name }) => name)).toEqual(["é", "Ã©", "Ω"]);
  expect(back.encoding).toBe("latin-1");
  expect([...bytes].some((byte, k) => byte === 0xe9 && bytes[k + 1] === 0x20)).toBe(true);
});

it("gaps of a channel stay in a floating file, in the DEC form too, and are refused in an integer one", () => {
  const [first, ...rest] = sampleFile.analogue.channels;
  const samples = first?.samples.slice() ?? new Float64Array(0);
  samples[4] = Number.NaN;
  const file = {
    ...sampleFile,
    analogue: { ...sampleFile.analogue, channels: [{ ...first, samples } as never, ...rest] },
  };
  for (const processor of ["intel", "dec", "mips"] as const) {
    const back = parseC3d(writeC3d(file, { processor, storage: "float" }));
    expect(back.analogue.channels[0]?.samples).toEqual(samples);
  }
  expect(() => writeC3d(file)).toThrow(
    expect.objectContaining({ code: "gap", message: expect.stringContaining("frame 2") }),
  );
});
