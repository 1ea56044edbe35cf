import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Contact, detectContacts } from "../../../src/events/index.js";
import { type GroundReaction, toGroundReaction } from "../../../src/force/index.js";
import { readCsv } from "../../../src/io/index.js";
import {
  type ContactSpan,
  type LandingFromForce,
  type LandingOptions,
  type LandingRecord,
  landingFromForce,
  landingMargin,
} from "../../../src/models/index.js";
import { centreOfMassAt, syntheticRun } from "../../../src/synthetic/index.js";
import law from "../../fixtures/landing/law.json" with { type: "json" }; // landing.py, NumPy 2.4.6, SciPy 1.17.1
import { meanAndSd, onPlate, runAt, truthOf } from "./runs.js";
import { RUNNERS, springLegRecord } from "./springLeg.js";

const G = 9.80665;

/** The landing of a contact that must have one. */
function landed(
  record: LandingRecord,
  contacts: readonly ContactSpan[],
  k: number,
  options: LandingOptions,
): LandingFromForce {
  const [contact, next] = [contacts[k] as ContactSpan, contacts[k + 2] as ContactSpan];
  const landing = landingFromForce(record, contact, next, options);
  if (landing.refused !== undefined) throw new Error(landing.message);
  return landing;
}

/** The reason why a contact has none. */
function refusal(record: LandingRecord, contacts: readonly ContactSpan[], options: LandingOptions): string {
  const landing = landingFromForce(record, contacts[0] as Contact, contacts[2] as Contact, options);
  return landing.refused ?? `landed ${landing.touchdown} m`;
}

/** Contacts of a half sine without forward force, 4 at 0.36 s, feet standing still where told. */
function bounces(speed: number, ahead: number, sampleRate = 1000): [LandingRecord, ContactSpan[]] {
  const [contactTime, stepTime, mass] = [0.24, 0.36, 70];
  const peak = (Math.PI / 2) * mass * G * (stepTime / contactTime);
  const up = new Float64Array(Math.round(1.6 * sampleRate));
  const right = new Float64Array(up.length);
  const starts = [0.1, 0.46, 0.82, 1.18];
  for (const start of starts) {
    for (let i = Math.ceil(start * sampleRate); i <= (start + contactTime) * sampleRate; i++) {
      const force = peak * Math.sin((Math.PI * (i / sampleRate - start)) / contactTime);
      up[i] = force;
      right[i] = force * (speed * start + ahead);
    }
  }
  const contacts = starts.map((start) => ({
    initialContact: start + 0.001,
    toeOff: start + contactTime - 0.001,
  }));
  return [{ sampleRate, force: { up, forward: new Float64Array(up.length) }, moment: { right } }, contacts];
}

describe("by hand: without forward force and with a still foot, the mean of both places is the same by symmetry", () => {
  // Uniform motion at 3 m/s over a symmetric contact of 0.24 s: 0.36 m ahead at first touch, 0.36 m behind at last touch.
  const [record, contacts] = bounces(3, 0.36);
  const landing = landed(record, contacts, 0, { speed: 3 });
  it.each([
    ["touchdown", 0.36],
    ["takeOff", 0.36],
    ["copTravel", 0],
    ["bodyTravel", 0.72],
    ["bodyPlace", 0.3],
    ["velocity", 3],
    ["forwardBalance", 0],
    ["firstTouch", 0.1],
    ["lastTouch", 0.34],
  ] as const)("%s %d", (name, value) => expect(Math.abs(landing[name] - value)).toBeLessThan(1.5e-3));
  it("the place of the frame's origin does not matter", () => {
    const [there, same] = bounces(3, 50.36);
    expect(landed(there, same, 0, { speed: 3 }).touchdown).toBeCloseTo(landing.touchdown, 9);
  });
});

describe("NumPy and SciPy (landing.py): feet placed by angular momentum, 3 m/s, true zeros of the force", () => {
  const text = readFileSync(new URL("../../fixtures/landing/landing.csv", import.meta.url), "utf8");
  const ground = toGroundReaction(
    readCsv(text, {
      axes: { x: "forward", y: "up", z: "right" },
      units: { Fx: "N", Fy: "N", copX: "m", time: "s" },
    }),
  );
  const contacts = detectContacts(ground);
  const options = { speed: law.speed, height: law.centreOfMassHeight / 0.55 };
  it.each([
    [0, "right"],
    [1, "left"],
    [2, "right"],
  ] as const)("contact %d, %s: touchdown within 2 mm, take-off and travel within 1.5 mm", (k, side) => {
    const landing = landed(ground, contacts, k, options);
    expect(Math.abs(landing.touchdown - law.touchdown[side])).toBeLessThan(2e-3);
    expect(Math.abs(landing.takeOff - law.takeOff[side])).toBeLessThan(1.5e-3);
    expect(Math.abs(landing.copTravel - law.copTravel)).toBeLessThan(1.5e-3);
  });
  it("a straight line from 50 N to 250 N reads the soft toe of this force late: first touch by 2 to 4 ms", () => {
    const { firstTouch } = landed(ground, contacts, 0, { ...options, threshold: 50, toe: "line" });
    expect(firstTouch - law.firstContact).toBeGreaterThan(2e-3);
    expect(firstTouch - law.firstContact).toBeLessThan(4e-3);
  });
});

describe("rigid trunk on a spring leg (landing.py): nothing assumed of its angular momentum", () => {
  it.each(RUNNERS)("%s: touchdown within 4.5 mm, mean within 3 mm; take-off within 1 mm", (_, runner) => {
    const { record, contacts } = springLegRecord(runner);
    const options = { speed: runner.speed, height: runner.centreOfMassHeight / 0.55 };
    const errors = runner.contacts.slice(0, -2).map(({ place, bodyAtFirst, bodyAtLast }, k) => {
      const { touchdown, takeOff } = landed(record, contacts, k, options);
      return { first: touchdown - (place - bodyAtFirst), last: takeOff - (bodyAtLast - place) };
    });
    expect(errors.length).toBeGreaterThan(1);
    for (const { first, last } of errors) {
      expect(Math.abs(first)).toBeLessThan(4.5e-3);
      expect(Math.abs(last)).toBeLessThan(1e-3);
    }
    expect(Math.abs(meanAndSd(errors.map(({ first }) => first)).mean)).toBeLessThan(3e-3);
  });
});

describe.each(["ground", "belt"] as const)("closing law on synthetic runs, %s", (surface) => {
  const { recording, truth } = syntheticRun(onPlate({ ...runAt(12), surface }));
  const ground = toGroundReaction(recording);
  const contacts = detectContacts(ground);
  const options = { surface, speed: 12 / 3.6, height: 1.75 };
  const landings = contacts.slice(0, -2).map((_, k) => landed(ground, contacts, k, options));
  it("touchdown + take-off + travel of the centre of pressure = true travel of the centre of mass, within 1 mm", () => {
    expect(landings.length).toBeGreaterThan(75);
    landings.forEach(({ touchdown, takeOff, copTravel, firstTouch, lastTouch }, k) => {
      const contact = truthOf(truth.contacts, { contact: contacts[k] as Contact });
      const at = (time: number) =>
        centreOfMassAt(contact, Math.max(time, contact.initialContact)).position.forward;
      const travelled = at(lastTouch) - at(firstTouch);
      expect(Math.abs(touchdown + takeOff + copTravel - travelled)).toBeLessThan(1e-3);
    });
  });
  it("the centre of mass is where it truly is at first touch, within 1.5 mm", () => {
    landings.forEach(({ bodyPlace, firstTouch }, k) => {
      const contact = truthOf(truth.contacts, { contact: contacts[k] as Contact });
      const carried = surface === "belt" ? options.speed * (firstTouch - 0.15) : 0;
      const true_ = centreOfMassAt(contact, Math.max(firstTouch, contact.initialContact)).position.forward;
      expect(Math.abs(bodyPlace + carried - true_)).toBeLessThan(1.5e-3);
    });
  });
});

describe("symmetries of a steady run", () => {
  const { recording } = syntheticRun({ ...runAt(12), variability: {}, duration: 6, surface: "ground" });
  const ground = toGroundReaction(recording);
  const contacts = detectContacts(ground);
  const options = { speed: 12 / 3.6, height: 1.75 };
  const record = (force: GroundReaction["force"], right: Float64Array): LandingRecord => ({
    sampleRate: ground.sampleRate,
    force,
    moment: { right },
  });
  const { up, forward } = ground.force as { up: Float64Array; forward: Float64Array };
  const moment = ground.moment?.right as Float64Array;
  const here = landed(ground, contacts, 4, options);
  it("time and direction reversed, touchdown and take-off change places (law), within 1 mm", () => {
    const end = (up.length - 1) / ground.sampleRate;
    const reversed = record(
      { up: up.slice().reverse(), forward: forward.map((f) => -f).reverse() },
      moment.map((m) => -m).reverse(),
    );
    const backward = contacts
      .map(({ initialContact, toeOff }) => ({ initialContact: end - toeOff, toeOff: end - initialContact }))
      .reverse();
    const there = landed(reversed, backward, 4, options);
    expect(Math.abs(there.touchdown - here.takeOff)).toBeLessThan(1e-3);
    expect(Math.abs(there.takeOff - here.touchdown)).toBeLessThan(1e-3);
  });
  it("property: the same whatever the runner weighs, with levels in body weights", () =>
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 2, noNaN: true }), (k) => {
        const scaled = record(
          { up: up.map((f) => k * f), forward: forward.map((f) => k * f) },
          moment.map((m) => k * m),
        );
        const levels = { ...options, threshold: 20 * k, footLevel: { bodyWeights: 0.35 } };
        const as = landed(record({ up, forward }, moment), contacts, 4, {
          ...options,
          footLevel: { bodyWeights: 0.35 },
        });
        expect(landed(scaled, contacts, 4, levels).touchdown).toBeCloseTo(as.touchdown, 9);
      }),
      { numRuns: 20 },
    ));
  it("the foot level moves touchdown by the roll alone: 150 N to 500 N, below 4 mm", () => {
    const at = (footLevel: number) => landed(ground, contacts, 4, { ...options, footLevel }).touchdown;
    expect(Math.abs(at(500) - at(150))).toBeLessThan(4e-3);
  });
  it("on a slope that is stated: law, the foot lands grade × height further behind", () => {
    // With e F_up along the slope the body moves by e y more; the feet that keep angular momentum stand e h₀ further back.
    const [grade, height] = [0.05, 0.55 * 1.75];
    const slope = record(
      { up, forward: forward.map((f, i) => f + grade * (up[i] as number)) },
      moment.map((m, i) => m - grade * height * (up[i] as number)),
    );
    const uphill = landed(slope, contacts, 4, { ...options, grade });
    expect(uphill.forwardBalance).toBeCloseTo(0, 3);
    // The bounce, y at first touch below 40 mm, moves it by 2 mm at most.
    expect(Math.abs(uphill.touchdown - (here.touchdown - grade * height))).toBeLessThan(2.5e-3);
    expect(refusal(slope, contacts, options)).toBe("forward-unbalanced");
  });
});

describe("refused, with the reason", () => {
  const [record, contacts] = bounces(3, 0.36);
  const { up } = record.force;
  const right = record.moment?.right as Float64Array;
  const pushed = (newtons: number) => ({
    ...record,
    force: { up, forward: up.map((f) => (f > 0 ? newtons * 1.5 : 0)) },
  });
  it.each<[string, string, LandingRecord, LandingOptions]>([
    ["no forward force", "missing-channel", { ...record, force: { up } }, {}],
    ["no moment", "missing-channel", { sampleRate: 1000, force: record.force }, {}],
    ["a belt of unknown speed", "missing-speed", record, { surface: "belt" }],
    ["pulled forward by 12 N on the mean", "forward-unbalanced", pushed(12), { speed: 3 }],
    ["speeding up by 0.6 m/s²", "forward-unbalanced", pushed(42), { speed: 3 }],
    ["feet that walk on where a belt is stated", "surface-disagrees", record, { surface: "belt", speed: 3 }],
    ["another speed than the feet have", "surface-disagrees", record, { speed: 4 }],
    ["a foot level above the force", "foot-level", record, { footLevel: 5000 }],
    ["a foot level below the threshold", "foot-level", record, { footLevel: 15 }],
  ])("%s: %s", (_what, code, source, options) => expect(refusal(source, contacts, options)).toBe(code));
  it("a belt that stands still under feet that slide back: surface-disagrees", () => {
    const sliding = {
      ...record,
      moment: { right: right.map((_, i) => -3 * ((i % 360) / 1000) * (up[i] as number)) },
    };
    expect(refusal(sliding, contacts, { surface: "belt", speed: 0.1 })).toBe("surface-disagrees");
  });
  it("walking, where the other foot still carries at first touch: no-flight", () => {
    const overlapping = up.map((f, i) => f + (i > 40 && i < 180 ? 400 : 0));
    expect(refusal({ ...record, force: { ...record.force, up: overlapping } }, contacts, { speed: 3 })).toBe(
      "no-flight",
    );
  });
  it.each<[string, LandingOptions]>([
    ["footLevel", { footLevel: 0 }],
    ["footLevel.bodyWeights", { footLevel: { bodyWeights: -1 } }],
    ["height", { height: 175 }],
    ["toe", { toe: "bent" as "curve" }],
    ["grade", { grade: 5 }],
    ["surface", { surface: "grass" as "ground" }],
  ])("throws out-of-range for %s", (argument, options) =>
    expect(() => refusal(record, contacts, options)).toThrow(
      expect.objectContaining({ code: "out-of-range", argument }),
    ),
  );
  it("throws for a stride whose end comes before its start", () =>
    expect(() =>
      landingFromForce(record, contacts[1] as ContactSpan, contacts[0] as ContactSpan, {}),
    ).toThrow(expect.objectContaining({ code: "out-of-range", argument: "nextSameSide" })));
});

describe("margin", () => {
  const { recording, truth } = syntheticRun({ ...runAt(12), variability: {}, surface: "belt" });
  const ground = toGroundReaction(recording);
  const contacts = detectContacts(ground);
  const tilted = (tilt: number): LandingRecord => {
    const { up, forward } = ground.force as { up: Float64Array; forward: Float64Array };
    return { ...ground, force: { up, forward: forward.map((f, i) => f + tilt * (up[i] as number)) } };
  };
  const belt = { surface: "belt", speed: 12 / 3.6, height: 1.75 } as const;
  const errorOf = (k: number, tilt: number, balance: number) => {
    const landing = landed(tilted(tilt), contacts, k, { ...belt, balance });
    const { values } = truthOf(truth.contacts, { contact: contacts[k] as Contact });
    return { error: landing.touchdown - values.touchdownDistance, margin: landing.margin.touchdown };
  };
  it.each([-0.009, -0.005, 0.005, 0.009])(
    "holds what a plate tilted by %d does; the tilt taken off, nothing is left of it",
    (tilt) => {
      const left = errorOf(20, tilt, 0);
      const off = errorOf(20, tilt, tilt);
      expect(Math.abs(off.error)).toBeLessThan(2e-3);
      const moved = Math.abs(left.error - off.error);
      // By 2.6 mm a newton of 687 N, and the margin grows by no less, nor by much more.
      expect(moved / (687 * Math.abs(tilt))).toBeCloseTo(2.6e-3, 4);
      expect(Math.abs(left.error)).toBeLessThan(left.margin);
      expect(left.margin - 0.02).toBeGreaterThan(0.9 * moved);
      expect(left.margin - 0.02).toBeLessThan(1.3 * moved);
    },
  );
  it("grows by 1.38 mm a newton at 70 kg and 0.95 m (law: height ÷ weight)", () => {
    const height = 0.95 / 0.55;
    const perNewton =
      landingMargin(0, 0.7, { height, balance: 1 / (70 * G) }).touchdown -
      landingMargin(0, 0.7, { height }).touchdown;
    expect(1000 * perNewton).toBeCloseTo(1.3839, 4);
  });
  it("grows on a slope where the height is not known", () =>
    expect(
      landingMargin(0, 0.7, { grade: 0.1 }).takeOff -
        landingMargin(0, 0.7, { grade: 0.1, height: 1.8 }).takeOff,
    ).toBeCloseTo(0.01, 12));
});
