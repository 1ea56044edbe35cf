import { expect, it } from "vitest";
import { type Contact, sidesFromMarkers } from "../../../src/events/index.js";
import type { Marker, MarkerSet } from "../../../src/recording/index.js";
import { treadmillRun } from "./openRecordings.js";

const { markers, ground, events } = treadmillRun();
const feet = { left: ["L.Heel.Bottom", "L.MT1"], right: ["R.Heel.Bottom", "R.MT1"] };
const sidesOf = (contacts: readonly Contact[]) => contacts.map(({ side }) => side);
const unnamed = events.contacts.map((contact): Contact => ({ ...contact, side: "unknown" }));

it("treadmill run: heights name the foot of all 24 contacts as the centre of pressure does", () => {
  const { contacts, heights, cautions } = sidesFromMarkers(unnamed, markers, feet);
  expect(sidesOf(contacts)).toEqual(sidesOf(events.contacts));
  // The published first contact is the right foot's (centre of pressure on the right at mid-contact).
  expect(contacts[0]?.side).toBe("right");
  expect(Math.min(...heights.map((height) => height ?? NaN))).toBeGreaterThan(0.09);
  expect(cautions).toEqual([]);
});
it("the centre of pressure is nearer to the foot that is lower, in every contact", () => {
  const { contacts, distances, cautions } = sidesFromMarkers(unnamed, markers, feet, { ground });
  expect(sidesOf(contacts)).toEqual(sidesOf(events.contacts));
  expect(Math.min(...distances.map((distance) => distance ?? NaN))).toBeGreaterThan(0.09);
  expect(cautions).toEqual([]);
});
it("the centre of pressure decides where heights are not told apart", () => {
  const flat: MarkerSet = {
    ...markers,
    markers: markers.markers.map((marker) => ({ ...marker, up: marker.up.map(() => 0) })),
  };
  expect(sidesOf(sidesFromMarkers(unnamed, flat, feet, { ground }).contacts)).toEqual(
    sidesOf(events.contacts),
  );
  const none = sidesFromMarkers(unnamed, flat, feet);
  expect(new Set(sidesOf(none.contacts))).toEqual(new Set(["unknown"]));
  expect(none.cautions).toMatchObject([{ code: "sides-unknown", values: { unknown: 24 } }]);
});
it("a missed contact and one found twice exchange no other", () => {
  const expected = sidesOf(events.contacts);
  const missed = unnamed.filter((_, k) => k !== 5);
  expect(sidesOf(sidesFromMarkers(missed, markers, feet).contacts)).toEqual(
    expected.filter((_, k) => k !== 5),
  );
  const fifth = unnamed[5] as Contact;
  const middle = (fifth.initialContact + fifth.toeOff) / 2;
  const doubled = [
    ...unnamed.slice(0, 5),
    { ...fifth, toeOff: middle },
    { ...fifth, initialContact: middle },
    ...unnamed.slice(6),
  ];
  const wanted = [...expected.slice(0, 6), ...expected.slice(5)];
  expect(sidesOf(sidesFromMarkers(doubled, markers, feet, { ground }).contacts)).toEqual(wanted);
  // Of the second half alone, when both feet are as high, heights tell nothing: unknown, and nothing else changes.
  expect(sidesOf(sidesFromMarkers(doubled, markers, feet).contacts)).toEqual(
    wanted.map((side, k) => (k === 6 ? "unknown" : side)),
  );
});
it("mirrored names give mirrored sides", () => {
  const { contacts } = sidesFromMarkers(unnamed, markers, { left: feet.right, right: feet.left });
  expect(sidesOf(contacts)).toEqual(
    sidesOf(events.contacts).map((side) => (side === "left" ? "right" : "left")),
  );
});
it("heights that speak against the centre of pressure are a caution", () => {
  const heightOf = (name: string) =>
    markers.markers.find((marker) => marker.name === name)?.up ?? new Float64Array();
  const other = (name: string) =>
    name.startsWith("L.") ? name.replace("L.", "R.") : name.replace("R.", "L.");
  const crossed: MarkerSet = {
    ...markers,
    markers: [...feet.left, ...feet.right].map((name) => ({
      ...(markers.markers.find((marker) => marker.name === name) as Marker),
      up: heightOf(other(name)),
    })),
  };
  const { cautions } = sidesFromMarkers(unnamed, crossed, feet, { ground });
  expect(cautions).toMatchObject([{ code: "sides-uncertain", values: { opposed: 24, contacts: 24 } }]);
});
it("the clock of the force counts where it is given", () => {
  const late = { ...markers, startTime: markers.startTime + 5 };
  const { contacts, heights } = sidesFromMarkers(unnamed, late, feet, { ground });
  const before = unnamed.filter(({ initialContact }) => initialContact < 4.9).length;
  expect(contacts.filter(({ side }) => side === "unknown")).toHaveLength(before);
  expect(heights.slice(0, before)).toEqual(Array(before).fill(null));
});
it("refuses a gap, an unknown marker, a difference below 0", () => {
  const gap = {
    ...markers,
    markers: markers.markers.map((marker) =>
      marker.name === "L.MT1"
        ? { ...marker, up: marker.up.map((v, i) => (i === 7 ? Number.NaN : v)) }
        : marker,
    ),
  };
  expect(() => sidesFromMarkers(unnamed, gap, feet)).toThrow(
    expect.objectContaining({ code: "gap", where: "L.MT1, frame 7" }),
  );
  expect(() => sidesFromMarkers(unnamed, markers, { ...feet, left: "L" })).toThrow(
    expect.objectContaining({ code: "missing-channel" }),
  );
  expect(() => sidesFromMarkers(unnamed, markers, feet, { leastDifference: -1 })).toThrow(
    expect.objectContaining({ code: "out-of-range" }),
  );
});
