import { createHash } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Comparison } from "../../src/compare/index.js";
import { comparisonHtml, HEALTH_CAUTIONS, trialHtml } from "../../src/report/index.js";
import type { Curve, Trial } from "../../src/trial/index.js";
import { exampleComparison, exampleTrial, summary } from "./examples.js";
import { isBalanced, tagsOf, textOf } from "./tags.js";

const pages = {
  trial: trialHtml(exampleTrial(), { title: "usual.csv" }),
  comparison: comparisonHtml(exampleComparison(), exampleTrial(), exampleTrial(), {
    names: { baseline: "usual.csv", changed: "further-ahead.csv" },
  }),
};

describe.each(Object.entries(pages))("the page of a %s", (_, page) => {
  it("is one balanced document in a stated language", () => {
    expect(page).toMatch(/^<!doctype html>\n<html lang="en-GB">/);
    expect(isBalanced(page)).toBe(true);
  });

  it("loads nothing and runs one script, its own, which the policy names by its hash", () => {
    const [script = "", ...others] = [...page.matchAll(/<script>(.*?)<\/script>/gs)].map(
      ([, text]) => text ?? "",
    );
    expect(others).toEqual([]);
    const hash = createHash("sha256").update(script).digest("base64");
    expect(page).toContain(
      `content="default-src 'none'; style-src 'unsafe-inline'; script-src 'sha256-${hash}'; base-uri 'none'; form-action 'none'"`,
    );
    expect(tagsOf(page).filter((tag) => tag === "script")).toHaveLength(1);
    expect(page).not.toMatch(/\s(?:src|href|on\w+)=|url\(|@import/);
    expect(page.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:/);
  });

  it("knows light and dark, narrow screens and paper", () => {
    expect(page).toContain("prefers-color-scheme: dark");
    expect(page).toContain("@media (max-width");
    expect(page).toContain("@media print");
    expect(page).toContain('name="viewport"');
  });

  it("has no two elements of one id, and every figure points at its own words", () => {
    const ids = [...page.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const named = [...page.matchAll(/aria-labelledby="([^"]*)"/g)].flatMap(([, list = ""]) =>
      list.split(" "),
    );
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter((id) => !ids.includes(id))).toEqual([]);
  });

  it("carries every health caution", () => {
    const text = textOf(page).replace(/\s+/g, " ");
    for (const sentence of HEALTH_CAUTIONS) expect(text).toContain(sentence.replace(/\s+/g, " "));
  });

  it("draws a figure for every component", () => {
    for (const name of ["Vertical force", "Anteroposterior force", "Mediolateral force"]) {
      expect(page).toMatch(new RegExp(`<title id="[^"]*">${name}`));
    }
  });

  it("gives no grade, score or traffic light", () => {
    const words =
      /\b(?:scor(?:e|es|ed|ing)|grade [A-F]|graded|stars?|excellent|poor|good|bad|great|perfect|optimal|green|amber|red|warning light|dangerous|safe)\b/i;
    expect(textOf(page)).not.toMatch(words);
  });
});

describe("the page of a trial", () => {
  const text = textOf(pages.trial);

  it("says the answer first, with its uncertainty", () => {
    const answer = /<p class="answer">(.*?)<\/p>/s.exec(pages.trial)?.[1] ?? "";
    expect(textOf(answer)).toMatch(
      /^Over 36 strides, means with 95 % intervals: peak vertical force 1658\sN \(1648 to 1669; 2\.114 BW\)/,
    );
  });

  it("has each metric's numbers in one row", () => {
    const row =
      /<tr[^>]*class="primary"><th[^>]*>Peak vertical force, N<\/th>(.*?)<\/tr>/s.exec(pages.trial)?.[1] ??
      "";
    expect([...row.matchAll(/<td[^>]*>([^<]*)</g)].map(([, cell = ""]) => textOf(cell))).toEqual([
      "1658 ± 32",
      "1642",
      "1675",
      "1648 to 1669",
      "2.114 ± 0.040 BW",
      "36",
    ]);
  });

  it("says what was not computed, the cautions and the methods", () => {
    expect(text).toContain("Step length, stride length: the speed is not stated.");
    expect(text).toContain("the sampling rate of 300 Hz is below 1000");
    expect(text).toMatch(/zero-phase Butterworth filter of net order 4/);
    expect(text).toContain("Computed with gait-kinetics 0.1.0.");
  });
});

describe("the page of a comparison", () => {
  const text = textOf(pages.comparison);

  it("says the reading as heading and the sentence as answer", () => {
    expect(pages.comparison).toMatch(
      /<h1>The load shifted<\/h1><p class="answer">The load shifted: the vertical force went down/,
    );
  });

  it("has every component's reading per step and per kilometre", () => {
    const readings = [...pages.comparison.matchAll(/data-label="reading">([^<]*)</g)].map(
      ([, reading]) => reading,
    );
    expect(readings).toEqual(["lower", "lower", "higher", "higher", "higher", "unsettled"]);
  });

  it("says that mechanical work is not oxygen uptake, what was compared, and the methods of both", () => {
    expect(text).toContain("mechanical work is not oxygen uptake");
    expect(text).toContain("usual.csv: 60 strides, worth 41 independent ones");
    expect(text).toMatch(/Baseline\. The force, sampled at.*Changed\. The same\./s);
  });

  it("sets thousands apart and minus signs as print does", () => {
    expect(text).toContain("45\u202f678");
    expect(text).toContain("−107");
    expect(text).not.toMatch(/[\s(]-\d/);
  });
});

it.each(["shifted", "reduced", "raised", "unsettled", "no clear change"] as const)(
  "has a heading for the reading %s",
  (reading) => {
    const own = exampleComparison();
    const page = comparisonHtml(
      { ...own, overall: { ...own.overall, reading } },
      exampleTrial(),
      exampleTrial(),
    );
    expect(/<h1>(.*?)<\/h1>/.exec(page)?.[1]?.toLowerCase()).toContain(reading);
  },
);

it.each([
  ["no clear change", ["vertical"], [], "No clear change per step"],
  ["no clear change", [], ["vertical"], "No clear change per step"],
  ["no clear change", [], [], "No clear change"],
  ["raised", ["vertical"], [], "The load was raised per step"],
  ["raised", [], ["vertical"], "The load was raised"],
] as const)("%s, per kilometre lower %j, higher %j: the heading is %s", (reading, lower, higher, heading) => {
  const own = exampleComparison();
  const overall = { ...own.overall, reading, perKilometre: { lower, higher, unsettled: [] } };
  const page = comparisonHtml({ ...own, overall }, exampleTrial(), exampleTrial());
  expect(/<h1>(.*?)<\/h1>/.exec(page)?.[1]).toBe(heading);
});

it("names a component that was recorded and not compared", () => {
  const own = exampleComparison();
  const components = own.components.map((component) =>
    component.component === "mediolateral" ? { ...component, missing: "not compared" as const } : component,
  );
  const page = comparisonHtml(
    { ...own, components, metrics: own.metrics.slice(0, 2) },
    exampleTrial(),
    exampleTrial(),
  );
  expect(page).toMatch(/<th[^>]*>Mediolateral: not compared<\/th>/);
  expect(page).not.toContain("not recorded");
});

it("says no band where each foot made one contact", () => {
  const own = exampleTrial();
  const single = (one: Curve | undefined): Curve => ({ mean: one?.mean ?? [], sd: null, n: 1 });
  const { percent, up } = own.curves;
  const trial = { ...own, curves: { percent, up: { left: single(up.left), right: single(up.right) } } };
  const caption = /one standard deviation between contacts/i;
  expect(trialHtml(trial)).not.toMatch(caption);
  expect(comparisonHtml(exampleComparison(), trial, trial)).not.toMatch(caption);
  expect(comparisonHtml(exampleComparison(), own, trial)).toMatch(caption);
});

it("draws what there is where a component, the sides or the mass are missing", () => {
  const own = exampleTrial();
  const trial: Trial = {
    ...own,
    settings: { ...own.settings, mass: null, massStated: false, massByForce: null },
    curves: { percent: own.curves.percent, up: { unknown: own.curves.up.left! } },
  };
  const page = comparisonHtml(exampleComparison(), trial, trial);
  expect(isBalanced(page)).toBe(true);
  expect(page).toMatch(/<title id="[^"]*">Vertical force: mean curve/);
  expect(page).not.toMatch(/<title id="[^"]*">Mediolateral force/);
  expect(isBalanced(trialHtml(trial))).toBe(true);
});

it("property: nothing in a file's text becomes markup", () => {
  const build = (foreign: string) => {
    const own = exampleTrial();
    const trial: Trial = {
      ...own,
      settings: {
        ...own.settings,
        version: foreign,
        interval: foreign,
        events: { ...own.settings.events, sides: foreign },
      },
      summary: {
        ...own.summary,
        metrics: { ...own.summary.metrics, ownMetric: summary(1, 1, foreign, foreign) },
      },
      cautions: [{ code: "any", message: `x ${foreign}`, where: `y ${foreign}` }],
      notComputed: [{ id: `z ${foreign}`, code: "any", message: `x ${foreign}` }],
    };
    const example = exampleComparison();
    const comparison: Comparison = {
      ...example,
      settings: { ...example.settings, version: foreign, interval: foreign },
      overall: { ...example.overall, sentence: `x${foreign}`, toSettle: [`x ${foreign}`] },
      components: example.components.map((component) => ({ ...component, sentence: `x ${foreign}` })),
      work: { ...example.work, sentence: foreign },
      cautions: trial.cautions,
      notCompared: trial.notComputed,
    };
    const names = { baseline: foreign, changed: foreign };
    return trialHtml(trial, { title: foreign }) + comparisonHtml(comparison, trial, trial, { names });
  };
  const plain = tagsOf(build("plain"));
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string({ unit: "binary", maxLength: 80 }),
        fc
          .array(
            fc.constantFrom(
              "<",
              ">",
              '"',
              "'",
              "&",
              "script",
              "/",
              "-->",
              "]]>",
              "</style>",
              "=",
              " ",
              "onload",
              "</title>",
            ),
            { maxLength: 12 },
          )
          .map((parts) => parts.join("")),
      ),
      (foreign) => {
        // A sentence may be split behind a full stop into one more paragraph; that is ours, not the file's.
        const calm = foreign.replace(/[.!?]/g, "");
        expect(tagsOf(build(calm))).toEqual(plain);
      },
    ),
    { numRuns: 60 },
  );
});

it("shows a name that looks like markup as text", () => {
  const page = trialHtml(exampleTrial(), { title: '<img src=x onerror="alert(1)">' });
  expect(page).toContain("<h1>&lt;img src=x onerror=&quot;alert(1)&quot;&gt;</h1>");
});
