import { describe, expect, it } from "vitest";
import { detectEvents, stepsOf } from "../../src/events/index.js";
import { type GroundReaction, lowPassGroundReaction, toGroundReaction } from "../../src/force/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import { walking, walkOnBelts } from "../walking.js";
import { type SharedRow, sharedRows } from "./accuracyRows.js";
import { walkOnOneBelt } from "./walkOnOneBelt.js";

const codes = ({ cautions }: { cautions: readonly { code: string }[] }) => cautions.map(({ code }) => code);

describe("both feet of the fixture's walk summed into one plate, truth by its formula (NumPy)", () => {
  const apart = toGroundReaction(walkOnBelts());
  const { plates: _, ...one } = apart;
  const own = detectEvents(apart, { threshold: 20 });
  const events = detectEvents(one, { threshold: 20 });
  it("every contact that the recording holds whole, on its side", () => {
    const truth = walking.events.slice(1);
    expect(events.contacts.map(({ side }) => side)).toEqual(truth.map(({ side }) => side));
    events.contacts.forEach(({ initialContact, toeOff }, k) => {
      // 20 N lie within 4 ms of the formula's ends.
      expect(Math.abs(initialContact - (truth[k]?.initialContact ?? 0))).toBeLessThan(0.004);
      expect(Math.abs(toeOff - (truth[k]?.toeOff ?? 0))).toBeLessThan(0.004);
    });
  });
  it("within 0.1 ms of what each foot's own belt gives, single support too", () => {
    events.contacts.forEach((contact, k) => {
      const same = own.contacts[k + 1];
      expect(contact.initialContact).toBeCloseTo(same?.initialContact ?? 0, 4);
      expect(contact.toeOff).toBeCloseTo(same?.toeOff ?? 0, 4);
      expect(contact.shared).toBe(true);
      expect(same?.shared).toBeUndefined();
      const last = k === events.contacts.length - 1;
      expect(contact.singleSupport === undefined).toBe(last);
      if (!last) expect(contact.singleSupport?.from).toBeCloseTo(same?.singleSupport?.from ?? 0, 4);
    });
  });
  it("a caution says how", () => {
    expect(codes(events)).toEqual(["feet-share-plate"]);
    expect(events.settings.sides).toBe("centre of pressure");
  });
  it("the steps overlap as on two belts", () => {
    const [first] = stepsOf(events.contacts);
    expect((first?.next?.initialContact ?? 0) - (first?.contact.initialContact ?? 0)).toBeCloseTo(
      walking.metrics.stepTime,
      4,
    );
    expect((first?.contact.toeOff ?? 0) - (first?.next?.initialContact ?? 0)).toBeGreaterThan(0.11);
  });
});

describe("made walks with feet that roll, with noise, sway and other speeds, as the accuracy page prints them", () => {
  const rows = sharedRows();
  const worst = (of: readonly SharedRow[], pick: (row: SharedRow) => number) => Math.max(...of.map(pick));
  it.each(
    rows.map(
      (row) => [`${row.walk}, ${row.forward ? "both axes" : "sideways"}, ${row.cutoff}`, row] as const,
    ),
  )("%s: no foot is wrong, none is found twice", (_, row) => {
    expect(row.wrongSides).toBe(0);
    expect(row.initialContact.n).toBeLessThanOrEqual(38);
  });
  it("with the centre of pressure along both axes every contact is found, within 2 ms on average, SD 1 ms", () => {
    const both = rows.filter(({ forward }) => forward);
    expect(both.length).toBeGreaterThan(10);
    expect(worst(both, ({ missed }) => missed)).toBeLessThanOrEqual(2);
    for (const end of ["initialContact", "toeOff"] as const) {
      expect(worst(both, (row) => Math.abs(row[end].mean))).toBeLessThan(2);
      expect(worst(both, (row) => row[end].sd)).toBeLessThan(1);
    }
  });
  it("sideways alone, behind the default filter: within 2 ms, SD 2 ms, or not at all where the feet are close", () => {
    const sideways = rows.filter(({ forward, cutoff }) => !forward && cutoff === 50);
    const told = sideways.filter(({ initialContact }) => initialContact.n > 0);
    expect(sideways.filter(({ initialContact }) => initialContact.n === 0).map(({ walk }) => walk)).toEqual([
      "1.35 m/s, feet 6 cm apart",
    ]);
    for (const end of ["initialContact", "toeOff"] as const) {
      expect(worst(told, (row) => Math.abs(row[end].mean))).toBeLessThan(2);
      expect(worst(told, (row) => row[end].sd)).toBeLessThan(2);
    }
  });
  it("a walk over a long plate on standing ground", () => {
    const { ground, truth } = walkOnOneBelt({
      steps: 8,
      surface: "ground",
      noise: { force: 1, cop: 0.0005 },
    });
    const { contacts } = detectEvents(lowPassGroundReaction(ground, { cutoff: 50 }));
    expect(contacts.length).toBeGreaterThan(4);
    for (const contact of contacts) {
      const same = truth.find(({ from }) => Math.abs(from - contact.initialContact) < 0.1);
      expect(contact.side).toBe(same?.side);
      expect(Math.abs(contact.toeOff - (same?.to ?? 0))).toBeLessThan(0.01);
    }
  });
});

describe("laws", () => {
  const { ground } = walkOnOneBelt({ steps: 12 });
  const events = detectEvents(ground);
  const turned = (samples: Float64Array | undefined) => samples?.map((value) => -value) as Float64Array;
  it("the mirror image has the other feet at the same times", () => {
    const mirror: GroundReaction = {
      ...ground,
      force: { ...ground.force, right: turned(ground.force.right) },
      moment: { ...ground.moment, forward: turned(ground.moment?.forward) },
    };
    const other = detectEvents(mirror);
    expect(other.contacts.length).toBe(events.contacts.length);
    other.contacts.forEach((contact, k) => {
      expect(contact.side).not.toBe(events.contacts[k]?.side);
      expect(contact.initialContact).toBeCloseTo(events.contacts[k]?.initialContact ?? 0, 12);
    });
  });
  it("single supports and double supports fill the time from the first to the last initial contact", () => {
    const inner = events.contacts.slice(1, -1);
    for (const [k, { singleSupport }] of inner.entries()) {
      const [before, after] = [events.contacts[k], events.contacts[k + 2]];
      expect(singleSupport).toEqual({ from: before?.toeOff, to: after?.initialContact });
    }
  });
});

describe("refused, with the reason, where the centre of pressure does not tell", () => {
  const { ground } = walkOnOneBelt({ steps: 12 });
  const { forward: _forward, ...forwardAlone } = ground.moment ?? {};
  const flat = ground.force.up.map((force) => 0.02 * force);
  const { recording } = syntheticRun({ contacts: 20, stance: { stepTime: 0.33, contactTime: 0.329 } });
  it.each([
    [
      "no moment",
      { ...ground, moment: undefined as never },
      /no centre of pressure along `right` was recorded/,
    ],
    [
      "forward alone",
      { ...ground, moment: forwardAlone },
      /no centre of pressure along `right` was recorded/,
    ],
    [
      "on one line",
      { ...ground, moment: { ...ground.moment, forward: flat } },
      /does not pass regularly from side to side/,
    ],
    ["one foot's load", { ...ground, subject: { mass: 100 } }, /less than the body weight is borne/],
  ] as [string, GroundReaction, RegExp][])("%s", (_, one, reason) => {
    const events = detectEvents(one, { gait: "walking" });
    expect(events.contacts).toEqual([]);
    expect(events.cautions.find(({ code }) => code === "feet-not-parted")?.message).toMatch(reason);
  });
  it("running almost without flights is not taken for walking", () => {
    const events = detectEvents(toGroundReaction(recording), { threshold: 20 });
    expect(events.contacts.some(({ shared }) => shared)).toBe(false);
    expect(events.settings.gait).not.toBe("walking");
  });
});
