import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Comparison } from "../../src/compare/index.js";
import { readCsv, writeCsv } from "../../src/io/index.js";
import { CATALOGUE } from "../../src/metrics/index.js";
import { HEALTH_CAUTIONS } from "../../src/report/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import type { Trial } from "../../src/trial/index.js";
import { command, emptyFolder, fileIn, TREADMILL_OPTIONS, TREADMILL_RUN } from "./command.js";

const folder = emptyFolder();
const demo = demoRecordings();
const usual = fileIn(folder, "usual.csv", writeCsv(demo.usual));
const ahead = fileIn(folder, "further-ahead.csv", writeCsv(demo.furtherAhead));
const run = [TREADMILL_RUN, ...TREADMILL_OPTIONS] as const;

const parsed = async <T>(...argv: readonly string[]): Promise<T> => {
  const { code, out, err } = await command(...argv);
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return JSON.parse(out) as T;
};

describe("analyse", () => {
  it("prints the table of the open treadmill run, 80 columns wide, and nothing on standard error", async () => {
    const { code, out, err } = await command("analyse", ...run);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(/Analysed +74 contacts, 37 strides in 30 s at 300 Hz/);
    // Check value of the recording with the flight offset taken out: 1658.2 N.
    expect(out).toMatch(/^ {2}Peak vertical force +1658 ± \d+ N/m);
    expect(out.replace(/\s+/g, " ")).toContain("3.8 % less than the stated 80.0 kg");
    expect(Math.max(...out.split("\n").map((line) => [...line].length))).toBeLessThanOrEqual(80);
  });

  it("prints the same numbers as JSON, and what was stated in the settings", async () => {
    const trial = await parsed<Trial>("analyse", ...run, "--json", "--height", "1.83 m", "--grade", "0");
    expect(trial.schema).toBe("gait-kinetics/trial/1");
    expect(trial.settings).toMatchObject({
      mass: 80,
      massStated: true,
      speed: 2.5,
      surface: "belt",
      grade: 0,
      sampleRate: 300,
    });
    expect(trial.subject.height).toBe(1.83);
    expect(trial.summary.metrics.peakVerticalForce?.mean).toBeCloseTo(1658.2, 0);
    expect(trial.contacts).toHaveLength(74);
  });

  it("prints a row a contact as CSV", async () => {
    const { out } = await command("analyse", ...run, "--csv");
    const lines = out.trim().split("\n");
    expect(lines).toHaveLength(75);
    expect(lines[0]).toContain("peakVerticalForce");
  });

  it("takes cutoff, order, threshold and drift from the command line", async () => {
    const { settings } = await parsed<Trial>(
      "analyse",
      ...run,
      "--json",
      "--cutoff",
      "0.03 kHz",
      "--order",
      "8",
      "--threshold",
      "50 N",
      "--drift",
      "always",
    );
    expect(settings.filter).toEqual({ cutoff: 30, order: 8 });
    expect(settings.events.threshold).toBe(50);
    expect(settings.force.driftRemoved).toBe(true);
    const unfiltered = await parsed<Trial>(
      "analyse",
      ...run,
      "--json",
      "--cutoff",
      "none",
      "--threshold",
      "100 N",
    );
    expect(unfiltered.settings.filter).toBeNull();
    // Check value of the recording, unfiltered: 1671.3 N less the offset of about 1.1 N.
    expect(unfiltered.summary.metrics.peakVerticalForce?.mean).toBeCloseTo(1670.2, 0);
  });

  it("analyses a window", async () => {
    const half = await parsed<Trial>("analyse", ...run, "--json", "--from", "15 s", "--first-foot", "right");
    expect(half.settings.duration).toBe(15);
    expect(half.contacts[0]?.side).toBe("right");
    const whole = await parsed<Trial>("analyse", ...run, "--json");
    const inside = whole.contacts.filter(({ initialContact }) => initialContact > 15);
    const peaks = (trial: Trial) => trial.steps.slice(-5).map(({ values }) => values.peakVerticalForce);
    expect(half.contacts).toHaveLength(inside.length);
    // The two differ by the offset, which comes from other flights, alone.
    peaks(half).forEach((peak, i) => {
      expect(Math.abs((peak ?? 0) - (peaks(whole)[i] ?? 0))).toBeLessThan(1);
    });
  });

  it("says what cannot be computed from the vertical force alone", async () => {
    const vertical = run.map((word) => (word === "Time" ? "Time,Fx,Fz,COPx,COPy,COPz,Ty" : word));
    const { out } = await command("analyse", ...vertical);
    expect(out).toMatch(
      /Braking time, propulsive time, .*braking impulse.*: the\s+forward force was not recorded/s,
    );
    expect(out).toMatch(/the\s+mediolateral\s+force\s+was\s+not\s+recorded/);
    expect(out).not.toMatch(/^ {2}Braking impulse/m);
  });

  it("reads a file in UTF-16 as in UTF-8", async () => {
    const text = readFileSync(usual, "utf8");
    const wide = fileIn(folder, "wide.csv", Buffer.from(`\ufeff${text}`, "utf16le"));
    expect((await command("analyse", wide, "--json")).out).toBe(
      (await command("analyse", usual, "--json")).out,
    );
  });

  it("reads other columns, another decimal sign and forces on the ground", async () => {
    const own = readFileSync(usual, "utf8").replace("up [N]", "Vertical GRF [N]");
    const named = await parsed<Trial>(
      "analyse",
      fileIn(folder, "named.csv", own),
      "--json",
      "--columns",
      "Vertical GRF=up",
    );
    const plain = await parsed<Trial>("analyse", usual, "--json");
    expect(named.summary).toEqual(plain.summary);
  });
});

describe("compare", () => {
  it("says first that the load shifted, and where to", async () => {
    const { code, out, err } = await command("compare", usual, ahead);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(/^Shifted/);
    expect(out).toMatch(/Vertical: peak vertical force, N\n {2}per step +lower/);
    expect(out).toMatch(/Anteroposterior: braking impulse, N s\n {2}per step +higher/);
    expect(out).toMatch(/Mediolateral: mediolateral impulse, N s\n {2}per step +higher/);
    expect(out).toContain("is not oxygen uptake");
    expect(Math.max(...out.split("\n").map((line) => [...line].length))).toBeLessThanOrEqual(80);
  });

  it("prints the comparison as JSON, with the swap mirrored", async () => {
    const there = await parsed<Comparison>("compare", usual, ahead, "--json");
    const back = await parsed<Comparison>("compare", ahead, usual, "--json");
    expect(there.overall).toMatchObject({ reading: "shifted", lower: ["vertical"] });
    expect(back.overall).toMatchObject({ reading: "shifted", higher: ["vertical"] });
    there.metrics.forEach(({ id, difference }) => {
      expect(back.metrics.find((metric) => metric.id === id)?.difference).toBeCloseTo(-difference, 9);
    });
  });

  it("prints a row a metric as CSV", async () => {
    const { out } = await command("compare", usual, ahead, "--csv");
    expect(out).toMatch(/^metric,unit,per,component,reading,/);
    expect(out).toMatch(/^brakingImpulse,N s,step,anteroposterior,higher,/m);
  });

  it("analyses both with the larger threshold and one filter", async () => {
    // Noise of 30 N in one recording alone lifts its threshold above 20 N.
    let state = 1;
    const noise = () => {
      state = (state * 48271) % 2147483647;
      return (state / 2147483647 - 0.5) * 30 * Math.sqrt(12);
    };
    const noisy = {
      ...demo.usual,
      channels: demo.usual.channels.map((channel) =>
        channel.quantity === "force" && channel.direction === "up"
          ? { ...channel, samples: channel.samples.map((value) => value + noise()) }
          : channel,
      ),
    };
    const path = fileIn(folder, "noisy.csv", writeCsv(noisy));
    const alone = await parsed<Trial>("analyse", path, "--json");
    expect(alone.settings.events.threshold).toBeGreaterThan(20);
    const { settings, baseline, changed } = await parsed<Comparison>("compare", usual, path, "--json");
    expect(settings.threshold).toBe(alone.settings.events.threshold);
    expect([baseline.threshold, changed.threshold]).toEqual([settings.threshold, settings.threshold]);
    expect(settings.filter).toEqual({ cutoff: 50, order: 4 });
  });

  const halves = ["compare", TREADMILL_RUN, ...run, "--from", "0 s, 15 s", "--to", "15 s, 30 s"];

  it("compares the halves of one recording: too few strides are unsettled and say so", async () => {
    const { overall, baseline, changed } = await parsed<Comparison>(...halves, "--json");
    expect([baseline.strides, changed.strides]).toEqual([18, 18]);
    expect(overall.reading).toBe("unsettled");
    expect(overall.sentence).toMatch(/18 strides of the 20/);
  });

  it("with the minimum lowered they show no clear change, and what stays unsettled is named", async () => {
    const { overall } = await parsed<Comparison>(...halves, "--minimum-strides", "15", "--json");
    expect(overall).toMatchObject({
      reading: "no clear change",
      lower: [],
      higher: [],
      unsettled: ["mediolateral"],
    });
    expect(overall.sentence).toMatch(/mediolateral/);
  });

  it("takes one value for both recordings or two", async () => {
    const one = await parsed<Comparison>(
      "compare",
      usual,
      ahead,
      "--json",
      "--speed",
      "3.0 m/s",
      "--mass",
      "71 kg",
    );
    expect([one.baseline.speed, one.changed.speed, one.changed.mass]).toEqual([3, 3, 71]);
    const two = await parsed<Comparison>("compare", usual, ahead, "--json", "--speed", "3,0 m/s, 3,3 m/s");
    expect([two.baseline.speed, two.changed.speed]).toEqual([3, 3.3]);
    expect(two.overall.reading).toBe("unsettled");
  });
});

describe("pages", () => {
  it("are written whole beside what is printed, and leave no other file", async () => {
    const place = emptyFolder();
    const path = join(place, "page.html");
    const { out } = await command("compare", usual, ahead, "--report", path);
    expect(out).toBe((await command("compare", usual, ahead)).out);
    expect(readdirSync(place)).toEqual(["page.html"]);
    expect(readFileSync(path, "utf8")).toMatch(/^<!doctype html>.*<\/html>\n$/s);
    await command("analyse", usual, "--report", path, "--json");
    expect(readFileSync(path, "utf8")).toContain("<h1>");
    expect(readFileSync(path, "utf8")).toContain("Over 44 strides");
  });

  it("are headed by the file's name, without the folders it lies in", async () => {
    const path = join(emptyFolder(), "page.htm");
    await command("analyse", usual, "--report", path, "--from", "1 s");
    const page = readFileSync(path, "utf8");
    expect(page).toMatch(/<h1>[^<]*usual\.csv, 1 s to the end[^<]*<\/h1>/);
    expect(page).not.toContain(folder);
    await command("compare", usual, ahead, "--report", path);
    expect(readFileSync(path, "utf8")).not.toContain(folder);
  });

  it("tell two files of one name apart by their folders", async () => {
    const [one, two] = [emptyFolder(), emptyFolder()];
    const text = readFileSync(usual, "utf8");
    const { out } = await command("compare", fileIn(one, "run.csv", text), fileIn(two, "run.csv", text));
    const flat = out.replace(/\s+/g, "");
    for (const place of [one, two]) expect(flat).toContain(`${place}/run.csv`);
  });

  it("are not written where the recording fails", async () => {
    const path = join(emptyFolder(), "page.html");
    await command("analyse", join(folder, "none.csv"), "--report", path);
    expect(existsSync(path)).toBe(false);
  });
});

describe("demo", () => {
  it("writes two recordings and a page, prints the answer and says what to try next", async () => {
    const place = join(emptyFolder(), "a folder", "below");
    const { code, out, err } = await command("demo", "--out", place);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(readdirSync(place).sort()).toEqual(
      [demo.files.furtherAhead, demo.files.usual, "report.html"].sort(),
    );
    expect(out).toMatch(/^Shifted/);
    expect(readFileSync(join(place, "report.html"), "utf8")).toContain("<h1>The load shifted</h1>");
    expect(readCsv(readFileSync(join(place, demo.files.usual), "utf8")).sampleRate).toBe(
      demo.usual.sampleRate,
    );
    for (const name of [demo.files.usual, demo.files.furtherAhead, "report.html"])
      expect(out).toContain(join(place, name));
  });

  it("what it says to try works", async () => {
    const place = emptyFolder();
    const { out } = await command("demo", "--out", place);
    const commands = [...out.matchAll(/^ {2}npx gait-kinetics ([^(\n]*?)\s*(?:\(.*)?$/gm)].map(
      ([, line = ""]) => line.split(" "),
    );
    expect(commands.length).toBeGreaterThanOrEqual(4);
    for (const argv of commands) expect((await command(...argv)).code).toBe(0);
  });
});

describe("metrics", () => {
  it("lists every entry of the catalogue with its definition", async () => {
    const { code, out } = await command("metrics");
    expect(code).toBe(0);
    const flat = out.replace(/\s+/g, " ");
    for (const { id, definition } of CATALOGUE) {
      expect(out).toMatch(new RegExp(`^ {2}${id}\\b`, "m"));
      expect(flat).toContain(definition.replace(/\s+/g, " "));
    }
  });

  it.each(CATALOGUE.map(({ id }) => id))("explains %s", async (id) => {
    const entry = CATALOGUE.find((metric) => metric.id === id);
    const { code, out } = await command("metrics", id);
    expect(code).toBe(0);
    const flat = out.replace(/\s+/g, " ");
    expect(flat).toContain(entry?.definition.replace(/\s+/g, " "));
    expect(flat).toContain(entry?.source.replace(/\s+/g, " "));
    expect(out).toMatch(/^More load +(?:a higher|a lower|neither)/m);
    expect(Math.max(...out.split("\n").map((line) => [...line].length))).toBeLessThanOrEqual(80);
  });
});

describe("help", () => {
  const COMMANDS = [
    [],
    ["analyse"],
    ["compare"],
    ["reliability"],
    ["sessions"],
    ["runners"],
    ["describe"],
    ["convert"],
    ["demo"],
    ["metrics"],
  ];

  it.each(COMMANDS)("of %s carries the health cautions in 80 columns", async (...argv) => {
    const { code, out, err } = await command(...argv, "--help");
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const flat = out.replace(/\n {2}/g, " ");
    for (const sentence of HEALTH_CAUTIONS) expect(flat).toContain(sentence);
    expect(Math.max(...out.split("\n").map((line) => [...line].length))).toBeLessThanOrEqual(80);
  });

  it.each(COMMANDS)("of %s is printed for -h and help as well", async (...argv) => {
    const { out } = await command(...argv, "--help");
    expect(await command(...argv, "-h")).toEqual({ code: 0, out, err: "" });
    expect(await command("help", ...argv)).toEqual({ code: 0, out, err: "" });
  });

  it("prints the version", async () => {
    expect((await command("--version")).out).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});
