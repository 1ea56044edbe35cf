import { describe, expect, it } from "vitest";
import { detectEvents } from "../../src/events/index.js";
import { type GroundReaction, toGroundReaction } from "../../src/force/index.js";
import type { Channel, Recording } from "../../src/recording/index.js";
import { analyseTrial } from "../../src/trial/index.js";
import { codes } from "./checks.js";

/** Feet on plates as half sines, 1 kHz; each test names what was seen on 2026-11-25. */
type Foot = readonly [from: number, lasts: number, peak: number];
const upOf = (feet: readonly Foot[], length: number): Float64Array => {
  const up = new Float64Array(length);
  for (const [from, lasts, peak] of feet) {
    for (let i = 0; i < lasts; i++) up[from + i] = peak * Math.sin((Math.PI * i) / lasts);
  }
  return up;
};
const recordingOf = (plates: Readonly<Record<string, readonly Foot[]>>, length = 4000): Recording => ({
  sampleRate: 1000,
  startTime: 0,
  channels: Object.entries(plates).map(
    ([plate, feet]): Channel => ({
      name: `${plate} up`,
      quantity: "force",
      direction: "up",
      unit: "N",
      samples: upOf(feet, length),
      plate,
    }),
  ),
  subject: { mass: 70 },
  origin: { format: "test" },
  cautions: [],
});
const saidOf = ({ cautions }: Pick<GroundReaction, "cautions">, code: string) =>
  cautions.find((caution) => caution.code === code);

describe("50 contacts on two belts, one of which touches the other belt", () => {
  const every = (start: number) => Array.from({ length: 25 }, (_, k): Foot => [start + k * 730, 245, 1700]);
  const crossing = (names: readonly [string, string]) =>
    toGroundReaction(
      recordingOf({ [names[0]]: every(300), [names[1]]: [...every(665), [1030, 245, 100]] }, 20_000),
    );
  it("left and right stay apart, with the contact left out (the belts became one, sides from elsewhere)", () => {
    const ground = crossing(["left", "right"]);
    expect(ground.plates?.map(({ side }) => side)).toEqual(["left", "right"]);
    expect(saidOf(ground, "foot-on-two-plates")?.message).toMatch(
      /"left" and "right" were loaded at once.* 1\.0\d s .* kept apart, since they belong to different feet/,
    );
    const events = detectEvents(ground);
    expect(events.settings.sides).toBe("plates");
    expect(events.contacts.length).toBe(49);
    expect(events.partialContacts.map(({ side, plate }) => [side, plate])).toEqual([
      ["left", 0],
      ["left", 1],
    ]);
    expect(codes(events)).toContain("contacts-on-two-plates");
  });
  it("belts without a side stay apart too", () => {
    const ground = crossing(["A", "B"]);
    expect(ground.plates?.length).toBe(2);
    expect(saidOf(ground, "foot-on-two-plates")?.message).toMatch(/most contacts are on one of them alone/);
    expect(detectEvents(ground).contacts.length).toBe(49);
  });
  it("the means are those of whole contacts (the halves went into them)", () => {
    const trial = analyseTrial(crossing(["left", "right"]), { filter: null });
    expect(trial.summary.metrics.peakVerticalForce?.mean).toBeCloseTo(1700, 0);
    expect(trial.partialContacts.length).toBe(2);
  });
});

describe("plates that one foot crosses on every pass", () => {
  const plates = { 1: [[1000, 260, 900]], 2: [[1010, 250, 800]] } as const;
  it("are taken together", () => {
    const ground = toGroundReaction(recordingOf(plates));
    expect(ground.plates).toBeUndefined();
    expect(detectEvents(ground).contacts.length).toBe(1);
  });
  it("kept apart on request, no half is a contact (400 and 350 N went into contacts)", () => {
    const ground = toGroundReaction(recordingOf(plates), { plates: "apart" });
    const { contacts, partialContacts } = detectEvents(ground);
    expect([contacts.length, partialContacts.length]).toEqual([0, 2]);
    expect(() => analyseTrial(ground)).toThrow(/the 2 contacts seen are .* part of a foot across two plates/);
    expect(
      detectEvents(toGroundReaction(recordingOf(plates), { plates: "apart", only: ["1"] })).contacts.length,
    ).toBe(1);
  });
});

describe("the tip of a foot on the next plate", () => {
  const touch = (lasts: number, peak: number, from = 1190) =>
    toGroundReaction(
      recordingOf({
        1: [[1000, 260, 1500]],
        2: [
          [from, lasts, peak],
          [2000, 250, 1500],
        ],
      }),
    );
  it.each([
    [45, 180],
    [100, 45],
    [20, 60],
  ])("for %d ms, up to %d N, is said (nothing was)", (lasts, peak) => {
    const ground = touch(lasts, peak);
    expect(ground.plates?.length).toBe(2);
    const said = saidOf(ground, "plate-touched");
    expect(said?.message).toMatch(
      /^"2" was touched with up to \d+ N while somebody stood on "1", 1\.\d\d s /,
    );
    expect(said?.values?.most).toBeGreaterThan(0.95 * peak);
    expect(detectEvents(ground).contacts.map(({ plate }) => plate)).toEqual([0, 1]);
  });
  it("what rings for some milliseconds is no touch", () =>
    expect(codes(touch(8, 100))).not.toContain("plate-touched"));
  it("a light one is no contact of its own, and leaves the other a whole one", () => {
    const { contacts, partialContacts, cautions } = detectEvents(touch(160, 40, 1050), {
      threshold: 20,
    });
    expect([contacts.length, partialContacts.length]).toEqual([2, 1]);
    expect(codes({ cautions })).toContain("touches-left-out");
  });
});
