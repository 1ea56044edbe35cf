import fc from "fast-check";
import { expect, it } from "vitest";
import { LARGEST_TEXT, type ReadCsvOptions, readCsv, readCsvStream } from "../../../src/io/index.js";
import { fixtureBytes, force, refusal } from "./fixtures.js";

/** Bytes in parts that end at the places given. */
async function* partsOf(bytes: Uint8Array, places: readonly number[]): AsyncGenerator<Uint8Array> {
  let from = 0;
  for (const place of [...places].sort((one, two) => one - two)) {
    yield bytes.subarray(from, place);
    from = place;
  }
  yield bytes.subarray(from);
}

const encode = (text: string) => new TextEncoder().encode(text);
const row = (i: number) => `${(i / 500).toFixed(3)},${(Math.sin(i) * 900).toFixed(2)},"${i % 7}",é${i}`;
/** Longer than several of the pieces that the reader works on; quoted, with line ends and marks of every sort. */
const long = `\uFEFF# mass: 70 kg\r\n"time [s]","up\r\n[N]",right [N],note\r\n${Array.from({ length: 12_000 }, (_, i) => row(i)).join("\r\n")}\r\n# grade: 0.01`;
const utf16 = Uint8Array.from({ length: 2 * long.length }, (_, i) => {
  const unit = long.charCodeAt(i >> 1);
  return i % 2 === 0 ? unit & 255 : unit >> 8;
});
const latin1 = Uint8Array.from({ length: long.length - 1 }, (_, i) => long.charCodeAt(i + 1) & 255);

const cases: readonly (readonly [string, Uint8Array, ReadCsvOptions])[] = [
  ["UTF-8 with marks and CRLF, half a megabyte", encode(long), { ignore: ["note"] }],
  ["UTF-16", utf16, { ignore: ["note"] }],
  ["Latin-1", latin1, { ignore: ["note"] }],
  ["decimal commas", fixtureBytes("../io/python-semicolon-decimal-comma.csv"), {}],
  [
    "two rows of names, blank cells",
    fixtureBytes("bom-blank-cells.csv"),
    {
      header: 2,
      columns: { t: "time", "*": "other:*" },
      units: { t: "s" },
      verticalForce: "optional",
    },
  ],
  [
    "numbers alone",
    fixtureBytes("jump-600hz.txt"),
    { header: 0, columns: { 1: "up" }, units: { 1: "N" }, sampleRate: 600 },
  ],
];

it.each(cases)(
  "property: %s, cut anywhere, gives the very recording of the whole",
  async (_, bytes, options) => {
    const whole = readCsv(bytes, options);
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.integer({ min: 0, max: bytes.length }), { maxLength: 40 }),
        async (places) => {
          expect(await readCsvStream(partsOf(bytes, places), options)).toStrictEqual(whole);
        },
      ),
      { numRuns: 12, seed: 20 },
    );
  },
);

it("byte by byte, too", async () => {
  const bytes = encode('\uFEFF# mass: 70 kg\r\n"time [s]",up [N],é\r\n0,1,"a""b\r\n"\r\n1,2,日本\r\n');
  const every = Array.from({ length: bytes.length }, (_, i) => i);
  const options = { ignore: ["é"] };
  const recording = await readCsvStream(partsOf(bytes, every), options);
  expect(recording).toStrictEqual(readCsv(bytes, options));
  expect(force(recording, "up")).toEqual([1, 2]);
});

it("a text and its bytes give the same, in UTF-8 and UTF-16 of either order", () => {
  const options = { ignore: ["note"] };
  const { cautions, ...text } = readCsv(long, options);
  expect(text.channels[0]?.samples).toHaveLength(12_000);
  expect(cautions).toEqual([]);
  const swapped = utf16.map((_, i) => utf16[i ^ 1] as number);
  for (const bytes of [encode(long), utf16, swapped]) {
    expect(readCsv(bytes, options)).toStrictEqual({ cautions, ...text });
  }
});

it("Latin-1 is said to be no UTF-8, with its first byte", () => {
  const recording = readCsv(
    Uint8Array.from("up [N],\xB5V\n1,2\n", (letter) => letter.charCodeAt(0)),
    {
      sampleRate: 1,
      columns: { µV: "other:µV" },
    },
  );
  expect(recording.channels[1]?.name).toBe("µV");
  expect(recording.cautions).toEqual([
    expect.objectContaining({ code: "not-utf-8", where: "byte 8", values: { byte: 8 } }),
  ]);
});

it.each<[string, number[]]>([
  ["a form longer than needed", [0xc0, 0xaf]],
  ["a surrogate", [0xed, 0xa0, 0x80]],
  ["a character beyond the last", [0xf4, 0x90, 0x80, 0x80]],
  ["a first byte without its second", [0xc3]],
  ["a second byte without a first", [0xa9]],
])("property: %s is Latin-1, wherever the bytes are cut", async (_, odd) => {
  const bytes = Uint8Array.from([...encode("up [N],é\n1,"), ...odd]);
  const options = { sampleRate: 1, ignore: ["é"] };
  const whole = readCsv(bytes, options);
  expect(whole.cautions[0]).toMatchObject({ code: "not-utf-8", values: { byte: 13 } });
  for (let place = 0; place <= bytes.length; place++) {
    expect(await readCsvStream(partsOf(bytes, [place]), options)).toStrictEqual(whole);
  }
});

it("refuses the same as a whole, at the same place, as a rejected promise", async () => {
  const bytes = encode(long.replace(row(11_000), "22.000,oops,1,n"));
  const options = { ignore: ["note"] };
  const error = refusal(() => readCsv(bytes, options));
  expect(error.where).toBe('line 11004, column 2 "up [N]"'.replace("up [N]", "up\\n[N]"));
  await expect(readCsvStream(partsOf(bytes, [70_000, 70_001, 200_000]), options)).rejects.toMatchObject({
    code: error.code,
    message: error.message,
  });
});

it.each<[string, unknown, ReadCsvOptions | undefined, string]>([
  ["an array", [new Uint8Array(1)], {}, "wrong-type"],
  ["nothing", null, {}, "wrong-type"],
  [
    "parts of text",
    {
      async *[Symbol.asyncIterator]() {
        yield "up [N]";
      },
    },
    {},
    "wrong-type",
  ],
  ["no parts", partsOf(new Uint8Array(0), []), {}, "unreadable-file"],
  ["a wrong option", partsOf(new Uint8Array(0), []), { skip: -1 }, "out-of-range"],
])("refuses %s", async (_, parts, options, code) => {
  await expect(readCsvStream(parts as AsyncIterable<Uint8Array>, options)).rejects.toMatchObject({ code });
});

it("passes on what the stream itself throws", async () => {
  async function* broken(): AsyncGenerator<Uint8Array> {
    yield encode("up [N]\n");
    throw new Error("the line was cut");
  }
  await expect(readCsvStream(broken(), { sampleRate: 1 })).rejects.toThrow("the line was cut");
});

it("more than 256 MB at once is refused before it is read, with the way to read it", () => {
  const start = performance.now();
  const error = refusal(() => readCsv(new Uint8Array(LARGEST_TEXT + 1)));
  expect(error).toMatchObject({ code: "out-of-range", argument: "text" });
  expect(error.message).toContain("readCsvStream");
  expect(performance.now() - start).toBeLessThan(1000);
});
