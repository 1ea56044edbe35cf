import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { centreOfMassMotion, externalWork } from "../../src/models/index.js";
import energy from "../fixtures/metrics/energy.json" with { type: "json" }; // SciPy 1.17.1, 400 001 points of one step
import { mirroredRun, running, sampledRun } from "../metrics/runs.js";

const { ground, steps } = sampledRun();
const from = steps[0]?.contact.initialContact as number;
const to = steps[0]?.nextSameSide?.initialContact as number;
const KINDS = ["external", "forward", "vertical", "lateral"] as const;

/** The run on a slope: the same force leans back, so that its parts normal to and along the slope hold the weight. */
function onSlope(grade: number): typeof ground {
  const cos = 1 / Math.hypot(1, grade);
  const { up, forward = up } = ground.force;
  const leaning = forward.map((f, i) => f + grade * cos * (up[i] as number));
  return { ...ground, grade, force: { ...ground.force, up: up.map((f) => cos * f), forward: leaning } };
}

describe("source: SciPy 1.17.1, cumulative trapezoid on 400 001 points of a step of the mirrored run", () => {
  const run = mirroredRun(1000, 1);
  const work = externalWork(run.ground, 0, 0.72, 3, { until: 0.36 });
  it("113.4 J of positive external work a step at 1 kHz, within 0.01 %", () => {
    expect(work.external?.positive).toBeCloseTo(113.4, 1);
    expect(Math.abs((work.external?.positive as number) / energy.external - 1)).toBeLessThan(1e-4);
  });
  it("1.50 J/kg/m", () => {
    expect((work.external?.positive as number) / (70 * 3 * 0.36)).toBeCloseTo(
      energy.externalPerMassAndDistance,
      3,
    );
  });
  it("53.2 J forward, 60.2 J vertical, 0.22 J sideways", () => {
    expect(Math.abs((work.forward?.positive as number) / energy.forward - 1)).toBeLessThan(1e-4);
    expect(Math.abs(work.vertical.positive / energy.vertical - 1)).toBeLessThan(1e-4);
    expect(work.lateral?.positive).toBeCloseTo(energy.lateralRange, 4);
  });
  it("without the belt's speed the forward work all but vanishes: below 1.5 J for 53 J", () => {
    expect(externalWork(run.ground, 0, 0.72, 0, { until: 0.36 }).forward?.positive).toBeLessThan(1.5);
  });
});

describe("independent library: SciPy 1.17.1, degree-1 spline integrated twice, uneven strides, level and 5 % uphill", () => {
  it.each(running.motion)("stride from contact $index, grade $grade", (row) => {
    const { contact, next, nextSameSide } = steps[row.index] as Required<(typeof steps)[number]>;
    const record = onSlope(row.grade);
    const span = [contact.initialContact, nextSameSide.initialContact] as const;
    const step = externalWork(record, ...span, 3, { grade: row.grade, until: next.initialContact });
    const stride = externalWork(record, ...span, 3, { grade: row.grade });
    for (const kind of KINDS) {
      for (const [ours, theirs, fine] of [
        [step[kind], row.atSamples.step[kind], row.between.step[kind]],
        [stride[kind], row.atSamples.stride[kind], row.between.stride[kind]],
      ] as const) {
        expect(ours?.positive).toBeCloseTo(theirs[0] as number, 8);
        expect(ours?.negative).toBeCloseTo(theirs[1] as number, 8);
        // What reading the energy at samples alone misses.
        expect(Math.abs((ours?.positive as number) / (fine[0] as number) - 1)).toBeLessThan(1e-4);
      }
    }
  });
});

describe("closing laws", () => {
  it.each(KINDS)("%s work over a steady level stride adds up to nothing", (kind) => {
    const parts = externalWork(ground, from, to, 3)[kind];
    expect(parts?.positive).toBeGreaterThan(0.2);
    expect((parts?.positive as number) + (parts?.negative as number)).toBeCloseTo(0, 9);
  });
  it("uphill, forward work adds up to the weight lifted: m g sin θ × distance", () => {
    const grade = 0.05;
    const { forward, vertical } = externalWork(onSlope(grade), from, to, 3, { grade });
    const lifted = ((70 * 9.80665 * grade) / Math.hypot(1, grade)) * 3 * (to - from);
    expect(((forward?.positive as number) + (forward?.negative as number)) / lifted).toBeCloseTo(1, 8);
    expect(vertical.positive + vertical.negative).toBeCloseTo(0, 9);
  });
  it("work = change of energy: v at two instants of the motion gives the same joules", () => {
    const until = 0.3;
    const { forward } = externalWork(ground, from, to, 3, { until });
    const motion = centreOfMassMotion(ground, from, to, { speed: 3 });
    const at = motion.time.findIndex((time) => time >= until - 1e-9);
    const v = motion.forward?.velocity as Float64Array;
    const change = (motion.mass / 2) * ((v[at] as number) ** 2 - (v[0] as number) ** 2);
    expect((forward?.positive as number) + (forward?.negative as number)).toBeCloseTo(change, 9);
  });
  it("in flight the energy stands still, on the level and uphill", () => {
    for (const grade of [0, 0.05]) {
      const work = (until: number): number =>
        externalWork(onSlope(grade), from, to, 3, { grade, until }).external?.positive as number;
      expect(work(0.48)).toBeCloseTo(work(0.38), 4);
    }
  });
  it("property: proportional to mass and force together; more than any other axis alone", () =>
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 5, noNaN: true }), (k) => {
        const scaled = { sampleRate: 1000, force: { up: ground.force.up.map((f) => k * f) } };
        const ratio =
          externalWork(scaled, from, to, 3).vertical.positive /
          externalWork(ground, from, to, 3).vertical.positive;
        expect(ratio / k).toBeCloseTo(1, 9);
      }),
      { numRuns: 20 },
    ));
});

it("gives null for an axis that was not recorded", () => {
  const { external, forward, lateral, vertical } = externalWork(
    { sampleRate: 1000, force: { up: ground.force.up } },
    from,
    to,
    3,
  );
  expect([external, forward, lateral]).toEqual([null, null, null]);
  expect(vertical.positive).toBeGreaterThan(100);
});

it.each([
  ["a span behind the samples", 0.2, 99, 3, {}, "out-of-range"],
  ["a counting end outside the span", 0.2, 0.9, 3, { until: 0.95 }, "out-of-range"],
  ["NaN for a speed", 0.2, 0.9, Number.NaN, {}, "not-finite"],
  ["a mass below 0", 0.2, 0.9, 3, { mass: -1 }, "out-of-range"],
  ["a grade in per cent", 0.2, 0.9, 3, { grade: 5 }, "out-of-range"],
])("refuses %s", (_what, start, end, speed, options, code) => {
  expect(() => externalWork(ground, start, end, speed, options)).toThrow(expect.objectContaining({ code }));
});
