import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { detectEvents, type Events, type Gait } from "../../src/events/index.js";
import { toGroundReaction } from "../../src/force/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import { groundOf } from "../helpers.js";
import { walkOnBelts } from "../walking.js";

const codes = ({ cautions }: Events) => cautions.map(({ code }) => code);
const linesOf = (path: string) =>
  readFileSync(new URL(`../fixtures/${path}`, import.meta.url), "utf8")
    .trim()
    .split(/\r?\n/);
/** Duarte & Watanabe (2021), doi:10.5281/zenodo.4599319, CC BY 4.0. */
const jump600 = linesOf("text/jump-600hz.txt").map(Number);
const jump450 = linesOf("text/jump-450hz.txt")
  .slice(1)
  .map((line) => Number(line.split("\t")[1]));
const walkingStep = (name: string) => {
  const [header, ...rows] = linesOf(`markers/${name}.txt`).map((line) => line.split("\t"));
  return rows.map((row) => Number(row[header?.indexOf("Fy") ?? -1]));
};
const gaitOf = (up: readonly number[], sampleRate: number, mass: number | null = null) =>
  detectEvents(groundOf({ up, sampleRate, mass }));
/** Half sines of one height and length, one after another. */
const bounces = (peak: number, contact: number, flight: number, n: number) =>
  Array.from({ length: Math.round((0.1 + n * (contact + flight)) * 1000) }, (_, i) => {
    const t = (i / 1000 - 0.1) % (contact + flight);
    return i < 100 || t >= contact ? 0 : peak * Math.sin((Math.PI * t) / contact);
  });

describe("open recordings, whose source says what was done", () => {
  it("a jump with landing, cut by both ends", () => {
    const events = gaitOf(jump600, 600);
    expect(events.settings.gait).toBe("jumping");
    expect(events.partialContacts.length).toBe(2);
    expect(codes(events)).toContain("no-steps");
  });
  it("stepping on, standing, jumping and landing: two contacts of the body, without sides", () => {
    const events = gaitOf(jump450, 450);
    expect(events.settings.gait).toBe("jumping");
    expect(events.contacts.map(({ side }) => side)).toEqual(["unknown", "unknown"]);
    expect(events.settings.sides).toBe("none");
    // Check values by NumPy at 20 N.
    expect(events.contacts[0]?.initialContact).toBeCloseTo(1.3147253, 6);
    expect(events.contacts[0]?.toeOff).toBeCloseTo(5.0902454, 6);
    expect(events.contacts[1]?.initialContact).toBeCloseTo(5.6401725, 6);
    expect(codes(events)).toEqual(["no-steps"]);
  });
  it("the quiet stance before the jump", () => {
    const events = gaitOf(jump600.slice(0, 100), 600);
    expect(events.settings.gait).toBe("standing");
    expect(codes(events)).toEqual(["no-steps"]);
  });
  it.each(["walk-d", "walk-n"])("one walking step over a plate, %s, without any mass", (name) => {
    const events = gaitOf(walkingStep(name), 150);
    expect(events.settings.gait).toBe("walking");
    expect(codes(events)).toEqual([]);
  });
});

describe("made recordings", () => {
  it.each([
    ["a run at 3 m/s", syntheticRun({ contacts: 12 })],
    ["a sprint", syntheticRun({ contacts: 12, stance: { stepTime: 0.24, contactTime: 0.12 } })],
    ["a slow jog", syntheticRun({ contacts: 12, stance: { stepTime: 0.4, contactTime: 0.34 } })],
  ])("%s", (_, { recording }) => {
    const events = detectEvents(toGroundReaction(recording));
    expect(events.settings).toMatchObject({ gait: "running", gaitStated: false });
    expect(codes(events)).not.toContain("gait-uncertain");
  });
  it("a walk on two belts, and on one of them, which misses every second foot", () => {
    const ground = toGroundReaction(walkOnBelts());
    expect(detectEvents(ground).settings.gait).toBe("walking");
    const [left] = ground.plates ?? [];
    expect(left && detectEvents(left).settings.gait).toBe("walking");
    expect(left && detectEvents({ ...left, subject: {} }).settings.gait).toBe("walking");
  });
  const W = 70 * 9.80665;
  // The mean force is the body weight: peak = W π/2 (contact + flight)/contact.
  const hops = bounces((W * Math.PI * 0.65) / (2 * 0.25), 0.25, 0.4, 8);
  it("hops, which the stated mass tells from one foot of a run", () => {
    expect(gaitOf(hops, 1000, 70).settings.gait).toBe("jumping");
    const oneFoot = gaitOf(
      hops.map((force) => force / 2),
      1000,
      70,
    );
    expect(oneFoot.settings.gait).toBe("running");
    expect(codes(oneFoot)).toContain("gait-uncertain");
    expect(codes(gaitOf(hops, 1000))).toContain("gait-uncertain");
  });
  it("both feet on two plates: landing together is jumping, standing still is standing", () => {
    const onTwo = (up: readonly number[]) => {
      const plate = groundOf({ up: up.map((force) => force / 2), sampleRate: 1000 });
      return detectEvents({ ...groundOf({ up, sampleRate: 1000 }), plates: [plate, plate] });
    };
    expect(onTwo(hops).settings.gait).toBe("jumping");
    expect(onTwo(Array.from({ length: 3000 }, (_, i) => W + 3 * Math.sin(i))).settings.gait).toBe("standing");
  });
  it("one contact alone, by its length and by the mean force of the stated body weight", () => {
    expect(codes(gaitOf(bounces(1500, 0.25, 1.5, 1), 1000))).toEqual([]);
    expect(codes(gaitOf(bounces(1500, 0.4, 1.5, 1), 1000))).toEqual(["gait-uncertain"]);
    expect(codes(gaitOf(bounces(1500, 0.4, 1.5, 1), 1000, 70))).toEqual([]);
    // A single hump of 0.6 s is no walking contact that anybody could be sure of.
    const hump = gaitOf(bounces(800, 0.6, 1.5, 1), 1000);
    expect(hump.settings.gait).toBe("walking");
    expect(codes(hump)).toEqual(["gait-uncertain"]);
  });
  it("a force that varies and never falls away is not sure, and says why feet were not parted", () => {
    const events = gaitOf(
      Array.from({ length: 4000 }, (_, i) => 700 + 120 * Math.sin((2 * Math.PI * i) / 530)),
      1000,
    );
    expect(events.settings.gait).toBe("walking");
    expect(codes(events)).toEqual(["gait-uncertain", "feet-not-parted"]);
    expect(events.cautions[1]?.message).toMatch(/no centre of pressure along `right` was recorded/);
  });
  it("no force, no gait", () => {
    const events = gaitOf(
      Array.from({ length: 500 }, () => 0),
      1000,
    );
    expect(events.settings.gait).toBeNull();
    expect(codes(events)).toEqual([]);
  });
});

describe("a stated gait", () => {
  const run = toGroundReaction(syntheticRun({ contacts: 12 }).recording);
  it.each(["running", "walking", "jumping", "standing"] as const)("%s is followed", (gait) => {
    const events = detectEvents(run, { gait });
    expect(events.settings).toMatchObject({ gait, gaitStated: true });
    expect(events.contacts.length).toBe(12);
    expect(codes(events).includes("gait-disagrees")).toBe(gait !== "running");
    const sided = gait === "running" || gait === "walking";
    expect(events.contacts.every(({ side }) => (side === "unknown") !== sided)).toBe(true);
  });
  it("refuses one that is none", () =>
    expect(() => detectEvents(run, { gait: "skipping" as Gait })).toThrow(
      expect.objectContaining({ code: "out-of-range", argument: "gait" }),
    ));
});

describe("long contacts of slow walkers (were said to be several read as one)", () => {
  const slow = (contact: number, step: number) => {
    const plates = [0, 1].map((foot) =>
      groundOf({
        sampleRate: 500,
        up: Array.from({ length: 500 * 20 }, (_, i) => {
          const t = (i / 500 - 0.5 - foot * step) % (2 * step);
          if (i / 500 < 0.5 + foot * step || t > contact) return 0;
          const s = (n: number) => Math.sin((n * Math.PI * t) / contact);
          return 700 * (1.05 * s(1) + 0.3 * s(3));
        }),
      }),
    );
    const [first] = plates as [(typeof plates)[number]];
    return detectEvents({ ...first, plates });
  };
  it("contacts of 1.6 s in steps of 1.1 s are walking, and not long", () => {
    const events = slow(1.6, 1.1);
    expect(events.settings.gait).toBe("walking");
    expect(events.contacts.length).toBeGreaterThan(14);
    expect(codes(events)).not.toContain("long-contact");
  });
  it("in running they are said", () => {
    const long = [
      ...bounces(1500, 0.25, 0.1, 6),
      ...bounces(1500, 1.2, 0.1, 1),
      ...bounces(1500, 0.25, 0.1, 6),
    ];
    expect(codes(gaitOf(long, 1000))).toContain("long-contact");
  });
});
