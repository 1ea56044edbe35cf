import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  dingwellKneeExtensionEvents,
  fellinEvents,
  handsakerAccelerationEvents,
  oConnorVelocityEvents,
  zeniCoordinateEvents,
  zeniVelocityEvents,
} from "../../../src/events/index.js";
import type { Marker, MarkerSet } from "../../../src/recording/index.js";
import coordinate from "../../fixtures/markers/coordinate.json" with { type: "json" };
import { MADE_RUN, MADE_WALK, madeGait } from "./madeGait.js";
import { treadmillRun } from "./openRecordings.js";

const run = treadmillRun();
const leg = {
  heel: "R.Heel.Bottom",
  toe: "R.MT1",
  pelvis: ["R.PSIS", "L.PSIS"],
  thigh: { upper: "R.Thigh.Top.Lateral", lower: "R.Thigh.Bottom.Lateral" },
  shank: { upper: "R.Shank.Top.Lateral", lower: "R.Shank.Bottom.Lateral" },
  side: "right",
} as const;
const made = { heel: "heel", toe: "toe", pelvis: "pelvis" };
const DETECTORS = {
  zeniCoordinateEvents,
  zeniVelocityEvents,
  oConnorVelocityEvents,
  fellinEvents,
  handsakerAccelerationEvents,
  dingwellKneeExtensionEvents,
};
const everyDetector = Object.entries(DETECTORS);

const along = (name: string, forward: readonly number[]): Marker => {
  const still = new Float64Array(forward.length);
  return { name, forward: Float64Array.from(forward), up: still, right: still };
};

describe("turning points of made markers (NumPy 2.4.6, coordinate.py)", () => {
  const markers: MarkerSet = {
    sampleRate: coordinate.sampleRateHz,
    startTime: 0,
    markers: [
      along("heel", coordinate.heelX),
      along("toe", coordinate.toeX),
      along("pelvis", coordinate.sacrumX),
    ],
  };
  // The parabola through three frames misses a turn by some 0.06 ms here; half a frame is 5 ms.
  it.each([
    ["zeniCoordinateEvents", zeniCoordinateEvents(markers, made, { cutoff: null })],
    ["zeniVelocityEvents", zeniVelocityEvents(markers, made, { cutoff: null, surface: "ground" })],
  ] as const)("%s", (_, { initialContacts, toeOffs }) => {
    expect(initialContacts).toHaveLength(coordinate.trueContacts.length);
    expect(toeOffs).toHaveLength(coordinate.trueToeOffs.length);
    initialContacts.forEach((time, k) => {
      expect(Math.abs(time - (coordinate.trueContacts[k] ?? NaN))).toBeLessThan(2e-4);
    });
    toeOffs.forEach((time, k) => {
      expect(Math.abs(time - (coordinate.trueToeOffs[k] ?? NaN))).toBeLessThan(2e-4);
    });
  });
});

describe("laws", () => {
  it("the same way of walking on the ground and on a belt has the same coordinate events", () => {
    const ground = zeniCoordinateEvents(madeGait(MADE_WALK).markers, made);
    const belt = zeniCoordinateEvents(madeGait({ ...MADE_WALK, belt: true }).markers, made);
    expect(belt.initialContacts).toHaveLength(ground.initialContacts.length);
    belt.initialContacts.forEach((time, k) => {
      expect(time).toBeCloseTo(ground.initialContacts[k] ?? NaN, 6);
    });
    belt.toeOffs.forEach((time, k) => {
      expect(time).toBeCloseTo(ground.toeOffs[k] ?? NaN, 6);
    });
  });
  it("velocity relative to the pelvis crosses zero where the coordinate turns", () => {
    const { markers } = madeGait(MADE_WALK);
    const turns = zeniCoordinateEvents(markers, made);
    const crossings = zeniVelocityEvents(markers, made);
    crossings.initialContacts.forEach((time, k) => {
      expect(Math.abs(time - (turns.initialContacts[k] ?? NaN))).toBeLessThan(1e-3);
    });
    expect(crossings.initialContacts).toHaveLength(turns.initialContacts.length);
  });
  it("another origin of the markers moves no event", () =>
    fc.assert(
      fc.property(fc.double({ min: -3, max: 3, noNaN: true }), (shift) => {
        const { markers } = madeGait({ ...MADE_RUN, noise: 0.0005 });
        const moved = {
          ...markers,
          markers: markers.markers.map((marker) => ({
            ...marker,
            forward: marker.forward.map((value) => value + shift),
            up: marker.up.map((value) => value + shift),
          })),
        };
        for (const detect of [oConnorVelocityEvents, handsakerAccelerationEvents]) {
          const here = detect(markers, made);
          const there = detect(moved, made);
          expect(there.initialContacts).toHaveLength(here.initialContacts.length);
          there.initialContacts.forEach((time, k) => {
            expect(Math.abs(time - (here.initialContacts[k] ?? NaN))).toBeLessThan(1e-6);
          });
        }
      }),
      { numRuns: 10 },
    ));
  it("leaving out the first 150 frames takes a second off every time away from the ends", () => {
    const { markers } = run.markers;
    const later: MarkerSet = {
      ...run.markers,
      markers: markers.map((marker) => ({
        ...marker,
        forward: marker.forward.subarray(150),
        up: marker.up.subarray(150),
        right: marker.right.subarray(150),
      })),
    };
    for (const [name, detect] of everyDetector) {
      const inner = (times: readonly number[], shift: number) =>
        times.map((time) => time + shift).filter((time) => time > 2 && time < 9.5);
      const whole = detect(run.markers, leg);
      const part = detect(later, leg);
      for (const event of ["initialContacts", "toeOffs"] as const) {
        const expected = inner(whole[event], 0);
        const found = inner(part[event], 1);
        expect(found, name).toHaveLength(expected.length);
        expect(expected.length, name).toBeGreaterThan(8);
        found.forEach((time, k) => {
          expect(Math.abs(time - (expected[k] ?? NaN)), name).toBeLessThan(1e-4);
        });
      }
    }
  });
});

describe("results", () => {
  it.each(everyDetector)(
    "%s states side, markers, smoothing and how its times differ from force",
    (_, detect) => {
      const { side, settings, cautions } = detect(run.markers, leg);
      expect(side).toBe("right");
      expect(settings.sampleRate).toBe(150);
      expect(settings.cutoff).toBeGreaterThan(0);
      expect(settings.swings).toBe(13);
      expect(settings.markers.heel).toEqual(["R.Heel.Bottom"]);
      expect(cautions.map(({ code }) => code)).toEqual(["events-from-markers"]);
    },
  );
  it("a standing leg has no events, and a caution says so", () => {
    const markers = {
      ...run.markers,
      markers: [along("heel", Array(500).fill(1)), along("toe", Array(500).fill(1))],
    };
    const { initialContacts, toeOffs, cautions } = oConnorVelocityEvents(markers, made);
    expect([initialContacts, toeOffs]).toEqual([[], []]);
    expect(cautions.map(({ code }) => code)).toEqual(["no-swing"]);
  });
  it("a low rate is a caution", () => {
    const { cautions } = oConnorVelocityEvents(madeGait({ ...MADE_WALK, sampleRate: 60 }).markers, made);
    expect(cautions.map(({ code }) => code)).toEqual(["events-from-markers", "low-rate"]);
  });
  it("toe-offs need thigh and shank in fellinEvents", () =>
    expect(fellinEvents(run.markers, { heel: leg.heel }).toeOffs).toEqual([]));
});

describe("refuses", () => {
  const broken = (change: (marker: Marker) => Marker): MarkerSet => ({
    ...run.markers,
    markers: run.markers.markers.map((marker) => (marker.name === "R.Heel.Bottom" ? change(marker) : marker)),
  });
  it.each(everyDetector)("%s: a gap, by marker and frame", (_, detect) => {
    const gap = broken((marker) => {
      const hole = (samples: Float64Array) => samples.map((value, i) => (i === 40 ? Number.NaN : value));
      return { ...marker, forward: hole(marker.forward), up: hole(marker.up) };
    });
    expect(() => detect(gap, leg)).toThrow(
      expect.objectContaining({ code: "gap", where: "R.Heel.Bottom, frame 40" }),
    );
  });
  it.each(everyDetector)(
    "%s: an unknown marker, an unknown option, a cutoff beyond half the rate",
    (_, detect) => {
      expect(() => detect(run.markers, { ...leg, heel: "heel" })).toThrow(
        expect.objectContaining({ code: "missing-channel", where: "heel" }),
      );
      expect(() => detect(run.markers, leg, { cutof: 10 } as object)).toThrow(
        expect.objectContaining({ code: "unknown-option" }),
      );
      expect(() => detect(run.markers, leg, { cutoff: 75 })).toThrow(
        expect.objectContaining({ code: "out-of-range", argument: "cutoff" }),
      );
      expect(() => detect({ ...run.markers, sampleRate: 25 }, leg)).toThrow(
        expect.objectContaining({ code: "out-of-range" }),
      );
      expect(() => detect(run.markers, { ...leg, heel: [] })).toThrow(
        expect.objectContaining({ code: "missing-value" }),
      );
    },
  );
  it("frames that differ in number", () => {
    const short = broken((marker) => ({ ...marker, forward: marker.forward.subarray(1) }));
    expect(() => zeniCoordinateEvents(short, leg)).toThrow(
      expect.objectContaining({ code: "unequal-lengths" }),
    );
    expect(() => zeniCoordinateEvents(short, { ...leg, heel: ["R.MT1", "R.Heel.Bottom"] })).toThrow(
      expect.objectContaining({ code: "unequal-lengths" }),
    );
  });
  it("velocity without a pelvis and without a belt, and options that are none", () => {
    const { pelvis: _, ...foot } = leg;
    expect(() => zeniVelocityEvents(run.markers, foot)).toThrow(
      expect.objectContaining({ code: "missing-value" }),
    );
    expect(() => zeniVelocityEvents(run.markers, leg, { surface: "water" as "belt" })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    expect(() => oConnorVelocityEvents(run.markers, leg, { heelShare: 0 })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    expect(() => fellinEvents(run.markers, leg, { contactFeature: "toe" as "lowest heel" })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });
});
