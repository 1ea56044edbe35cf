import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  centreOfMassExcursion,
  effectiveContactTime,
  halfPeriodStiffness,
  type SpringMass,
  type SpringMassFromForceOptions,
  type SpringMassFromTimesOptions,
  springMassFromForce,
  springMassFromTimes,
} from "../../src/models/index.js";
import energy from "../fixtures/metrics/energy.json" with { type: "json" }; // SciPy 1.17.1, 400 001 points of one step
import models from "../fixtures/models/models.json" with { type: "json" }; // models.py, NumPy 2.4.6, SciPy 1.17.1
import { mirroredRun, sampledRun } from "../metrics/runs.js";

const BW = 70 * 9.80665;
const times = { mass: 70, contactTime: 0.245, flightBefore: 0.115, flightAfter: 0.115 };

describe("springMassFromTimes (Morin et al. 2005, J Appl Biomech 21:167)", () => {
  it("published signs: m 68, tc 0.19, tf 0.14, v 5, L 0.95 gives the drop of 53.6 mm, not the 142.1 mm of a wrong sign", () => {
    const { drop } = springMassFromTimes({
      ...times,
      mass: 68,
      contactTime: 0.19,
      flightBefore: 0.14,
      flightAfter: 0.14,
    });
    expect(drop).toBeCloseTo(0.0536, 4);
  });
  it.each(models.sineWave)(
    "independent integration of the half sine (NumPy): $mass kg at $speed m/s",
    (row) => {
      const { mass, contactTime, flightBefore, flightAfter, speed, legLength, copTravel } = row;
      const result = springMassFromTimes(
        { mass, contactTime, flightBefore, flightAfter },
        { speed, legLength, copTravel },
      );
      // Trapezoids of 200 001 points: 1e-10 of the drop.
      expect(result.peakForce / row.peakForce).toBeCloseTo(1, 12);
      expect(result.drop / row.drop).toBeCloseTo(1, 9);
      expect(result.verticalStiffness / row.verticalStiffness).toBeCloseTo(1, 9);
      expect(result.storedEnergy / ((row.peakForce * row.drop) / 2)).toBeCloseTo(1, 9);
      expect((result.leg?.compression as number) / row.compression).toBeCloseTo(1, 9);
      expect((result.leg?.stiffness as number) / row.legStiffness).toBeCloseTo(1, 9);
      expect(result.leg?.sweptAngle).toBeCloseTo(row.sweptAngle, 12);
    },
  );
  it("law: its half sine carries the weight of a whole step, mean force × tc = m g (tc + tf)", () => {
    const { peakForce } = springMassFromTimes(times);
    expect((peakForce * 2 * 0.245) / Math.PI).toBeCloseTo(BW * 0.36, 9);
  });
  it("law: the force estimator agrees on a run whose force is the half sine (drop at samples of 10 kHz)", () => {
    const peak = springMassFromTimes(times).peakForce;
    const up = Float64Array.from({ length: 7201 }, (_, i) => {
      const t = (i % 3600) / 10_000;
      return t < 0.245 ? peak * Math.sin((Math.PI * t) / 0.245) : 0;
    });
    const options = { speed: 3, legLength: 0.9275 };
    const byForce = springMassFromForce({ sampleRate: 10_000, force: { up } }, 0, 0.245, 0.72, options);
    const byTimes = springMassFromTimes(times, options);
    expect((byForce?.drop as number) / byTimes.drop).toBeCloseTo(1, 5);
    expect((byForce?.leg?.stiffness as number) / (byTimes.leg?.stiffness as number)).toBeCloseTo(1, 5);
    // Highest in mid-flight, lowest in mid-contact: drop + g tf²/8.
    const oscillation = centreOfMassExcursion(up, 10_000, 0, 0.72, 70);
    expect(oscillation).toBeCloseTo(byTimes.drop + (9.80665 * 0.115 ** 2) / 8, 6);
  });
  it("flight is the mean of before and after", () => {
    const uneven = springMassFromTimes({ ...times, flightBefore: 0.1, flightAfter: 0.13 });
    expect(uneven.peakForce).toBeCloseTo(springMassFromTimes(times).peakForce, 10);
    expect(uneven.peakForce).not.toBeCloseTo(
      springMassFromTimes({ ...times, flightBefore: 0.13, flightAfter: 0.13 }).peakForce,
      0,
    );
  });
  it("says how leg length and sweep were come by", () => {
    const method = (options: SpringMassFromTimesOptions) => springMassFromTimes(times, options).method;
    expect(method({})).toEqual({ estimator: "sine-wave", legLength: null, sweep: null });
    expect(method({ speed: 3 })).toEqual({ estimator: "sine-wave", legLength: null, sweep: null });
    expect(method({ speed: 3, height: 1.75 })).toEqual({
      estimator: "sine-wave",
      legLength: "height",
      sweep: "speed",
    });
    expect(method({ speed: 3, height: 1.75, legLength: 0.9, copTravel: 0.15 })).toEqual({
      estimator: "sine-wave",
      legLength: "measured",
      sweep: "centre-of-pressure",
    });
  });
  it("takes 0.53 × height for the leg", () =>
    expect(springMassFromTimes(times, { speed: 3, height: 1.75 }).leg?.length).toBeCloseTo(0.9275, 12));
  it("property: BW values stay, stiffness goes with mass", () =>
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 3, noNaN: true }), (k) => {
        const one = springMassFromTimes(times, { speed: 3, legLength: 0.9 });
        const scaled = springMassFromTimes({ ...times, mass: 70 * k }, { speed: 3, legLength: 0.9 });
        expect(scaled.peakForce / one.peakForce / k).toBeCloseTo(1, 12);
        expect(scaled.drop / one.drop).toBeCloseTo(1, 12);
        expect((scaled.leg?.stiffness as number) / (one.leg?.stiffness as number) / k).toBeCloseTo(1, 12);
      }),
    ));
  it("property: the drop is above 0 for any running, and travel of the centre of pressure stiffens the leg", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.08, max: 0.35, noNaN: true }),
        fc.double({ min: 0, max: 0.25, noNaN: true }),
        fc.double({ min: 0.01, max: 0.2, noNaN: true }),
        (contactTime, flight, copTravel) => {
          const runner = { mass: 70, contactTime, flightBefore: flight, flightAfter: flight };
          const still = springMassFromTimes(runner, { speed: 3, legLength: 0.95 });
          const rolling = springMassFromTimes(runner, { speed: 3, legLength: 0.95, copTravel });
          expect(still.drop).toBeGreaterThan(0);
          expect(rolling.leg?.stiffness as number).toBeGreaterThan(still.leg?.stiffness as number);
        },
      ),
    ));
  it.each([
    ["km/h for m/s", { speed: 30, legLength: 0.9 }],
    ["a centre of pressure faster than the runner", { speed: 3, legLength: 0.9, copTravel: 0.8 }],
  ])("has no leg and says so where the sweep does not fit: %s", (_what, options) => {
    const result = springMassFromTimes(times, options);
    expect(result.leg).toBeNull();
    expect(result.cautions.map(({ code }) => code)).toEqual(["sweep-beyond-leg"]);
  });
  it.each([
    ["no mass", { mass: 0 }, {}, "out-of-range"],
    ["a flight below 0: walking", { flightAfter: -0.05 }, {}, "out-of-range"],
    ["a contact of 0", { contactTime: 0 }, {}, "out-of-range"],
    ["NaN", { flightBefore: Number.NaN }, {}, "not-finite"],
    ["a height in cm", {}, { height: 175 }, "out-of-range"],
    ["a travel in mm", {}, { copTravel: 150 }, "out-of-range"],
    ["a speed below 0", {}, { speed: -3 }, "out-of-range"],
    ["no leg", {}, { legLength: 0 }, "out-of-range"],
    ["gravity of 0", {}, { gravity: 0 }, "out-of-range"],
    ["an option it does not know", {}, { leg: 0.9 }, "unknown-option"],
  ])("refuses %s", (_what, change, options, code) => {
    expect(() => springMassFromTimes({ ...times, ...change }, options as SpringMassFromTimesOptions)).toThrow(
      expect.objectContaining({ code }),
    );
  });
});

describe("springMassFromForce (McMahon & Cheng 1990, J Biomech 23 suppl 1:65)", () => {
  const { ground, steps } = sampledRun();
  const measure = (k: number, options: SpringMassFromForceOptions = {}, record = ground): SpringMass => {
    const { contact, nextSameSide } = steps[k] as Required<(typeof steps)[number]>;
    const span = [contact.initialContact, contact.toeOff, nextSameSide.initialContact] as const;
    return springMassFromForce(record, ...span, options) as SpringMass;
  };
  it.each(models.force)("SciPy, degree-1 spline integrated twice: contact $index at 20 N", (row) => {
    const result = measure(row.index);
    expect(result.mass).toBeCloseTo(row.mass, 9);
    expect(result.drop).toBeCloseTo(row.drop, 10);
    expect(result.peakForce).toBe(row.peakForce);
    // The curve turns between samples.
    expect(Math.abs(result.drop / row.dropBetweenSamples - 1)).toBeLessThan(1e-5);
  });
  // The largest sample of a peak between samples at 1 kHz is up to 0.011 % low; at 10 kHz a sample lies on it.
  it.each([
    [1000, 1.1e-4],
    [10_000, 1e-6],
  ])(
    "SciPy, cumulative trapezoid on 400 001 points: the mirrored run at 0 N, %d Hz, within %d",
    (rate, within) => {
      const options = { speed: 3, legLength: models.mirrored.legLength };
      const result = springMassFromForce(mirroredRun(rate, 1).ground, 0, 0.245, 0.72, options) as SpringMass;
      for (const key of ["peakForce", "drop", "verticalStiffness", "storedEnergy"] as const) {
        expect(Math.abs(result[key] / models.mirrored[key] - 1)).toBeLessThan(within);
      }
      expect(Math.abs((result.leg?.compression as number) / models.mirrored.compression - 1)).toBeLessThan(
        within,
      );
      expect(Math.abs((result.leg?.stiffness as number) / models.mirrored.legStiffness - 1)).toBeLessThan(
        within,
      );
    },
  );
  it("law: a true mass on a true spring gives its own stiffness back, and its energy is m v²/2 + m g × drop", () => {
    const [m, k, v, g, rate] = [70, 25_000, 0.65, 9.80665, 10_000];
    const omega = Math.sqrt(k / m);
    const force = (t: number): number =>
      m * g * (1 - Math.cos(omega * t)) + m * v * omega * Math.sin(omega * t);
    const contact = (2 * Math.PI - 2 * Math.atan((v * omega) / g)) / omega;
    const step = contact + (2 * v) / g;
    const up = Float64Array.from({ length: Math.ceil(2 * step * rate) + 1 }, (_, i) => {
      const t = (i / rate) % step;
      return t < contact ? force(t) : 0;
    });
    const result = springMassFromForce(
      { sampleRate: rate, force: { up } },
      0,
      contact,
      2 * step,
    ) as SpringMass;
    expect(Math.abs(result.verticalStiffness / k - 1)).toBeLessThan(1e-4);
    expect(Math.abs(result.storedEnergy / ((m * v * v) / 2 + m * g * result.drop) - 1)).toBeLessThan(1e-4);
  });
  it("law: a leg spring cannot hold more than the work of the step; with the travel of the centre of pressure, 0.90 of it", () => {
    const { ground: run } = mirroredRun(1000, 1);
    const held = (copTravel: number | null): number => {
      const options = { speed: 3, legLength: models.mirrored.legLength, copTravel };
      const { peakForce, leg } = springMassFromForce(run, 0, 0.245, 0.72, options) as SpringMass;
      return (peakForce * (leg?.compression as number)) / 2 / energy.external;
    };
    expect(held(0.19)).toBeCloseTo(0.9, 2); // the run's centre of pressure rolls 0.19 m
    expect(held(null)).toBeGreaterThan(1.15);
  });
  it("property: doubling mass and force leaves drop, swept angle and stiffness ÷ mass", () =>
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 5, noNaN: true }), (k) => {
        const scaled = { ...ground, force: { up: ground.force.up.map((f) => k * f) } };
        const one = measure(0, { speed: 3, height: 1.75 });
        const other = measure(0, { speed: 3, height: 1.75 }, scaled);
        expect(other.drop / one.drop).toBeCloseTo(1, 9);
        expect(other.leg?.sweptAngle).toBe(one.leg?.sweptAngle);
        expect(other.verticalStiffness / other.mass).toBeCloseTo(one.verticalStiffness / one.mass, 6);
        expect((other.leg?.stiffness as number) / k / (one.leg?.stiffness as number)).toBeCloseTo(1, 9);
      }),
      { numRuns: 20 },
    ));
  it("mirrored data gives the same: the sideways force is not read", () => {
    const mirrored = {
      ...ground,
      force: { ...ground.force, right: (ground.force.right as Float64Array).map((f) => -f) },
    };
    expect(measure(1, {}, mirrored)).toEqual(measure(1));
  });
  it("is null where the centre of mass does not fall after contact", () => {
    const up = Float64Array.from({ length: 11 }, (_, i) => 700 + 100 * Math.cos((2 * Math.PI * i) / 10));
    // At its lowest when the force is largest: from there it only rises.
    expect(springMassFromForce({ sampleRate: 10, force: { up } }, 0, 0.4, 1)).toBeNull();
  });
  it.each([
    ["a toe-off behind the stride", [0.2, 1, 0.9, {}], "out-of-range"],
    ["a toe-off before contact", [0.2, 0.1, 0.9, {}], "out-of-range"],
    ["a stride behind the samples", [0.2, 0.4, 99, {}], "out-of-range"],
    ["no mass", [0.2, 0.4, 0.9, { mass: 0 }], "out-of-range"],
    ["a grade in per cent", [0.2, 0.4, 0.9, { grade: 5 }], "out-of-range"],
    ["NaN for a speed", [0.2, 0.4, 0.9, { speed: Number.NaN, height: 1.75 }], "not-finite"],
  ] as const)("refuses %s", (_what, [from, toeOff, to, options], code) => {
    expect(() => springMassFromForce(ground, from, toeOff, to, options)).toThrow(
      expect.objectContaining({ code }),
    );
  });
});

describe("effectiveContactTime and halfPeriodStiffness (Cavagna)", () => {
  const { ground, steps } = sampledRun();
  it.each(models.force)("SciPy, degree-1 spline on 400 001 points: contact $index", (row) => {
    const { initialContact, toeOff } = (steps[row.index] as (typeof steps)[number]).contact;
    const time = effectiveContactTime(ground.force.up, 1000, initialContact, toeOff, row.weight);
    // The fixture looks at points 0.6 µs apart.
    expect(Math.abs((time as number) - row.effectiveContactTime)).toBeLessThan(2e-6);
  });
  it("172.6 ms and 23.19 kN/m of the mirrored run (NumPy, 400 001 points)", () => {
    const run = mirroredRun(10_000, 1);
    const time = effectiveContactTime(run.ground.force.up, 10_000, 0, 0.245, BW) as number;
    // The fixture's points are 0.9 µs apart.
    expect(Math.abs(time - models.mirrored.effectiveContactTime)).toBeLessThan(2e-6);
    expect(Math.abs(halfPeriodStiffness(70, time) / models.mirrored.halfPeriodStiffness - 1)).toBeLessThan(
      3e-5,
    );
  });
  it("law: m x″ = −k x swings half a period in π √(m/k)", () =>
    expect(halfPeriodStiffness(70, Math.PI * Math.sqrt(70 / 25_000))).toBeCloseTo(25_000, 8));
  it("by hand: a dip below the weight counts; a force already above it counts from the start", () => {
    const up = Float64Array.of(0, 1000, 400, 1000, 0);
    expect(effectiveContactTime(up, 10, 0, 0.4, 500)).toBeCloseTo(0.3, 12);
    expect(effectiveContactTime(up, 10, 0.1, 0.3, 500)).toBeCloseTo(0.2, 12);
  });
  it("is null where the force never exceeds the weight", () =>
    expect(effectiveContactTime(Float64Array.of(0, 100, 0), 10, 0, 0.2, 500)).toBeNull());
  it.each([
    [0, 0.4, 0],
    [0.4, 0.2, 500],
  ])("refuses %f s to %f s over %f N", (from, to, weight) =>
    expect(() => effectiveContactTime(new Float64Array(9), 10, from, to, weight)).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    ),
  );
  it.each([
    [0, 0.17],
    [70, 0],
  ])("refuses a mass of %f and a time of %f", (mass, time) =>
    expect(() => halfPeriodStiffness(mass, time)).toThrow(expect.objectContaining({ code: "out-of-range" })),
  );
});
