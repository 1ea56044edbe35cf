import { describe, expect, it } from "vitest";
import {
  LANDING_MARGIN,
  type Landing,
  type LandingFromForce,
  landingFromForce,
} from "../../../src/models/index.js";
import { toeRows } from "./accuracyRows.js";
import { meanAndSd } from "./runs.js";
import { MARKER_TIME, markersAt, treadmillRun } from "./treadmillRun.js";

const { ground, steps } = treadmillRun();
const { pelvis, heel } = markersAt();
const { force, moment } = ground.unfiltered as NonNullable<typeof ground.unfiltered>;
const record = { sampleRate: ground.sampleRate, force, ...(moment && { moment }) };

/** By force, for every contact that begins a stride. */
const landings = steps.flatMap(({ contact, nextSameSide }) => {
  if (nextSameSide === undefined) return [];
  const landing = landingFromForce(record, contact, nextSameSide, {
    surface: "belt",
    speed: 2.5,
    height: 1.83,
    threshold: contact.threshold,
  });
  return [{ side: contact.side, landing }];
});
const found = landings.flatMap(({ side, landing }) =>
  landing.refused === undefined ? [{ ...landing, side }] : [],
);
/** Those that the markers cover. */
const seen = found.filter(({ lastTouch }) => lastTouch < MARKER_TIME);
const millimetres = (values: readonly number[]) => meanAndSd(values.map((value) => 1000 * value));
/** Place of the centre of mass in the belt's frame at last touch. */
const atLast = ({ bodyPlace, bodyTravel, firstTouch, lastTouch }: Landing) =>
  bodyPlace + bodyTravel - 2.5 * (lastTouch - firstTouch);
/** The same by force and by the pelvis markers, at first and at last touch. */
const places = seen.flatMap((landing) => [
  { force: landing.bodyPlace, markers: pelvis(landing.firstTouch) },
  { force: atLast(landing), markers: pelvis(landing.lastTouch) },
]);
const offset = meanAndSd(places.map(({ force, markers }) => force - markers)).mean;

describe("open recording with markers (source above), 2.5 m/s, midfoot landing, 300 Hz", () => {
  it("69 of 72 strides; the forward force of the others is 1 % of the vertical or more", () => {
    expect([landings.length, found.length]).toEqual([72, 69]);
    const reasons = landings.flatMap(({ landing }) => landing.refused ?? []);
    expect(reasons).toEqual(["forward-unbalanced", "forward-unbalanced", "forward-unbalanced"]);
  });
  it("the heel on the belt says 2.5 m/s too, within 2 %", () => {
    const speeds = seen.map(({ side, firstTouch, lastTouch }) => {
      const [from, to] = [0.35, 0.5].map((part) => firstTouch + part * (lastTouch - firstTouch)) as [
        number,
        number,
      ];
      return (heel(side, from) - heel(side, to)) / (to - from);
    });
    expect(Math.abs(meanAndSd(speeds).mean / 2.5 - 1)).toBeLessThan(0.02);
  });
  it("centre of mass by force against the pelvis markers at first and last touch: r above 0.98, SD below 5 mm", () => {
    expect(places.length).toBeGreaterThan(40);
    const [byForce, byMarkers] = [places.map(({ force }) => force), places.map(({ markers }) => markers)];
    const [f, m] = [meanAndSd(byForce), meanAndSd(byMarkers)];
    const products = places.reduce(
      (sum, { force, markers }) => sum + (force - f.mean) * (markers - m.mean),
      0,
    );
    expect(products / ((places.length - 1) * f.sd * m.sd)).toBeGreaterThan(0.98);
    expect(millimetres(places.map(({ force, markers }) => force - markers)).sd).toBeLessThan(5);
  });
  it("touchdown by force and with the pelvis, put at the centre of mass by its mean offset: means within 3 mm, SD below 5 mm", () => {
    const differences = seen.map(({ bodyPlace, firstTouch }) => pelvis(firstTouch) + offset - bodyPlace);
    const { mean, sd } = millimetres(differences);
    expect(Math.abs(mean)).toBeLessThan(3);
    expect(sd).toBeLessThan(5);
  });
  it("closing law: touchdown + take-off + travel of the centre of pressure = travel of the pelvis over the belt, means within 1 %", () => {
    const sums = seen.map(({ touchdown, takeOff, copTravel }) => touchdown + takeOff + copTravel);
    const travelled = seen.map(
      ({ firstTouch, lastTouch }) => pelvis(lastTouch) - pelvis(firstTouch) + 2.5 * (lastTouch - firstTouch),
    );
    expect(Math.abs(meanAndSd(sums).mean / meanAndSd(travelled).mean - 1)).toBeLessThan(0.01);
    const apart = sums.map((sum, k) => Math.abs(sum / (travelled[k] as number) - 1));
    expect(Math.max(...apart)).toBeLessThan(0.02);
  });
  it("means over contacts, held so that a change is seen: touchdown 247, take-off 426, travel under the foot 214 mm", () => {
    const mean = (of: (landing: LandingFromForce) => number) => millimetres(found.map(of)).mean;
    expect(Math.abs(mean(({ touchdown }) => touchdown) - 247)).toBeLessThan(1);
    expect(Math.abs(mean(({ takeOff }) => takeOff) - 426)).toBeLessThan(1);
    expect(Math.abs(mean(({ copTravel }) => copTravel) - 214)).toBeLessThan(1);
  });
});

describe("the rule for the toe (on 2026-11-25 a margin of 11 mm was stated, and the rule alone moves take-off by 36)", () => {
  const rows = toeRows();
  const of = (toe: string, footLevel: number) => {
    const row = rows.find((each) => each.toe === toe && each.footLevel === footLevel);
    if (row === undefined) throw new Error(`no row of ${toe} at ${footLevel} N`);
    return { touchdown: row.touchdown.mean / 1000, takeOff: row.takeOff.mean / 1000 };
  };
  const base = of("curve", 250);
  it("a line moves them by −14 and −36 mm, a foot level of 600 N by +18 and +34 mm", () => {
    const [line, higher] = [of("line", 250), of("curve", 600)];
    expect(line.touchdown - base.touchdown).toBeCloseTo(-0.014, 3);
    expect(line.takeOff - base.takeOff).toBeCloseTo(-0.0365, 3);
    expect(higher.touchdown - base.touchdown).toBeCloseTo(0.018, 3);
    expect(higher.takeOff - base.takeOff).toBeCloseTo(0.034, 3);
  });
  it("the margin holds every one of them", () => {
    for (const { toe, footLevel } of rows) {
      const other = of(toe, footLevel);
      const name = `${toe} ${footLevel}`;
      expect(Math.abs(other.touchdown - base.touchdown), name).toBeLessThan(LANDING_MARGIN.touchdown);
      expect(Math.abs(other.takeOff - base.takeOff), name).toBeLessThan(LANDING_MARGIN.takeOff);
    }
  });
});
