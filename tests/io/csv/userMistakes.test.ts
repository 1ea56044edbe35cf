import { describe, expect, it } from "vitest";
import { readCsv, readCsvStream, writeCsv } from "../../../src/io/index.js";
import { force, refusal } from "./fixtures.js";

const RATE = { sampleRate: 100 };

describe("2026-11-25: a force a thousand million times too large was analysed, as a runner of 35 690 067 454 kg", () => {
  const rows = (cell: string, heading = "up [N]") => `${heading}\n700\n${cell}\n701`;
  it.each<[string, string, string]>([
    ["up [N]", "1.2e12", "1200000000000 N"],
    ["up [N]", "-100001", "-100001 N"],
    ["up [N]", "1e300", "1e+300 N"],
  ])("%s of %s is refused with its place", (heading, cell, shown) => {
    expect(refusal(() => readCsv(rows(cell, heading), RATE))).toMatchObject({
      code: "out-of-range",
      argument: "units",
      where: `line 3, column 1 "${heading}"`,
      message: `line 3, column 1 "${heading}" holds ${shown}, and no recording goes beyond 100000 N: is its unit right, or is the number damaged?`,
    });
  });
  it("so are lengths and moments beyond a million; what is kept as it is may be anything", () => {
    const text = (heading: string, cell: string) => `up [N],${heading}\n700,${cell}\n701,0`;
    expect(refusal(() => readCsv(text("cop_right [m]", "1000001"), RATE)).where).toContain(
      "line 2, column 2",
    );
    expect(refusal(() => readCsv(text("free_moment [N m]", "-1e7"), RATE)).code).toBe("out-of-range");
    expect(refusal(() => readCsv(text("marker:knee:up [m]", "2e6"), RATE)).code).toBe("out-of-range");
    expect(readCsv(text("other:count", "1e12"), RATE).channels[1]?.samples[0]).toBe(1e12);
    expect([...force(readCsv(rows("100000"), RATE), "up")]).toEqual([700, 100_000, 701]);
    // Newtons under a heading of kilonewtons.
    expect(refusal(() => readCsv(rows("701", "up [kN]"), RATE)).message).toContain("holds 700000 N,");
  });
});

describe("2026-11-25: units stated by a pattern for headings with other units were ignored in silence", () => {
  const text = "up [N],cop_forward [m],cop_right [m]\n700,20,35\n701,21,36";
  it("is refused, with the heading to be corrected", () => {
    const error = refusal(() => readCsv(text, { ...RATE, units: { "cop_*": "mm" } }));
    expect(error).toMatchObject({ code: "conflict", argument: "units" });
    expect(error.message).toMatch(/^line 1, column 2 "cop_forward \[m\]".*or correct the heading/);
    expect(error.message).toBe(
      refusal(() => readCsv(text, { ...RATE, units: { cop_forward: "mm" } })).message,
    );
  });
  it("is said where the pattern serves other columns", () => {
    const some = text.replace("cop_right [m]", "cop_right");
    const recording = readCsv(some, { ...RATE, units: { "cop_*": "mm" } });
    expect(recording.channels.map(({ samples }) => samples[0])).toEqual([700, 20, 0.035]);
    expect(recording.cautions).toEqual([
      expect.objectContaining({
        code: "heading-over-option",
        where: "cop_forward",
        message: expect.stringContaining("correct the heading if it is wrong"),
      }),
    ]);
    expect(readCsv(some, { ...RATE, units: { "cop_*": "m" } }).cautions).toEqual([]);
  });
});

describe("2026-11-25: decimal commas were refused without a hint that they are", () => {
  it("in a table of one column", () => {
    const text = "up [N]\n0,5\n700,25\n";
    expect(refusal(() => readCsv(text, RATE)).message).toBe(
      'line 2 has 2 cells and the header names 1 column; every row must have one cell for each; a decimal comma? State decimal: "," and delimiter: ";"',
    );
    expect([...force(readCsv(text, { ...RATE, decimal: ",", delimiter: ";" }), "up")]).toEqual([0.5, 700.25]);
  });
  it("between commas that divide the cells", () => {
    const message = refusal(() => readCsv("time [s],up [N],right [N],forward [N]\n0,001,-10,0,5\n")).message;
    expect(message).toMatch(/^line 2 has 5 cells .*decimal commas\? Write the numbers with a point/);
  });
  it("in quotes", () => {
    const text = 'time [s],up [N]\n"0,000","700,5"\n"0,010","701,5"\n';
    expect(refusal(() => readCsv(text)).message).toMatch(
      /^line 2, column 1 "time \[s\]": "0,000" is no number;.*a decimal comma\? State decimal: ","$/,
    );
    expect([...force(readCsv(text, { decimal: "," }), "up")]).toEqual([700.5, 701.5]);
  });
  it("is not guessed where a row is too short, or a cell holds a word", () => {
    expect(refusal(() => readCsv("up [N],right [N]\n700,1\n7", RATE)).message).not.toContain("comma");
    expect(refusal(() => readCsv("up [N]\n700\n7,x", RATE)).message).not.toContain("comma");
    expect(refusal(() => readCsv('up [N]\n"7;5"', { ...RATE, delimiter: "," })).message).not.toContain(
      "comma",
    );
  });
});

it("2026-11-25: a blank heading was told to be stated by its name, which it has not", () => {
  const text = "up [N],,right [N]\n700,1,2\n701,1,3";
  const error = refusal(() => readCsv(text, RATE));
  expect(error.message).toBe(
    'line 1, column 2 "" has no name; where the names stand further down, state skip: 1, or leave the column out with ignore: ["2"], or say which it is with columns: { "2": "up" }',
  );
  // What it suggests is taken.
  expect(readCsv(`a title,,\n${text}`, { ...RATE, skip: 1, ignore: ["2"] }).channels).toHaveLength(2);
  expect(readCsv(text, { ...RATE, ignore: ["2"] }).channels).toHaveLength(2);
  expect(readCsv(text, { ...RATE, columns: { 2: "other:third" } }).channels).toHaveLength(3);
});

it("2026-11-25: a mass of the file and one of an option stood beside each other without unit, one with 14 digits", () => {
  const text = "# mass: 82.7 kg\n# sample rate: 100 Hz\n# surface: belt\nup [N]\n700\n701";
  const { cautions } = readCsv(text, { mass: 82.55381134000001, sampleRate: 101, surface: "ground" });
  expect(cautions.map(({ message }) => message)).toEqual([
    "the file states mass 82.7 kg, the option 82.5538 kg; the option was used",
    "the file states surface belt, the option ground; the option was used",
    "the file states sampleRate 100 Hz, the option 101 Hz; the option was used",
  ]);
});

it('2026-11-25: a converted table held cells "-0"', () => {
  const axes = { x: "backward", y: "left", z: "up" } as const;
  const recording = readCsv("Fx [N],Fy [N],Fz [N]\n0,0,700\n0,-0,-0", { ...RATE, axes });
  for (const { samples } of recording.channels) expect(samples.some((one) => Object.is(one, -0))).toBe(false);
  const [up] = recording.channels.filter(({ direction }) => direction === "up");
  const turned = { ...recording, channels: [{ ...up, samples: new Float64Array([-0, 700]) } as never] };
  expect(writeCsv(turned).split("\n").slice(-3)).toEqual(["0,0", "0.01,700", ""]);
});

it.each<[unknown, RegExp]>([
  [new ArrayBuffer(8), /an ArrayBuffer; .*new Uint8Array\(buffer\)/],
  [null, /is null;/],
  [7, /a number;/],
  [{}, /an object;/],
])("2026-11-25: bytes of a wrong type were called an object; %s", async (given, message) => {
  expect(refusal(() => readCsv(given as never)).message).toMatch(message);
  async function* parts() {
    yield given as never;
  }
  await expect(readCsvStream(parts())).rejects.toMatchObject({ code: "wrong-type" });
});
