import { describe, expect, it } from "vitest";
import { type Contact, detectContacts } from "../../../src/events/index.js";
import { toGroundReaction } from "../../../src/force/index.js";
import { landingFromCentreOfMass, landingFromForce } from "../../../src/models/index.js";
import { centreOfMassAt, syntheticRun } from "../../../src/synthetic/index.js";
import { runAt, truthOf } from "./runs.js";

const speed = 12 / 3.6;
const { recording, truth } = syntheticRun({ ...runAt(12), surface: "belt", duration: 5 });
const ground = toGroundReaction(recording);
const contacts = detectContacts(ground);
const belt = { surface: "belt", speed } as const;

/** The true centre of mass over the belt's frame at every sample from the first contact to the last step's end. */
const centreOfMass = Float64Array.from(ground.force.up, (_, i) => {
  const time = i / ground.sampleRate;
  const contact = [...truth.contacts].reverse().find(({ initialContact }) => initialContact <= time);
  if (contact === undefined || time > contact.initialContact + contact.values.stepTime) return 0;
  return centreOfMassAt(contact, time).position.forward - speed * (time - 0.15);
});

describe("with the true centre of mass", () => {
  it("reads touchdown and take-off of every contact within 1.5 mm of the truth", () => {
    expect(contacts.length).toBeGreaterThan(10);
    for (const contact of contacts.slice(1)) {
      const landing = landingFromCentreOfMass(ground, contact, centreOfMass, belt);
      if (landing.refused !== undefined) throw new Error(landing.message);
      const { values } = truthOf(truth.contacts, { contact });
      expect(Math.abs(landing.touchdown - values.touchdownDistance)).toBeLessThan(1.5e-3);
      expect(Math.abs(landing.takeOff - values.takeOffDistance)).toBeLessThan(1.5e-3);
    }
  });
  it("by force: the same within 1 mm, read at the same touches", () => {
    contacts.slice(1, -2).forEach((contact, k) => {
      const measured = landingFromCentreOfMass(ground, contact, centreOfMass, belt);
      const byForce = landingFromForce(ground, contact, contacts[k + 3] as Contact, {
        ...belt,
        height: 1.75,
      });
      if (measured.refused !== undefined || byForce.refused !== undefined) throw new Error("no landing");
      expect(byForce.firstTouch).toBe(measured.firstTouch);
      expect(Math.abs(byForce.touchdown - measured.touchdown)).toBeLessThan(1e-3);
    });
  });
  it("the last contact, which begins no stride, has one too", () =>
    expect(
      landingFromCentreOfMass(ground, contacts.at(-1) as Contact, centreOfMass, belt).refused,
    ).toBeUndefined());
});

describe("trouble", () => {
  const contact = contacts[2] as Contact;
  it("as many places as samples are needed", () =>
    expect(() => landingFromCentreOfMass(ground, contact, new Float64Array(5), belt)).toThrow(
      expect.objectContaining({ code: "unequal-lengths", argument: "centreOfMass" }),
    ));
  it("a place that is no number", () =>
    expect(() =>
      landingFromCentreOfMass(
        ground,
        contact,
        centreOfMass.map(() => Number.NaN),
        belt,
      ),
    ).toThrow(expect.objectContaining({ code: "not-finite", argument: "centreOfMass" })));
  it("a foot level in body weights", () =>
    expect(() =>
      landingFromCentreOfMass(ground, contact, centreOfMass, { ...belt, footLevel: { bodyWeights: 0.4 } }),
    ).toThrow(expect.objectContaining({ code: "out-of-range", argument: "footLevel" })));
  it.each([
    ["missing-channel", { sampleRate: 1000, force: ground.force }, belt],
    ["missing-speed", ground, { surface: "belt" }],
    ["foot-level", ground, { ...belt, footLevel: 10 }],
  ] as const)("%s", (code, record, options) =>
    expect(landingFromCentreOfMass(record, contact, centreOfMass, options).refused).toBe(code),
  );
});
