import { describe, expect, it } from "vitest";
import { type ToGroundReactionOptions, toGroundReaction } from "../../src/force/index.js";
import { metricById } from "../../src/metrics/index.js";
import type { Recording } from "../../src/recording/index.js";
import { type SyntheticRunOptions, syntheticRun } from "../../src/synthetic/index.js";
import { type AnalyseTrialOptions, analyseTrial, type Trial } from "../../src/trial/index.js";

/**
 * Trouble made on purpose in synthetic runs whose truth is known: each must be said, with its size and place, and nothing
 * may be said of a clean run. What is said of an open recording is in treadmillRun.test.ts.
 */
const variability = {
  ...{ stepTime: 0.01, contactTime: 0.015, impactAmplitude: 0.1 },
  ...{ brakingAmplitude: 0.04, medialAmplitude: 0.06 },
};
const RUN: SyntheticRunOptions = { contacts: 44, variability, noise: { force: 2 } };
const run = syntheticRun(RUN);
const analyse = (
  recording: Recording,
  options: AnalyseTrialOptions = {},
  force: ToGroundReactionOptions = {},
): Trial => analyseTrial(toGroundReaction(recording, force), options);
const codes = ({ cautions }: Trial) => cautions.map(({ code }) => code);
const said = (trial: Trial, code: string) => trial.cautions.find((caution) => caution.code === code);
const absent = ({ notComputed }: Trial, id: string) => notComputed.find((entry) => entry.id === id);

/** The recording with some force channels changed sample by sample. */
const changed = (
  recording: Recording,
  by: Readonly<Record<string, (value: number, i: number) => number>>,
): Recording => ({
  ...recording,
  channels: recording.channels.map((channel) => {
    const change = channel.quantity === "force" ? by[channel.direction ?? ""] : undefined;
    return change === undefined ? channel : { ...channel, samples: channel.samples.map(change) };
  }),
});
/** The recording without the force of some contacts, by their place. */
const without = (leave: (k: number) => boolean, source = run): Recording => {
  const gone = source.truth.contacts.filter((_, k) => leave(k));
  const { sampleRate } = source.recording;
  const empty = (value: number, i: number) =>
    gone.some(({ initialContact, toeOff }) => i >= initialContact * sampleRate && i <= toeOff * sampleRate)
      ? 0
      : value;
  return changed(source.recording, { forward: empty, up: empty, right: empty });
};

describe("a clean run has nothing to be said of it", () => {
  const setups: Readonly<Record<string, SyntheticRunOptions>> = {
    "on a belt": {},
    "over ground, 1 N of noise": { surface: "ground", noise: { force: 1 } },
    "rounded to whole newtons": { decimals: { force: 0 } },
    "without noise": { noise: { force: 0 } },
    "at 5 m/s on a belt": { speed: 5, stance: { stepTime: 0.31, contactTime: 0.19 } },
  };
  it.each(Object.entries(setups))("%s: 20 seeds each, 100 in all", (_, more) => {
    const heard = Array.from({ length: 20 }, (_, seed) =>
      codes(analyse(syntheticRun({ ...RUN, ...more, seed }).recording)),
    );
    expect(heard.flat()).toEqual([]);
  });
});

describe("contacts and when they come", () => {
  it("every second contact missing, as where one foot was recorded: said, with the share of weight carried", () => {
    const one = without((k) => k % 2 === 1);
    const caution = said(analyse(one), "one-foot");
    expect(caution?.values?.stepTime).toBeCloseTo(0.672, 2);
    expect(caution?.values?.gap).toBeCloseTo(0.428, 1);
    expect(caution?.values?.carried).toBeCloseTo(0.5, 1);
    const { mass: _, ...subject } = one.subject;
    expect(said(analyse({ ...one, subject }), "one-foot")?.message).toContain("or the runner jumps");
  });
  it("jumps that the ground carries the whole weight of are no missing foot", () => {
    const up = Float64Array.from({ length: 12_000 }, (_, i) => {
      const t = (i % 700) / 1000;
      return t > 0.1 && t < 0.4
        ? ((70 * 9.80665 * 0.7 * Math.PI) / 0.6) * Math.sin((Math.PI * (t - 0.1)) / 0.3)
        : 0;
    });
    const jumps: Recording = {
      sampleRate: 1000,
      startTime: 0,
      channels: [{ name: "up", quantity: "force", direction: "up", unit: "N", samples: up }],
      subject: { mass: 70 },
      origin: { format: "test" },
      cautions: [],
    };
    expect(codes(analyse(jumps))).not.toContain("one-foot");
    expect(codes(analyse({ ...jumps, subject: {} }))).toContain("one-foot");
    expect(codes(analyse({ ...jumps, subject: {} }, { events: { gait: "jumping" } }))).not.toContain(
      "one-foot",
    );
  });
  it("a missed contact, with its place; left and right of the rest stay", () => {
    const trial = analyse(without((k) => k === 20));
    const caution = said(trial, "contacts-missed");
    expect(caution?.values?.steps).toBe(1);
    expect(caution?.values?.first).toBeCloseTo(run.truth.contacts[21]?.initialContact ?? 0, 1);
    expect(trial.contacts.map(({ side }) => side)).toEqual(
      run.truth.contacts.filter((_, k) => k !== 20).map(({ side }) => side),
    );
  });
  it("a contact that a gap parts in two, with its place", () => {
    const { initialContact } = run.truth.contacts[10] as { initialContact: number };
    const parted = changed(run.recording, {
      up: (value, i) => (Math.abs(i / 1000 - initialContact - 0.12) < 0.022 ? 0 : value),
    });
    const caution = said(analyse(parted), "contacts-doubled");
    expect(caution?.values?.first).toBeCloseTo(initialContact + 0.142, 1);
    expect(caution?.values?.steps).toBeGreaterThan(0);
  });
  it("passes over one plate, 6 s apart, are no steps in succession", () => {
    const passes = without((k) => k % 18 !== 0, syntheticRun({ contacts: 90, noise: { force: 2 } }));
    expect(said(analyse(passes), "not-successive")?.values?.stepTime).toBeCloseTo(18 * 0.336, 2);
  });
  it("a limp of 40 ms between left and right is neither", () => {
    const limp = { left: { stepTime: 0.356 }, right: { stepTime: 0.316 } };
    expect(codes(analyse(syntheticRun({ ...RUN, ...limp }).recording))).toEqual([]);
  });
});

describe("single samples that stand out", () => {
  const place = Math.round((run.truth.contacts[15]?.initialContact ?? 0) * 1000) - 4;
  const spike = changed(run.recording, { up: (value, i) => (i === place ? value + 150 : value) });
  const trial = analyse(spike, { filter: null });
  it("one of 150 N moves an initial contact by some 5 ms: it is said where, and how large", () => {
    const clean = analyse(run.recording, { filter: null });
    const moved = (trial.contacts[15]?.initialContact ?? 0) - (clean.contacts[15]?.initialContact ?? 0);
    expect(moved).toBeLessThan(-0.004);
    const caution = said(trial, "spikes");
    expect(caution?.values).toMatchObject({ samples: 1, first: place / 1000, nearEvents: 1 });
    expect(caution?.values?.largest).toBeGreaterThan(140);
    expect(caution?.values?.largest).toBeLessThan(160);
    expect(caution?.where).toBe(`up, ${(place / 1000).toFixed(3)} s`);
  });
  it("is said behind a filter too, and of the other components", () => {
    expect(codes(analyse(spike))).toContain("spikes");
    const sideways = changed(run.recording, { right: (value, i) => (i === 5000 ? value - 60 : value) });
    expect(said(analyse(sideways), "spikes")?.where).toBe("right, 5.000 s");
  });
  it.each([
    ["in flight", -15],
    ["under load", 120],
  ])("one of 50 N %s is found in each of 12 contacts in 2 N of noise, and nothing else is", (_, after) => {
    const places = run.truth.contacts
      .slice(2, 14)
      .map(({ initialContact }) => Math.round(1000 * initialContact) + after);
    const many = changed(run.recording, { forward: (value, i) => (places.includes(i) ? value + 50 : value) });
    expect(said(analyse(many), "spikes")?.values?.samples).toBe(12);
  });
  it("ringing of a platform is none, as an open recording has it before a landing: −21, 34, −24, 19 N", () => {
    const ring = [-21, 34, -24, 19];
    const ringing = changed(run.recording, { up: (value, i) => value + (ring[i - place + 20] ?? 0) });
    expect(codes(analyse(ringing))).not.toContain("spikes");
  });
  it("the sharp impact of a heel, 8 ms wide at 1 kHz, is none", () => {
    const sharp = { ...RUN, stance: { impactTime: 0.008, impactAmplitude: 0.6 } };
    const trial = analyse(syntheticRun(sharp).recording);
    // It is over where the early loading rate is read.
    expect(codes(trial)).toEqual(["below-zero"]);
    expect(said(trial, "below-zero")?.where).toBe("earlyLoadingRate");
  });
});

describe("level and noise between contacts", () => {
  const left = { offset: "none", drift: "never" } as const;
  it("an offset that was left in, by component", () => {
    const trial = analyse(syntheticRun({ ...RUN, offset: { forward: 12, right: 3 } }).recording, {}, left);
    const offsets = trial.cautions.filter(({ code }) => code === "flight-offset");
    expect(offsets.map(({ where }) => where)).toEqual(["forward"]);
    expect(offsets[0]?.values?.level).toBeCloseTo(12, 0);
  });
  it("noise that counts: 8 N on every channel are half a per cent of the vertical peak and a tenth of the sideways one", () => {
    const trial = analyse(syntheticRun({ ...RUN, noise: { force: 8 } }).recording);
    const noise = trial.cautions.filter(({ code }) => code === "flight-noise");
    expect(noise.map(({ where }) => where)).toEqual(["right"]);
    // 8 N of white noise behind 50 Hz at 1 kHz: 8 √(100/1000 × 0.9) or so.
    expect(noise[0]?.values?.sd).toBeGreaterThan(2);
    expect(noise[0]?.values?.sd).toBeLessThan(3);
  });
});

describe("mean forward and sideways force", () => {
  const tilted = (forward: number, right: number) => {
    const up = run.recording.channels.find(
      ({ direction, quantity }) => direction === "up" && quantity === "force",
    )?.samples as Float64Array;
    return analyse(
      changed(run.recording, {
        forward: (value, i) => value + forward * (up[i] as number),
        right: (value, i) => value + right * (up[i] as number),
      }),
    );
  };
  const level = tilted(0, 0);
  it("0.7 % forward: said with its interval, and the margin of the landing grows by its 1.35 mm a newton", () => {
    const trial = tilted(0.007, 0);
    const caution = said(trial, "forward-unbalanced");
    expect(caution?.values?.share).toBeCloseTo(0.007, 3);
    expect(caution?.values?.low).toBeLessThan(0.007);
    expect(caution?.values?.high).toBeGreaterThan(0.007);
    expect(codes(trial)).toContain("landing-shifted");
    const grown =
      (trial.settings.landing?.margin.touchdown ?? 0) - (level.settings.landing?.margin.touchdown ?? 0);
    // Law: h₀ × share, h₀ = 0.55 × 1.75 m.
    expect(grown / (0.55 * 1.75 * 0.007)).toBeCloseTo(1, 1);
    // The tilt is taken off: both distances stay.
    for (const id of ["touchdownDistance", "takeOffDistance"]) {
      const [a, b] = [trial, level].map(({ summary }) => summary.metrics[id]?.mean ?? Number.NaN);
      expect(Math.abs((a as number) - (b as number)), id).toBeLessThan(0.001);
    }
  });
  it("1.5 % forward: neither distance is given, and the trial says why", () => {
    const trial = tilted(0.015, 0);
    for (const id of ["touchdownDistance", "takeOffDistance"]) {
      expect(absent(trial, id)?.code).toBe("forward-unbalanced");
      expect(trial.summary.metrics[id]).toBeUndefined();
      expect(trial.steps.every(({ values }) => !(id in values))).toBe(true);
    }
    expect(trial.settings.landing).toBeNull();
  });
  it("a tenth of the stated weight in somebody's hands: neither distance is given", () => {
    const trial = analyse(run.recording, { mass: 78 });
    expect(codes(trial)).toEqual(["mass-disagrees"]);
    expect(absent(trial, "touchdownDistance")?.code).toBe("weight-missing");
    expect(absent(trial, "takeOffDistance")?.code).toBe("weight-missing");
  });
  it("where neither distance is asked for, nothing is said of them", () => {
    const trial = analyse(run.recording, { metrics: [metricById("contactTime")] });
    expect(trial.settings.landing).toBeNull();
    expect(trial.notComputed).toEqual([]);
  });
  it("0.5 % sideways: said with its interval", () => {
    const caution = said(tilted(0, 0.005), "sideways-unbalanced");
    expect(caution?.values?.share).toBeCloseTo(0.005, 3);
    expect(caution?.values?.high).toBeGreaterThan(Number(caution?.values?.low));
  });
});
