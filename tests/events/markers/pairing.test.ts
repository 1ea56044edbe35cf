import fc from "fast-check";
import { expect, it } from "vitest";
import { type FootEvents, oConnorVelocityEvents, pairKinematicEvents } from "../../../src/events/index.js";
import { treadmillRun } from "./openRecordings.js";

const foot = (side: FootEvents["side"], initialContacts: number[], toeOffs: number[]): FootEvents => ({
  method: "by hand",
  side,
  initialContacts,
  toeOffs,
});

it("pairs by hand: cut at both ends, a toe-off missed, too short", () => {
  const { contacts, unpairedContacts, unpairedToeOffs, cautions } = pairKinematicEvents([
    foot("left", [0.5, 1.2, 1.9, 2.6, 3.3], [0.1, 0.75, 2.15, 2.63]),
  ]);
  expect(contacts.map(({ initialContact, toeOff }) => [initialContact, toeOff])).toEqual([
    [0.5, 0.75],
    [1.9, 2.15],
  ]);
  expect([unpairedContacts, unpairedToeOffs]).toEqual([3, 2]);
  expect(cautions).toMatchObject([{ code: "unpaired-events", where: "left" }]);
});
it("orders two feet in time, moved by the delay", () => {
  const { contacts, cautions } = pairKinematicEvents(
    [foot("left", [0.5, 1.25], [0.75, 1.5]), foot("right", [0.875], [1.125])],
    { delay: -0.125 },
  );
  expect(contacts.map(({ side, initialContact }) => [side, initialContact])).toEqual([
    ["left", 0.375],
    ["right", 0.75],
    ["left", 1.125],
  ]);
  expect(cautions).toEqual([]);
});
it("treadmill run: both feet's contacts alternate and last as long as by force, within 10 ms", () => {
  const { markers, events } = treadmillRun();
  const { contacts } = pairKinematicEvents(
    (["right", "left"] as const).map((side) => {
      const letter = side === "right" ? "R" : "L";
      return oConnorVelocityEvents(markers, { heel: `${letter}.Heel.Bottom`, toe: `${letter}.MT1`, side });
    }),
  );
  expect(contacts.length).toBeGreaterThanOrEqual(23);
  contacts.slice(1).forEach((contact, k) => {
    expect(contact.side).not.toBe(contacts[k]?.side);
  });
  const mean = (list: readonly { initialContact: number; toeOff: number }[]) =>
    list.reduce((sum, { initialContact, toeOff }) => sum + toeOff - initialContact, 0) / list.length;
  expect(Math.abs(mean(contacts) - mean(events.contacts))).toBeLessThan(0.01);
});
it("property: no contact is out of its bounds, and each event serves once", () =>
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0, max: 20, noNaN: true })),
      fc.array(fc.double({ min: 0, max: 20, noNaN: true })),
      (starts, ends) => {
        const { contacts, unpairedContacts, unpairedToeOffs } = pairKinematicEvents([
          foot("right", starts, ends),
        ]);
        for (const { initialContact, toeOff } of contacts) {
          expect(toeOff - initialContact).toBeGreaterThanOrEqual(0.08);
          expect(toeOff - initialContact).toBeLessThanOrEqual(1.5);
        }
        expect(new Set(contacts.map(({ toeOff }) => toeOff)).size).toBe(contacts.length);
        expect(contacts.length + unpairedContacts).toBe(starts.length);
        expect(contacts.length + unpairedToeOffs).toBe(ends.length);
      },
    ),
  ));
it("refuses one side twice, times that are none, bounds that cross", () => {
  expect(() => pairKinematicEvents([foot("left", [], []), foot("left", [], [])])).toThrow(
    expect.objectContaining({ code: "conflict" }),
  );
  expect(() => pairKinematicEvents([foot("left", [Number.NaN], [])])).toThrow(
    expect.objectContaining({ code: "not-finite" }),
  );
  expect(() => pairKinematicEvents([], { shortestContact: 1, longestContact: 0.5 })).toThrow(
    expect.objectContaining({ code: "out-of-range" }),
  );
});
