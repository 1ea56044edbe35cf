import { describe, expect, it } from "vitest";
import { parseC3d } from "../../../src/io/index.js";
import { bytesOf, patched, placeOf } from "./files.js";

const small = bytesOf("worked/intel_integer.c3d");
const refused = (bytes: Uint8Array, where: RegExp) =>
  expect(() => parseC3d(bytes)).toThrow(
    expect.objectContaining({
      code: "unreadable-file",
      message: expect.stringMatching(where),
      where: expect.any(String),
    }),
  );
/** The small file with the pointer to the next record of a parameter changed. */
const pointing = (name: string, step: (own: number) => number) => {
  const bytes = small.slice();
  const at = placeOf(bytes, 1, name) + 2 + name.length;
  const view = new DataView(bytes.buffer);
  view.setInt16(at, step(view.getInt16(at, true)), true);
  return bytes;
};

describe("a file that is none, or not whole", () => {
  it("is refused when empty, short or of another format", () => {
    refused(new Uint8Array(0), /has 0 bytes/);
    refused(new Uint8Array(1), /has 1 byte;/);
    refused(small.subarray(0, 300), /300 bytes/);
    refused(new Uint8Array(1024).fill(32), /byte 2: it is 32/);
    refused(small.subarray(0, 512), /512 bytes; a C3D file has at least two blocks/);
  });
  it("is refused at every length below its own, with the frame that is cut", () => {
    const { length } = small;
    const data = 6 * 2 * (4 * 3 + 24);
    const start = 512 * ((small[16] as number) - 1);
    for (let cut = 0; cut < start + data; cut++) {
      expect(() => parseC3d(small.subarray(0, cut))).toThrow(
        expect.objectContaining({ code: "unreadable-file" }),
      );
    }
    refused(small.subarray(0, start + data - 1), /frame 6: the file ends within it/);
    expect(parseC3d(small.subarray(0, start + data))).toEqual(parseC3d(small));
    expect(length - start - data).toBeLessThan(512);
  });
});

describe("parameter records", () => {
  it("that point backward or far ahead end in the data and are refused", () => {
    refused(
      pointing("USED", () => -40),
      /"USED"|points 65496 bytes on/,
    );
    refused(
      pointing("SCALE", () => 30_000),
      /points 30000 bytes on/,
    );
  });
  it("that point at themselves or into their own data overlap and are refused", () => {
    refused(
      pointing("RATE", () => 1),
      /"RATE".*before its type/,
    );
    refused(
      pointing("RATE", () => 2),
      /"RATE".*before its type/,
    );
    refused(
      pointing("RATE", () => 6),
      /"RATE".*need 4 bytes and the record has 2/,
    );
    refused(
      pointing("DESCRIPTIONS", (own) => own - 9),
      /"DESCRIPTIONS".*need 24 bytes/,
    );
  });
  it("that end within their dimensions are refused", () =>
    refused(
      pointing("LABELS", () => 5),
      /within its dimensions/,
    ));
  it("whose description runs over are cut there, with a caution", () => {
    const bytes = small.slice();
    const at = placeOf(bytes, 1, "DESCRIPTIONS") + 2 + "DESCRIPTIONS".length + 6 + 24;
    expect(bytes[at]).toBe(4);
    bytes[at] = 200;
    const file = parseC3d(bytes);
    expect(file.cautions.map(({ code }) => code)).toEqual(["description-cut"]);
    expect(file.groups[0]?.parameters.find(({ name }) => name === "DESCRIPTIONS")?.description).toBe("note");
  });
  it("end at a pointer of 0", () => {
    const file = parseC3d(pointing("DATA_START", () => 0));
    expect(file.groups.find(({ name }) => name === "POINT")?.parameters.map(({ name }) => name)).toEqual([
      "USED",
      "FRAMES",
      "DATA_START",
    ]);
  });
  it("with sizes that no file holds are refused before anything is made", () => {
    const sizes = (...dimensions: number[]) => {
      const bytes = small.slice();
      const at = placeOf(bytes, 3, "CORNERS") + 2 + "CORNERS".length + 3;
      bytes[at] = dimensions.length;
      dimensions.forEach((one, k) => {
        bytes[at + 1 + k] = one;
      });
      return bytes;
    };
    refused(sizes(255, 255, 255), /255 × 255 × 255 need 66325500 bytes/);
    refused(sizes(...new Array<number>(40).fill(255)), /"CORNERS"/);
    // A zero makes the list empty, whatever the others say.
    expect(() => parseC3d(sizes(0, 255, 255))).not.toThrow();
  });
  it("of an unknown type are left out, with a caution", () => {
    const bytes = small.slice();
    bytes[placeOf(bytes, 3, "ORIGIN") + 2 + "ORIGIN".length + 2] = 3;
    const file = parseC3d(bytes);
    expect(file.cautions.map(({ code }) => code)).toEqual(["parameter-type-unknown"]);
  });
  it("that come twice count once, with a caution", () => {
    const bytes = small.slice();
    // BITS of the group becomes a second USED.
    bytes.set(
      [..."USED"].map((letter) => letter.charCodeAt(0)),
      placeOf(bytes, 2, "BITS") + 2,
    );
    const file = parseC3d(bytes);
    expect(file.analogue.channels).toHaveLength(6);
    expect(file.cautions.map(({ code }) => code)).toEqual(["parameter-repeated"]);
  });
});

describe("sizes and numbers", () => {
  const word = (number: number, value: number, from = small) => {
    const bytes = from.slice();
    new DataView(bytes.buffer).setUint16(2 * (number - 1), value, true);
    return bytes;
  };
  it("absurd counts are refused by the length of the file", () => {
    const both = patched(word(2, 65535), 1, "USED", (data) => data.setUint16(0, 65535, true));
    refused(both, /frame 1: the file ends within it/);
    refused(
      patched(small, 1, "FRAMES", (data) => data.setUint16(0, 65000, true)),
      /65000 frames/,
    );
    refused(
      patched(small, 1, "FRAMES", (data) => data.setUint16(0, 0, true)),
      /no frame/,
    );
    refused(
      patched(word(9, 60000), 1, "DATA_START", (data) => data.setUint16(0, 60000, true)),
      /frame 1/,
    );
    refused(
      patched(word(9, 1), 1, "DATA_START", (data) => data.setUint16(0, 1, true)),
      /block 1, where the header is/,
    );
  });
  it("a rate of 0 in header and parameters, a scale that is no number, no sample in a frame", () => {
    const zero = small.slice();
    new DataView(zero.buffer).setFloat32(20, 0, true);
    refused(
      patched(zero, 1, "RATE", (data) => data.setFloat32(0, 0, true)),
      /POINT:RATE/,
    );
    refused(
      patched(small, 2, "SCALE", (data) => data.setUint32(4, 0x7fc00000, true)),
      /ANALOG:SCALE: value 2/,
    );
    refused(
      patched(small, 1, "SCALE", (data) => data.setUint32(0, 0x7f800000, true)),
      /POINT:SCALE/,
    );
    const none = word(10, 0);
    refused(
      patched(none, 2, "RATE", (data) => data.setFloat32(0, 0, true)),
      /no sample in a frame/,
    );
  });
  it("positions that are no finite numbers are gaps", () => {
    const bytes = bytesOf("worked/intel_float.c3d");
    const start = 512 * ((bytes[16] as number) - 1);
    new DataView(bytes.buffer).setFloat32(start + 4, Number.POSITIVE_INFINITY, true);
    const { x, y, residual } = parseC3d(bytes).points[0] as {
      x: Float64Array;
      y: Float64Array;
      residual: Float64Array;
    };
    expect([x[0], y[0], residual[0]]).toEqual([Number.NaN, Number.NaN, Number.NaN]);
    expect(x[1]).toBe(110);
  });
});
