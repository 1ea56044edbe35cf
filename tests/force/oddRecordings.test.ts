import { describe, expect, it } from "vitest";
import { toGroundReaction } from "../../src/force/index.js";
import type { Recording } from "../../src/recording/index.js";
import { seededRandom } from "../../src/statistics/index.js";
import { type SyntheticRunOptions, syntheticRun } from "../../src/synthetic/index.js";
import { analyseTrial } from "../../src/trial/index.js";

/** Synthetic truth in recordings that are not as one would wish; each test names what went wrong once, on 2026-11-25. */
const recordingOf = (options: SyntheticRunOptions) => syntheticRun(options).recording;
const codes = ({ cautions }: { cautions: readonly { code: string }[] }) => cautions.map(({ code }) => code);
const upOnly = (samples: ArrayLike<number>): Recording => ({
  sampleRate: 1000,
  startTime: 0,
  channels: [
    { name: "up", quantity: "force", direction: "up", unit: "N", samples: Float64Array.from(samples) },
  ],
  subject: {},
  origin: { format: "test" },
  cautions: [],
});
const withUp = (recording: Recording, change: (value: number, i: number) => number): Recording => ({
  ...recording,
  channels: recording.channels.map((channel) =>
    channel.quantity === "force" && channel.direction === "up"
      ? { ...channel, samples: channel.samples.map(change) }
      : channel,
  ),
});

describe("standing is no flight, however high the landing (350 N were taken off as offset)", () => {
  // Stand 3 s at 700 N, push off, 0.4 s in the air, land at 3200 N, stand.
  const random = seededRandom(3);
  const up = Array.from({ length: 9000 }, (_, i) => {
    const push = i < 3000 ? 700 : i < 3400 ? 700 + 800 * Math.sin((Math.PI * (i - 3000)) / 400) : 0;
    const landing = i < 3800 ? 0 : i < 4000 ? 3200 * Math.sin((Math.PI * (i - 3800)) / 200) : 700;
    return (i < 3400 ? push : landing) + random.normal();
  });
  it("the flight alone is the zero", () => {
    const { settings } = toGroundReaction(upOnly(up));
    expect(settings.flights).toBe(1);
    expect(Math.abs(settings.offset?.up ?? Number.NaN)).toBeLessThan(0.5);
  });
});

it("a platform that was zeroed with the runner on it is brought back (nothing was taken off)", () => {
  const recording = withUp(recordingOf({ contacts: 24 }), (value) => value - 480);
  const { settings, force } = toGroundReaction(recording);
  expect(settings.offset?.up).toBeCloseTo(-480, 6);
  expect(force.up[0]).toBeCloseTo(0, 6);
});

describe("noise is no drift", () => {
  it.each([10, 30])(
    "%d N of white noise at 1 kHz (was taken off as drift, and made net impulses three times as scattered)",
    (force) => {
      const ground = toGroundReaction(recordingOf({ contacts: 80, noise: { force } }));
      expect(ground.settings.driftRemoved).toBe(false);
      expect(codes(ground)).not.toContain("drift");
    },
  );
  it("a drift of twice as much as the noise explains is found in it", () => {
    const ground = toGroundReaction(recordingOf({ contacts: 80, noise: { force: 10 }, drift: { up: 20 } }));
    expect(ground.settings.driftRemoved).toBe(true);
  });
  it("one odd flight, even the first, is no drift", () => {
    const ground = toGroundReaction(
      withUp(recordingOf({ contacts: 40 }), (value, i) => value + (i < 120 ? 30 : 0)),
    );
    expect(ground.settings.driftRemoved).toBe(false);
  });
});

it("offset none keeps the offset and takes off the drift alone (80 N of offset went with it)", () => {
  const recording = recordingOf({ contacts: 40, offset: { up: 80 }, drift: { up: 30 } });
  const { settings, force } = toGroundReaction(recording, { offset: "none" });
  expect(settings.driftRemoved).toBe(true);
  expect(settings.offset).toBeUndefined();
  // 80 N and the mean of the drift over the flights, about half of it.
  expect(force.up[50]).toBeGreaterThan(93);
  expect(force.up[50]).toBeLessThan(97);
});

describe("a long quiet stretch does not outweigh the flights (on 2026-11-25 40 N before the run raised the threshold to 35 N)", () => {
  it("threshold and offset stay those of the flights between contacts", () => {
    const { recording } = syntheticRun({ contacts: 60, firstContact: 30, noise: { force: 1 } });
    const loud = withUp(recording, (value, i) => (i < 29_500 ? value + 40 : value));
    const trial = analyseTrial(toGroundReaction(loud));
    expect(trial.settings.events.threshold).toBe(20);
    // What is left of the step itself stands above the threshold: that is said, and no contact is lost to it.
    const usual = trial.contacts.filter(({ initialContact, toeOff }) => toeOff - initialContact < 1);
    expect(usual.length).toBe(60);
    expect(trial.contacts.length + trial.partialContacts.length).toBe(61);
    expect(codes(trial)).toContain("long-contact");
  });
});

it("drift over few, unevenly spaced flights is found whole (7 of 60 N were)", () => {
  const stance = { stepTime: 0.33, contactTime: 0.3 };
  const { recording } = syntheticRun({
    contacts: 90,
    stance,
    drift: { up: 60 },
    firstContact: 0.3,
    tail: 0.3,
    variability: { stepTime: 0.008, contactTime: 0.01 },
  });
  const ground = toGroundReaction(recording);
  expect(ground.settings.driftRemoved).toBe(true);
  const said = ground.cautions.find(({ code }) => code === "drift-removed");
  expect(said?.values?.range).toBeGreaterThan(50);
  expect(analyseTrial(ground).contacts.length).toBe(90);
});

it("two flights show a drift (was left in unsaid)", () => {
  const ground = toGroundReaction(
    recordingOf({ contacts: 2, firstContact: 0.3, drift: { up: 60 }, tail: 0.3 }),
  );
  expect(codes(ground)).toContain("drift-removed");
});

describe("saturation", () => {
  it("is said of any channel, also under drift that is taken off", () => {
    const recording = recordingOf({ contacts: 24, drift: { up: 60 } });
    const ground = toGroundReaction(withUp(recording, (value) => Math.min(value, 1500)));
    expect(codes(ground)).toEqual(["saturated", "drift-removed"]);
    expect(ground.cautions[0]?.where).toBe("up");
  });
  it("is not said of a clean recording, nor of coarse samples of a fast one", () => {
    expect(codes(toGroundReaction(recordingOf({ contacts: 24 })))).toEqual([]);
    const fine = recordingOf({ contacts: 6, sampleRate: 10_000, variability: { contactTime: 0.01 } });
    expect(codes(toGroundReaction(withUp(fine, Math.round)))).toEqual([]);
    // Five newtons a step: rounded peaks stay on one step for milliseconds.
    const noise = { force: 1 };
    for (const seed of [1, 2, 3, 4, 5, 6]) {
      const { channels, ...rest } = recordingOf({
        contacts: 24,
        noise,
        seed,
        variability: { contactTime: 0.01 },
      });
      const coarse = channels.map((channel) =>
        channel.quantity === "force"
          ? { ...channel, samples: channel.samples.map((value) => 5 * Math.round(value / 5)) }
          : channel,
      );
      expect(codes(toGroundReaction({ ...rest, channels: coarse }))).not.toContain("saturated");
    }
  });
});
