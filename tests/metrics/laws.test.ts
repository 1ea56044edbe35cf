import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Step } from "../../src/events/index.js";
import { integralBetween } from "../../src/filters/index.js";
import type { FootTrack, GroundReaction, MomentComponents } from "../../src/force/index.js";
import { massForStep } from "../../src/metrics/common/massForStep.js";
import * as metrics from "../../src/metrics/index.js";
import { centreOfMassMotion } from "../../src/models/index.js";
import { sampledRun, stepsThrough } from "./runs.js";

const { ground, steps } = sampledRun();
const whole = steps.slice(0, 6) as Required<Step>[];
const all = (record: GroundReaction, step: Step): number[] =>
  metrics.CATALOGUE.map(({ compute }) => compute(record, step) as number);

type Series = Readonly<Record<string, Float64Array>>;
type Change = (samples: Float64Array, axis: string, quantity: "force" | "moment" | "place") => Float64Array;

const changed = (change: Change): GroundReaction => {
  const each = (series: object, quantity: Parameters<Change>[2]): Series =>
    Object.fromEntries(
      Object.entries(series as Series).map(([axis, samples]) => [axis, change(samples, axis, quantity)]),
    );
  const { left, right } = ground.feet as Required<NonNullable<GroundReaction["feet"]>>;
  const foot = ({ heel, toe }: FootTrack) => ({ heel: each(heel, "place"), toe: each(toe, "place") });
  return {
    ...ground,
    force: each(ground.force, "force") as unknown as GroundReaction["force"],
    moment: each(ground.moment as MomentComponents, "moment"),
    feet: { left: foot(left), right: foot(right) } as unknown as NonNullable<GroundReaction["feet"]>,
  };
};

describe("closing laws, each contact", () => {
  it.each(whole.map((step, k) => [k, step] as const))("contact %i", (_k, step) => {
    const { contact, nextSameSide } = step;
    const mass = massForStep(ground, step);
    const contactTime = metrics.contactTime(ground, step);
    const motion = centreOfMassMotion(ground, contact.initialContact, nextSameSide.initialContact, {
      speed: 3,
    });
    // Impulse = change of momentum, to the last sample in contact.
    const last = motion.time.findIndex((time) => time > contact.toeOff) - 1;
    const short = { contact: { ...contact, toeOff: motion.time[last] as number } };
    const gain = (axis: "forward" | "up"): number => {
      const { velocity } = motion[axis] as { velocity: Float64Array };
      return mass * ((velocity[last] as number) - (velocity[0] as number));
    };
    const time = metrics.contactTime(ground, short);
    const { forward } = ground.force as { forward: Float64Array };
    const from = contact.initialContact;
    const to = nextSameSide.initialContact;
    const drag = integralBetween(forward, 1000, from, to) / (to - from);
    expect(Math.abs(drag)).toBeLessThan(2e-4);
    expect(metrics.netForwardImpulse(ground, short) - drag * time).toBeCloseTo(gain("forward"), 9);
    expect(metrics.verticalImpulse(ground, short) - mass * 9.80665 * time).toBeCloseTo(gain("up"), 9);
    // Parts add up to wholes.
    expect(metrics.propulsiveImpulse(ground, step) - metrics.brakingImpulse(ground, step)).toBeCloseTo(
      metrics.netForwardImpulse(ground, step),
      12,
    );
    expect(
      (metrics.medialImpulse(ground, step) ?? 0) + (metrics.lateralImpulse(ground, step) ?? 0),
    ).toBeCloseTo(metrics.mediolateralImpulse(ground, step), 12);
    expect(
      (metrics.brakingTime(ground, step) ?? 0) + (metrics.propulsiveTime(ground, step) ?? 0),
    ).toBeCloseTo(contactTime, 12);
    expect(contactTime + (metrics.aerialTime(ground, step) ?? 0)).toBeCloseTo(
      metrics.stepTime(ground, step) ?? 0,
      12,
    );
    expect(metrics.meanVerticalForce(ground, step) * contactTime).toBeCloseTo(
      metrics.verticalImpulse(ground, step),
      9,
    );
  });
});

describe("law: metrics that share what they integrate give what they give alone, to the last bit", () => {
  it.each(whole.map((step, k) => [k, step] as const))("contact %i", (_k, step) => {
    expect(all(ground, metrics.shareResults(step))).toEqual(all(ground, step));
  });
  it("in any order, and for another recording with the same step", () => {
    const step = whole[0] as Step;
    const shared = metrics.shareResults(step);
    const heavy = changed((samples, _axis, quantity) =>
      quantity === "place" ? samples : samples.map((f) => 2 * f),
    );
    for (const record of [ground, heavy, ground]) {
      const backward = [...metrics.CATALOGUE].reverse();
      expect(backward.map(({ compute }) => compute(record, shared))).toEqual(
        backward.map(({ compute }) => compute(record, step)),
      );
    }
  });
  it("a step that does not share sees samples that were changed in place", () => {
    const step = whole[0] as Step;
    const record = changed((samples) => samples.slice());
    const before = metrics.positiveExternalWork(record, step) as number;
    record.force.up.forEach((force, i) => {
      record.force.up[i] = 2 * force;
    });
    expect(metrics.positiveExternalWork(record, step)).not.toBeCloseTo(before, 1);
  });
});

it("closing law: mean vertical force over a stride is body weight, 70 kg within 1e-8", () => {
  for (const step of whole) expect(massForStep(ground, step) / 70).toBeCloseTo(1, 8);
});

it("closing law: two steps of a stride hold its braking, and its work comes back (positive = negative)", () => {
  const [first, second] = whole as [Required<Step>, Required<Step>];
  const impulse = metrics.netForwardImpulse(ground, first) + metrics.netForwardImpulse(ground, second);
  // What the 20 N threshold cuts off at both ends of both contacts.
  expect(Math.abs(impulse)).toBeLessThan(0.33);
  expect(Math.abs(impulse)).toBeLessThan(0.01 * metrics.brakingImpulse(ground, first) * 2);
});

describe("law: mirrored data give mirrored results, to the last bit", () => {
  // A moment is an axial vector: what turns about `right` stays, the others turn round.
  const flipped = changed((samples, axis, quantity) =>
    (axis === "right") === (quantity !== "moment") ? samples.map((f) => -f) : samples,
  );
  const { left, right } = flipped.feet as Required<NonNullable<GroundReaction["feet"]>>;
  const mirrored = { ...flipped, feet: { left: right, right: left } };
  const swap = { left: "right", right: "left", unknown: "unknown" } as const;
  const swapped = stepsThrough(steps.map(({ contact }) => ({ ...contact, side: swap[contact.side] })));
  it.each([0, 1, 2, 3])("contact %i: every metric", (k) => {
    expect(all(mirrored, swapped[k] as Step)).toEqual(all(ground, steps[k] as Step));
  });
  it("and only the sides swapped, medial and lateral change places", () => {
    const step = swapped[0] as Step;
    expect(metrics.medialImpulse(ground, step)).toBe(metrics.lateralImpulse(ground, steps[0] as Step));
    expect(metrics.peakLateralForce(ground, step)).toBe(metrics.peakMedialForce(ground, steps[0] as Step));
  });
});

describe("law: force and mass scaled together leave times, lengths and everything per body weight", () => {
  const scales = new Set(["N", "N s", "N/s", "N m", "N m s", "N/m", "J"]);
  // Read at a level in newtons, so that a scaled force is read at other instants.
  const atNewtons = new Set([
    "peakFreeMoment",
    "freeMomentImpulse",
    "touchdownDistance",
    "takeOffDistance",
    "strikeIndex",
  ]);
  it("property: for any scale, every metric of the catalogue", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.integer({ min: 0, max: 5 }),
        (k, contact) => {
          const heavy = changed((samples, _axis, quantity) =>
            quantity === "place" ? samples : samples.map((f) => k * f),
          );
          const step = steps[contact] as Step;
          for (const { id, unit, compute } of metrics.CATALOGUE) {
            if (atNewtons.has(id)) continue;
            const value = compute(ground, step);
            if (value === null) {
              expect(compute(heavy, step), id).toBeNull();
              continue;
            }
            const ratio = (compute(heavy, step) as number) / value;
            expect(ratio / (scales.has(unit) ? k : 1), id).toBeCloseTo(1, 9);
          }
        },
      ),
      { numRuns: 30 },
    ));
  it("doubling, with a stated mass and none by force: to the last bit but for rounding of the integrals", () => {
    const heavy = {
      ...changed((samples, _axis, quantity) => (quantity === "place" ? samples : samples.map((f) => 2 * f))),
      subject: { mass: 140 },
    };
    const step = { contact: whole[0]?.contact as Step["contact"] };
    for (const id of [
      "impactPeak",
      "averageLoadingRate",
      "peakVerticalForce",
      "peakBrakingForce",
      "brakingImpulse",
    ]) {
      const { compute } = metrics.metricById(id);
      expect(compute(heavy, step), id).toBe(2 * (compute(ground, step) as number));
    }
  });
});

it("property: a recording that starts earlier gives the same numbers", () =>
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 0, max: 5 }), (earlier, k) => {
      const padded = changed((samples) => {
        const longer = new Float64Array(samples.length + earlier);
        longer.set(samples, earlier);
        return longer;
      });
      const by = earlier / 1000;
      const moved = stepsThrough(
        steps.map(({ contact }) => ({
          ...contact,
          initialContact: contact.initialContact + by,
          toeOff: contact.toeOff + by,
        })),
      );
      const before = all(ground, steps[k] as Step);
      all(padded, moved[k] as Step).forEach((value, i) => {
        if (before[i] === null) expect(value, metrics.CATALOGUE[i]?.id).toBeNull();
        else expect(value / (before[i] as number), metrics.CATALOGUE[i]?.id).toBeCloseTo(1, 7);
      });
    }),
    { numRuns: 20 },
  ));
