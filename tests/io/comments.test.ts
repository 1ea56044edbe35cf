import { expect, it } from "vitest";
import { readCsv } from "../../src/io/index.js";

const read = (...comments: string[]) => readCsv(`${comments.join("\n")}\ntime [s],up [N]\n0,1\n1,2`);
const refused = (comment: string) => {
  try {
    read("# made on a Tuesday", comment);
  } catch (caught) {
    return caught as { code: string; message: string };
  }
  throw new Error("it was read");
};

it("reads mass, height, speed, surface, grade, first foot, footwear and sample rate, however the key is spelled", () => {
  const { subject, speed, surface, grade, firstFoot, footwear, sampleRate } = read(
    "# mass: 70 kg",
    "#Height:1.78m",
    "#  SPEED : 3.3 m/s",
    "# surface: belt",
    "# grade: -0.05",
    "# first_foot: Left",
    "# Footwear: Road shoe, 250 g; drop: 8 mm",
    "# Sample-Rate: 1e0 Hz",
  );
  expect({ ...subject, speed, surface, grade, firstFoot, footwear, sampleRate }).toEqual({
    mass: 70,
    height: 1.78,
    speed: 3.3,
    surface: "belt",
    grade: -0.05,
    firstFoot: "left",
    footwear: "Road shoe, 250 g; drop: 8 mm",
    sampleRate: 1,
  });
});

it("reads comments between and behind the rows, indented, quoted, and closed with delimiters by a table program", () => {
  const text =
    'time [s],up [N]\n# mass: 70 kg,,\n0,1\n"# speed: 3 m/s",\n1,2\n  # surface: ground\n2,3\n# grade: 0';
  const { subject, speed, surface, grade } = readCsv(text);
  expect({ ...subject, speed, surface, grade }).toEqual({ mass: 70, speed: 3, surface: "ground", grade: 0 });
});

it("leaves plain comments alone, also such with colons, commas and quotation marks", () => {
  const recording = read(
    "# runner: Rowan Firth, of the Larch Hill trail club",
    '# note,"a b',
    "#",
    "# 12:30",
    "#: x",
  );
  expect(recording.cautions).toEqual([]);
  expect(recording.subject).toEqual({});
});

it("names a comment that was probably meant, once", () => {
  expect(read("# weight: 690 N", "# weight: 690 N").cautions).toEqual([
    expect.objectContaining({
      code: "comment-not-read",
      where: "line 1",
      message: expect.stringContaining("# mass: 70 kg"),
    }),
  ]);
});

it.each([
  ["# mass: 154 lb", "unit-mismatch", "SI units, here kg"],
  ["# mass: 690 N", "unit-mismatch", "SI units, here kg"],
  ["# speed: 12 km/h", "unit-mismatch", "SI units, here m/s"],
  ["# mass: 11 stone", "unknown-unit", "SI units, here kg"],
  ["# mass: 70", "unknown-unit", "without a unit"],
  ["# grade: 5 %", "unknown-unit", "plain number"],
  ["# mass: heavy", "unreadable-file", "no number"],
  ["# mass: 1.2.3 kg", "unreadable-file", "no number"],
  ["# mass:", "unreadable-file", "no number"],
  ["# surface: track", "unreadable-file", "ground or belt"],
  ["# first foot: both", "unreadable-file", "left or right"],
  ["# mass: 690 kg", "out-of-range", "newtons"],
  ["# mass: -70 kg", "out-of-range", "above 0"],
  ["# height: 178 m", "out-of-range", "centimetres"],
  ["# speed: 20 m/s", "out-of-range", "km/h"],
  ["# grade: 5", "out-of-range", "0.05"],
  ["# sample rate: 0 Hz", "out-of-range", "above 0"],
  ["# footwear:", "out-of-range", "what was on the feet"],
  ["# footwear: road\u001b[31m shoe", "out-of-range", "control characters"],
  ["# footwear: road \u202eshoe", "out-of-range", "control characters"],
  [`# footwear: ${"x".repeat(81)}`, "out-of-range", "81 characters; at most 80"],
])("refuses %j, naming its line", (comment, code, hint) => {
  const error = refused(comment);
  expect(error.code).toBe(code);
  expect(error.message).toContain("line 2");
  expect(error.message).toContain(hint);
});

it("reads footwear that a table program saved again, and names a line of shoes that was probably meant", () => {
  const saved = readCsv('"# footwear: road shoe, 250 g",\ntime [s],up [N]\n0,1\n1,2');
  expect(saved.footwear).toBe("road shoe, 250 g");
  expect(read("# shoes: road shoe").cautions).toEqual([
    expect.objectContaining({ message: expect.stringContaining("# footwear: road shoe") }),
  ]);
});

it("takes a statement twice only where both say the same", () => {
  expect(read("# mass: 70 kg", "# mass: 70.0 kg").subject.mass).toBe(70);
  expect(() => read("# mass: 70 kg", "# mass: 71 kg")).toThrow(
    expect.objectContaining({ code: "unreadable-file" }),
  );
});
