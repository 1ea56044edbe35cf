import { describe, expect, it } from "vitest";
import type { Step } from "../../../src/events/index.js";
import type { GroundReaction } from "../../../src/force/index.js";
import { toGroundReaction } from "../../../src/force/index.js";
import {
  elasticEnergy,
  forceGenerationCost,
  legStiffness,
  metricById,
  pushToBrakeTimeRatio,
  verticalStiffness,
} from "../../../src/metrics/index.js";
import { syntheticRun } from "../../../src/synthetic/index.js";
import { analyseTrial } from "../../../src/trial/index.js";
import feet from "../../fixtures/metrics/feet.json" with { type: "json" }; // feet.py, NumPy 2.4.6
import models from "../../fixtures/models/models.json" with { type: "json" }; // models.py, NumPy 2.4.6, SciPy 1.17.1
import { contactOver, groundOf } from "../../helpers.js";
import { treadmillRun } from "../../models/landing/treadmillRun.js";
import { mirroredRun, sampledRun } from "../runs.js";

const { ground, steps } = sampledRun();
const step = steps[0] as Required<Step>;
const { mirrored } = models;
const relative = (value: number | null, truth: number) => Math.abs((value ?? Number.NaN) / truth - 1);

describe("SciPy 1.17.1 on 400 001 points of a step of the mirrored run, within 0.01 %", () => {
  const run = mirroredRun(1000, 2);
  const here = run.steps[0] as Step;
  it("27.77 kN/m of vertical stiffness, peak force ÷ drop", () =>
    expect(relative(verticalStiffness(run.ground, here), mirrored.verticalStiffness)).toBeLessThan(1e-4));
  it("23.19 kN/m by the half period", () =>
    expect(
      relative(verticalStiffness(run.ground, here, { method: "half-period" }), mirrored.halfPeriodStiffness),
    ).toBeLessThan(1e-4));
  it("13.08 kN/m of leg stiffness with a leg of 0.53 × 1.75 m", () => {
    expect(mirrored.legLength).toBeCloseTo(0.53 * 1.75, 12);
    expect(relative(legStiffness(run.ground, here), mirrored.legStiffness)).toBeLessThan(1e-4);
    expect(legStiffness(run.ground, here, { legLength: 0.53 * 1.75 })).toBe(legStiffness(run.ground, here));
  });
  it("63.4 J in the vertical spring", () =>
    expect(relative(elasticEnergy(run.ground, here), mirrored.storedEnergy)).toBeLessThan(1e-4));
  it("push ÷ brake, 126.4 ÷ 118.6 ms; within 3e-4, 20 µs of sampling in each", () =>
    expect(relative(pushToBrakeTimeRatio(run.ground, here), mirrored.push / mirrored.brake)).toBeLessThan(
      3e-4,
    ));
});

describe.each(models.force)("SciPy 1.17.1, splines on the sampled run at 20 N: contact $index", (row) => {
  const here = steps[row.index] as Required<Step>;
  const time = here.contact.toeOff - here.contact.initialContact;
  it("vertical stiffness and energy: peak and drop at the samples", () => {
    expect(relative(verticalStiffness(ground, here), row.peakForce / row.drop)).toBeLessThan(1e-9);
    expect(relative(elasticEnergy(ground, here), (row.peakForce * row.drop) / 2)).toBeLessThan(1e-9);
  });
  it("half period: mass and effective contact time", () => {
    // The straight lines of SciPy are read at 400 001 points: 0.6 µs of 173 ms.
    const truth = row.mass * (Math.PI / row.effectiveContactTime) ** 2;
    expect(relative(verticalStiffness(ground, here, { method: "half-period" }), truth)).toBeLessThan(2e-5);
  });
  it("push ÷ brake", () =>
    // 2 µs of 118 ms.
    expect(relative(pushToBrakeTimeRatio(ground, here), row.push / (time - row.push))).toBeLessThan(4e-5));
  it("leg with the travel of the centre of pressure (NumPy), by hand from there", () => {
    const { copTravel } = feet.contacts[row.index] as (typeof feet.contacts)[number];
    const length = 0.53 * 1.75;
    const leg = (travel: number) => {
      const half = (3 * time - travel) / 2;
      return row.peakForce / (length - Math.sqrt(length * length - half * half) + row.drop);
    };
    expect(relative(legStiffness(ground, here), leg(0))).toBeLessThan(1e-9);
    expect(
      relative(legStiffness(ground, here, { sweep: "centre-of-pressure" }), leg(copTravel)),
    ).toBeLessThan(1e-9);
    expect(leg(copTravel)).toBeGreaterThan(1.15 * leg(0));
  });
});

it("law: on the ground the centre of pressure is not carried back: the same stiffness from the same feet", () => {
  const { right } = ground.moment as Required<NonNullable<GroundReaction["moment"]>>;
  const standing = right.map((m, i) => m + 3 * (i / 1000) * (ground.force.up[i] as number));
  const over = { ...ground, surface: "ground" as const, moment: { ...ground.moment, right: standing } };
  const options = { sweep: "centre-of-pressure" } as const;
  // Between samples the moment of a place that moves is no straight line: 2 parts in 10 000.
  const still = legStiffness(over, step, options) as number;
  expect(relative(still, legStiffness(ground, step, options) as number)).toBeLessThan(3e-4);
  expect(relative(still, legStiffness(over, step) as number)).toBeGreaterThan(0.1);
});

describe("SciPy 1.17.1: the sine wave integrated (Morin et al. 2005, J Appl Biomech 21:167)", () => {
  it.each(models.sineWave)("$mass kg, $contactTime s, flights $flightBefore and $flightAfter s", (row) => {
    const { mass, contactTime, flightBefore, flightAfter, speed, legLength } = row;
    const contact = contactOver(0.1, 0.1 + contactTime);
    const next = contactOver(0.1 + contactTime + flightAfter, 0.1 + 2 * contactTime + flightAfter);
    const nextSameSide = contactOver(next.toeOff + flightBefore, next.toeOff + flightBefore + contactTime);
    const record = {
      ...groundOf({ up: new Float64Array(2000), sampleRate: 1000, speed, surface: "belt" }),
      massByForce: mass,
    };
    const whole = { contact, next, nextSameSide };
    const method = "sine-wave" as const;
    expect(relative(verticalStiffness(record, whole, { method }), row.verticalStiffness)).toBeLessThan(1e-9);
    expect(relative(elasticEnergy(record, whole, { method }), (row.peakForce * row.drop) / 2)).toBeLessThan(
      1e-9,
    );
    if (row.copTravel === 0) {
      expect(relative(legStiffness(record, whole, { method, legLength }), row.legStiffness)).toBeLessThan(
        1e-9,
      );
    }
  });
  it("null without the next contact, and where one of the two flights is none", () => {
    const method = "sine-wave" as const;
    const { next: _next, ...stride } = step;
    expect(verticalStiffness(ground, stride, { method })).toBeNull();
    const early = { ...step, next: { ...step.next, initialContact: step.contact.toeOff - 0.01 } };
    expect(verticalStiffness(ground, early, { method })).toBeNull();
    const late = { ...step, next: { ...step.next, toeOff: step.nextSameSide.initialContact + 0.01 } };
    expect(elasticEnergy(ground, late, { method })).toBeNull();
  });
});

it("published (Farley & González 1996, J Biomech 29:181, at 2.5 m/s, leg 7.0 to 16.3 kN/m from the lowest to the highest cadence): an open recording at 2.5 m/s lies within, by each form", () => {
  const { ground: open, steps: run } = treadmillRun();
  for (const options of [{}, { method: "sine-wave" }, { sweep: "centre-of-pressure" }] as const) {
    const values = run.flatMap((one) => legStiffness(open, one, options) ?? []);
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    expect(values.length).toBe(72);
    expect(mean).toBeGreaterThan(7000);
    expect(mean).toBeLessThan(16_300);
  }
});

it("published (Cavagna 2006, J Exp Biol 209:4051, abstract: below 14 km/h the push lasts longer than the brake): each stride of an open recording at 9 km/h", () => {
  const { ground: open, steps: run } = treadmillRun();
  const ratios = run.flatMap((one) => pushToBrakeTimeRatio(open, one) ?? []);
  expect(ratios.length).toBe(72);
  expect(Math.min(...ratios)).toBeGreaterThan(1);
});

describe("laws", () => {
  it("a mass on a linear spring (closed form): its stiffness, energy and half period come back, and push = brake", () => {
    // m a = k(x0 - x) - m g about the rest, as long as the force is above 0; flights close the step.
    const [mass, stiffness, gravity] = [70, 25_000, 9.80665];
    const omega = Math.sqrt(stiffness / mass);
    const sag = (mass * gravity) / stiffness;
    const speed = 0.7;
    // x from touch, downward: x = sag (1 - cos wt) + (speed/w) sin wt; contact until x is 0 again.
    const contactTime = (2 * Math.PI - 2 * Math.atan2(speed / omega, sag)) / omega;
    const flight = (2 * speed) / gravity;
    const stepTime = contactTime + flight;
    const rate = 20_000;
    const force = (t: number) =>
      stiffness * (sag * (1 - Math.cos(omega * t)) + (speed / omega) * Math.sin(omega * t));
    const up = Float64Array.from({ length: Math.ceil(2 * stepTime * rate) + 2 }, (_, i) => {
      const t = i / rate - (i / rate >= stepTime ? stepTime : 0);
      return t <= contactTime ? force(t) : i / rate >= 2 * stepTime ? force(i / rate - 2 * stepTime) : 0;
    });
    const record = {
      ...groundOf({ up, forward: new Float64Array(up.length), sampleRate: rate, speed: 3, surface: "belt" }),
    };
    const whole = {
      contact: contactOver(0, contactTime),
      next: contactOver(stepTime, stepTime + contactTime),
      nextSameSide: contactOver(2 * stepTime, 2 * stepTime + contactTime),
    };
    expect(relative(verticalStiffness(record, whole), stiffness)).toBeLessThan(1e-5);
    expect(relative(verticalStiffness(record, whole, { method: "half-period" }), stiffness)).toBeLessThan(
      1e-5,
    );
    const deepest = sag + Math.hypot(sag, speed / omega);
    expect(relative(elasticEnergy(record, whole), (stiffness * deepest * deepest) / 2)).toBeLessThan(1e-5);
    expect(pushToBrakeTimeRatio(record, whole)).toBeCloseTo(1, 4);
  });
  it("F²/k = 2 E: energy and stiffness are of one spring, by each method", () => {
    const peak = 1876.1492;
    const energy = elasticEnergy(ground, step) as number;
    expect((peak * peak) / (verticalStiffness(ground, step) as number)).toBeCloseTo(2 * energy, 9);
  });
  it("on a slope gravity counts by its part normal to it: the half period of a scaled runner", () => {
    const cos = 1 / Math.hypot(1, 0.1);
    const leaning = {
      ...ground,
      grade: 0.1,
      force: { ...ground.force, up: ground.force.up.map((f) => cos * f) },
    };
    const method = "half-period" as const;
    expect(
      relative(
        verticalStiffness(leaning, step, { method }),
        verticalStiffness(ground, step, { method }) as number,
      ),
    ).toBeLessThan(1e-9);
    const sine = (record: GroundReaction) => elasticEnergy(record, step, { method: "sine-wave" }) as number;
    expect(relative(sine(leaning), cos * cos * sine(ground))).toBeLessThan(1e-9);
  });
  it("a drag is overcome by the push: it lasts longer", () =>
    expect(pushToBrakeTimeRatio(ground, step, { drag: 5 })).toBeGreaterThan(
      pushToBrakeTimeRatio(ground, step) as number,
    ));
});

describe("nulls", () => {
  const { contact } = step;
  it("without a later contact of the same side", () => {
    for (const metric of [verticalStiffness, legStiffness, elasticEnergy, pushToBrakeTimeRatio]) {
      expect(metric(ground, { contact, next: step.next })).toBeNull();
    }
    expect(verticalStiffness(ground, { contact }, { method: "half-period" })).toBeNull();
  });
  it("where the centre of mass does not fall after contact: a force below its mean first, then above", () => {
    const up = Float64Array.of(500, 500, 500, 500, 900, 900, 900, 900, 900);
    const record = {
      ...groundOf({ up, sampleRate: 10, speed: 1, surface: "belt" }),
      subject: { height: 1.75 },
    };
    const rising = { contact: contactOver(0, 0.3), nextSameSide: contactOver(0.8, 0.85) };
    for (const metric of [verticalStiffness, legStiffness, elasticEnergy]) {
      expect(metric(record, rising)).toBeNull();
    }
  });
  it("where the sweep does not fit the leg", () => {
    expect(legStiffness(ground, step, { legLength: 0.3 })).toBeNull();
    expect(legStiffness({ ...ground, speed: 9 }, step)).toBeNull();
  });
  it("where the force does not reach the level that the travel is read at", () => {
    const light = { ...ground, force: { ...ground.force, up: ground.force.up.map((f) => f / 10) } };
    expect(legStiffness(light, step, { sweep: "centre-of-pressure" })).toBeNull();
    expect(legStiffness(light, step)).not.toBeNull();
  });
  it("where the external energy never falls in contact: a push alone", () => {
    const n = 801;
    const record = groundOf({
      up: new Float64Array(n).fill(700),
      forward: Float64Array.from({ length: n }, (_, i) => (i <= 300 ? 50 : -30)),
      sampleRate: 1000,
      speed: 3,
      surface: "belt",
    });
    const push = { contact: contactOver(0.01, 0.29), nextSameSide: contactOver(0.79, 0.795) };
    expect(pushToBrakeTimeRatio(record, push)).toBeNull();
  });
  it("half period: where the force never exceeds body weight in contact", () => {
    const low = {
      contact: { ...contact, toeOff: contact.initialContact + 0.005 },
      nextSameSide: step.nextSameSide,
    };
    expect(verticalStiffness(ground, low, { method: "half-period" })).toBeNull();
  });
});

describe("forceGenerationCost (Kram & Taylor 1990, Nature 346:265)", () => {
  it("published cases worked out (0.183 J/N): 8.973 W/kg at 0.2 s", () => {
    const first = { contact: contactOver(0.25, 0.45) };
    expect(forceGenerationCost(ground, first, { coefficient: 0.183 })).toBeCloseTo(8.97308475, 8);
  });
  it("published (Kipp, Grabowski & Kram 2018, abstract): 9.28 W/kg at 0.280 s with 0.265 J/N, 21.44 at 0.190 s with 0.415", () => {
    const at = (time: number, coefficient: number) =>
      forceGenerationCost(ground, { contact: contactOver(0.25, 0.25 + time) }, { coefficient });
    expect(at(0.28, 0.265)).toBeCloseTo(9.28, 2);
    expect(at(0.19, 0.415)).toBeCloseTo(21.44, 1);
  });
  it("is contact time in disguise: the force does not enter", () => {
    const heavy = { ...ground, force: { up: ground.force.up.map((f) => 3 * f) } };
    expect(forceGenerationCost(heavy, step, { coefficient: 0.3 })).toBe(
      forceGenerationCost(ground, step, { coefficient: 0.3 }),
    );
  });
  it("null without a coefficient; a trial says why, and takes an entry that states one", () => {
    expect(forceGenerationCost(ground, step)).toBeNull();
    const plain = toGroundReaction(syntheticRun({ duration: 4 }).recording);
    const entry = metricById("forceGenerationCost");
    expect(analyseTrial(plain, { metrics: [entry] }).notComputed.map(({ code }) => code)).toEqual([
      "missing-coefficient",
    ]);
    const own = {
      ...entry,
      needs: [],
      compute: (g: GroundReaction, s: Step) => forceGenerationCost(g, s, { coefficient: 0.3 }),
    };
    expect(analyseTrial(plain, { metrics: [own] }).summary.metrics.forceGenerationCost?.mean).toBeGreaterThan(
      5,
    );
  });
  it.each([
    [{ coefficient: 0 }, "out-of-range"],
    [{ coefficient: Number.NaN }, "not-finite"],
    [{ cost: 3 }, "unknown-option"],
  ])("refuses %o", (options, code) =>
    expect(() => forceGenerationCost(ground, step, options as { coefficient: number })).toThrow(
      expect.objectContaining({ code }),
    ),
  );
});

it("a trial of a runner of unknown height has no leg stiffness, and says so", () => {
  const { subject: _subject, ...rest } = syntheticRun({ duration: 4, surface: "belt" }).recording;
  const trial = analyseTrial(toGroundReaction({ ...rest, subject: { mass: 70 } }));
  expect(trial.notComputed).toContainEqual({
    id: "legStiffness",
    code: "missing-height",
    message: "the runner's height is not stated",
  });
  expect(trial.summary.metrics.verticalStiffness?.normalised?.unit).toBe("N/m/kg");
});

describe("refusals", () => {
  const { height: _height, ...subject } = ground.subject;
  const cases: [string, () => unknown, string][] = [
    ["an unknown method", () => verticalStiffness(ground, step, { method: "sine" as never }), "out-of-range"],
    [
      "half period for an energy",
      () => elasticEnergy(ground, step, { method: "half-period" as never }),
      "out-of-range",
    ],
    ["an unknown sweep", () => legStiffness(ground, step, { sweep: "foot" as never }), "out-of-range"],
    ["neither height nor leg", () => legStiffness({ ...ground, subject }, step), "missing-value"],
    ["no speed", () => legStiffness({ ...ground, speed: undefined as never }, step), "missing-value"],
    ["a leg of 0", () => legStiffness(ground, step, { legLength: 0 }), "out-of-range"],
    [
      "a height in centimetres",
      () => legStiffness({ ...ground, subject: { height: 175 } }, step),
      "out-of-range",
    ],
    [
      "a travel without its centre of pressure",
      () => legStiffness({ ...ground, moment: {} }, step, { sweep: "centre-of-pressure" }),
      "missing-channel",
    ],
    [
      "a push without a forward force",
      () => pushToBrakeTimeRatio({ ...ground, force: { up: ground.force.up } }, step),
      "missing-channel",
    ],
    [
      "an infinite drag",
      () => pushToBrakeTimeRatio(ground, step, { drag: Number.POSITIVE_INFINITY }),
      "not-finite",
    ],
    [
      "a stride that ends before it begins",
      () => verticalStiffness(ground, { ...step, nextSameSide: contactOver(0.01, 0.02) }),
      "out-of-range",
    ],
    ["no contact", () => elasticEnergy(ground, {} as Step), "wrong-type"],
  ];
  it.each(cases)("%s", (_what, call, code) => expect(call).toThrow(expect.objectContaining({ code })));
});
