import { expect, it } from "vitest";
import { contactAtThreshold, forceAt, syntheticRun, type TrueContact } from "../../src/synthetic/index.js";
import numpy from "../fixtures/synthetic/stanceModel.json" with { type: "json" }; // stanceModel.py there, NumPy 2.4.6, SciPy 1.17.1
import { column } from "./helpers.js";

const OPTIONS = {
  mass: numpy.mass,
  height: numpy.centreOfMassHeight / 0.55,
  speed: numpy.speed,
  surface: "ground",
  stance: numpy.stance,
} as const;

it("independent library: NumPy's samples of an uneven run at 1 kHz, to their rounding of 1e-4 N", () => {
  const { recording } = syntheticRun({
    ...OPTIONS,
    left: numpy.left,
    firstContact: numpy.firstContact,
    contacts: 3,
  });
  const [forward, up, right] = ["forward", "up", "right"].map((name) => column(recording, name));
  expect(numpy.samples.length).toBe(327);
  for (const [i, ...row] of numpy.samples as [number, number, number, number][]) {
    [forward, up, right].forEach((samples, part) => {
      expect(Math.abs((samples?.[i] as number) - (row[part] as number))).toBeLessThanOrEqual(0.5e-4 + 1e-9);
    });
  }
});

const { truth } = syntheticRun({ ...OPTIONS, contacts: 2 });
const contact = truth.contacts[0] as TrueContact;

it("independent library: NumPy's landing distance by the angular-momentum law, to 1e-11 m", () => {
  expect(Math.abs(contact.values.touchdownDistance - numpy.dense.touchdownDistance)).toBeLessThan(1e-11);
  expect(Math.abs(contact.values.takeOffDistance - numpy.dense.takeOffDistance)).toBeLessThan(1e-8);
});

it.each([
  ["verticalImpulse", 1e-10],
  ["brakingImpulse", 1e-9],
  ["propulsiveImpulse", 1e-9],
  ["medialImpulse", 1e-9],
  ["lateralImpulse", 1e-9],
  ["peakVerticalForce", 1e-12],
  ["peakResultantForce", 1e-8],
  ["impactPeak", 1e-8],
  ["timeToImpactPeak", 1e-4],
  ["verticalOscillation", 1e-9],
  ["positiveExternalWork", 5e-6],
] as const)("independent library: NumPy's dense %s, to %d of its value", (id, tolerance) => {
  const value = contact.values[id] as number;
  expect(Math.abs(value / numpy.dense[id] - 1)).toBeLessThan(tolerance);
});

it.each(["forward", "up", "right"] as const)(
  "independent library: NumPy's %s velocity at contact, to 1e-9 m/s",
  (direction) => {
    expect(contact.motion.velocity[direction]).toBeCloseTo(numpy.dense.velocityAtContact[direction], 9);
  },
);

it.each(numpy.crossings)("independent library: SciPy's roots at $threshold N, to 1e-11 s", (crossing) => {
  const seen = contactAtThreshold(contact, crossing.threshold);
  expect(Math.abs(seen.initialContact - contact.initialContact - crossing.initialContact)).toBeLessThan(
    1e-11,
  );
  expect(Math.abs(seen.toeOff - contact.initialContact - crossing.toeOff)).toBeLessThan(1e-11);
  expect(seen.side).toBe("right");
});

it("a threshold of 0 gives the zeros of the force, one above the peak is refused", () => {
  expect(contactAtThreshold(contact, 0)).toEqual({
    side: "right",
    initialContact: contact.initialContact,
    toeOff: contact.toeOff,
    threshold: 0,
  });
  for (const threshold of [5000, -1, Number.NaN]) {
    expect(() => contactAtThreshold(contact, threshold)).toThrow(
      expect.objectContaining({ code: threshold > -1 || threshold < 0 ? "out-of-range" : "not-finite" }),
    );
  }
});

it.each([
  [0, null],
  [0.5, null], // rises to 599.1 N, drops by 0.006 body weights
  [0.6, 651.805], // drops by 0.059 body weights
  [0.9, 834.138],
] as const)(
  "definition by hand: an impact of %f body weights has the impact peak %s N",
  (impactAmplitude, peak) => {
    const steady = syntheticRun({ contacts: 1, stance: { impactAmplitude } }).truth
      .contacts[0] as TrueContact;
    const { impactPeak, timeToImpactPeak } = steady.values;
    if (peak === null) expect([impactPeak, timeToImpactPeak]).toEqual([null, null]);
    else {
      const up = (since: number) => forceAt(steady, steady.initialContact + since).up;
      expect(impactPeak).toBeCloseTo(peak, 2);
      expect(up((timeToImpactPeak as number) - 1e-4)).toBeLessThan(impactPeak as number);
      expect(up((timeToImpactPeak as number) + 1e-4)).toBeLessThan(impactPeak as number);
    }
  },
);
