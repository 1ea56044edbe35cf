import { describe, expect, it } from "vitest";
import { toGroundReaction } from "../../src/force/index.js";
import { brakingImpulse, peakVerticalForce } from "../../src/metrics/index.js";
import type { Recording } from "../../src/recording/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import { analyseTrial, type Trial } from "../../src/trial/index.js";
import { groundOf } from "../helpers.js";
import { STANCE, walking, walkOnBelts } from "../walking.js";

const BW = walking.massKg * 9.80665;
const codes = ({ cautions }: { cautions: readonly { code: string }[] }) => cautions.map(({ code }) => code);

describe("a walk on two belts, against truth from the formula (NumPy)", () => {
  const { metrics } = walking;
  const ground = toGroundReaction(walkOnBelts({ left: 17, right: -11 }));
  // Unfiltered and at 1 N, so that truth at the ends of the formula applies.
  const trial = analyseTrial(ground, { filter: null, events: { threshold: 1 } });
  const mean = (id: string) => trial.summary.metrics[id]?.mean as number;
  it("offsets of each belt come off by its swing phases", () => {
    expect(trial.settings.force.plates?.map(({ offset }) => offset?.up)).toEqual([
      expect.closeTo(17, 6),
      expect.closeTo(-11, 6),
    ]);
    expect(trial.settings.force.apart).toEqual(["left", "right"]);
  });
  it("what is said of a foot is measured under that foot, though the other is on the ground", () => {
    expect(mean("contactTime")).toBeCloseTo(STANCE, 3);
    expect(mean("peakVerticalForce") / BW).toBeCloseTo(metrics.F1.BW, 5);
    expect(mean("peakBrakingForce") / BW).toBeCloseTo(-metrics.brakingPeakBW, 5);
    expect(mean("peakPropulsiveForce") / BW).toBeCloseTo(metrics.propulsivePeakBW, 5);
    expect(mean("brakingImpulse") / BW).toBeCloseTo(-metrics.brakingImpulseBWs, 6);
    const curve = trial.curves.up.left?.mean as number[];
    expect((curve[50] as number) / BW).toBeCloseTo(metrics.F2trough.BW, 4);
  });
  it("a direct call is right too, and on the sum it is not", () => {
    const step = { contact: trial.contacts[1] as Trial["contacts"][number] };
    expect(brakingImpulse(ground, step) / BW).toBeCloseTo(-metrics.brakingImpulseBWs, 6);
    const { plates: _, ...sum } = ground;
    expect(peakVerticalForce(sum, step)).toBeGreaterThan(1.1 * peakVerticalForce(ground, step));
  });
  it("what is said of the body is measured on the sum", () => {
    expect(trial.settings.massByForce).toBeCloseTo(walking.massKg, 3);
    expect(mean("verticalOscillation")).toBeCloseTo(walking.work.comVerticalExcursion, 4);
    expect(mean("mediolateralExcursion")).toBeCloseTo(walking.work.comLateralExcursion, 4);
    expect(2 * mean("positiveExternalWork")).toBeCloseTo(walking.work.perStrideJ.external, 1);
    expect(mean("cadence")).toBeCloseTo(metrics.cadence, 6);
    expect(mean("stepTime")).toBeCloseTo(metrics.stepTime, 9);
    expect(mean("dutyFactor")).toBeCloseTo(metrics.stancePercent / 100, 3);
  });
  it("there is no aerial time, with the reason", () => {
    expect(trial.notComputed.find(({ id }) => id === "aerialTime")).toBeDefined();
    expect(codes(trial)).not.toContain("short-flights");
  });
  it("is plain data: what JSON keeps is the same", () => {
    expect(JSON.parse(JSON.stringify(trial))).toEqual(trial);
  });
});

describe("a run whose feet land on two belts", () => {
  const { recording, truth } = syntheticRun({ contacts: 40, seed: 11 });
  /** Each foot's samples on a belt of its own, zeros or blanks on the other. */
  const split = (): Recording => {
    const side = (i: number) => {
      const time = i / recording.sampleRate;
      const near = truth.contacts.filter(({ initialContact }) => initialContact - 0.04 <= time).at(-1);
      return near?.side ?? "left";
    };
    return {
      ...recording,
      channels: (["left", "right"] as const).flatMap((plate) =>
        recording.channels.map((channel) => ({
          ...channel,
          name: `${plate} ${channel.name}`,
          plate,
          samples: channel.samples.map((value, i) =>
            side(i) === plate ? value : channel.quantity === "centre-of-pressure" ? Number.NaN : 0,
          ),
        })),
      ),
    };
  };
  const whole = analyseTrial(toGroundReaction(recording));
  const apart = analyseTrial(toGroundReaction(split()));
  it("gives every contact and every value as on one belt", () => {
    expect(apart.contacts.length).toBe(whole.contacts.length);
    expect(apart.contacts.map(({ side }) => side)).toEqual(
      truth.contacts.map(({ side }) => side).slice(0, apart.contacts.length),
    );
    apart.steps.forEach((row, k) => {
      const one = whole.steps[k]?.values ?? {};
      for (const [id, value] of Object.entries(row.values)) {
        const wanted = one[id] ?? null;
        if (value === null || wanted === null) expect(value, id).toBe(wanted);
        else
          expect(Math.abs(value - wanted), `${id} of contact ${k}`).toBeLessThan(
            2e-3 * Math.max(Math.abs(wanted), 1),
          );
      }
    });
  });
  it("says so: the belts tell the feet", () => {
    expect(apart.settings.events.sides).toBe("plates");
    expect(apart.contacts.map(({ plate }) => plate)).toEqual(
      apart.contacts.map(({ side }) => (side === "left" ? 0 : 1)),
    );
  });
});

describe("overground recordings of one or two contacts, which hold no stride", () => {
  const foot = (from: number) =>
    Array.from({ length: 2500 }, (_, i) =>
      i > from && i < from + 250 ? 1600 * Math.sin((Math.PI * (i - from)) / 250) : 0,
    );
  it.each([
    ["one contact, no mass", groundOf({ up: foot(900), sampleRate: 1000, mass: null }), 1],
    ["one contact, mass stated", groundOf({ up: foot(900), sampleRate: 1000 }), 1],
    [
      "two contacts on plates apart",
      {
        ...groundOf({ up: foot(900), sampleRate: 1000 }),
        plates: [
          groundOf({ up: foot(500), sampleRate: 1000 }),
          groundOf({ up: foot(1600), sampleRate: 1000 }),
        ],
      },
      2,
    ],
  ] as const)("%s: a summary over contacts, mass by force absent, in words", (_, ground, contacts) => {
    const trial = analyseTrial(ground);
    expect(trial.contacts.length).toBe(contacts);
    expect(trial.settings.massByForce).toBeNull();
    expect(trial.summary.metrics.peakVerticalForce?.n).toBe(contacts === 1 ? 1 : trial.summary.strides || 2);
    expect(trial.summary.metrics.peakVerticalForce?.mean).toBeCloseTo(1600, -1);
    expect(trial.notComputed.map(({ id }) => id)).toContain("strideTime");
    expect(codes(trial).some((code) => code === "no-stride" || code === "few-strides")).toBe(true);
    expect(JSON.parse(JSON.stringify(trial))).toEqual(trial);
  });
  it("no contact on any plate: the message speaks of the plate that was loaded most", () => {
    const plates = [
      groundOf({ up: foot(5000), sampleRate: 1000 }),
      groundOf({ up: foot(900).map((f) => f / 200), sampleRate: 1000 }),
    ];
    expect(() => analyseTrial({ ...groundOf({ up: foot(5000), sampleRate: 1000 }), plates })).toThrow(
      /reaches 8\.0 N|reaches 7\.\d N/,
    );
  });
});
