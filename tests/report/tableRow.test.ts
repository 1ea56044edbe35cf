import { expect, it } from "vitest";
import { type Column, tableRow } from "../../src/report/text/tableRow.js";

const COLUMNS: readonly Column[] = [
  { heading: "", width: 8, left: true },
  { heading: "unit", width: 9, left: true },
  { heading: "normalised", width: 6 },
];

it("2026-11-25: a cell one letter too long broke its row: it takes blanks of the cell before it, and ends in its column", () => {
  const [short = ""] = tableRow(COLUMNS, ["  Mass", "N s", "0.1 BW"]);
  const [long = ""] = tableRow(COLUMNS, ["  Mass", "N s", "-0.0001 BW s"]);
  expect(short).toBe("  Mass   N s       0.1 BW");
  expect(long).toBe("  Mass   N s -0.0001 BW s");
  expect(long).toHaveLength(short.length);
});

it("without blanks to take the row grows, and loses no letter", () => {
  expect(tableRow(COLUMNS, ["  Mass", "steps/min", "-0.0001 BW s"])).toEqual([
    "  Mass   steps/min -0.0001 BW s",
  ]);
});
