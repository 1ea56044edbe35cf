import { describe, expect, it } from "vitest";
import { detectEvents, type Events, type Gait, stepsOf } from "../../src/events/index.js";
import { contactOver, groundOf } from "../helpers.js";

/** Contacts that hold several, and what was said of them on 2026-11-25. */
const codes = ({ cautions }: Events) => cautions.map(({ code }) => code);
const BW = 70 * 9.80665;
/** Contacts of one shape, one after another on one plate, at 1 kHz; over whole steps their mean is the body weight. */
const train = (
  times: readonly number[],
  contact: number,
  step: number,
  shape: (part: number) => number,
  mean: number,
) => {
  const up = new Float64Array(Math.round(((times.at(-1) ?? 0) + contact + 0.4) * 1000));
  for (const from of times) {
    for (let i = Math.ceil(from * 1000); i < (from + contact) * 1000; i++) {
      up[i] = (up[i] ?? 0) + ((BW * step) / (contact * mean)) * shape((i / 1000 - from) / contact);
    }
  }
  return up;
};
const bounce = (part: number) => Math.sin(Math.PI * part);
const twoHumps = (part: number) => 1.05 * Math.sin(Math.PI * part) + 0.3 * Math.sin(3 * Math.PI * part);
const every = (step: number, n: number) => Array.from({ length: n }, (_, k) => 0.3 + k * step);
const walk = (n: number) => train(every(0.52, n), 0.64, 0.52, twoHumps, (2 / Math.PI) * 1.15);
const run = (times: readonly number[], contact: number, step: number) =>
  train(times, contact, step, bounce, 2 / Math.PI);

describe("a walk with both feet on one plate, vertical force alone (2026-11-25: one contact of 15.72 s, walking and sure)", () => {
  const up = walk(30);
  it.each<[number | null, Gait | "auto"]>([
    [null, "auto"],
    [null, "walking"],
    [70, "auto"],
    [70, "walking"],
  ])("mass %s, gait %s: no contact, and the reason", (mass, gait) => {
    const events = detectEvents(groundOf({ up, sampleRate: 1000, mass }), { gait });
    expect(events.contacts).toEqual([]);
    expect(events.partialContacts.length).toBe(1);
    expect(events.settings.gait).toBe("walking");
    expect(codes(events)).toContain("feet-not-parted");
    expect(events.cautions.find(({ code }) => code === "long-contact")?.values?.leftOut).toBe(1);
    if (gait === "auto") expect(codes(events)).toContain("gait-uncertain");
  });
  it.each([null, 70])("three steps of 1.7 s are more than one foot's too, mass %s", (mass) => {
    const events = detectEvents(groundOf({ up: walk(3), sampleRate: 1000, mass }));
    expect(events.contacts).toEqual([]);
    expect(events.partialContacts.length).toBe(1);
    expect(codes(events)).toContain("feet-not-parted");
  });
  it("one foot that stays 2.26 s, as in an open recording of a very slow walker, is a contact", () => {
    const foot = train([0.5], 2.26, 1.3, twoHumps, (2 / Math.PI) * 1.15);
    for (const mass of [null, 70]) {
      const events = detectEvents(groundOf({ up: foot, sampleRate: 1000, mass }));
      expect(events.contacts.length, `mass ${mass}`).toBe(1);
      expect(events.settings.gait).toBe("walking");
      expect(codes(events)).toEqual([]);
    }
  });
  it.each([0.01, 0.02, 0.03])("a race walk whose feet overlap by %d s, without a mass", (overlap) => {
    const times = every(0.32, 60);
    const up = train(times, 0.32 + overlap, 0.32, twoHumps, (2 / Math.PI) * 1.15);
    const events = detectEvents(groundOf({ up, sampleRate: 1000, mass: null }));
    expect(events.contacts).toEqual([]);
    expect(codes(events)).toContain("feet-not-parted");
  });
});

describe("standing for 4 s, stepping on and off (2026-11-25: told as walking)", () => {
  const up = Float64Array.from({ length: 6000 }, (_, i) => {
    const t = i / 1000 - 1;
    return t < 0 || t > 4 ? 0 : BW * Math.min(1, t / 0.3, (4 - t) / 0.3) + 2 * Math.sin(i);
  });
  it.each([null, 70])("is standing, mass %s", (mass) => {
    const events = detectEvents(groundOf({ up, sampleRate: 1000, mass }));
    expect(events.settings.gait).toBe("standing");
    expect(events.contacts.length).toBe(1);
    expect(codes(events)).toEqual(["no-steps"]);
  });
  it("and so for 2 s, which one foot of a slow walker may last", () => {
    const short = Float64Array.from({ length: 4000 }, (_, i) => {
      const t = i / 1000 - 1;
      return t < 0 || t > 2 ? 0 : BW * Math.min(1, t / 0.3, (2 - t) / 0.3);
    });
    const events = detectEvents(groundOf({ up: short, sampleRate: 1000, mass: null }));
    expect(events.settings.gait).toBe("standing");
  });
});

describe("running contacts with flights too short to end them (2026-11-25: they were in means and readings)", () => {
  /** The flight after some contacts is 20 ms instead of 70. */
  const times = (short: (k: number) => boolean, n: number) => {
    let at = 0.3;
    return Array.from({ length: n }, (_, k) => {
      const here = at;
      at += short(k) ? 0.32 : 0.37;
      return here;
    });
  };
  const events = detectEvents(
    groundOf({
      up: run(
        times((k) => k % 10 === 4, 40),
        0.3,
        0.37,
      ),
      sampleRate: 1000,
    }),
  );
  it("are left out, and said", () => {
    expect(events.contacts.length).toBe(32);
    expect(events.partialContacts.length).toBe(4);
    expect(
      Math.max(...events.contacts.map(({ initialContact, toeOff }) => toeOff - initialContact)),
    ).toBeLessThan(0.31);
    const caution = events.cautions.find(({ code }) => code === "long-contact");
    expect(caution?.values).toMatchObject({ contacts: 4, leftOut: 4 });
    expect(caution?.message).toContain("4 of 36 contacts");
    expect(caution?.message).toContain("they are left out");
  });
  it("most of them: those that are left are the single ones, whatever the median", () => {
    const up = run(
      times((k) => k % 5 !== 4, 60),
      0.3,
      0.37,
    );
    const most = detectEvents(groundOf({ up, sampleRate: 1000 }), { gait: "running" });
    expect(most.contacts).toEqual([]);
    expect(most.partialContacts.length).toBe(12);
    const some = detectEvents(
      groundOf({
        up: run(
          times((k) => k % 5 > 1, 60),
          0.3,
          0.37,
        ),
        sampleRate: 1000,
      }),
    );
    // The first one, and of each five the one between flights of 70 ms.
    expect(some.contacts.length).toBe(13);
    expect(some.partialContacts.length).toBe(12);
  });
  it("a contact across them is not the next one, even where every other one is left out", () => {
    const up = run(
      times((k) => k % 3 === 1, 60),
      0.3,
      0.37,
    );
    const { contacts, partialContacts } = detectEvents(groundOf({ up, sampleRate: 1000 }));
    expect([contacts.length, partialContacts.length]).toEqual([20, 20]);
    expect(stepsOf(contacts, partialContacts).every(({ next }) => next === undefined)).toBe(true);
    expect(stepsOf(contacts).some(({ next }) => next !== undefined)).toBe(true);
  });
  it("left and right of the others go on as they were", () => {
    const right = Float64Array.from(
      run(
        times((k) => k % 10 === 4, 40),
        0.3,
        0.37,
      ),
    );
    const starts = times((k) => k % 10 === 4, 40);
    for (let i = 0; i < right.length; i++) {
      const k = starts.filter((from) => from <= i / 1000).length - 1;
      right[i] = (k % 2 === 0 ? -0.05 : 0.05) * (right[i] ?? 0);
    }
    const sided = detectEvents(groundOf({ up: run(starts, 0.3, 0.37), right, sampleRate: 1000 }));
    for (const { side, initialContact } of sided.contacts) {
      const k = starts.findIndex((from) => Math.abs(from - initialContact) < 0.02);
      expect(side, `contact ${k}`).toBe(k % 2 === 0 ? "right" : "left");
    }
    expect(codes(sided)).not.toContain("sides-uncertain");
  });
  it("flights of 20 ms throughout: no contact of 16 s", () => {
    const all = detectEvents(groundOf({ up: run(every(0.4, 40), 0.38, 0.4), sampleRate: 1000 }));
    expect(all.settings.gait).toBe("running");
    expect(all.contacts).toEqual([]);
    expect(
      detectEvents(groundOf({ up: run(every(0.4, 40), 0.38, 0.4), sampleRate: 1000 }), {
        shortestFlight: 0.01,
      }).contacts.length,
    ).toBe(40);
  });
  it("a drop at the very start of a contact, as of a heel that bounces, leaves it whole", () => {
    const up = run(every(0.4, 8), 0.28, 0.4);
    for (const from of every(0.4, 8))
      up.fill(0, Math.round((from + 0.03) * 1000), Math.round((from + 0.045) * 1000));
    expect(detectEvents(groundOf({ up, sampleRate: 1000 })).contacts.length).toBe(8);
  });
});

it("long contacts that hold one load each stay, as the first of a start do, and are said", () => {
  const starts = [0.3, 0.65, ...every(0.3, 10).map((from) => from + 0.7)];
  const up = new Float64Array(5000);
  starts.forEach((from, k) => {
    const contact = k < 2 ? 0.26 : 0.14;
    for (let i = Math.ceil(from * 1000); i < (from + contact) * 1000; i++) {
      up[i] = 1500 * bounce((i / 1000 - from) / contact);
    }
  });
  const events = detectEvents(groundOf({ up, sampleRate: 1000 }));
  expect(events.contacts.length).toBe(12);
  expect(events.partialContacts).toEqual([]);
  expect(events.cautions.find(({ code }) => code === "long-contact-kept")?.values?.contacts).toBe(2);
  expect(codes(events)).not.toContain("long-contact");
});

it("a partial contact between two parts them; one that overlaps either does not", () => {
  const contacts = [contactOver(0, 0.3), contactOver(0.4, 0.7), contactOver(0.8, 1.1)];
  const follows = (from: number, to: number) =>
    stepsOf(contacts, [contactOver(from, to)]).map(({ next }) => next !== undefined);
  expect(follows(0.32, 0.38)).toEqual([false, true, false]);
  expect(follows(0.2, 0.25)).toEqual([true, true, false]);
});
