import { describe, expect, it } from "vitest";
import { type FootTrack, type GroundTrack, toGroundReaction } from "../../src/force/index.js";
import { strikeIndex } from "../../src/metrics/index.js";
import { analyseTrial, type Trial } from "../../src/trial/index.js";
import { FEET, markedRun, PELVIS } from "./markedRun.js";

const recording = markedRun();
const byForce = analyseTrial(toGroundReaction(recording));
const marked = toGroundReaction(recording, { centreOfMassMarkers: PELVIS, feet: FEET });
const measured = analyseTrial(marked);
const meanAndSd = (values: readonly number[]) => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, sd: Math.sqrt(squares / (values.length - 1)) };
};
const differences = (id: string) =>
  byForce.steps.flatMap(({ values }, k) => {
    const [a, b] = [values[id], measured.steps[k]?.values[id]];
    return a == null || b == null ? [] : [1000 * (a - b)];
  });
const sides = ({ contacts }: Trial) => contacts.map(({ side }) => side);

describe("open recording with markers (named in markedRun.ts)", () => {
  it("says how touchdown and take-off distance were had", () => {
    expect(byForce.settings.landing).toMatchObject({ method: "force", footLevel: 250, toe: "curve" });
    expect(byForce.settings.landing?.margin.touchdown).toBeGreaterThan(0.02);
    expect(byForce.settings.landing?.margin.takeOff).toBeGreaterThan(0.04);
    expect(measured.settings.landing).toEqual({
      method: "measured",
      footLevel: 250,
      toe: "curve",
      balance: 0,
      margin: { touchdown: 0.02, takeOff: 0.04 },
    });
    expect(measured.settings.force.markers).toEqual({
      sampleRate: 150,
      centreOfMass: PELVIS,
      feet: {
        left: { heel: ["L.Heel.Bottom"], toe: ["L.MT1"] },
        right: { heel: ["R.Heel.Bottom"], toe: ["R.MT1"] },
      },
    });
    expect(JSON.parse(JSON.stringify(measured))).toEqual(measured);
  });
  it("by force and by the pelvis: apart by less than 10 mm, which the toe has no part in; SD per contact below 5 mm", () => {
    for (const id of ["touchdownDistance", "takeOffDistance"]) {
      const { mean, sd } = meanAndSd(differences(id));
      expect(differences(id).length, id).toBe(22);
      expect(Math.abs(mean), id).toBeLessThan(10);
      expect(sd, id).toBeLessThan(5);
    }
  });
  it("a pelvis is put ahead of the centre of mass alike at both: the sum of both distances is the same within 1 mm", () => {
    const sum =
      meanAndSd(differences("touchdownDistance")).mean + meanAndSd(differences("takeOffDistance")).mean;
    expect(Math.abs(sum)).toBeLessThan(1);
  });
  it("every foot by its own markers is the one by the centre of pressure", () => {
    expect(measured.settings.events.sides).toBe("markers");
    expect(byForce.settings.events.sides).toBe("centre of pressure");
    expect(sides(measured)).toEqual(sides(byForce));
    expect(measured.contacts.length).toBe(24);
  });
  it("without a centre of pressure, where feet alternate by guess, markers tell them", () => {
    const vertical = {
      ...recording,
      channels: recording.channels.filter(
        ({ quantity, direction }) => quantity === "force" && direction === "up",
      ),
    };
    expect(analyseTrial(toGroundReaction(vertical)).settings.events.sides).toBe("alternation");
    const trial = analyseTrial(toGroundReaction(vertical, { feet: FEET }));
    expect(sides(trial)).toEqual(sides(byForce));
    expect(trial.cautions.map(({ code }) => code)).not.toContain("sides-relative");
  });
  it("a first foot that is stated wrong is not followed, and that is said", () => {
    const trial = analyseTrial(marked, { events: { firstFoot: "left" } });
    expect(sides(trial)).toEqual(sides(byForce));
    expect(trial.cautions.map(({ code }) => code)).toContain("sides-uncertain");
  });
  it("a contact that markers do not tell keeps its place between its neighbours, wrong as the guess was", () => {
    const vertical = {
      ...recording,
      channels: recording.channels.filter(
        ({ quantity, direction }) => quantity === "force" && direction === "up",
      ),
      firstFoot: "left" as const,
    };
    const ground = toGroundReaction(vertical, { feet: FEET });
    const { left, right } = ground.feet as Record<"left" | "right", FootTrack>;
    const { initialContact, toeOff } = measured.contacts[7] as Trial["contacts"][number];
    const within = (i: number) => i / 300 > initialContact && i / 300 < toeOff;
    // Both feet at their standing height for as long as that contact lasts.
    const level = (end: GroundTrack) => ({ ...end, up: end.up?.map((up, i) => (within(i) ? 0.05 : up)) });
    const hidden = {
      left: { heel: level(left.heel), toe: level(left.toe) },
      right: { heel: level(right.heel), toe: level(right.toe) },
    } as typeof ground.feet & object;
    const trial = analyseTrial({ ...ground, feet: hidden });
    expect(trial.cautions.map(({ code }) => code)).toContain("sides-unknown");
    expect(sides(trial)).toEqual(sides(byForce));
  });
  it("the strike index of a contact is the one with the foot read off the markers by hand", () => {
    expect(byForce.notComputed.find(({ id }) => id === "strikeIndex")?.code).toBe("missing-foot");
    const [contact] = measured.contacts as [Trial["contacts"][number]];
    // 250 N are reached between 0.24 and 0.25 s; markers between their frames 36 and 37.
    const rise =
      marked.force.up.findIndex((value, i) => i > contact.initialContact * 300 && value >= 250) / 300;
    const at = (name: string) => {
      const marker = recording.markers?.markers.find((each) => each.name === name);
      const frame = Math.floor((rise - 1 / 600) * 150);
      const part = (rise - 1 / 600) * 150 - frame;
      const read = (way: Float64Array | undefined) =>
        (way?.[frame] ?? Number.NaN) * (1 - part) + (way?.[frame + 1] ?? Number.NaN) * part;
      return { forward: read(marker?.forward), right: read(marker?.right) };
    };
    const leg = contact.side === "left" ? "L" : "R";
    const foot = { heel: at(`${leg}.Heel.Bottom`), toe: at(`${leg}.MT1`) };
    const byHand = strikeIndex(marked, { contact }, { foot }) as number;
    // Half a sample, 1.7 ms, is 4 mm on the belt and 0.03 of the way from heel to metatarsal.
    expect(Math.abs((measured.steps[0]?.values.strikeIndex ?? Number.NaN) - byHand)).toBeLessThan(0.03);
  });
});
