import { describe, expect, it } from "vitest";
import { findFlights, meanCentreOfPressure, toGroundReaction } from "../../src/force/index.js";
import type { Channel, Recording } from "../../src/recording/index.js";
import fixture from "../fixtures/force/treadmillDrift.json" with { type: "json" };

const force = (direction: "forward" | "up" | "right", samples: ArrayLike<number>): Channel => ({
  name: direction,
  quantity: "force",
  direction,
  unit: "N",
  samples: Float64Array.from(samples),
});
const cop = (direction: "forward" | "right", samples: ArrayLike<number>): Channel => ({
  name: `cop_${direction}`,
  quantity: "centre-of-pressure",
  direction,
  unit: "m",
  samples: Float64Array.from(samples),
});
const recordingOf = (channels: Channel[], sampleRate = 1000): Recording => ({
  sampleRate,
  startTime: 0,
  channels,
  subject: {},
  origin: { format: "test" },
  cautions: [],
});

const { raw } = fixture;
/** The fixture's truth: tc 0.24 s, tf 0.11 s, first contact at 0.1 s, nine contacts of 2.4 × 686 N. */
const truth = raw.map((_, i) => {
  const u = (((i / 1000 - 0.1) % 0.35) + 0.35) % 0.35;
  const k = Math.floor((i / 1000 - 0.1) / 0.35);
  return k >= 0 && k < 9 && u < 0.24 ? 2.4 * 686 * Math.sin((Math.PI * u) / 0.24) : 0;
});
const rms = (a: ArrayLike<number>, b: readonly number[], from: number, to: number) => {
  let sum = 0;
  for (let i = from; i < to; i++) sum += ((a[i] as number) - (b[i] as number)) ** 2;
  return Math.sqrt(sum / (to - from));
};

describe("drift of a treadmill, independent code: NumPy (tests/fixtures/force/treadmillDrift.json)", () => {
  it("the fixture's own error before correction comes out, so truth and window are those of its source", () => {
    expect(rms(raw, truth, 395, 2846)).toBeCloseTo(fixture.rmsBeforeN, 1);
  });
  it("leaves little more than the noise: 26.4 N before, 2.02 N by the fixture's rule, within 5 % of that by ours", () => {
    const ground = toGroundReaction(recordingOf([force("up", raw)]), { drift: "always" });
    expect(rms(ground.force.up, truth, 395, 2846)).toBeLessThan(1.05 * fixture.rmsAfterN);
  });
  it("is found and removed by itself, and said", () => {
    const ground = toGroundReaction(recordingOf([force("up", raw)]));
    expect(ground.settings.driftRemoved).toBe(true);
    expect(ground.cautions.map(({ code }) => code)).toContain("drift-removed");
  });
  it("is left in on request, and said", () => {
    const ground = toGroundReaction(recordingOf([force("up", raw)]), { drift: "never" });
    expect(ground.settings.driftRemoved).toBe(false);
    expect(ground.cautions.map(({ code }) => code)).toContain("drift");
  });
});

describe("offset (law: the force in flight is zero)", () => {
  const offset = { forward: -7, up: 12, right: 3 };
  const channels = [
    force(
      "forward",
      truth.map((f) => offset.forward - 0.1 * f),
    ),
    force(
      "up",
      truth.map((f) => offset.up + f),
    ),
    force(
      "right",
      truth.map((f) => offset.right + 0.02 * f),
    ),
  ];
  it("is taken off every channel, and what was taken off is told", () => {
    const ground = toGroundReaction(recordingOf(channels));
    for (const direction of ["forward", "up", "right"] as const) {
      expect(ground.settings.offset?.[direction]).toBeCloseTo(offset[direction], 9);
      for (const flight of findFlights(ground.force.up, 1000)) {
        expect(ground.force[direction]?.[flight.from]).toBeCloseTo(0, 9);
      }
    }
    expect(ground.cautions).toEqual([]);
  });
  it("is left on with offset: none", () => {
    const ground = toGroundReaction(recordingOf(channels), { offset: "none", drift: "never" });
    expect(ground.settings.offset).toBeUndefined();
    expect(ground.force.up[0]).toBe(12);
  });
  it("walking on one plate has no flight: nothing is taken off, and that is said", () => {
    // Trough and peaks of 0.75 and 1.1 body weights (common practice), 1.1 s a stride.
    const up = Array.from({ length: 6000 }, (_, i) => 640 + 120 * Math.cos((2 * Math.PI * i) / 550));
    const ground = toGroundReaction(recordingOf([force("up", up)]));
    expect(Array.from(ground.force.up)).toEqual(up);
    expect(ground.cautions.map(({ code }) => code)).toEqual(["no-flight"]);
  });
});

describe("centre of pressure (law: moment = place × force)", () => {
  const place = truth.map((f) => (f > 20 ? 0.8 + 0.0001 * f : Number.NaN));
  const ground = toGroundReaction(
    recordingOf([
      force("up", truth),
      cop("right", place),
      cop(
        "forward",
        place.map((p) => 2 * p),
      ),
    ]),
  );
  it("comes back from the moment over a contact, weighted by force", () => {
    let load = 0;
    let turning = 0;
    for (let i = 110; i <= 330; i++) {
      load += truth[i] as number;
      turning += (truth[i] as number) * (place[i] as number);
    }
    expect(meanCentreOfPressure(ground, "right", 0.11, 0.33)).toBeCloseTo(turning / load, 9);
    expect(meanCentreOfPressure(ground, "forward", 0.11, 0.33)).toBeCloseTo((2 * turning) / load, 9);
  });
  it("blank cells in flight are normal, and the moment goes to zero with the force", () => {
    expect(ground.moment?.forward?.every(Number.isFinite)).toBe(true);
    expect(ground.moment?.forward?.[0]).toBeCloseTo(0, 12);
  });
  it("a file's own higher floor is taken, with a caution", () => {
    const higher = truth.map((f) => (f > 90 ? 0.8 : Number.NaN));
    const { cautions } = toGroundReaction(recordingOf([force("up", truth), cop("right", higher)]));
    expect(cautions.map(({ code }) => code)).toEqual(["centre-of-pressure-floor"]);
  });
  it("places in millimetres taken as metres are refused under load, and not where nobody stands", () => {
    const inMillimetres = place.map((p) => 1000 * p);
    expect(() => toGroundReaction(recordingOf([force("up", truth), cop("right", inMillimetres)]))).toThrow(
      expect.objectContaining({ code: "out-of-range", message: expect.stringContaining("is it in mm?") }),
    );
    const wildInFlight = place.map((p, i) => ((truth[i] as number) === 0 ? 1e6 : p));
    expect(
      toGroundReaction(recordingOf([force("up", truth), cop("right", wildInFlight)])).moment?.forward,
    ).toEqual(ground.moment?.forward);
  });
  it("a blank cell under load is a gap", () => {
    const gap = place.map((p, i) => (i === 220 ? Number.NaN : p));
    expect(() => toGroundReaction(recordingOf([force("up", truth), cop("right", gap)]))).toThrow(
      expect.objectContaining({ code: "gap", where: "sample 220" }),
    );
  });
});

describe("refuses", () => {
  it.each([
    ["no vertical force", [force("forward", truth)], "missing-channel"],
    [
      "a gap in force",
      [
        force(
          "up",
          truth.map((f, i) => (i === 700 ? Number.NaN : f)),
        ),
      ],
      "gap",
    ],
    [
      "a vertical force that points down",
      [
        force(
          "up",
          truth.map((f) => -f),
        ),
      ],
      "unknown-axes",
    ],
  ])("%s", (_, channels, code) => {
    expect(() => toGroundReaction(recordingOf(channels))).toThrow(expect.objectContaining({ code }));
  });
  it.each([
    [{ drift: "sometimes" as never }, "out-of-range"],
    [{ gravity: -9.8 }, "out-of-range"],
    [{ driftLimit: Number.NaN }, "not-finite"],
  ])("options %o", (options, code) => {
    expect(() => toGroundReaction(recordingOf([force("up", truth)]), options)).toThrow(
      expect.objectContaining({ code }),
    );
  });
});

it("says why a platform of the file gives no force (on 2026-11-25 only the names of its channels were said)", () => {
  const channel: Channel = {
    name: "Fz1",
    quantity: "other",
    direction: null,
    unit: "V",
    samples: new Float64Array(100),
  };
  const message = "force platform 1 is of type 21; types 1, 2, 3 and 4 are known";
  const said = { code: "platform-type-unsupported", message, where: "FORCE_PLATFORM, platform 1" };
  const recording: Recording = {
    sampleRate: 1000,
    startTime: 0,
    channels: [channel],
    subject: {},
    origin: { format: "test" },
    cautions: [said],
  };
  expect(() => toGroundReaction(recording)).toThrow(
    expect.objectContaining({
      code: "missing-channel",
      message: expect.stringContaining(`it has Fz1; ${message}`),
      values: { channels: ["Fz1"], platforms: ["FORCE_PLATFORM, platform 1"] },
    }),
  );
});
