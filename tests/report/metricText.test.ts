import { describe, expect, it } from "vitest";
import { CATALOGUE, METRIC_EXPLANATIONS, type Metric, metricById } from "../../src/metrics/index.js";
import { catalogueText, metricText } from "../../src/report/index.js";

const flat = (text: string) => text.replace(/\s+/g, " ");
const widest = (text: string) => Math.max(...text.split("\n").map((line) => [...line].length));

describe("a metric on a page", () => {
  it.each(CATALOGUE.map((entry) => [entry.id, entry] as const))(
    "%s: definition, formula, limits, need and source, within 80 columns",
    (id, entry) => {
      const text = metricText(entry);
      expect(widest(text)).toBeLessThanOrEqual(80);
      expect(flat(text)).toContain(flat(entry.definition));
      expect(flat(text)).toContain(flat(entry.source));
      expect(text).toMatch(/^Formula {10}\S/m);
      expect(text).toMatch(/^Limits {11}\S/m);
      expect(text).toMatch(/^Needs {12}the vertical force/m);
      expect(METRIC_EXPLANATIONS[id]?.formula.length).toBeGreaterThan(5);
    },
  );

  it("gives what raises and lowers it with the source beside it", () => {
    const text = flat(metricText(metricById("contactTime")));
    expect(text).toContain(
      "Lowered by a higher speed: from 0.280 s at 2.2 m/s to 0.190 s at 5.0 m/s [Kipp, Grabowski & Kram 2018",
    );
    expect(metricText(metricById("stepWidth"))).not.toMatch(/Raised by|Lowered by/);
  });

  it("lists options with their defaults and the words that may stand there, those of a base first", () => {
    const text = flat(metricText(metricById("legStiffness")));
    expect(text).toMatch(/Options How the leg spring is come by\. method: .*legLength: .*sweep: /);
    expect(text).toContain("speed by default, one of speed, centre-of-pressure");
    expect(metricText(metricById("contactTime"))).not.toContain("Options");
  });

  it("leaves out what is not known of an entry of one's own, and takes it where it is stated", () => {
    const own: Metric = { ...metricById("contactTime"), id: "ownMetric" };
    expect(metricText(own)).not.toMatch(/Formula|Limits|Lowered by/);
    const stated = metricText(own, {
      explanations: { ownMetric: { formula: "a + b", limits: "none", optionsOf: "", options: [] } },
      influences: { ownMetric: [{ effect: "raises", what: "haste", source: "common practice" }] },
    });
    expect(stated).toMatch(/^Formula {10}a \+ b$/m);
    expect(stated).toMatch(/^Raised by {8}haste \[common practice\]$/m);
  });

  it("refuses an option it does not know", () => {
    expect(() => metricText(metricById("cadence"), { colour: "red" } as object)).toThrow(
      expect.objectContaining({ code: "unknown-option" }),
    );
  });
});

it("the list gives every metric with unit, definition and source, within 80 columns", () => {
  const text = catalogueText(CATALOGUE);
  expect(widest(text)).toBeLessThanOrEqual(80);
  for (const { id, unit, definition, source } of CATALOGUE) {
    expect(text).toMatch(new RegExp(`^  ${id}${unit === "1" ? "" : ` \\[${unit}\\]`}(,|$)`, "m"));
    expect(flat(text)).toContain(`${flat(definition)} Source: ${flat(source)}`);
  }
});
