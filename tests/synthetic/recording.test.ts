import { describe, expect, it } from "vitest";
import { checkRecording } from "../../src/recording/index.js";
import { forceAt, syntheticRun, type TrueContact } from "../../src/synthetic/index.js";
import { column, LIVELY } from "./helpers.js";

const NAMES = ["forward", "up", "right", "cop_forward", "cop_right", "free_moment"];

/** Samples of every column as bytes, NaN included. */
function bytes(run: ReturnType<typeof syntheticRun>): Uint8Array[] {
  return NAMES.map((name) => new Uint8Array(column(run.recording, name).buffer));
}

const sdOf = (values: ArrayLike<number>) => {
  const array = Array.from(values);
  const mean = array.reduce((sum, value) => sum + value, 0) / array.length;
  return Math.sqrt(array.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (array.length - 1));
};

describe("the recording", () => {
  const run = syntheticRun({ variability: LIVELY, seed: 3 });
  const { recording, truth } = run;

  it("is a valid recording in the library's frame, with runner, speed, surface and first foot", () => {
    expect(checkRecording(recording)).toBe(recording);
    expect(recording.channels.map(({ name, unit }) => `${name} [${unit}]`)).toEqual([
      "forward [N]",
      "up [N]",
      "right [N]",
      "cop_forward [m]",
      "cop_right [m]",
      "free_moment [N m]",
    ]);
    expect(recording).toMatchObject({
      sampleRate: 1000,
      subject: { mass: 70, height: 1.75 },
      speed: 3,
      surface: "belt",
      firstFoot: "right",
    });
  });

  it("holds the true force at every sample, zero in flight", () => {
    const up = column(recording, "up");
    const forward = column(recording, "forward");
    const right = column(recording, "right");
    for (let i = 0; i < up.length; i++) {
      const time = i / 1000;
      const contact = truth.contacts.find(
        ({ initialContact, toeOff }) => initialContact <= time && time <= toeOff,
      );
      const force = contact === undefined ? { forward: 0, up: 0, right: 0 } : forceAt(contact, time);
      expect([forward[i], up[i], right[i]]).toEqual([force.forward, force.up, force.right]);
    }
  });

  it("has no centre of pressure exactly where the true vertical force is below 20 N (common practice)", () => {
    const up = column(recording, "up");
    for (const name of ["cop_forward", "cop_right"]) {
      column(recording, name).forEach((value, i) => {
        expect(Number.isNaN(value)).toBe((up[i] as number) < 20);
      });
    }
  });

  it("on a belt the centre of pressure is that on the ground carried back at the speed; the foot lands in one place", () => {
    const ground = syntheticRun({ variability: LIVELY, seed: 3, surface: "ground" });
    const [onBelt, onGround] = [recording, ground.recording].map((r) => column(r, "cop_forward"));
    let seen = 0;
    onGround?.forEach((value, i) => {
      if (Number.isNaN(value)) return;
      seen++;
      expect(onBelt?.[i]).toBeCloseTo(value - 3 * (i / 1000 - 0.15), 12);
    });
    expect(seen).toBeGreaterThan(4000);
    for (const { foot, initialContact } of truth.contacts) {
      expect(Math.abs(foot.forward - 3 * (initialContact - 0.15) - 0.25)).toBeLessThan(0.05);
    }
  });

  it("lands left feet left of right ones, each about its width from the runner's line", () => {
    const steady = syntheticRun({ contacts: 4 }).truth.contacts.map(({ foot }) => foot.right);
    [0.03, -0.03, 0.03, -0.03].forEach((place, i) => {
      expect(steady[i]).toBeCloseTo(place, 12);
    });
  });

  it("turns the toes inwards with a free moment of 0.0059 W × height (Milner et al. 2006, in doi:10.1186/1758-2555-1-19)", () => {
    const { truth: even, recording: samples } = syntheticRun({ contacts: 2, firstFoot: "left" });
    const moment = column(samples, "free_moment");
    expect(even.contacts[0]?.values.peakFreeMoment).toBeCloseTo(0.0059 * 70 * 9.80665 * 1.75, 10);
    expect(Math.min(...moment.subarray(150, 405))).toBeCloseTo(-7.088, 2);
    expect(Math.max(...moment.subarray(486, 741))).toBeCloseTo(7.088, 2);
  });

  it("stays or goes to the place that is asked for", () => {
    const moved = syntheticRun({ variability: LIVELY, seed: 3, place: { forward: 0.4, right: -0.2 } });
    const shift = (name: string, by: number) =>
      column(moved.recording, name).forEach((value, i) => {
        const here = column(recording, name)[i] as number;
        if (!Number.isNaN(here)) expect(value).toBeCloseTo(here + by, 12);
      });
    shift("cop_forward", 0.4);
    shift("cop_right", -0.2);
    expect(moved.truth.contacts[0]?.foot.forward).toBeCloseTo(
      (truth.contacts[0]?.foot.forward ?? 0) + 0.4,
      12,
    );
  });
});

describe("length", () => {
  it("holds the contacts asked for and ends a tail behind the last step", () => {
    const { recording, truth } = syntheticRun({ contacts: 5, firstContact: 0.2, tail: 0.1 });
    expect(truth.contacts.length).toBe(5);
    expect(truth.partialContacts).toEqual([]);
    expect(column(recording, "up").length).toBe(Math.round((0.2 + 5 * 0.336 + 0.1) * 1000));
  });

  it("or lasts as long as asked, with the contacts that its ends cut told apart", () => {
    const { recording, truth } = syntheticRun({ duration: 3, firstContact: -0.1, firstFoot: "left" });
    expect(column(recording, "up").length).toBe(3000);
    expect(column(recording, "up")[0]).toBeGreaterThan(1000);
    expect(truth.partialContacts.map(({ initialContact }) => initialContact)).toEqual([
      -0.1,
      expect.closeTo(2.924, 10),
    ]);
    expect(truth.contacts.length).toBe(8);
    expect(recording.firstFoot).toBe("right");
    expect(truth.contacts[0]?.side).toBe("right");
  });
});

describe("sides", () => {
  it("mirror law: starting with the other foot mirrors everything to the right and leaves the rest", () => {
    const even = { contacts: 6, variability: LIVELY, noise: {}, seed: 9 } as const;
    const [a, b] = (["right", "left"] as const).map(
      (firstFoot) => syntheticRun({ ...even, firstFoot }).recording,
    );
    for (const name of NAMES) {
      const sign = ["right", "cop_right", "free_moment"].includes(name) ? -1 : 1;
      const mirrored = column(b as NonNullable<typeof b>, name);
      column(a as NonNullable<typeof a>, name).forEach((value, i) => {
        const other = mirrored[i] as number;
        if (Number.isNaN(value)) expect(other).toBeNaN();
        else expect(other - sign * value).toBeCloseTo(0, 9);
      });
    }
  });

  it("scaling law: twice the mass doubles every force and leaves times and places", () => {
    const [one, two] = [70, 140].map((mass) => syntheticRun({ mass, variability: LIVELY, seed: 4 }));
    const first = one?.truth.contacts[7] as TrueContact;
    const second = two?.truth.contacts[7] as TrueContact;
    expect(second.values.peakVerticalForce / first.values.peakVerticalForce).toBeCloseTo(2, 10);
    expect(second.values.brakingImpulse / first.values.brakingImpulse).toBeCloseTo(2, 10);
    expect(second.values.mediolateralImpulse / first.values.mediolateralImpulse).toBeCloseTo(2, 10);
    expect(second.values.touchdownDistance).toBeCloseTo(first.values.touchdownDistance, 10);
    expect(second.values.stepTime).toBe(first.values.stepTime);
  });

  it("gives each foot its own quantities", () => {
    const { truth } = syntheticRun({
      contacts: 4,
      left: { brakingAmplitude: 0.3 },
      right: { copRoll: 0.15 },
    });
    expect(truth.contacts.map(({ side }) => side)).toEqual(["right", "left", "right", "left"]);
    expect(truth.contacts.map(({ values }) => (values.peakBrakingForce / 686.4655).toFixed(3))).toEqual([
      "0.250",
      "0.300",
      "0.250",
      "0.300",
    ]);
    expect(truth.contacts.map(({ stance }) => stance.copRoll)).toEqual([0.15, 0.19, 0.15, 0.19]);
  });
});

describe("variability", () => {
  const { truth } = syntheticRun({ contacts: 4000, variability: LIVELY, correlation: 0.5, seed: 21 });

  it.each([
    ["contactTime", 0.255, 0.015],
    ["stepTime", 0.336, 0.01],
    ["peakBrakingForce", 0.25 * 686.4655, 0.06],
    ["peakLateralForce", 0.05 * 686.4655, 0.15],
  ] as const)(
    "%s has the mean, relative SD and lag-1 correlation asked for, foot by foot",
    (id, mean, sd) => {
      for (const side of ["left", "right"]) {
        const values = truth.contacts
          .filter((contact) => contact.side === side)
          .map(({ values: v }) => v[id]);
        const average = values.reduce((sum, value) => sum + value, 0) / values.length;
        const spread = sdOf(values);
        // Four standard errors of an AR(1) 0.5 series of 2000: mean 0.155 SD, SD 8 %, correlation 0.078.
        expect(Math.abs(average / mean - 1)).toBeLessThan(0.155 * sd);
        expect(Math.abs(spread / (sd * mean) - 1)).toBeLessThan(0.08);
        let lag = 0;
        for (let i = 1; i < values.length; i++)
          lag += ((values[i] as number) - average) * ((values[i - 1] as number) - average);
        expect(Math.abs(lag / ((values.length - 1) * spread * spread) - 0.5)).toBeLessThan(0.078);
      }
    },
  );

  it("the SD of one quantity does not move the numbers of another", () => {
    const [some, all] = [{ contactTime: 0.015 }, LIVELY].map((variability) =>
      syntheticRun({ contacts: 10, variability, seed: 2 }).truth.contacts.map(
        ({ values }) => values.contactTime,
      ),
    );
    expect(some).toEqual(all);
  });
});

describe("the measuring", () => {
  const quiet = syntheticRun({ contacts: 60, variability: LIVELY, seed: 6 });
  const noisy = syntheticRun({
    contacts: 60,
    variability: LIVELY,
    seed: 6,
    noise: { force: 2, cop: 0.001, freeMoment: 0.3 },
  });
  const error = (name: string) =>
    column(noisy.recording, name).map((value, i) => value - (column(quiet.recording, name)[i] as number));

  it("adds white noise of the stated SD and leaves the truth alone", () => {
    expect(noisy.truth).toEqual(quiet.truth);
    for (const name of ["forward", "up", "right"])
      expect(Math.abs(sdOf(error(name)) / 2 - 1)).toBeLessThan(0.02);
    expect(Math.abs(sdOf(error("free_moment")) / 0.3 - 1)).toBeLessThan(0.02);
    const up = column(quiet.recording, "up");
    const scaled = error("cop_forward").map((value, i) => (value * (up[i] as number)) / 686.4655);
    expect(Math.abs(sdOf(scaled.filter((value) => !Number.isNaN(value))) / 0.001 - 1)).toBeLessThan(0.03);
  });

  it("adds offset and linear drift to the channels named", () => {
    const run = syntheticRun({
      contacts: 60,
      variability: LIVELY,
      seed: 6,
      offset: { up: 12, cop_right: 0.01 },
      drift: { up: -40, right: 6 },
    });
    const added = (name: string) =>
      column(run.recording, name).map((value, i) => value - (column(quiet.recording, name)[i] as number));
    const last = column(run.recording, "up").length - 1;
    expect(added("up")[0]).toBeCloseTo(12, 9);
    expect(added("up")[last]).toBeCloseTo(-28, 9);
    expect(added("up")[Math.floor(last / 2)]).toBeCloseTo(-8, 1);
    expect(added("right")[last]).toBeCloseTo(6, 9);
    expect(Math.max(...added("forward").map(Math.abs))).toBe(0);
    expect(added("cop_right").find((value) => !Number.isNaN(value))).toBeCloseTo(0.01, 12);
    expect(run.truth).toEqual(quiet.truth);
  });

  it("rounds as a converter does", () => {
    const { recording } = syntheticRun({ contacts: 2, noise: { force: 2 }, decimals: {}, seed: 8 });
    const worst = (name: string, scale: number) =>
      Math.max(
        ...column(recording, name)
          .filter((value) => !Number.isNaN(value))
          .map((value) => Math.abs(value * scale - Math.round(value * scale))),
      );
    expect(worst("up", 10)).toBeLessThan(1e-9);
    expect(worst("cop_forward", 1e4)).toBeLessThan(1e-9);
    expect(worst("free_moment", 100)).toBeLessThan(1e-9);
    expect(column(recording, "up").some((value) => value !== Math.round(value))).toBe(true);
  });
});

describe("randomness", () => {
  const options = {
    contacts: 8,
    variability: LIVELY,
    noise: { force: 2, cop: 0.001, freeMoment: 0.2 },
  } as const;

  it("same options and seed: same bytes; another seed: others", () => {
    expect(bytes(syntheticRun({ ...options, seed: 1 }))).toEqual(
      bytes(syntheticRun({ ...options, seed: 1 })),
    );
    expect(bytes(syntheticRun({ ...options, seed: 1 }))).not.toEqual(
      bytes(syntheticRun({ ...options, seed: 2 })),
    );
  });

  it("the truth survives JSON", () => {
    const { truth } = syntheticRun(options);
    expect(JSON.parse(JSON.stringify(truth))).toEqual(truth);
  });
});
