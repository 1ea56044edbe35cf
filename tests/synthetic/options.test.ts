import { describe, expect, it } from "vitest";
import {
  centreOfMassAt,
  forceAt,
  type SyntheticRunOptions,
  syntheticRun,
  type TrueContact,
} from "../../src/synthetic/index.js";

describe("refuses", () => {
  it.each<[string, SyntheticRunOptions, string, string]>([
    ["no mass", { mass: 0 }, "out-of-range", "mass"],
    ["a mass in newtons", { mass: 686 }, "out-of-range", "mass"],
    ["a height in centimetres", { height: 175 }, "out-of-range", "height"],
    ["a backward speed", { speed: -3 }, "out-of-range", "speed"],
    ["a speed that is no number", { speed: Number.NaN }, "not-finite", "speed"],
    ["a rate of nothing", { sampleRate: 0 }, "out-of-range", "sampleRate"],
    ["half a contact", { contacts: 2.5 }, "out-of-range", "contacts"],
    ["no contact", { contacts: 0 }, "out-of-range", "contacts"],
    ["a recording of a year", { duration: 3e7 }, "out-of-range", "duration"],
    ["contacts and duration", { contacts: 4, duration: 3 }, "out-of-range", "duration"],
    ["cadence and step time", { cadence: 170, stance: { stepTime: 0.35 } }, "out-of-range", "cadence"],
    ["a cadence so low", { cadence: -1 }, "out-of-range", "cadence"],
    ["a cadence without flight", { cadence: 240 }, "out-of-range", "contactTime"],
    ["a contact as long as the step", { stance: { contactTime: 0.336 } }, "out-of-range", "contactTime"],
    ["a contact of no length", { left: { contactTime: 0 } }, "out-of-range", "contactTime"],
    ["an impact beyond half the contact", { stance: { impactTime: 0.13 } }, "out-of-range", "impactTime"],
    [
      "an impact that takes the whole impulse",
      { stance: { impactAmplitude: 13 } },
      "out-of-range",
      "impactAmplitude",
    ],
    ["a negative impact", { stance: { impactAmplitude: -1 } }, "out-of-range", "impactAmplitude"],
    ["negative braking", { right: { brakingAmplitude: -0.2 } }, "out-of-range", "brakingAmplitude"],
    ["a negative medial force", { stance: { medialAmplitude: -0.1 } }, "out-of-range", "medialAmplitude"],
    ["a crossing at the end", { stance: { crossShare: 1 } }, "out-of-range", "crossShare"],
    ["a lateral force all through", { stance: { lateralTime: 0.3 } }, "out-of-range", "lateralTime"],
    ["an infinite roll", { stance: { copRoll: Number.POSITIVE_INFINITY } }, "not-finite", "stance.copRoll"],
    ["variability of a half", { variability: { stepTime: 0.5 } }, "out-of-range", "variability.stepTime"],
    [
      "a variability that leaves no flight",
      { variability: { contactTime: 0.3 }, contacts: 100 },
      "out-of-range",
      "contactTime",
    ],
    ["full correlation", { correlation: 1 }, "out-of-range", "correlation"],
    ["negative noise", { noise: { force: -1 } }, "out-of-range", "noise.force"],
    ["NaN offset", { offset: { up: Number.NaN } }, "not-finite", "offset.up"],
    ["half a decimal", { decimals: { force: 0.5 } }, "out-of-range", "decimals.force"],
    ["a first contact that is over", { firstContact: -0.3 }, "out-of-range", "firstContact"],
    ["a broken seed", { seed: 0.5 }, "out-of-range", "seed"],
    ["an unknown surface", { surface: "sand" as "belt" }, "out-of-range", "surface"],
    ["an unknown foot", { firstFoot: "middle" as "left" }, "out-of-range", "firstFoot"],
    ["an unknown option", { pace: 5 } as SyntheticRunOptions, "unknown-option", "pace"],
    ["an unknown quantity", { stance: { braking: 1 } as never }, "unknown-option", "braking"],
    ["a word for a number", { mass: "70" as unknown as number }, "wrong-type", "mass"],
    ["options that are no object", { stance: null as never }, "wrong-type", "options"],
  ])("%s", (_, options, code, argument) => {
    expect(() => syntheticRun(options)).toThrow(expect.objectContaining({ code, argument }));
  });

  it("a contact made impossible by variability by its number and foot", () => {
    expect(() => syntheticRun({ variability: { contactTime: 0.3 }, contacts: 100 })).toThrow(
      /^contact \d+ \((left|right)\): contactTime is /,
    );
  });
});

it("takes undefined as left out and a cadence for the step time", () => {
  expect(syntheticRun({ mass: undefined, stance: undefined }).truth).toEqual(syntheticRun().truth);
  const { truth } = syntheticRun({ cadence: 180, contacts: 2 });
  expect(truth.contacts[0]?.values.stepTime).toBeCloseTo(1 / 3, 12);
  expect(truth.contacts[0]?.values.cadence).toBeCloseTo(180, 9);
});

it("does not change its options", () => {
  const options = Object.freeze({ stance: Object.freeze({ contactTime: 0.25 }), contacts: 3 });
  // A frozen object throws when it is written to.
  expect(syntheticRun(options).truth.contacts.length).toBe(3);
  expect(options).toEqual({ stance: { contactTime: 0.25 }, contacts: 3 });
});

it("a force or a place is asked for at a number, the place within the step", () => {
  const contact = syntheticRun().truth.contacts[0] as TrueContact;
  expect(() => forceAt(contact, Number.NaN)).toThrow(expect.objectContaining({ code: "not-finite" }));
  expect(forceAt(contact, 100)).toEqual({ forward: 0, up: 0, right: 0 });
  for (const time of [0, 1])
    expect(() => centreOfMassAt(contact, time)).toThrow(expect.objectContaining({ code: "out-of-range" }));
});
