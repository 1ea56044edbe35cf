import { describe, expect, it } from "vitest";
import { detectEvents, stepsOf } from "../../src/events/index.js";
import type { GroundReaction } from "../../src/force/index.js";
import { groundOf } from "../helpers.js";

const RATE = 500;
const STEP = 180;
const CONTACT = 120;

/** Half-sine contacts at 0.36 s steps; `skip` leaves contacts out; right feet (even) land 0.1 m to the right of left ones. */
function run(
  count: number,
  skip: readonly number[] = [],
  drift = 0,
): GroundReaction & { sides: string[]; moment: { forward: Float64Array } } {
  const length = 60 + count * STEP;
  const up = new Float64Array(length);
  const right = new Float64Array(length);
  const moment = new Float64Array(length);
  const sides: string[] = [];
  for (let k = 0; k < count; k++) {
    if (skip.includes(k)) continue;
    const sign = k % 2 === 0 ? 1 : -1;
    sides.push(sign > 0 ? "right" : "left");
    for (let i = 0; i < CONTACT; i++) {
      const at = 30 + k * STEP + i;
      const force = 1500 * Math.sin((Math.PI * (i + 0.5)) / CONTACT);
      up[at] = force;
      right[at] = -sign * 0.05 * force;
      moment[at] = -(sign * 0.05 + drift * at) * force;
    }
  }
  return { ...groundOf({ up, right, sampleRate: RATE }), moment: { forward: moment }, sides };
}

describe("left and right (laws: the right foot lands to the right; feet alternate in time)", () => {
  it.each([
    ["steady", run(20)],
    ["wandering 0.5 m across the belt", run(20, [], 0.5 / (20 * STEP))],
    ["one contact missed", run(20, [7])],
    ["two contacts missed in a row", run(20, [7, 8])],
    ["a long pause", run(30, [10, 11, 12, 13, 14])],
  ])("from the centre of pressure: %s", (_, ground) => {
    const events = detectEvents(ground, { threshold: 20 });
    expect(events.settings.sides).toBe("centre of pressure");
    expect(events.contacts.map(({ side }) => side)).toEqual(ground.sides);
    expect(events.cautions).toEqual([]);
  });

  it("mirrored data give mirrored sides", () => {
    const ground = run(20, [7]);
    const mirrored = {
      ...ground,
      moment: { forward: ground.moment.forward.map((m) => -m) },
    };
    const swap = { left: "right", right: "left" } as Record<string, string>;
    expect(detectEvents(mirrored, { threshold: 20 }).contacts.map(({ side }) => side)).toEqual(
      ground.sides.map((side) => swap[side]),
    );
  });

  it("a stated first foot decides, and is contradicted aloud by a centre of pressure that says otherwise", () => {
    const events = detectEvents(run(20), { threshold: 20, firstFoot: "left" });
    expect(events.settings.sides).toBe("first foot");
    expect(events.contacts[0]?.side).toBe("left");
    expect(events.cautions.map(({ code }) => code)).toContain("sides-uncertain");
  });

  it("without a centre of pressure the sign of the mediolateral impulse tells, with a caution", () => {
    const { moment: _, ...ground } = run(20);
    const events = detectEvents(ground, { threshold: 20 });
    expect(events.settings.sides).toBe("mediolateral force");
    expect(events.contacts.map(({ side }) => side)).toEqual(ground.sides);
    expect(events.cautions.map(({ code }) => code)).toEqual(["sides-from-force"]);
  });

  it("from vertical force alone the labels only alternate, which is said; a missed contact does not flip the rest", () => {
    const ground = run(20, [7]);
    const events = detectEvents(groundOf({ up: ground.force.up, sampleRate: RATE }), { threshold: 20 });
    expect(events.settings.sides).toBe("alternation");
    expect(events.contacts.map(({ side }) => side)).toEqual(ground.sides);
    expect(events.cautions.map(({ code }) => code)).toEqual(["sides-relative"]);
  });

  it("a recording that starts in a contact labels the first complete contact as stated", () => {
    const ground = run(20);
    const up = ground.force.up.slice(90);
    const events = detectEvents(groundOf({ up, sampleRate: RATE }), { threshold: 20, firstFoot: "left" });
    expect(events.partialContacts[0]?.side).toBe("right");
    expect(events.contacts.map(({ side }) => side)).toEqual(ground.sides.slice(1));
  });
});

describe("steps (by hand)", () => {
  const contacts = detectEvents(run(10, [4]), { threshold: 20 }).contacts;
  it("gives neighbours, but none across a missed contact or behind the end", () => {
    const steps = stepsOf(contacts);
    expect(steps.map(({ next }) => (next === undefined ? null : contacts.indexOf(next)))).toEqual([
      1,
      2,
      3,
      null,
      5,
      6,
      7,
      8,
      null,
    ]);
    expect(
      steps.map(({ nextSameSide }) => (nextSameSide === undefined ? null : contacts.indexOf(nextSameSide))),
    ).toEqual([2, 3, null, null, 6, 7, 8, null, null]);
  });
});

describe("an irregular step (everything behind it was swapped, unsaid, on 2026-11-25)", () => {
  /** The run with `extra` samples of flight inserted before contact 16 of 20. */
  const stumble = (extra: number) => {
    const ground = run(20);
    const at = 10 + 16 * STEP;
    const longer = (samples: Float64Array) =>
      Float64Array.from([...samples.slice(0, at), ...new Float64Array(extra), ...samples.slice(at)]);
    const right = ground.force.right as Float64Array;
    return {
      ...groundOf({ up: longer(ground.force.up), right: longer(right), sampleRate: RATE }),
      moment: { forward: longer(ground.moment.forward) },
      sides: ground.sides,
    };
  };
  it.each([50, 90, 95, 125, 180, 250])("a step late by %d of 180 samples", (extra) => {
    const ground = stumble(extra);
    const events = detectEvents(ground, { threshold: 20 });
    expect(events.contacts.map(({ side }) => side)).toEqual(ground.sides);
  });
  it("one centre of pressure gone astray does not outvote the others", () => {
    const ground = run(20);
    const moment = {
      forward: ground.moment.forward.map((m, i) => (i < 160 ? m - 10 * (ground.force.up[i] as number) : m)),
    };
    expect(detectEvents({ ...ground, moment }, { threshold: 20 }).contacts.map(({ side }) => side)).toEqual(
      ground.sides,
    );
  });
  it("feet that cross the midline: the mediolateral force speaks against the centre of pressure, which is said", () => {
    const ground = run(20);
    const crossed = { ...ground, moment: { forward: ground.moment.forward.map((m) => -m) } };
    const { cautions, settings } = detectEvents(crossed, { threshold: 20 });
    expect(settings.sides).toBe("centre of pressure");
    expect(cautions.map(({ code }) => code)).toEqual(["sides-uncertain"]);
  });
});
