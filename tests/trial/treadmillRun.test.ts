import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { toGroundReaction } from "../../src/force/index.js";
import { readCsv } from "../../src/io/index.js";
import type { Recording } from "../../src/recording/index.js";
import { analyseTrial, type Trial } from "../../src/trial/index.js";

/**
 * Open recording: running on a level treadmill at 2.5 m/s, 30 s at 300 Hz, 80 kg. Fukuchi RK, Fukuchi CA, Duarte M (2017),
 * PeerJ 5:e3298, doi 10.7717/peerj.3298 (CC BY 4.0). The check values were computed with NumPy and SciPy by code that
 * shares nothing with this library, without removing any offset; the offset in flight is 1.1 N.
 */
const text = readFileSync(new URL("../fixtures/treadmill-run/forces-2.5ms.txt", import.meta.url), "utf8");
const recording = readCsv(text, {
  ignore: ["Time"],
  sampleRate: 300,
  axes: { x: "forward", y: "up", z: "right" },
  units: { Fx: "N", Fy: "N", Fz: "N", COPx: "mm", COPy: "mm", COPz: "mm", Ty: "N mm" },
});
const options = { mass: 80, speed: 2.5, surface: "belt" } as const;
const analyse = (source: Recording, more: Parameters<typeof analyseTrial>[1] = {}) =>
  analyseTrial(toGroundReaction(source), { ...options, ...more });
const meanOf = (trial: Trial, id: string) => {
  const values = trial.steps.flatMap(({ values }) => values[id] ?? []);
  return values.reduce((sum, value) => sum + value, 0) / values.length;
};
/** The same recording with one number added to a channel, sample by sample. */
const shifted = (source: Recording, by: Record<string, (i: number) => number>): Recording => ({
  ...source,
  channels: source.channels.map((channel) => {
    const add = channel.quantity === "force" ? by[channel.direction ?? ""] : undefined;
    return add === undefined
      ? channel
      : { ...channel, samples: channel.samples.map((value, i) => value + add(i)) };
  }),
});

describe("check values at 50 N and 50 Hz (source above; means over contacts)", () => {
  // Offset and drift left in, as the check values have them.
  const trial = analyseTrial(toGroundReaction(recording, { offset: "none", drift: "never" }), {
    ...options,
    events: { threshold: 50 },
  });
  it.each([
    ["contactTime", 0.31411, 5],
    ["peakVerticalForce", 1659.279, 2],
    ["verticalImpulse", 301.3236, 2],
    ["peakBrakingForce", 218.062, 2],
    ["peakPropulsiveForce", 170.636, 2],
    ["brakingImpulse", 16.282, 3],
    ["propulsiveImpulse", 16.4533, 3],
    ["stepTime", 0.3997, 5],
    ["aerialTime", 0.08561, 5],
  ])("%s %d", (id, value, digits) => expect(meanOf(trial, id)).toBeCloseTo(value, digits));
  it("duty factor: 0.39295 by the source's contact ÷ two steps; contact ÷ stride, as defined here, differs by 0.00005", () => {
    const bySteps = trial.steps.flatMap(({ values: { contactTime, stepTime } }) =>
      contactTime == null || stepTime == null ? [] : [contactTime / (2 * stepTime)],
    );
    expect(bySteps.reduce((sum, value) => sum + value, 0) / bySteps.length).toBeCloseTo(0.39295, 5);
    expect(meanOf(trial, "dutyFactor")).toBeCloseTo(0.39295, 3);
  });
  it("76 contacts, of which 2 are cut by the ends", () =>
    expect([trial.contacts.length, trial.partialContacts.length]).toEqual([74, 2]));
  it("first contacts and their sides", () => {
    const events = trial.contacts
      .slice(0, 4)
      .map(({ side, initialContact, toeOff }) => [side, initialContact, toeOff]);
    const near = (value: number) => expect.closeTo(value, 4);
    expect(events).toEqual([
      ["right", near(0.23973), near(0.55602)],
      ["left", near(0.63757), near(0.96383)],
      ["right", near(1.04184), near(1.36116)],
      ["left", near(1.44027), near(1.75475)],
    ]);
  });
});

describe("as a user gets it: offset out, threshold by rule", () => {
  const trial = analyse(recording);
  it("peak and impulse with the offset taken out, 1658.2 N and 301.6 N s", () => {
    expect(meanOf(trial, "peakVerticalForce")).toBeCloseTo(1658.2, 1);
    expect(meanOf(trial, "verticalImpulse")).toBeCloseTo(301.6, 1);
    expect(trial.settings.events.threshold).toBe(20);
  });
  it("largest mean force agrees with the authors' own mean curve, 20.73 N/kg at 17 to 18 % of the gait cycle, within 0.1 %", () => {
    const { left, right } = trial.curves.up;
    const largest = Math.max(...(left?.mean ?? []), ...(right?.mean ?? []));
    expect(largest / 80 / 20.73).toBeCloseTo(1, 2);
  });
  it("says that mean vertical force carries 3.8 % less than the published mass (3.6 % before the offset is taken off)", () => {
    const said = trial.cautions.find(({ code }) => code === "mass-disagrees");
    expect(said?.values?.percent).toBeCloseTo(-3.8, 1);
    expect(trial.settings.massByForce).toBeCloseTo(76.96, 2);
  });
  it("says that 300 Hz is low for loading rates", () =>
    expect(trial.cautions.map(({ code }) => code)).toEqual(["low-sample-rate", "mass-disagrees"]));
  it("is plain JSON", () => expect(JSON.parse(JSON.stringify(trial))).toEqual(trial));
  it("infers the belt where the surface is not stated", () => {
    const inferred = analyse(recording, { surface: null });
    expect(inferred.settings.surface).toBe("belt");
    const said = inferred.cautions.find(({ code }) => code === "surface-inferred");
    // Belt speed −2.5 m/s plus the forward roll under the foot.
    expect(said?.values?.speed).toBeGreaterThan(-2.5);
    expect(said?.values?.speed).toBeLessThan(-1.5);
  });
});

describe("vertical force alone", () => {
  const vertical = {
    ...recording,
    channels: recording.channels.filter(({ direction }) => direction === "up"),
  };
  const trial = analyse({
    ...vertical,
    channels: vertical.channels.filter(({ quantity }) => quantity === "force"),
  });
  it("gives the same vertical metrics and lists the horizontal ones with the reason", () => {
    const whole = analyse(recording);
    for (const id of ["peakVerticalForce", "verticalImpulse", "contactTime"]) {
      expect(trial.summary.metrics[id]?.mean).toBe(whole.summary.metrics[id]?.mean);
    }
    const reasons = Object.fromEntries(trial.notComputed.map(({ id, code }) => [id, code]));
    expect(reasons).toMatchObject({
      brakingImpulse: "missing-channel",
      peakPropulsiveForce: "missing-channel",
      mediolateralImpulse: "missing-channel",
      medialImpulse: "missing-channel",
      positiveExternalWork: "missing-channel",
    });
    for (const id of Object.keys(reasons)) expect(trial.summary.metrics[id]).toBeUndefined();
  });
  it("says that left and right are labels only", () =>
    expect(trial.cautions.map(({ code }) => code)).toContain("sides-relative"));
});

describe("a known slow drift of up to 110 N over the 30 s", () => {
  const plain = analyse(recording);
  const drifts: Record<string, Record<string, (i: number) => number>> = {
    "a ramp": {
      up: (i) => (110 * i) / 8999,
      forward: (i) => (-30 * i) / 8999,
      right: (i) => (20 * i) / 8999,
    },
    "up and down again, vertical alone": { up: (i) => 110 * Math.sin((Math.PI * i) / 8999) },
    "up and down again": {
      up: (i) => 110 * Math.sin((Math.PI * i) / 8999),
      forward: (i) => 25 * Math.sin((Math.PI * i) / 8999),
    },
  };
  it.each(Object.entries(drifts))("%s: removed, said, contacts right, metrics within 0.5 %%", (_, by) => {
    const trial = analyse(shifted(recording, by));
    expect(trial.settings.force.driftRemoved).toBe(true);
    expect(trial.cautions.map(({ code }) => code)).toContain("drift-removed");
    expect([trial.contacts.length, trial.partialContacts.length]).toEqual([74, 2]);
    expect(trial.contacts.map(({ side }) => side)).toEqual(plain.contacts.map(({ side }) => side));
    // Two are left out: the net forward impulse is a difference of near equals (0.2 of 16 N s; 3 to 6 % of it), and which of
    // the samples 3.3 ms apart is the first minimum of braking, and so its loading rate, is decided by single newtons (1 to
    // 1.4 %). The next largest change is that of the take-off distance, 0.4 %.
    const { netForwardImpulse: _net, brakingLoadingRate: _rate, ...others } = plain.summary.metrics;
    expect(Object.keys(others).length).toBe(43);
    for (const id of Object.keys(others)) {
      // Over the contacts that have it in both: of the strides that bear nearly 1 % of forward force tenths of a newton decide
      // which are refused a touchdown and a take-off distance.
      const both = trial.steps.flatMap(({ values }, k) => {
        const [after, before] = [values[id], plain.steps[k]?.values[id]];
        return after == null || before == null ? [] : [{ after, before }];
      });
      const contacts = plain.steps.filter(({ values }) => values[id] != null).length;
      expect(both.length, id).toBeGreaterThanOrEqual(0.95 * contacts);
      const total = (of: "after" | "before") => both.reduce((sum, pair) => sum + pair[of], 0);
      const change = total("after") / total("before") - 1;
      expect(Math.abs(change), `${id} ${(100 * change).toFixed(3)} %`).toBeLessThan(0.005);
    }
  });
});
