import { describe, expect, it } from "vitest";
import {
  lowPassGroundReaction,
  type ToGroundReactionOptions,
  toGroundReaction,
} from "../../src/force/index.js";
import type { Marker, Recording } from "../../src/recording/index.js";
import { centreOfMassAt, syntheticRun } from "../../src/synthetic/index.js";
import { analyseTrial } from "../../src/trial/index.js";

const run = syntheticRun({ contacts: 12, surface: "ground", seed: 4 });
const { recording, truth } = run;
const duration = (recording.channels[0]?.samples.length ?? 0) / recording.sampleRate;
const frames = Math.ceil(duration * 200);
const marker = (name: string, forward: (time: number) => number, startTime = 0): Marker => ({
  name,
  forward: Float64Array.from({ length: frames }, (_, k) => forward(startTime + k / 200)),
  up: new Float64Array(frames),
  right: new Float64Array(frames).fill(0.1),
});
const withMarkers = (markers: readonly Marker[], startTime = 0): Recording => ({
  ...recording,
  markers: { sampleRate: 200, startTime, markers },
});
const turn = (time: number) => 3 * time + 0.02 * Math.sin(2 * Math.PI * 3 * time);
const two = [marker("front", (time) => turn(time) + 0.1), marker("back", (time) => turn(time) - 0.1)];
const mass = (markers: Recording, centreOfMassMarkers: ToGroundReactionOptions["centreOfMassMarkers"]) =>
  toGroundReaction(markers, { centreOfMassMarkers }).centreOfMass?.forward as Float64Array;

describe("places of markers at the samples of the force", () => {
  it("the mean of those named, between frames within 0.05 mm of a sine of 20 mm at 3 Hz and 200 Hz", () => {
    const forward = mass(withMarkers(two), ["front", "back"]);
    const off = forward.map((place, i) => Math.abs(place - turn(i / 1000)));
    expect(forward.length).toBe(recording.channels[0]?.samples.length);
    // The last frame lies up to 4 ms before the last sample: a line from there.
    expect(Math.max(...off.slice(0, -5))).toBeLessThan(0.000_05);
    expect(Math.max(...off)).toBeLessThan(0.000_2);
  });
  it("on clocks that differ: markers that began 3 ms after the force", () => {
    const late = [marker("front", turn, 0.003)];
    const forward = mass(withMarkers(late, 0.003), "front");
    expect(Math.abs((forward[1000] as number) - turn(1))).toBeLessThan(0.000_05);
    expect(Math.abs((forward[0] as number) - turn(0))).toBeLessThan(0.001);
  });
  it("feet carry heel and toe with their heights, and a filter leaves places as they are", () => {
    const feet = { right: { heel: "back", toe: ["front"] } };
    const ground = lowPassGroundReaction(toGroundReaction(withMarkers(two), { feet }), { cutoff: 50 });
    expect(ground.feet?.left).toBeUndefined();
    expect(ground.feet?.right?.toe.forward[500]).toBeCloseTo(turn(0.5) + 0.1, 4);
    expect(ground.feet?.right?.heel.up?.[500]).toBe(0);
    expect(ground.settings.markers).toEqual({
      sampleRate: 200,
      feet: { right: { heel: ["back"], toe: ["front"] } },
    });
  });
});

describe("a centre of mass that is known (synthetic truth)", () => {
  it("gives the touchdown distance of the truth within 2 mm a contact on ground", () => {
    const [first] = truth.contacts as [(typeof truth.contacts)[number]];
    const place = (time: number) => {
      const contact = truth.contacts.filter(({ initialContact }) => initialContact <= time).at(-1) ?? first;
      const since = Math.min(Math.max(0, time - contact.initialContact), contact.stance.stepTime);
      const { position, velocity } = centreOfMassAt(contact, contact.initialContact + since);
      return position.forward + velocity.forward * (time - contact.initialContact - since);
    };
    const trial = analyseTrial(
      toGroundReaction(withMarkers([marker("pelvis", place)]), { centreOfMassMarkers: ["pelvis"] }),
    );
    expect(trial.settings.landing).toMatchObject({
      method: "measured",
      margin: { touchdown: 0.02, takeOff: 0.04 },
    });
    const off = trial.steps.flatMap(({ values }, k) => {
      const known = truth.contacts[k];
      if (values.touchdownDistance == null || known === undefined) return [];
      return [values.touchdownDistance - (known.foot.forward - known.motion.position.forward)];
    });
    expect(off.length).toBeGreaterThan(9);
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(0.002);
  });
});

describe("refuses", () => {
  const gap = two.map((each) => ({ ...each, forward: each.forward.slice() }));
  (gap[1] as Marker).forward.fill(Number.NaN, 40, 43);
  const cut = ({ name, forward, up, right }: Marker, to: number): Marker => ({
    name,
    forward: forward.slice(0, to),
    up: up.slice(0, to),
    right: right.slice(0, to),
  });
  it.each([
    [
      "a marker out of sight, by its name",
      withMarkers(gap),
      ["front", "back"],
      "gap",
      /"back" was not seen in 3 frames/,
    ],
    ["a name that no marker has", withMarkers(two), ["pelvis"], "missing-channel", /markers are front, back/],
    ["no markers at all", recording, ["front"], "missing-channel", /holds none/],
    ["no name", withMarkers(two), [], "wrong-type", /at least one/],
    [
      "markers that end before the force",
      withMarkers(two.map((each) => cut(each, 400))),
      ["front"],
      "gap",
      /recorded from 0\.000 s to 1\.995 s/,
    ],
    ["markers that begin after it", withMarkers(two, 0.5), ["front"], "gap", /cut the force/],
  ] as const)("%s", (_, source, names, code, message) => {
    const run = () => toGroundReaction(source, { centreOfMassMarkers: names as never });
    expect(run).toThrow(expect.objectContaining({ code }));
    expect(run).toThrow(message);
  });
  it.each([
    [{ middle: { heel: "front", toe: "back" } }, "wrong-type"],
    [{ left: null }, "wrong-type"],
    [{ left: { heel: "front" } }, "wrong-type"],
  ])("feet %o", (feet, code) =>
    expect(() => toGroundReaction(withMarkers(two), { feet: feet as never })).toThrow(
      expect.objectContaining({ code }),
    ),
  );
  it("a gap where no force was recorded is no matter", () => {
    const longer = two.map((each) => ({
      ...each,
      forward: Float64Array.from({ length: frames + 50 }, (_, k) =>
        k <= frames ? turn(k / 200) : Number.NaN,
      ),
      up: new Float64Array(frames + 50),
      right: new Float64Array(frames + 50),
    }));
    expect(mass(withMarkers(longer), "front").length).toBeGreaterThan(0);
  });
});
