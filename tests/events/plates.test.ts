import { describe, expect, it } from "vitest";
import { type Contact, detectEvents, stepsOf, underFoot } from "../../src/events/index.js";
import { type GroundReaction, toGroundReaction } from "../../src/force/index.js";
import type { RecordedEvent } from "../../src/recording/index.js";
import { groundOf } from "../helpers.js";
import { walking, walkOnBelts } from "../walking.js";

const codes = ({ cautions }: { cautions: readonly { code: string }[] }) => cautions.map(({ code }) => code);
const ground = toGroundReaction(walkOnBelts());

describe("a walk on two belts, truth by the fixture's formula (NumPy)", () => {
  const events = detectEvents(ground);
  it("every contact on its own belt, in order of time, overlapping as in double support", () => {
    expect(events.contacts.map(({ side }) => side)).toEqual(walking.events.map(({ side }) => side));
    expect(events.contacts.map(({ plate }) => plate)).toEqual(
      walking.events.map(({ side }) => (side === "left" ? 0 : 1)),
    );
    events.contacts.forEach((contact, k) => {
      const truth = walking.events[k] as (typeof walking.events)[number];
      // 20 N lie some milliseconds inside the formula's ends.
      expect(contact.initialContact - truth.initialContact).toBeGreaterThan(0);
      expect(contact.initialContact - truth.initialContact).toBeLessThan(0.004);
      expect(truth.toeOff - contact.toeOff).toBeGreaterThan(0);
      expect(truth.toeOff - contact.toeOff).toBeLessThan(0.004);
    });
    expect(events.settings.sides).toBe("plates");
    expect(codes(events)).toEqual([]);
  });
  it("next is the other foot's initial contact, nextSameSide the same foot's", () => {
    const steps = stepsOf(events.contacts);
    const [first] = steps;
    expect((first?.next?.initialContact ?? 0) - (first?.contact.initialContact ?? 0)).toBeCloseTo(
      walking.metrics.stepTime,
      9,
    );
    expect((first?.nextSameSide?.initialContact ?? 0) - (first?.contact.initialContact ?? 0)).toBeCloseTo(
      walking.metrics.strideTime,
      9,
    );
    expect(first?.next?.initialContact).toBeLessThan(first?.contact.toeOff ?? 0);
  });
  it("taken together, without a centre of pressure, the two feet are one endless contact", () => {
    const { moment: _, ...together } = toGroundReaction(walkOnBelts(), { plates: "together" });
    expect(detectEvents(together).contacts.length).toBeLessThan(2);
  });
  it("a common threshold clears the noisier belt", () => {
    const noisy = (plate: GroundReaction, k: number): GroundReaction => ({
      ...plate,
      force: { ...plate.force, up: plate.force.up.map((f, i) => f + (k === 1 ? (i % 2 ? 9 : -9) : 0)) },
    });
    const { threshold } = detectEvents({ ...ground, plates: ground.plates?.map(noisy) ?? [] }).settings;
    // Mean 0, SD 9 in the noise: 5 SD.
    expect(threshold).toBeGreaterThan(44.9);
    expect(threshold).toBeLessThan(45.2);
  });
});

describe("sides on plates that name none", () => {
  const unnamed = toGroundReaction(walkOnBelts({ left: 0, right: 0 }, { left: "A", right: "B" }));
  const truth = walking.events.map(({ side }) => side);
  it("by the centre of pressure of each", () => {
    const events = detectEvents(unnamed);
    expect(events.settings.sides).toBe("centre of pressure");
    expect(events.contacts.map(({ side }) => side)).toEqual(truth);
  });
  it("by the events that the recording marks, on its own clock", () => {
    const marked: RecordedEvent[] = walking.events.flatMap(({ side, initialContact, toeOff }, k) => [
      {
        label: k % 3 === 0 ? "Foot Strike" : side === "right" ? "RHS" : "LIC",
        time: 5 + initialContact + 0.02,
        ...(k % 3 === 0 && { side: side as "left" | "right" }),
      },
      { label: "Foot Off", time: 5 + toeOff, side: side as "left" | "right" },
    ]);
    const { moment: _, ...blind } = unnamed;
    const plates = unnamed.plates?.map(({ moment: __, ...plate }) => plate) ?? [];
    const events = detectEvents({ ...blind, plates, startTime: 5, recordedEvents: marked });
    expect(events.settings.sides).toBe("recorded events");
    expect(events.contacts.map(({ side }) => side)).toEqual(truth);
    expect(codes(events)).toEqual([]);
    const some = detectEvents({ ...blind, plates, startTime: 5, recordedEvents: marked.slice(0, 2) });
    expect(some.contacts.map(({ side }) => side)).toEqual(truth);
    expect(codes(some)).toEqual(["sides-uncertain"]);
  });
  it("a stated first foot that the belts contradict is not followed, which is said", () => {
    const events = detectEvents(ground, { firstFoot: "left" });
    expect(events.contacts.map(({ side }) => side)).toEqual(truth);
    expect(codes(events)).toEqual(["sides-uncertain"]);
  });
});

it("two contacts that are both marked as right make no step (a left one fell between the plates)", () => {
  const foot = (from: number) =>
    Array.from({ length: 4000 }, (_, i) => (i > from && i < from + 700 ? 800 : 0));
  const plate = (name: string, from: number): GroundReaction => ({
    ...groundOf({ up: foot(from), sampleRate: 1000 }),
    plate: name,
  });
  const [a, b] = [plate("a", 500), plate("b", 1600)];
  const recordedEvents = [
    { label: "RHS", time: 0.5 },
    { label: "RHS", time: 1.6 },
  ];
  const events = detectEvents({ ...a, plates: [a, b], recordedEvents });
  expect(events.contacts.map(({ side }) => side)).toEqual(["right", "right"]);
  expect(stepsOf(events.contacts).map(({ next }) => next)).toEqual([undefined, undefined]);
});

it("a single contact that nothing tells the side of stays unknown (it was called right)", () => {
  const up = Array.from({ length: 600 }, (_, i) => (i > 200 && i < 400 ? 900 : 0));
  const events = detectEvents(groundOf({ up, sampleRate: 1000 }));
  expect(events.contacts.map(({ side }) => side)).toEqual(["unknown"]);
  expect(detectEvents(groundOf({ up, sampleRate: 1000 }), { firstFoot: "left" }).contacts[0]?.side).toBe(
    "left",
  );
});

describe("underFoot", () => {
  const contact = (plate?: number): Pick<Contact, "plate"> => (plate === undefined ? {} : { plate });
  it("is the contact's plate where plates are kept apart, else the whole", () => {
    expect(underFoot(ground, contact(1))).toBe(ground.plates?.[1]);
    expect(underFoot(ground, contact())).toBe(ground);
    const { plates: _, ...sum } = ground;
    expect(underFoot(sum, contact(1))).toBe(sum);
  });
  it("refuses a plate that is not there", () =>
    expect(() => underFoot(ground, contact(2))).toThrow(expect.objectContaining({ code: "out-of-range" })));
});
