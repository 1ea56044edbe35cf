import { beforeAll, describe, expect, it } from "vitest";
import type { Comparison } from "../../src/compare/index.js";
import { type GroundReaction, toGroundReaction } from "../../src/force/index.js";
import { readCsv, recordingToC3d, writeC3d, writeCsv } from "../../src/io/index.js";
import { airDrag } from "../../src/models/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import { type AnalyseTrialOptions, analyseTrial, type Trial } from "../../src/trial/index.js";
import { FEET, markedRun, PELVIS } from "../trial/markedRun.js";
import { command, emptyFolder, expectRefused, fileIn, WALK, WALK_AXES } from "./command.js";

const folder = emptyFolder();
const demo = demoRecordings();
const usual = fileIn(folder, "usual.csv", writeCsv(demo.usual));
const ahead = fileIn(folder, "ahead.csv", writeCsv(demo.furtherAhead));

/** The open treadmill run with its markers; of the pelvis only the way forward is used, and in the fixture. */
const marked = markedRun();
const { markers: markerSet } = marked;
const whole = (samples: Float64Array) => samples.map((value) => (Number.isNaN(value) ? 0 : value));
const run = fileIn(
  folder,
  "run.c3d",
  writeC3d(
    recordingToC3d({
      ...marked,
      ...(markerSet && {
        markers: {
          ...markerSet,
          markers: markerSet.markers.map((marker) => ({
            ...marker,
            up: whole(marker.up),
            right: whole(marker.right),
          })),
        },
      }),
    }),
  ),
);
const RUN_FEET = "left=L.Heel.Bottom:L.MT1,right=R.Heel.Bottom:R.MT1";

const analysed = async (...argv: readonly string[]): Promise<Trial> => {
  const { code, out, err } = await command("analyse", ...argv, "--json");
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return JSON.parse(out) as Trial;
};
const textOf = async (...argv: readonly string[]): Promise<string> => {
  const { code, out, err } = await command("analyse", ...argv);
  expect({ code, err }).toEqual({ code: 0, err: "" });
  expect(Math.max(...out.split("\n").map((line) => [...line].length))).toBeLessThanOrEqual(80);
  return out;
};

/** Contacts and means as the library gives them for the same file, to the twelve digits that are written. */
const expectLibrary = (trial: Trial, ground: GroundReaction, options: AnalyseTrialOptions): void => {
  const own = analyseTrial(ground, options);
  expect(trial.contacts).toHaveLength(own.contacts.length);
  trial.contacts.forEach(({ initialContact, toeOff }, k) => {
    expect(initialContact).toBeCloseTo(own.contacts[k]?.initialContact ?? Number.NaN, 9);
    expect(toeOff).toBeCloseTo(own.contacts[k]?.toeOff ?? Number.NaN, 9);
  });
  expect(Object.keys(trial.summary.metrics)).toEqual(Object.keys(own.summary.metrics));
  for (const [id, summary] of Object.entries(own.summary.metrics)) {
    const ratio = (trial.summary.metrics[id]?.mean ?? Number.NaN) / (summary?.mean ?? Number.NaN);
    expect(ratio, id).toBeCloseTo(1, 9);
  }
};

describe("each option does what the same option of the library does, and is said", () => {
  let ground: GroundReaction;
  beforeAll(() => {
    ground = toGroundReaction(readCsv(writeCsv(demo.usual)));
  });

  it.each(["5 %", "5%", "5,0 %", "0.05 BW"])("--threshold %j of 70 kg × 9.80665 m/s²", async (level) => {
    const trial = await analysed(usual, "--threshold", level);
    expect(trial.settings.events).toMatchObject({
      thresholdRule: "share of body weight",
      thresholdShare: 0.05,
    });
    expect(trial.settings.events.threshold).toBeCloseTo(0.05 * 70 * 9.80665, 9);
    expectLibrary(trial, ground, { events: { thresholdShare: 0.05 } });
  });

  it('--threshold "6 SD"', async () => {
    const trial = await analysed(usual, "--threshold", "6 SD");
    expect(trial.settings.events).toMatchObject({ thresholdRule: "noise in flight", noiseFactor: 6 });
    expect(trial.settings.events.threshold).toBeLessThan(20);
    expectLibrary(trial, ground, { events: { noiseFactor: 6 } });
  });

  it("says the level in newtons and what it follows from", async () => {
    expect(await textOf(usual, "--threshold", "5 %")).toMatch(
      /^Contact threshold {2}34\.32 N \(5 % of body weight\)/m,
    );
    expect(await textOf(usual, "--threshold", "6 SD")).toMatch(
      /^Contact threshold {2}[\d.]+ N \(6 SD above the mean force in flight\)/m,
    );
    expect(await textOf(usual, "--threshold", "30 N")).toMatch(/^Contact threshold {2}30 N, on/m);
  });

  it("--event-cutoff", async () => {
    const trial = await analysed(usual, "--event-cutoff", "30 Hz");
    expect(trial.settings.events.cutoff).toBe(30);
    expect(trial.settings.filter?.cutoff).toBe(50);
    expectLibrary(trial, ground, { events: { cutoff: 30 } });
    expect(await textOf(usual, "--event-cutoff", "30 Hz")).toMatch(/on the 30 Hz low-passed force/);
  });

  it("--gait, with a caution where the recording looks like another", async () => {
    expect((await analysed(usual)).settings).toMatchObject({ gait: "running", gaitStated: false });
    const stated = await analysed(usual, "--gait", "running");
    expect(stated.settings).toMatchObject({ gait: "running", gaitStated: true });
    const text = await textOf(usual, "--gait", "walking");
    expect(text).toMatch(/^Gait +walking, as stated$/m);
    expect(text).toMatch(/The gait is stated as walking, and the recording looks like running/);
    expect(text).toMatch(/cost of generating\n {2}force: they describe running; this trial is walking/);
    expect((await analysed(usual, "--gait", "auto")).settings.gaitStated).toBe(false);
  });

  it("--air-drag in newtons, with a wind from behind, and estimated", async () => {
    const still = await analysed(usual);
    for (const [drag, text] of [
      [3, "3 N"],
      [-3, "-3 N"],
    ] as const) {
      const trial = await analysed(usual, "--air-drag", text);
      expect(trial.settings.airDrag).toBe(drag);
      expectLibrary(trial, ground, { airDrag: drag });
      const more =
        (trial.summary.metrics.positiveWorkForward?.mean ?? Number.NaN) -
        (still.summary.metrics.positiveWorkForward?.mean ?? Number.NaN);
      expect(Math.sign(more)).toBe(Math.sign(drag));
    }
    expect(await textOf(usual, "--air-drag", "-3 N")).toMatch(/^Air drag +3 N forward, counted in/m);
    expect((await analysed(usual, "--air-drag", "estimated")).settings.airDrag).toBe(0);
    const outside = await analysed(usual, "--surface", "ground", "--air-drag", "estimated");
    expect(outside.settings.airDrag).toBeCloseTo(airDrag(3, { mass: 70, height: 1.75 }), 9);
  });

  it("the caution about drag that was left out names the option", async () => {
    expect(await textOf(usual, "--surface", "ground", "--speed", "5 m/s")).toMatch(
      /air drag is a real force[\s\S]*--air-drag\s+takes it in/,
    );
  });

  it("--metrics, in the catalogue's order", async () => {
    const trial = await analysed(usual, "--metrics", "brakingImpulse, contactTime");
    expect(Object.keys(trial.summary.metrics)).toEqual(["contactTime", "brakingImpulse"]);
    expect(trial.notComputed).toEqual([]);
    const none = await textOf(usual, "--metrics", "firstVerticalPeak");
    expect(none).not.toMatch(/mean ± SD/);
    expect(none).toMatch(/First vertical peak: it describes walking; this trial is running/);
  });
});

describe("markers: an open treadmill run (named in markedRun.ts) and the open walking trial", () => {
  const pelvis = PELVIS.join(",");

  it("--centre-of-mass and --feet are the library's", async () => {
    const trial = await analysed(run, "--centre-of-mass", pelvis, "--feet", RUN_FEET);
    expect(trial.settings.force.markers).toEqual({
      sampleRate: 150,
      centreOfMass: PELVIS,
      feet: {
        left: { heel: ["L.Heel.Bottom"], toe: ["L.MT1"] },
        right: { heel: ["R.Heel.Bottom"], toe: ["R.MT1"] },
      },
    });
    expect(trial.settings.landing?.method).toBe("measured");
    expect(trial.settings.events.sides).toBe("markers");
    const own = analyseTrial(toGroundReaction(marked, { centreOfMassMarkers: PELVIS, feet: FEET }));
    for (const id of ["touchdownDistance", "takeOffDistance", "strikeIndex"]) {
      // C3D keeps 32 bits, and samples at rates that divide: 1e-5 m is far below what markers tell.
      const mean = trial.summary.metrics[id]?.mean ?? Number.NaN;
      expect(Math.abs(mean - (own.summary.metrics[id]?.mean ?? Number.NaN)), id).toBeLessThan(1e-5);
    }
    const text = await textOf(run, "--centre-of-mass", pelvis, "--feet", RUN_FEET);
    expect(text).toMatch(/to the centre of mass by markers \(mean of R\.ASIS, L\.ASIS,\s+R\.PSIS, L\.PSIS\)/);
    expect(text).toMatch(/^Sides +told by the markers on the feet$/m);
    expect(text).toMatch(/^Foot markers +left heel L\.Heel\.Bottom, toe L\.MT1; right heel/m);
  });

  it("a plus takes the mean of several", async () => {
    const trial = await analysed(run, "--feet", "right=R.Heel.Bottom:R.MT1+L.MT1");
    expect(trial.settings.force.markers?.feet).toEqual({
      right: { heel: ["R.Heel.Bottom"], toe: ["R.MT1", "L.MT1"] },
    });
  });

  it("a window has the same feet as the whole, though its offset is from outside", async () => {
    const one = ["--feet", "right=RFT3:RFT1"];
    const all = await analysed(WALK, ...WALK_AXES, ...one);
    const part = await analysed(WALK, ...WALK_AXES, ...one, "--from", "1 s", "--to", "8.8 s");
    expect(part.settings.force.offset.up).toBeCloseTo(all.settings.force.offset.up ?? Number.NaN, 9);
    expect(all.steps).toHaveLength(2);
    all.steps.forEach(({ values, initialContact }, k) => {
      expect((part.steps[k]?.initialContact ?? 0) + 1).toBeCloseTo(initialContact, 4);
      const index = part.steps[k]?.values.strikeIndex ?? Number.NaN;
      expect(Math.abs(index - (values.strikeIndex ?? Number.NaN))).toBeLessThan(1e-4);
    });
  });

  it("a marker that is hidden, or that there is not", async () => {
    const at = (...options: readonly string[]) => command("analyse", WALK, ...WALK_AXES, ...options);
    expectRefused(
      await at("--centre-of-mass", "PV1"),
      1,
      WALK,
      /"PV1" was not seen in 19 frames/,
      /--from and --to/,
    );
    expectRefused(await at("--centre-of-mass", "PV9"), 1, WALK, /--centre-of-mass names "PV9"/, /RFT1, RFT2/);
    expectRefused(await at("--feet", "right=RFT3:RFT"), 1, WALK, /--feet names "RFT" as right toe/);
    expectRefused(
      await at("--feet", "right=A:RFT3:A:RFT1"),
      1,
      WALK,
      /--feet names "A:RFT3" as right heel; the markers/,
    );
  });
});

describe("compare takes them for both recordings", () => {
  it("one threshold from a share of body weight, and the metrics chosen", async () => {
    const options = ["--threshold", "5 %", "--metrics", "brakingImpulse,peakVerticalForce", "--json"];
    const { code, out } = await command("compare", usual, ahead, ...options);
    expect(code).toBe(0);
    const comparison = JSON.parse(out) as Comparison;
    expect(comparison.settings.threshold).toBeCloseTo(0.05 * 70 * 9.80665, 9);
    expect(comparison.metrics.map(({ id }) => id)).toEqual(["peakVerticalForce", "brakingImpulse"]);
    expect(comparison.overall).toMatchObject({ lower: ["vertical"], higher: ["anteroposterior"] });
  });

  it("gait, event cutoff and drag", async () => {
    const options = ["--gait", "running", "--event-cutoff", "40 Hz", "--air-drag", "2 N", "--json"];
    const { code, out } = await command("compare", usual, ahead, ...options);
    expect(code).toBe(0);
    const still = await command("compare", usual, ahead, "--event-cutoff", "40 Hz", "--json");
    const work = (text: string) =>
      (JSON.parse(text) as Comparison).metrics.find(({ id }) => id === "positiveWorkForward")?.baseline.mean;
    expect(work(out)).toBeGreaterThan(work(still.out) ?? Number.NaN);
  });

  it("feet may be marked in one of them; a centre of mass is for both or none", async () => {
    expect((await command("compare", run, usual, "--feet", RUN_FEET)).code).toBe(0);
    const mixed = await command("compare", run, usual, "--centre-of-mass", PELVIS.join(","));
    expectRefused(mixed, 1, usual, /--centre-of-mass is for recordings with markers, and this one has none/);
  });
});

describe("bad values: exit 2, the option named, no file blamed", () => {
  it.each<[string, readonly string[], RegExp]>([
    ["--gait", ["run", "", "Walking", "running,walking", "3"], /auto or running or walking or jumping/],
    ["--threshold", ["120 %", "100 %", "0 %", "-5 %", "1 BW"], /between 0 and 100 % of body weight/],
    ["--threshold", ["0 SD", "-5 SD", "0 N", "-20 N", "0,0 SD"], /above zero/],
    [
      "--threshold",
      ["5", "5 % SD", "abc", "5 kg", "5 %, 6 %"],
      /"5 %", a level by the noise in flight "6 SD"/,
    ],
    ["--event-cutoff", ["50", "none", "0 Hz", "-3 Hz", "5 N"], /"50 Hz"/],
    ["--air-drag", ["estimate", "", "none", "auto", "N"], /"3 N", or estimated/],
    ["--air-drag", ["3", "300 N", "-101 N", "3 kg", "1 lbs/ft"], / N\b/],
    [
      "--metrics",
      ["", ",", "contacttime", "contactTime;cadence", "Contact time"],
      /the metrics are contactTime/,
    ],
    ["--metrics", ["cadence,cadence"], /"cadence" stands twice/],
    ["--centre-of-mass", ["", ",", " , ,"], /at least one marker/],
    ["--centre-of-mass", ["A,A", "A,B,A"], /"A" stands twice/],
    ["--feet", ["", "left", "A:B", "left=", "left:A=,"], /NAME=VALUE/],
    ["--feet", ["left=A", "left=A:", "right=:B", "left=A:B:C", "left=+:B"], /HEEL:TOE/],
    ["--feet", ["links=A:B", "Left=A:B"], /is no foot; it must be left or right/],
    ["--feet", ["left=A:B,left=C:D", "left=A+A:B", "left=A:B+B"], /stands twice/],
  ])("%s %j", async (option, values, words) => {
    for (const value of values) {
      for (const argv of [
        ["analyse", usual],
        ["compare", usual, ahead],
      ]) {
        const outcome = await command(...argv, option, value);
        expectRefused(outcome, 2, option, words);
        expect(outcome.err).not.toContain("usual.csv");
      }
    }
  });

  it("none of them is an option of the commands that do not analyse", async () => {
    for (const option of ["--gait", "--threshold", "--air-drag", "--metrics", "--feet", "--centre-of-mass"]) {
      expectRefused(await command("describe", usual, option, "1"), 2, /unknown option/);
      expectRefused(await command("convert", usual, "out.csv", option, "1"), 2, /unknown option/);
    }
  });
});

describe("what this recording does not allow: exit 1", () => {
  it.each<[readonly string[], readonly RegExp[]]>([
    [["--feet", "left=A:B"], [/--feet is for recordings with markers, and this one has none/]],
    [["--centre-of-mass", "A"], [/--centre-of-mass is for recordings with markers/]],
    [
      ["--event-cutoff", "500 Hz"],
      [/--event-cutoff is 500 Hz/, /1000 Hz it must be below 500 Hz/],
    ],
    [["--cutoff", "600 Hz"], [/--cutoff is 600 Hz/]],
    [["--air-drag", "3 N", "--metrics", "cadence"], [/--air-drag is for .*, and none of them is computed;/]],
  ])("%j", async (options, words) => {
    expectRefused(await command("analyse", usual, ...options), 1, usual, ...words);
    expectRefused(await command("compare", usual, usual, ...options), 1, ...words);
  });

  it("an option that moves no number of a walk without a whole stride", async () => {
    const at = (...options: readonly string[]) => command("analyse", WALK, ...WALK_AXES, ...options);
    expectRefused(await at("--air-drag", "3 N"), 1, WALK, /--air-drag is for/, /no speed above 0 is stated/);
    expectRefused(
      await at("--air-drag", "estimated"),
      1,
      WALK,
      /--air-drag is to be estimated, and speed is/,
    );
    expectRefused(
      await at("--centre-of-mass", "PV1,PV3", "--from", "1 s", "--to", "6 s"),
      1,
      /--centre-of-mass is for touchdown distance and take-off distance/,
      /no whole stride/,
    );
    expectRefused(
      await at("--feet", "right=RFT3:RFT1", "--metrics", "contactTime"),
      1,
      /--feet is for strike index, and that is not computed; leave the option out/,
    );
  });

  it("a share of a body weight, or a level by a noise, that is not known", async () => {
    const bare = fileIn(
      folder,
      "bare.csv",
      ["time [s],up [N]", ...Array.from({ length: 400 }, (_, i) => `${i / 200},${500 + (i % 2)}`)].join("\n"),
    );
    expectRefused(
      await command("analyse", bare, "--threshold", "5 %"),
      1,
      bare,
      /--threshold as "5 %"/,
      /--mass/,
    );
    expectRefused(
      await command("analyse", bare, "--threshold", "6 SD"),
      1,
      bare,
      /--threshold as "6 SD"/,
      /no flight phase was found: state it in newtons, such as "20 N"/,
    );
  });
});

describe("the walking trial in C3D as a practitioner reads it", () => {
  it("says walking, both peaks and the trough, in order of components, and why the rest is missing", async () => {
    const text = await textOf(WALK, ...WALK_AXES);
    expect(text).toMatch(/^Gait +walking, told from the force$/m);
    expect(text).toMatch(/^Sides +told by the events in the file$/m);
    const order = [
      "Vertical",
      "First vertical peak",
      "Midstance trough",
      "Second vertical peak",
      "Anteroposterior",
      "Mediolateral",
      "Resultant and torsion",
      "Timing",
      "Not computed",
      "Cautions",
    ].map((words) => text.search(new RegExp(`^ *${words}(?: {2}|$)`, "m")));
    expect(order).not.toContain(-1);
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(text).toMatch(/elastic energy\n? *\(upper bound\)/);
    expect(text).toMatch(/they describe running; this trial is walking/);
    for (const id of ["double support time", "single support time", "stance share", "energy recovery"]) {
      expect(text.toLowerCase().replace(/\s+/g, " ")).toContain(id);
    }
  });
});
