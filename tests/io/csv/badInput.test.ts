import { describe, expect, it } from "vitest";
import { readCsv, readCsvStream } from "../../../src/io/index.js";
import { force, refusal } from "./fixtures.js";

/** The refusal of a call, with the time that it took and the memory that was in use at its end. */
function measured(call: () => unknown): { readonly error: ReturnType<typeof refusal>; readonly ms: number } {
  const start = performance.now();
  const error = refusal(call);
  return { error, ms: performance.now() - start };
}

const MEGABYTE = 1_048_576;

describe("what has no end is refused soon", () => {
  it.each([
    [
      "a quotation mark never closed, 100 MB of rows behind it",
      `up [N]\n1\n"2\n${"3\n".repeat(50 * MEGABYTE)}`,
    ],
    ["one line of 100 MB", `up [N]\n1\n${"7".repeat(100 * MEGABYTE)}`],
    ["a comment of 100 MB", `up [N]\n1\n#${"7".repeat(100 * MEGABYTE)}`],
    ["a row of 50 million cells", `up [N]\n1\n${"1,".repeat(50 * MEGABYTE)}`],
  ])("%s", (_, text) => {
    const { error, ms } = measured(() => readCsv(text, { sampleRate: 1 }));
    expect(error).toMatchObject({ code: "unreadable-file", where: "line 3" });
    expect(ms).toBeLessThan(5000);
  });

  it("a stream that never ends, by the row that it does not", async () => {
    let parts = 0;
    async function* endless(): AsyncGenerator<Uint8Array> {
      for (;;) {
        parts++;
        yield new Uint8Array(MEGABYTE).fill(0x31);
      }
    }
    await expect(readCsvStream(endless(), { sampleRate: 1 })).rejects.toMatchObject({
      code: "unreadable-file",
    });
    expect(parts).toBeLessThan(5);
  });

  it.each([
    ["before blanks and cells", `up [N]\n1\n"${'x"x'.repeat(20_000)}${" ".repeat(40_000)},`],
    ["in every cell", `up [N]\n1\n${'"a"b,'.repeat(200_000)}`],
    ["twice, and so on", `up [N]\n1\n"${'""'.repeat(500_000)}`],
  ])("quotation marks %s", (_, text) => {
    const { error, ms } = measured(() => readCsv(text, { sampleRate: 1 }));
    expect(error).toMatchObject({ code: "unreadable-file", where: "line 3" });
    expect(ms).toBeLessThan(3000);
  });
});

describe("what is very wide or very long is read or refused soon", () => {
  it("80 000 names are too many columns to read, and can be left out", () => {
    const names = Array.from({ length: 80_000 }, (_, i) => `other:${i}`).join();
    const text = `up [N],${names}\n1${",2".repeat(80_000)}`;
    expect(text.length).toBeLessThan(2 * MEGABYTE);
    const { error, ms } = measured(() => readCsv(text, { sampleRate: 1 }));
    expect(error).toMatchObject({ code: "out-of-range", argument: "ignore" });
    expect(ms).toBeLessThan(3000);
    expect(force(readCsv(text, { sampleRate: 1, ignore: ["other*"] }), "up")).toEqual([1]);
  });

  it("a million comments between a million rows", () => {
    const text = `up [N]\n${"1\n# x\n".repeat(MEGABYTE)}x`;
    const { error, ms } = measured(() => readCsv(text, { sampleRate: 1 }));
    expect(error.where).toBe(`line ${2 * MEGABYTE + 2}, column 1 "up [N]"`);
    expect(ms).toBeLessThan(15_000);
  });

  it("a million statements of one thing, all alike", () => {
    const text = `${"# mass: 70 kg\n".repeat(MEGABYTE)}up [N]\n1`;
    expect(readCsv(text, { sampleRate: 1 }).subject.mass).toBe(70);
  });

  it("a million line ends before and behind a table", () => {
    const ends = "\r\n".repeat(MEGABYTE);
    expect(force(readCsv(`${ends}up [N]\n1${ends}`, { sampleRate: 1 }), "up")).toEqual([1]);
  });
});

describe("what no text holds", () => {
  it.each([
    ["in a cell", "up [N]\n1\n2\0\n", "line 3"],
    ["in a name", "u\0p [N]\n1\n", "line 1"],
    ["far behind", `up [N]\n${"1\n".repeat(100_000)}\0`, "line 100002"],
    ["behind comments", `${"# x\n".repeat(30_000)}\0`, "line 30001"],
  ])("a NUL character %s", (_, text, where) => {
    const error = refusal(() => readCsv(text, { sampleRate: 1 }));
    expect(error).toMatchObject({ code: "unreadable-file", where });
    expect(error.message).toContain("NUL");
  });

  it("UTF-16 without its mark, and cut within a character", () => {
    const bytes = Uint8Array.from("up [N]\n1\n", (letter) => letter.charCodeAt(0));
    const wide = Uint8Array.from({ length: 2 * bytes.length }, (_, i) =>
      i % 2 ? 0 : (bytes[i >> 1] as number),
    );
    expect(refusal(() => readCsv(wide, { sampleRate: 1 })).message).toContain("UTF-16");
    const marked = Uint8Array.from([0xff, 0xfe, ...wide]);
    expect(force(readCsv(marked, { sampleRate: 1 }), "up")).toEqual([1]);
    expect(refusal(() => readCsv(marked.subarray(0, -1), { sampleRate: 1 })).message).toContain("cut off");
  });

  it("halves of characters pass in names, and are shown as such", () => {
    const text = "up [N],\ud800\n1,2";
    expect(refusal(() => readCsv(text, { sampleRate: 1 })).message).toContain("\\ud800");
    expect(force(readCsv(text, { sampleRate: 1, ignore: ["\ud800"] }), "up")).toEqual([1]);
    expect(refusal(() => readCsv("up [N]\n\udc00", { sampleRate: 1 })).where).toBe(
      'line 2, column 1 "up [N]"',
    );
  });
});

describe("empty and nearly so", () => {
  it.each([
    ["no byte", new Uint8Array(0)],
    ["a byte order mark alone", Uint8Array.from([0xef, 0xbb, 0xbf])],
    ["the mark of UTF-16 alone", Uint8Array.from([0xff, 0xfe])],
    ["half a mark", Uint8Array.from([0xff])],
    ["line ends", "\r\r\n\n"],
    ["names alone", "up [N]"],
    ["names and a row of units", "up\nN\n"],
    ["one of two rows of names", "up [N]\n"],
    ["a comment without its line end", "#"],
  ])("%s", (_, input) => {
    expect(refusal(() => readCsv(input, { sampleRate: 1 })).code).toMatch(
      /^(unreadable-file|missing-channel)$/,
    );
  });
});

it.each<[string, object, string]>([
  ["skip", { skip: 1.5 }, "out-of-range"],
  ["skip", { skip: "2" }, "wrong-type"],
  ["header", { header: 11 }, "out-of-range"],
  ["header", { header: -1 }, "out-of-range"],
  ["unitRow", { unitRow: true }, "out-of-range"],
  ["missing", { missing: "NaN" }, "wrong-type"],
  ["missing", { missing: [null] }, "wrong-type"],
  ["verticalForce", { verticalForce: "no" }, "out-of-range"],
])("refuses a wrong %s: %j", (argument, options, code) => {
  expect(refusal(() => readCsv("up [N]\n1", options))).toMatchObject({ code, argument });
});

it("a number too large for SI units is named by line and column, a marker's and a time's too", () => {
  const text = "up [kN],marker:a:up [km]\n1,1\n1e308,1";
  expect(refusal(() => readCsv(text, { sampleRate: 1 }))).toMatchObject({
    code: "not-finite",
    where: 'line 3, column 1 "up [kN]"',
  });
  expect(refusal(() => readCsv("marker:a:up [km]\n1e308", { sampleRate: 1 })).code).toBe("not-finite");
  expect(refusal(() => readCsv("time [h],up [N]\n0,1\n1e308,1")).code).toBe("not-finite");
});
