import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { compareCurves, compareStanceCurves, type RecordedTrial } from "../../../src/compare/index.js";
import { lowPassGroundReaction, toGroundReaction } from "../../../src/force/index.js";
import { readCsv } from "../../../src/io/index.js";
import { demoRecordings } from "../../../src/synthetic/index.js";
import { analyseTrial, analyseTrials, stanceCurves, type Trial } from "../../../src/trial/index.js";

const demo = demoRecordings();
const grounds = [toGroundReaction(demo.usual), toGroundReaction(demo.furtherAhead)] as const;
const trials = analyseTrials(grounds, { metrics: [] }) as [Trial, Trial];
const [baseline, changed] = grounds.map((ground, k) => ({ ground, trial: trials[k] as Trial })) as [
  RecordedTrial,
  RecordedTrial,
];

describe("the demonstration: a known change", () => {
  const { curves, notCompared } = compareStanceCurves(baseline, changed);
  it("compares every component of each foot, the level shared among all", () => {
    expect(curves.map(({ component, side }) => `${component} ${side}`)).toEqual([
      "vertical left",
      "vertical right",
      "anteroposterior left",
      "anteroposterior right",
      "mediolateral left",
      "mediolateral right",
    ]);
    expect(notCompared).toEqual([]);
    for (const { level, unit } of curves) expect([level, unit]).toEqual([0.05 / 6, "BW"]);
  });
  it("more braking and propulsion, less vertical force at mid-stance, as the recordings were made", () => {
    const at = (name: string, percent: number) =>
      curves
        .find(({ component, side }) => `${component} ${side}` === name)
        ?.clusters.find(({ from, to }) => from <= percent && percent <= to)?.difference ?? 0;
    for (const side of ["left", "right"]) {
      expect(at(`anteroposterior ${side}`, 25)).toBeLessThan(-0.02);
      expect(at(`anteroposterior ${side}`, 75)).toBeGreaterThan(0.02);
      expect(at(`vertical ${side}`, 45)).toBeLessThan(-0.05);
    }
  });
  it("is compareCurves of the trials' curves", () => {
    const of = ({ ground, trial }: RecordedTrial) => stanceCurves(ground, trial.contacts, { side: "left" });
    const alone = compareCurves(of(baseline), of(changed), { level: 0.05 / 6 });
    expect(curves[0]).toEqual(alone);
  });
  it("takes a recording that lies behind the trial's filter already", () => {
    const filtered = {
      ...baseline,
      ground: lowPassGroundReaction(baseline.ground, { cutoff: 50, order: 4 }),
    };
    expect(compareStanceCurves(filtered, changed).curves).toEqual(curves);
  });
});

it("the same trial twice: no difference anywhere", () => {
  for (const { clusters, difference } of compareStanceCurves(baseline, baseline).curves) {
    expect(clusters).toEqual([]);
    expect(Math.max(...difference.map(Math.abs))).toBe(0);
  }
});

it("sides that are not known: strides of both feet, without the mediolateral force", () => {
  const unsided = ({ ground, trial }: RecordedTrial): RecordedTrial => ({
    ground,
    trial: {
      ...trial,
      contacts: trial.contacts.map((contact) => ({ ...contact, side: "unknown" as const })),
    },
  });
  const { curves } = compareStanceCurves(unsided(baseline), unsided(changed));
  expect(curves.map(({ component, side }) => `${component} ${side}`)).toEqual([
    "vertical both",
    "anteroposterior both",
  ]);
  expect(curves[0]?.curves).toEqual({ baseline: 44, changed: 44 });
});

it("says what has too few contacts", () => {
  const few = { ...baseline, trial: { ...baseline.trial, contacts: baseline.trial.contacts.slice(0, 9) } };
  const { curves, notCompared } = compareStanceCurves(few, changed);
  expect(curves).toHaveLength(3);
  expect(notCompared.map(({ code }) => code)).toEqual(["too-short", "too-short", "too-short"]);
});

/**
 * Open recording: running on a level treadmill at 2.5 m/s, 30 s at 300 Hz. Fukuchi RK, Fukuchi CA, Duarte M (2017), PeerJ
 * 5:e3298, doi 10.7717/peerj.3298 (CC BY 4.0). One runner who changes nothing: no claim is made of what is true.
 */
it("first against second half of a treadmill run: next to nothing", () => {
  const text = readFileSync(
    new URL("../../fixtures/treadmill-run/forces-2.5ms.txt", import.meta.url),
    "utf8",
  );
  const recording = readCsv(text, {
    ignore: ["Time"],
    sampleRate: 300,
    axes: { x: "forward", y: "up", z: "right" },
    units: { Fx: "N", Fy: "N", Fz: "N", COPx: "mm", COPy: "mm", COPz: "mm", Ty: "N mm" },
  });
  const ground = toGroundReaction(recording);
  const trial = analyseTrial(ground, { mass: 80, speed: 2.5, surface: "belt", metrics: [] });
  const half = (from: number, to: number): RecordedTrial => ({
    ground,
    trial: {
      ...trial,
      contacts: trial.contacts.filter(({ initialContact, toeOff }) => initialContact >= from && toeOff < to),
    },
  });
  const { curves } = compareStanceCurves(half(0, 15), half(15, 30));
  expect(curves).toHaveLength(6);
  for (const { clusters, curves: counted } of curves) {
    expect(counted.baseline).toBeGreaterThanOrEqual(18);
    const width = clusters.reduce((sum, { from, to }) => sum + to - from, 0);
    expect(width).toBeLessThan(3);
  }
});

const { trial, ground } = baseline;
const with20Hz = { ...trial, settings: { ...trial.settings, filter: { cutoff: 20, order: 4 } } };
it.each<[string, RecordedTrial, object]>([
  ["not-comparable", { ground, trial: with20Hz }, {}],
  ["conflict", { ground: lowPassGroundReaction(ground, { cutoff: 30, order: 4 }), trial }, {}],
  ["wrong-type", { ground: {} as never, trial }, {}],
  ["wrong-type", null as never, {}],
  ["out-of-range", { ground, trial }, { level: -1 }],
  ["out-of-range", { ground, trial }, { permutations: 1 }],
  ["unknown-option", { ground, trial }, { side: "left" }],
])("refuses with %s", (code, given, options) =>
  expect(() => compareStanceCurves(given, changed, options)).toThrow(expect.objectContaining({ code })),
);
