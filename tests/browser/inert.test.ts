/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { Comparison } from "../../src/compare/index.js";
import { comparisonHtml, trialHtml } from "../../src/report/index.js";
import type { Trial } from "../../src/trial/index.js";
import {
  exampleAlternative,
  exampleComparison,
  exampleCurves,
  exampleTrial,
  summary,
} from "../report/examples.js";
import { describeInBrowser, launch, open } from "./browser.js";
import { written } from "./pages.js";

const TRAPS: readonly string[] = [
  "<script>alert(1)</script>",
  "</textarea><script>alert(2)</script>",
  "</title><img src=x onerror=alert(3)>",
  "</style><svg onload=alert(4)>",
  '"><input autofocus onfocus=alert(5)>',
  "' onmouseover='alert(6)",
  "--><iframe srcdoc='<script>alert(7)</script>'></iframe>",
  ']]><a href="javascript:alert(8)">x</a>',
  "{{constructor.constructor('alert(9)')()}}",
  "\u202emarkup\u0000\u2028<b>",
];

/** A trial and a comparison with foreign text wherever text of a file, or of a result read back, can stand. */
function foreign(text: string): { readonly trial: Trial; readonly comparison: Comparison } {
  const own = exampleTrial();
  const made = exampleComparison();
  const alternative = exampleAlternative();
  const metric = { ...made.metrics[0]!, id: text, unit: text };
  return {
    trial: {
      ...own,
      settings: {
        ...own.settings,
        version: text,
        interval: text,
        footwear: text,
        events: { ...own.settings.events, sides: text },
      },
      summary: {
        ...own.summary,
        metrics: { ...own.summary.metrics, [`own ${text}`]: summary(1, 1, text, text) },
      },
      notComputed: [{ id: text, code: "any", message: text }],
      cautions: [{ code: "any", message: text, where: text }],
    },
    comparison: {
      ...made,
      settings: {
        ...made.settings,
        version: text,
        interval: text,
        design: { ...made.settings.design, variation: text },
      },
      metrics: [
        ...made.metrics.map((one) => ({
          ...one,
          smallestDetectableChange: { ...one.smallestDetectableChange, source: text },
          margin: { ...one.margin, source: text },
        })),
        metric,
      ],
      components: made.components.map((component) => ({ ...component, sentence: text })),
      overall: { ...made.overall, sentence: text, toSettle: [text] },
      work: { ...made.work, sentence: text },
      alternatives: [
        {
          ...alternative,
          name: text,
          sentence: text,
          sources: [text],
          effects: alternative.effects.map((effect) => ({
            ...effect,
            quantity: text,
            finding: text,
            source: text,
          })),
        },
      ],
      notCompared: [{ id: text, code: "any", message: text }],
      cautions: [{ code: "any", message: text, where: text }],
    },
  };
}

describeInBrowser("text of a file in a page", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser?.close());

  const all = TRAPS.join(" ");
  const pages = (text: string): readonly string[] => {
    const { trial, comparison } = foreign(text);
    const names = { baseline: text, changed: text };
    return [
      trialHtml(trial, { title: text }),
      comparisonHtml(comparison, trial, trial, { names, curves: [exampleCurves()] }),
    ];
  };

  it.each([false, true])(
    "runs nothing and becomes no element (policy of the page off: %s)",
    async (bypassCSP) => {
      for (const [i, content] of pages(all).entries()) {
        const { page, trouble } = await open(browser, written(`foreign-${i}`, content), { bypassCSP });
        for (const reader of await page.locator(".reader").all()) await reader.focus();
        const made = await page.evaluate(() => ({
          scripts: document.querySelectorAll("script").length,
          others: document.querySelectorAll("img, iframe, a, object, embed, input:not(.reader), b").length,
          handlers: [...document.querySelectorAll("*")].filter((one) =>
            [...one.attributes].some(
              ({ name, value }) => /^on/i.test(name) || /^\s*javascript:/i.test(value),
            ),
          ).length,
        }));
        expect(made).toEqual({ scripts: 1, others: 0, handlers: 0 });
        expect(trouble).toEqual([]);
        expect(await page.locator("main").textContent()).toContain("<script>alert(1)</script>");
        await page.context().close();
      }
    },
  );

  it("comes out of the JSON to copy as it went in", async () => {
    const { trial, comparison } = foreign(all);
    const [page] = await Promise.all([open(browser, written("copy", pages(all)[1] ?? ""))]);
    const texts = await page.page
      .locator("textarea")
      .evaluateAll((areas) => areas.map((area) => (area as HTMLTextAreaElement).value));
    const json = JSON.parse(texts[1] ?? "") as Comparison;
    expect(json.overall.sentence).toBe(comparison.overall.sentence);
    expect(json.cautions).toEqual(comparison.cautions);
    expect(trial.cautions).toEqual(comparison.cautions);
    await page.page.context().close();
  });
});
