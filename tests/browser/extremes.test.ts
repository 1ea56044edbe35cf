/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { compareTrials } from "../../src/compare/index.js";
import { toGroundReaction } from "../../src/force/index.js";
import { comparisonHtml, trialHtml } from "../../src/report/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import { analyseTrial, type Trial } from "../../src/trial/index.js";
import { describeInBrowser, launch, open } from "./browser.js";
import { demo, repeated, written } from "./pages.js";

/** A page of 10 000 steps may be this large. */
const LARGEST = 2_000_000;
const MANY = 10_000;

/** The vertical force alone, without speed and mass. */
function verticalOnly(): Trial {
  const { recording } = syntheticRun({ duration: 8 });
  const { speed: _speed, ...rest } = recording;
  return analyseTrial(
    toGroundReaction({ ...rest, subject: {}, channels: rest.channels.filter(({ name }) => name === "up") }),
  );
}

describeInBrowser("unusual pages in a browser", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser?.close());

  async function looksWhole(name: string, content: string): Promise<number> {
    const file = written(name, content);
    const begin = performance.now();
    const { page, trouble } = await open(browser, file, { viewport: { width: 360, height: 800 } });
    const opened = performance.now() - begin;
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    await page.setViewportSize({ width: 1600, height: 900 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(1600);
    expect(trouble).toEqual([]);
    await page.context().close();
    return opened;
  }

  it("long names", async () => {
    const { baseline, changed, comparison } = demo();
    const long = `${"a-recording-with-a-name-of-quite-some-length".repeat(6)}.csv`;
    await looksWhole(
      "long",
      comparisonHtml(comparison, baseline, changed, { names: { baseline: long, changed: long } }),
    );
    await looksWhole("long-trial", trialHtml(baseline, { title: long }));
  });

  it("missing components, mass and speed", async () => {
    const trial = verticalOnly();
    await looksWhole("vertical", trialHtml(trial));
    await looksWhole("vertical-comparison", comparisonHtml(compareTrials(trial, trial), trial, trial));
  });

  it("one step only", async () => {
    const { recording } = syntheticRun({ contacts: 1 });
    const trial = analyseTrial(toGroundReaction(recording));
    expect(trial.contacts).toHaveLength(1);
    await looksWhole("one", trialHtml(trial));
    await looksWhole("one-comparison", comparisonHtml(compareTrials(trial, trial), trial, trial));
  });

  it("10 000 steps: at most 2 MB, without a table of each", async () => {
    const { baseline, changed, comparison } = demo();
    const [before, after] = [repeated(baseline, MANY), repeated(changed, MANY)];
    const pages = { trial: trialHtml(before), comparison: comparisonHtml(comparison, before, after) };
    for (const [name, content] of Object.entries(pages)) {
      const opened = await looksWhole(`many-${name}`, content);
      const bytes = new TextEncoder().encode(content).length;
      console.log(
        `page of a ${name}, ${MANY} steps: ${(bytes / 1e6).toFixed(2)} MB, opened in ${opened.toFixed(0)} ms`,
      );
      expect(bytes).toBeLessThanOrEqual(LARGEST);
    }
    expect(pages.trial).toContain("CSV of every contact, to copy: too long for this page");
  });
});
