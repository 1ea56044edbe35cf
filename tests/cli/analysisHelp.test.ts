import { expect, it } from "vitest";
import { CATALOGUE } from "../../src/metrics/index.js";
import { command } from "./command.js";

it("help fits 80 columns, and that of compare names the metrics that the answer is read from", async () => {
  for (const name of ["analyse", "compare"]) {
    const { out } = await command(name, "--help");
    expect(Math.max(...out.split("\n").map((line) => [...line].length))).toBeLessThanOrEqual(80);
    for (const option of [
      "gait",
      "threshold",
      "event-cutoff",
      "air-drag",
      "metrics",
      "centre-of-mass",
      "feet",
    ]) {
      expect(out).toContain(`--${option} <`);
    }
  }
  const { out } = await command("compare", "--help");
  const primary = CATALOGUE.filter((metric) => metric.primary).map(({ id }) => id);
  expect(primary).toHaveLength(4);
  for (const id of primary) expect(out).toContain(id);
});
