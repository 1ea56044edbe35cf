import { describe, expect, it } from "vitest";
import { differenceFigure } from "../../../src/report/index.js";
import { compared, exampleComparison } from "../examples.js";
import { isBalanced, textOf } from "../tags.js";

const number = (text: string | undefined) => Number(text);
/** Horizontal places: of the dots, and of the ticks by label. */
const dotsOf = (svg: string) => [...svg.matchAll(/<circle cx="([\d.]+)"/g)].map(([, x]) => number(x));
const tickOf = (svg: string, label: string) =>
  number(
    new RegExp(`<text x="([\\d.]+)"[^>]*text-anchor="middle">${label.replace("+", "\\+")}</text>`).exec(
      svg,
    )?.[1],
  );

describe("differences of the three components", () => {
  const svg = differenceFigure(exampleComparison());
  const text = textOf(svg);

  it("is one well-formed SVG element that says in words what it shows", () => {
    expect(isBalanced(svg)).toBe(true);
    expect(text).toMatch(/Vertical, peak vertical force: per step −6\.3 % \(−6\.9 to −5\.6\), lower; per km/);
  });

  it("keeps the order of the components and writes reading and numbers beside each line", () => {
    expect(text).toMatch(/Vertical.*Anteroposterior.*Mediolateral/s);
    expect(text).toContain("per step: lower");
    expect(text).toContain("per km: unsettled");
    expect(text).toContain("+17.2 % (+13.5 to +20.9)");
  });

  it("sets each dot at its per cent", () => {
    const perPercent = (tickOf(svg, "+20") - tickOf(svg, "0")) / 20;
    const percents = dotsOf(svg).map((x) => (x - tickOf(svg, "0")) / perPercent);
    const truth = [1603 / 1710, 19.1 / 16.3, 8.12 / 7.03].map((ratio) => 100 * (ratio - 1));
    truth.forEach((percent, i) => {
      expect(percents[2 * i]).toBeCloseTo(percent, 0);
      expect(percents[2 * i + 1]).toBeCloseTo(percent, 0);
    });
  });

  it("names both levels", () => {
    expect(text).toContain("95 % interval");
    expect(text).toContain("99 % interval, for readings");
  });
});

it("names a component that was not recorded, without a line", () => {
  const own = exampleComparison();
  const components = own.components.map((component) =>
    component.component === "mediolateral"
      ? { ...component, metric: null, reading: null, missing: "not recorded" as const }
      : component,
  );
  const svg = differenceFigure({ ...own, components });
  expect(textOf(svg)).toContain(": not recorded");
  expect(dotsOf(svg)).toHaveLength(4);
});

it("names a component that was recorded and not compared, and a metric that grows where the load falls", () => {
  const own = exampleComparison();
  const [vertical, , mediolateral] = own.components;
  if (vertical === undefined || mediolateral === undefined) throw new Error("three components are compared");
  const text = textOf(
    differenceFigure({
      ...own,
      metrics: own.metrics.slice(0, 2),
      components: [
        { ...vertical, moreLoad: "lower" },
        { ...mediolateral, missing: "not compared" },
      ],
    }),
  );
  expect(text).toContain("peak vertical force (less of it is more load)");
  expect(text).toContain(": not compared");
});

it("leaves out a line where the baseline is zero", () => {
  const own = exampleComparison();
  const metrics = [compared("peakVerticalForce", "N", 0, 10, 1), ...own.metrics.slice(1)];
  expect(dotsOf(differenceFigure({ ...own, metrics }))).toHaveLength(4);
});

it("refuses a comparison without any component", () => {
  expect(() => differenceFigure({ ...exampleComparison(), metrics: [] })).toThrow(
    expect.objectContaining({ code: "missing-channel" }),
  );
});
