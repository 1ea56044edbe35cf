import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { centreOfMassAt, forceAt, syntheticRun, type TrueContact } from "../../src/synthetic/index.js";
import { column, impulse, LIVELY, overContact } from "./helpers.js";

const G = 9.80665;

/** Change of angular momentum about the right axis over a contact, from force, foot and centre of mass alone. */
function angularMomentumChange(contact: TrueContact): number {
  const { contactTime, copRoll } = contact.stance;
  return overContact(contact, (since) => {
    const time = contact.initialContact + since;
    const { forward, up } = forceAt(contact, time);
    const { position } = centreOfMassAt(contact, time);
    const roll = (copRoll * (1 - Math.cos(Math.PI * Math.min(since / contactTime / 0.85, 1)))) / 2;
    return (contact.foot.forward + roll - position.forward) * up + position.up * forward;
  });
}

describe("a steady run", () => {
  const { recording, truth } = syntheticRun({ contacts: 12, firstContact: 0.1507 });
  const stride = 672; // samples: 2 × 0.336 s at 1 kHz
  const meanOver = (samples: Float64Array, from: number, count: number) =>
    samples.subarray(from, from + count).reduce((sum, value) => sum + value, 0) / count;

  it("closing law: mean vertical force of the samples over whole strides = m g, to 1e-6", () => {
    for (const from of [0, 200, 333, 1000]) {
      const mean = meanOver(column(recording, "up"), from + 151, 3 * stride);
      expect(Math.abs(mean / (70 * G) - 1)).toBeLessThan(1e-6);
    }
  });

  it("closing law: mean forward and mean right force of the samples over whole strides = 0, to 0.01 N", () => {
    expect(Math.abs(meanOver(column(recording, "forward"), 151, 4 * stride))).toBeLessThan(0.01);
    expect(Math.abs(meanOver(column(recording, "right"), 151, 4 * stride))).toBeLessThan(0.01);
  });

  it.each(truth.contacts.map((contact) => [contact.side, contact] as const))(
    "closing laws of each step, %s: vertical impulse m g T, forward impulse 0, angular momentum",
    (_, contact) => {
      expect(impulse(contact, "up") / (70 * G * contact.values.stepTime)).toBeCloseTo(1, 10);
      expect(Math.abs(impulse(contact, "forward"))).toBeLessThan(1e-8);
      expect(Math.abs(angularMomentumChange(contact))).toBeLessThan(1e-8);
    },
  );

  it("closing law: touchdown + take-off + travel of the centre of pressure = travel of the centre of mass in contact", () => {
    const contact = truth.contacts[3] as TrueContact;
    const { touchdownDistance, takeOffDistance } = contact.values;
    const travelled =
      centreOfMassAt(contact, contact.toeOff).position.forward -
      centreOfMassAt(contact, contact.initialContact).position.forward;
    expect(touchdownDistance + takeOffDistance + contact.stance.copRoll).toBeCloseTo(travelled, 12);
  });

  it("closing law: work of the force on the centre of mass = change of its energy, over each contact", () => {
    for (const contact of truth.contacts.slice(0, 2)) {
      const energy = (time: number) => {
        const { position, velocity } = centreOfMassAt(contact, time);
        return 35 * (velocity.forward ** 2 + velocity.up ** 2 + velocity.right ** 2) + 70 * G * position.up;
      };
      const work = overContact(contact, (since) => {
        const time = contact.initialContact + since;
        const force = forceAt(contact, time);
        const { velocity } = centreOfMassAt(contact, time);
        return force.forward * velocity.forward + force.up * velocity.up + force.right * velocity.right;
      });
      expect(work).toBeCloseTo(energy(contact.toeOff) - energy(contact.initialContact), 7);
      expect(energy(contact.initialContact + contact.values.stepTime)).toBeCloseTo(energy(contact.toeOff), 8);
    }
  });

  it("the mean speed of the centre of mass is the stated one", () => {
    const [first, , third] = truth.contacts as [TrueContact, TrueContact, TrueContact];
    const distance = third.motion.position.forward - first.motion.position.forward;
    expect(distance / (third.initialContact - first.initialContact)).toBeCloseTo(3, 12);
  });
});

describe("a run that varies", () => {
  const { truth } = syntheticRun({ contacts: 2000, variability: LIVELY, correlation: 0.5, seed: 5 });
  const { contacts } = truth;

  it("closing law: place and velocity at the end of a step are those at the next contact", () => {
    for (let i = 0; i + 1 < 200; i++) {
      const [step, next] = contacts.slice(i, i + 2) as [TrueContact, TrueContact];
      const end = centreOfMassAt(step, step.initialContact + step.stance.stepTime);
      for (const direction of ["forward", "up", "right"] as const) {
        expect(end.position[direction]).toBeCloseTo(next.motion.position[direction], 9);
        expect(end.velocity[direction]).toBeCloseTo(next.motion.velocity[direction], 9);
      }
    }
  });

  it("closing law: angular momentum returns within each step", () => {
    for (const contact of contacts.slice(0, 50)) {
      expect(Math.abs(angularMomentumChange(contact))).toBeLessThan(1e-7);
    }
  });

  it("the laws hold in the mean: vertical to 1e-5 over the run and 1 % a step, forward to 0.01 N s", () => {
    const weight = 70 * G;
    const sum = (value: (contact: TrueContact) => number) =>
      contacts.reduce((s, contact) => s + value(contact), 0);
    const ratio = sum(({ values }) => values.verticalImpulse) / sum(({ values }) => weight * values.stepTime);
    expect(Math.abs(ratio - 1)).toBeLessThan(1e-5);
    for (const { values } of contacts) {
      expect(Math.abs(values.verticalImpulse / (weight * values.stepTime) - 1)).toBeLessThan(0.01);
    }
    expect(Math.abs(sum(({ values }) => values.netForwardImpulse) / contacts.length)).toBeLessThan(0.01);
  });

  it("the runner does not drift away in 2000 steps: within 2 cm along, 8 cm up, 25 cm across", () => {
    const begin = contacts[0] as TrueContact;
    for (const { motion, initialContact } of contacts) {
      const along = motion.position.forward - 3 * (initialContact - begin.initialContact);
      expect(Math.abs(along)).toBeLessThan(0.02);
      expect(Math.abs(motion.position.up - begin.motion.position.up)).toBeLessThan(0.08);
      expect(Math.abs(motion.position.right)).toBeLessThan(0.25);
    }
  });
});

it("property: whatever the feet, a steady step has the impulses of the laws and a stride returns to its motion", () =>
  fc.assert(
    fc.property(
      fc.record({
        mass: fc.double({ min: 35, max: 120, noNaN: true }),
        speed: fc.double({ min: 1.5, max: 6, noNaN: true }),
        contactTime: fc.double({ min: 0.15, max: 0.29, noNaN: true }),
        flight: fc.double({ min: 0.02, max: 0.16, noNaN: true }),
        braking: fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        impact: fc.double({ min: 0, max: 1.6, noNaN: true }),
        skew: fc.double({ min: 0.9, max: 1.1, noNaN: true }),
      }),
      ({ mass, speed, contactTime, flight, braking, impact, skew }) => {
        const stance = { contactTime, stepTime: contactTime + flight, brakingAmplitude: braking };
        const { truth } = syntheticRun({
          mass,
          speed,
          contacts: 3,
          stance: { ...stance, impactAmplitude: impact },
          left: { contactTime: contactTime * Math.min(skew, 1), brakingAmplitude: braking * skew },
        });
        const [first, , third] = truth.contacts as [TrueContact, TrueContact, TrueContact];
        for (const contact of truth.contacts) {
          expect(impulse(contact, "up") / (mass * G * contact.values.stepTime)).toBeCloseTo(1, 9);
          expect(Math.abs(impulse(contact, "forward")) / (mass * G)).toBeLessThan(1e-9);
        }
        for (const direction of ["forward", "up", "right"] as const) {
          expect(third.motion.velocity[direction]).toBeCloseTo(first.motion.velocity[direction], 9);
        }
        expect(third.motion.position.up).toBeCloseTo(first.motion.position.up, 9);
        expect(third.foot.forward - first.foot.forward).toBeCloseTo(
          speed * (third.initialContact - first.initialContact),
          9,
        );
      },
    ),
    { numRuns: 60, seed: 3 },
  ));
