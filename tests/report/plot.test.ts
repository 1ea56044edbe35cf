import { readFileSync } from "node:fs";
import { expect, it } from "vitest";

it("the door to the plotting packages holds re-exports of them and nothing else", () => {
  const lines = readFileSync(new URL("../../src/report/plot.ts", import.meta.url), "utf8")
    .trim()
    .split("\n");
  expect(lines.length).toBeGreaterThan(0);
  for (const line of lines) expect(line).toMatch(/^export \{ [\w, ]+ \} from "d3-(?:scale|shape)";$/);
});
