import { describe, expect, it } from "vitest";
import { readCsv } from "../../../src/io/index.js";
import { refusal } from "./fixtures.js";

const RATE = { sampleRate: 100 };
const up = (text: string, options = {}) => [
  ...(readCsv(text, { ...RATE, ...options }).channels.find(({ direction }) => direction === "up")?.samples ??
    []),
];
/** A step of 0.25 s in whole newtons, in flight before and behind. */
const step = (peak: number) =>
  Array.from({ length: 35 }, (_, i) => Math.max(0, Math.round(peak * Math.sin((Math.PI * (i - 5)) / 25))));
const apart = (value: number) =>
  value < 1000 ? String(value) : `${Math.floor(value / 1000)}.${String(value % 1000).padStart(3, "0")}`;

describe("2026-11-25: 1.613 beside 613, thousands set apart by a point, was read as 1.613 N", () => {
  it.each([";", "\t", "|", " "])("is refused in a table divided by %j", (delimiter) => {
    const text = `up [N]${delimiter}right [N]\n${["480", "613", "1.613", "1.702", "911"].map((cell) => `${cell}${delimiter}12`).join("\n")}`;
    const error = refusal(() => readCsv(text, RATE));
    expect(error.code).toBe("unreadable-file");
    expect(error.message).toMatch(
      /^line 4 has a point inside a number that seems to set thousands apart.*decimal: "\."/,
    );
    expect(error.argument).toBe("decimal");
    expect(up(text, { decimal: "." })).toEqual([480, 613, 1.613, 1.702, 911]);
  });
  it.each([1100, 1613, 2000, 3000])("a whole step of %i N is refused", (peak) => {
    const cells = step(peak).map(apart);
    expect(cells.some((cell) => cell.includes("."))).toBe(true);
    expect(
      refusal(() => readCsv(`up [N];right [N]\n${cells.map((cell) => `${cell};0`).join("\n")}`, RATE))
        .argument,
    ).toBe("decimal");
    expect(
      refusal(() =>
        readCsv(
          `up [N]\n${cells
            .map((cell) => `-${cell}`)
            .join("\n")
            .replaceAll("-0", "0")}`,
          { ...RATE, delimiter: ";" },
        ),
      ).argument,
    ).toBe("decimal");
  });
  it("so are blanks around the cells, and gaps", () => {
    const text = "up [N];right [N]\n 613 ;1\n;1\n 1.613 ;1\n 1.700;1\n980;1";
    expect(refusal(() => readCsv(text, RATE)).argument).toBe("decimal");
  });
});

describe("points stay decimal signs", () => {
  it.each<[string, readonly string[]]>([
    ["where every number has three decimals", ["613.200", "1.613", "2.000", "950.125"]],
    ["where a number below 1 has one", ["613", "1.613", "0.125", "613"]],
    ["where a number has another count of decimals", ["613", "1.613", "12.5", "613"]],
    ["where thousands stand without", ["613", "1.613", "1613", "613"]],
    ["where whole numbers are near to those with a point", ["2", "1.613", "1.875", "2", "2.125", "3"]],
    ["where whole numbers are zeros of flight", ["0", "0", "1.613", "2.125", "1.002", "0"]],
    ["where no number has none", ["613.112", "1.613", "613.250"]],
    ["where no number has one", ["613", "999", "1", "613"]],
    ["where all whole numbers are zeros, which leaves it open", ["0", "1.613", "2.702", "1.128", "0"]],
    ["where jumps and steps are as many", ["613", "1.613", "2", "1.750"]],
  ])("%s", (_, cells) => {
    const text = `up [N];right [N]\n${cells.map((cell) => `${cell};1`).join("\n")}`;
    expect(up(text)).toEqual(cells.map(Number));
  });
  it("where another column proves it", () =>
    expect(up("up [N];right [N]\n613;1.5\n1.613;2\n1.700;2\n980;3")).toEqual([613, 1.613, 1.7, 980]));
  it("where a comma divides the cells", () =>
    expect(up("up [N],right [N]\n613,1\n1.613,1\n980,1")).toEqual([613, 1.613, 980]));
});
