import { describe, expect, it } from "vitest";
import { type C3dFile, parseC3d, readC3d, writeC3d } from "../../../src/io/index.js";
import { changed } from "./changed.js";
import { bytesOf, patched, placeOf } from "./files.js";
import { sampleFile } from "./sampleFile.js";

const small = bytesOf("worked/intel_float.c3d");
const POINT = 1;
const ANALOG = 2;
const cautionsOf = (file: C3dFile) => file.cautions.map(({ code, where }) => [code, where]);
const numbersOf = ({ analogue }: C3dFile) => analogue.channels.map(({ samples }) => samples);
const startField = (...data: number[]) => changed(sampleFile, { "TRIAL:ACTUAL_START_FIELD": words(...data) });
const words = (...data: number[]) => ({ type: "integer" as const, data, dimensions: [data.length] });

describe("2026-11-25: header and parameters disagreed without a word", () => {
  const changeFirst = (bytes: Uint8Array, first: number) => {
    const copy = bytes.slice();
    new DataView(copy.buffer).setUint16(6, first, true);
    new DataView(copy.buffer).setUint16(8, first + 6, true);
    return copy;
  };
  const written = writeC3d(startField(101, 0), { processor: "intel" });
  it("another first frame in TRIAL than in the header moves all times: it is said", () => {
    const agreed = readC3d(written, { axes: { x: "forward", y: "left", z: "up" } });
    expect(agreed.startTime).toBeCloseTo(100 / 125, 12);
    const file = parseC3d(changeFirst(written, 1));
    expect(file.firstFrame).toBe(101);
    expect(file.cautions).toEqual([
      {
        code: "header-disagrees",
        where: "TRIAL:ACTUAL_START_FIELD",
        message:
          "the header says that the first frame is number 1, and TRIAL:ACTUAL_START_FIELD 101; the parameter counted, and times begin by it",
        values: { header: 1, parameters: 101 },
      },
    ]);
  });
  it("nothing is said of the same number", () => expect(cautionsOf(parseC3d(written))).toEqual([]));
  it("the low 16 bits of a number above 65 535, or its limit, agree with it", () => {
    const bytes = written.slice();
    const at = writtenPlace(bytes, "ACTUAL_START_FIELD");
    new DataView(bytes.buffer).setUint16(at + 2, 1, true);
    const low = parseC3d(changeFirst(bytes, 101));
    expect([low.firstFrame, low.cautions]).toEqual([65536 + 101, []]);
    const limit = bytes.slice();
    new DataView(limit.buffer).setUint16(6, 65535, true);
    new DataView(limit.buffer).setUint16(8, 65535, true);
    expect(cautionsOf(parseC3d(limit))).toEqual([]);
  });

  it.each<[string, string, (data: DataView) => void, string]>([
    ["0", "POINT:RATE", (data) => data.setFloat32(0, 0, true), "0"],
    ["NaN", "POINT:RATE", (data) => data.setFloat32(0, Number.NaN, true), "NaN"],
    ["negative", "POINT:RATE", (data) => data.setFloat32(0, -100, true), "-100"],
    ["infinite", "POINT:RATE", (data) => data.setFloat32(0, Number.POSITIVE_INFINITY, true), "Infinity"],
  ])("a rate that is %s is replaced by the header's, and that is said", (_, where, change, shown) => {
    const file = parseC3d(patched(small, POINT, "RATE", change));
    expect(file.frameRate).toBe(250);
    expect(file.cautions).toMatchObject([{ code: "header-disagrees", where }]);
    expect(file.cautions[0]?.message).toContain(
      `POINT:RATE is ${shown}, which it cannot be; the header's 250`,
    );
  });
  it.each([
    [ANALOG, "USED", "ANALOG:USED"],
    [POINT, "USED", "POINT:USED"],
    [POINT, "DATA_START", "POINT:DATA_START"],
  ])(
    "a count in group %i, %s, that is a text is replaced by the header's, and that is said",
    (group, name, where) => {
      const bytes = textInstead(small, group, name);
      const file = parseC3d(bytes);
      expect(numbersOf(file)).toEqual(numbersOf(parseC3d(small)));
      expect(cautionsOf(file)).toEqual([["header-disagrees", where]]);
      expect(file.cautions[0]?.message).toMatch(/ is the text ".*", which it cannot be/);
    },
  );
  it("a rate of the analogue channels that is a text leaves the header's samples in a frame, and that is said", () => {
    const file = parseC3d(textInstead(small, ANALOG, "RATE"));
    expect(file.analogue.samplesPerFrame).toBe(4);
    expect(cautionsOf(file)).toEqual([["header-disagrees", "ANALOG:RATE"]]);
  });

  it("fewer channels in ANALOG:USED than the file holds shuffled them: what fills the file counts", () => {
    // Long enough that three channels in place of six leave more than a block.
    const long = writeC3d(longer(parseC3d(small), 40), { processor: "intel", storage: "float" });
    const file = parseC3d(
      patched(long, groupOf(long, "ANALOG"), "USED", (data) => data.setUint16(0, 3, true)),
    );
    expect(numbersOf(file)).toEqual(numbersOf(parseC3d(long)));
    expect(file.cautions).toMatchObject([
      { code: "header-disagrees", where: "ANALOG:USED", values: { header: 6, parameters: 3 } },
    ]);
    expect(file.cautions[0]?.message).toContain("the header's fills the file");
  });

  it("70 001 frames were read as the 4465 that POINT:FRAMES has room for: TRIAL counts where it fills the file", () => {
    const frames = 70_001;
    const whole = writeC3d(longer(sampleFile, frames), { processor: "intel", storage: "integer" });
    const bytes = patched(whole, groupOf(whole, "POINT"), "FRAMES", (data) =>
      data.setUint16(0, frames & 0xffff, true),
    );
    const file = parseC3d(bytes);
    expect(file.frames).toBe(frames);
    expect(file.cautions).toMatchObject([
      { code: "frame-count-disagrees", where: "POINT:FRAMES", values: { frames: 4465, trial: frames } },
    ]);
    // A file that was cut to what POINT:FRAMES says is read by that.
    const cut = bytes.slice(0, bytes.length - 2 * (frames - 4465) * (4 * 2 + 9));
    expect(parseC3d(cut).frames).toBe(4465);
  });
});

/** The number of a group in the bytes. */
function groupOf(bytes: Uint8Array, name: string): number {
  const found = parseC3d(bytes).groups.find((group) => group.name === name);
  if (found === undefined) throw new Error(`no group ${name}`);
  return found.id;
}

/** Place of a parameter's data, in whichever group. */
function writtenPlace(bytes: Uint8Array, name: string): number {
  const text = new TextDecoder("latin1").decode(bytes);
  const at = text.indexOf(name, 512);
  const dimensions = bytes[at + name.length + 3] as number;
  return at + name.length + 4 + dimensions;
}

/** A parameter declared a text: its type stands behind its name and the pointer to the next, −1 for texts. */
function textInstead(bytes: Uint8Array, group: number, name: string): Uint8Array {
  const copy = bytes.slice();
  copy[placeOf(copy, group, name) + 2 + name.length + 2] = 0xff;
  return copy;
}

/** The same frames again and again. */
function longer(file: C3dFile, frames: number): C3dFile {
  const stretch = (samples: Float64Array, length: number) =>
    Float64Array.from({ length }, (_, i) => samples[i % samples.length] as number);
  const { analogue } = file;
  return {
    ...file,
    frames,
    points: file.points.map((one) => ({
      ...one,
      x: stretch(one.x, frames),
      y: stretch(one.y, frames),
      z: stretch(one.z, frames),
      residual: stretch(one.residual, frames),
      cameras: Uint8Array.from({ length: frames }, (_, i) => one.cameras[i % one.cameras.length] as number),
    })),
    analogue: {
      ...analogue,
      channels: analogue.channels.map((one) => ({
        ...one,
        samples: stretch(one.samples, frames * analogue.samplesPerFrame),
      })),
    },
  };
}
