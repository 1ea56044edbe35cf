import { describe, expect, it } from "vitest";
import { readRunnersTable } from "../../src/cli/input/readRunnersTable.js";

const read = (text: string, stated = {}) => readRunnersTable(text, "study/runners.csv", stated);

describe("the table of a study", () => {
  it("names a recording of each runner and condition, as seen from its folder", () => {
    expect(read("runner,condition,file\nA. Firth,baseline,a.csv\nA. Firth,Changed,/data/b.c3d\n")).toEqual([
      { runner: "A. Firth", condition: "baseline", path: "study/a.csv", own: {} },
      { runner: "A. Firth", condition: "changed", path: "/data/b.c3d", own: {} },
    ]);
  });

  it("states units in cells or headings, in any order of columns, with blank cells, lines and comments", () => {
    const rows = read(
      '# study of spring\nfile;mass [kg];Speed;condition;runner;footwear;first foot\n\na.csv;70;12 km/h;baseline;1;"road; 250 g";left\n  \nb.csv;;;changed;1;;\n',
      { speed: 3, surface: "belt" },
    );
    expect(rows.map(({ own }) => own)).toEqual([
      {
        mass: 70,
        speed: expect.closeTo(12 / 3.6, 12),
        footwear: "road; 250 g",
        firstFoot: "left",
        surface: "belt",
      },
      { speed: 3, surface: "belt" },
    ]);
  });

  it("takes a byte order mark off and any line ending", () => {
    expect(read("\uFEFFrunner,condition,file\r\n1,baseline,a.csv\r\n")).toHaveLength(1);
  });

  it("parts of one file are rows of their own", () => {
    const table = "runner,condition,file,from,to\n1,baseline,a.csv,0 s,15 s\n1,baseline,a.csv,15 s,30 s\n";
    expect(read(table).map(({ own }) => own)).toEqual([
      { from: 0, to: 15 },
      { from: 15, to: 30 },
    ]);
  });

  const head = "runner,condition,file";
  it.each<[string, string, RegExp]>([
    ["nothing", "", /line 1: the table is empty; .*runner, condition, file/],
    ["comments alone", "# a\n#b\n", /empty/],
    ["headings alone", `${head}\n`, /line 1: no row/],
    ["a column that lacks", "runner,file\n1,a.csv\n", /no column "condition"/],
    [
      "a column that is not known",
      `${head},shoe size\n1,baseline,a.csv,42\n`,
      /"shoe size" is no column of it/,
    ],
    ["a column twice", `${head},Runner\n1,baseline,a.csv,1\n`, /"Runner" stands twice/],
    ["a cell too few", `${head}\n1,baseline\n`, /line 2: it has 2 cells and the headings are 3/],
    ["a cell too many", `${head}\n1,baseline,a.csv,b.csv\n`, /line 2: it has 4 cells/],
    [
      "another condition",
      `${head}\n1,before,a.csv\n`,
      /line 2: its condition is "before"; it must be baseline or changed/,
    ],
    ["no runner", `${head}\n\n,baseline,a.csv\n`, /line 3: its cell "runner" is empty/],
    ["no file", `${head}\n1,baseline,\n`, /its cell "file" is empty/],
    ["a mass without a unit", `${head},mass\n1,baseline,a.csv,70\n`, /line 2: its mass is "70": .*no unit/],
    ["a mass in another unit", `${head},mass [m]\n1,baseline,a.csv,70\n`, /its mass is "70 m"/],
    ["a mass twice with units", `${head},mass [kg]\n1,baseline,a.csv,70 kg\n`, /its mass is "70 kg kg"/],
    [
      "a surface that is none",
      `${head},surface\n1,baseline,a.csv,moon\n`,
      /its surface is "moon": It must be belt or ground/,
    ],
    ["a first foot that is none", `${head},first_foot\n1,baseline,a.csv,both\n`, /its first foot is "both"/],
    [
      "a row twice",
      `${head}\n1,baseline,a.csv\n1,changed,b.csv\n1,baseline,a.csv\n`,
      /line 4: it says the same as line 2/,
    ],
    ["a quotation mark that is not closed", `${head}\n1,baseline,"a.csv\n`, /quotation mark/],
  ])("refuses %s", (_, text, words) => {
    expect(() => read(text)).toThrow(
      expect.objectContaining({ code: "unreadable-file", message: expect.stringMatching(words) }),
    );
  });
});
