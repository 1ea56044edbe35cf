import { describe, expect, it } from "vitest";
import { toGroundReaction } from "../../src/force/index.js";
import type { Marker, Recording } from "../../src/recording/index.js";
import { codes } from "./checks.js";
import { at, place, recordingOf, step } from "./loads.js";
import { platformUnder } from "./statics.js";

describe("two platforms on the same corners (on 2026-11-25 nothing was said)", () => {
  const first = platformUnder(step(200, 325, place(0.1, 0)), at(0, 0), { name: "1" });
  const second = (forward: number) =>
    platformUnder(step(380, 505, place(forward + 0.1, 0)), at(forward, 0), { name: "2" });
  it("are said", () => {
    const ground = toGroundReaction(recordingOf([first, { ...second(0.7), corners: first.corners }]));
    const said = ground.cautions.filter(({ code }) => code === "plates-coincide");
    expect(said.map(({ where }) => where)).toEqual(["1, 2"]);
  });
  it("in whatever order the corners come", () => {
    const [a, b, c, d] = first.corners;
    const turned = { ...second(0.7), corners: [c, d, a, b] as const };
    expect(codes(toGroundReaction(recordingOf([first, turned])))).toContain("plates-coincide");
  });
  it("and not where one of them is left out, or lies 5 mm beside", () => {
    const same = recordingOf([first, { ...second(0.7), corners: first.corners }]);
    expect(codes(toGroundReaction(same, { only: ["2"] }))).not.toContain("plates-coincide");
    expect(codes(toGroundReaction(recordingOf([first, second(0.005)])))).not.toContain("plates-coincide");
  });
});

describe("how far the markers go", () => {
  const way = (name: string, forward: number, right: number, seen = 1): Marker => {
    const along = (metres: number) =>
      Float64Array.from({ length: 101 }, (_, i) => (i <= 100 * seen ? 2 + (metres * i) / 100 : Number.NaN));
    return { name, forward: along(forward), up: along(0), right: along(right) };
  };
  const travelOf = (markers: readonly Marker[]) => {
    const recording: Recording = {
      ...recordingOf([platformUnder(step(200, 325, place(0.1, 0)), at(0, 0), { name: "1" })]),
      markers: { sampleRate: 50, startTime: 0, markers },
    };
    return toGroundReaction(recording).markerTravel;
  };
  it("is the median of those that are seen for half of the time", () => {
    const markers = [way("a", 2, 0.1), way("b", 2.2, 0), way("c", 1.9, -0.1), way("lost", -50, 9, 0.2)];
    expect(travelOf(markers)).toEqual({
      forward: expect.closeTo(2, 9),
      right: expect.closeTo(0, 9),
      duration: expect.closeTo(2, 9),
    });
  });
  it("is not told below half a metre, nor of markers never seen", () => {
    expect(travelOf([way("a", 0.3, -0.3)])).toBeUndefined();
    expect(travelOf([way("a", 3, 0, -1)])).toBeUndefined();
    expect(travelOf([])).toBeUndefined();
  });
});
