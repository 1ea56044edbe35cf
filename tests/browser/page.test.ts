/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import axe from "axe-core";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { writeJson } from "../../src/exchange/index.js";
import { comparisonHtml, trialHtml } from "../../src/report/index.js";
import { describeInBrowser, launch, open } from "./browser.js";
import { type Demo, demo, written } from "./pages.js";

const NAMES = { baseline: "usual.csv", changed: "further-ahead.csv" };

describeInBrowser("the pages in a browser", () => {
  let browser: Browser;
  let trials: Demo;
  const files = { comparison: "", trial: "" };

  beforeAll(async () => {
    browser = await launch();
    trials = demo();
    const { comparison, baseline, changed, curves } = trials;
    files.comparison = written(
      "comparison",
      comparisonHtml(comparison, baseline, changed, { names: NAMES, curves }),
    );
    files.trial = written("trial", trialHtml(baseline, { title: NAMES.baseline }));
  });
  afterAll(() => browser?.close());

  it.each(["comparison", "trial"] as const)(
    "the %s opens without an error, a request or a warning",
    async (name) => {
      const { page, trouble } = await open(browser, files[name]);
      expect(await page.locator("h1").count()).toBe(1);
      expect(await page.locator("svg").count()).toBeGreaterThan(5);
      expect(await page.locator("html").getAttribute("lang")).toBe("en-GB");
      expect(trouble).toEqual([]);
      await page.context().close();
    },
  );

  it.each([
    ["comparison", "light", true],
    ["comparison", "dark", false],
    ["trial", "light", false],
    ["trial", "dark", true],
  ] as const)("axe-core finds nothing in the %s, %s", async (name, colorScheme, scripts) => {
    const { page } = await open(browser, files[name], { colorScheme, bypassCSP: true });
    // Without the class that scripts set, every panel is shown and looked at.
    if (!scripts) await page.evaluate(() => document.documentElement.classList.remove("live"));
    await page.evaluate(() => {
      for (const folded of document.querySelectorAll("details")) folded.open = true;
    });
    await page.evaluate(axe.source);
    const { violations, passes } = await page.evaluate(async () => {
      const run = (globalThis as unknown as { axe: { run: () => Promise<AxeResult> } }).axe.run;
      const found = await run();
      return {
        passes: found.passes.length,
        violations: found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 200)}`),
      };
    });
    expect(passes).toBeGreaterThan(20);
    expect(violations).toEqual([]);
    await page.context().close();
  });

  it.each([
    ["comparison", "A4"],
    ["comparison", "Letter"],
    ["trial", "A4"],
    ["trial", "Letter"],
  ] as const)("the %s prints on at most four pages of %s", async (name, format) => {
    const { page } = await open(browser, files[name]);
    const pdf = (await page.pdf({ format })).toString("latin1");
    const pages = [...pdf.matchAll(/\/Type\s*\/Page\b(?!s)/g)].length;
    expect(pages).toBeGreaterThanOrEqual(1);
    expect(pages).toBeLessThanOrEqual(4);
    await page.context().close();
  });

  it.each(["comparison", "trial"] as const)(
    "the %s's figures are not cut by the edge of the paper",
    async (name) => {
      // Inside the margins of Letter, the shorter of both papers, and of A4, the narrower: CSS pixels of 1/96 in.
      const [width, height] = [Math.floor((182 / 25.4) * 96), Math.floor(((279.4 - 24) / 25.4) * 96)];
      const { page } = await open(browser, files[name], { viewport: { width, height } });
      await page.emulateMedia({ media: "print" });
      const boxes = await page.evaluate(() =>
        [...document.querySelectorAll(".drawing svg, table.short, .health")]
          .filter((one) => one.getClientRects().length > 0)
          .map((one) => {
            const { left, right, height: tall } = one.getBoundingClientRect();
            const kept = one.closest("figure, table, section") as Element;
            return { left, right, tall, kept: getComputedStyle(kept).breakInside };
          }),
      );
      expect(boxes.length).toBeGreaterThan(5);
      for (const box of boxes) {
        expect(box.kept).toBe("avoid");
        expect(box.tall).toBeLessThan(height / 2);
        expect(box.left).toBeGreaterThanOrEqual(-0.5);
        expect(box.right).toBeLessThanOrEqual(width + 0.5);
      }
      await page.context().close();
    },
  );

  it.each([
    ["comparison", 360],
    ["comparison", 1600],
    ["trial", 360],
    ["trial", 1600],
  ] as const)("the %s needs no scrolling to the side at %i px", async (name, width) => {
    const { page } = await open(browser, files[name], { viewport: { width, height: 800 } });
    const beyond = await page.evaluate(() =>
      [...document.querySelectorAll("main *:not(textarea)")]
        .filter((one) => !one.closest("svg *, .live .panel:not(.shown)"))
        .filter((one) => one.getClientRects().length > 0 && getComputedStyle(one).position !== "absolute")
        .filter((one) => one.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5)
        .map((one) => one.outerHTML.slice(0, 80)),
    );
    expect(beyond).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    await page.context().close();
  });

  it("shows in its tables the values of the comparison's JSON, to the digits shown", async () => {
    const { page } = await open(browser, files.comparison);
    const shown = await page.evaluate(() => ({
      json: [...document.querySelectorAll("textarea")].map(({ value }) => value),
      rows: [...document.querySelectorAll("#numbers")].flatMap((select) =>
        [...(select.closest(".chooser")?.querySelectorAll(".panel.shown tr") ?? [])].map((row) =>
          [...row.querySelectorAll("th, td")].map((cell) => cell.textContent ?? ""),
        ),
      ),
    }));
    const json = JSON.parse(shown.json[1] ?? "") as Demo["comparison"];
    expect(json.metrics).toEqual((JSON.parse(writeJson(trials.comparison)) as Demo["comparison"]).metrics);
    const values = json.metrics.map(({ baseline, changed, difference, interval, percent, effectSize }) =>
      [baseline.mean, changed.mean, difference, interval.low, interval.high, percent, effectSize].flatMap(
        (value) => (value === null ? [] : [value]),
      ),
    );
    const rows = shown.rows.filter((row) => row.length > 5 && row[0] !== "metric");
    expect(rows).toHaveLength(json.metrics.length);
    for (const [, ...cells] of rows) {
      const numbers = cells.flatMap((cell) => numbersIn(cell));
      expect(
        values.some(
          (of) => of.length === numbers.length && of.every((value, i) => prints(numbers[i]!, value)),
        ),
      ).toBe(true);
    }
    await page.context().close();
  });

  it("reads out of the figure of differences what the JSON says", async () => {
    const { page } = await open(browser, files.comparison);
    const read = await page.evaluate(() =>
      [...document.querySelectorAll(".drawing:has(#differences-percent-title) .mark")].map(
        (mark) => mark.getAttribute("data-read") ?? "",
      ),
    );
    const { components, metrics } = trials.comparison;
    const expected = components.flatMap(({ metric: id }) => {
      const metric = metrics.find((one) => one.id === id)!;
      return [metric, metric.perKilometre!];
    });
    expect(read).toHaveLength(expected.length);
    for (const [i, { percent, interval, baseline }] of expected.entries()) {
      const scale = 100 / baseline.mean;
      const numbers = numbersIn((read[i] ?? "").replace(/95\s%/, ""));
      const wanted = [percent!, scale * interval.low, scale * interval.high];
      expect(numbers).toHaveLength(3);
      for (const [k, value] of wanted.entries()) expect(prints(numbers[k]!, value)).toBe(true);
    }
    await page.context().close();
  });

  it("is read by the keyboard alone: the slider under a figure speaks each value and marks it", async () => {
    const { page } = await open(browser, files.comparison);
    const focused = () =>
      page.evaluate(() => {
        const { activeElement: now } = document;
        return {
          kind: now?.className ?? "",
          label: now?.getAttribute("aria-label") ?? "",
          spoken: now?.getAttribute("aria-valuetext") ?? "",
          shown: now?.parentElement?.querySelector(".readout")?.textContent ?? "",
          marked: now?.parentElement?.querySelectorAll(".mark.read").length ?? 0,
        };
      });
    for (let presses = 0; presses < 10 && (await focused()).kind !== "reader"; presses++)
      await page.keyboard.press("Tab");
    const first = await focused();
    await page.keyboard.press("ArrowRight");
    const second = await focused();
    expect(first.label).toMatch(/^Values of the figure: /);
    expect(first.spoken).toMatch(/peak vertical force/);
    expect(first.shown).toBe(first.spoken);
    expect(second.spoken).not.toBe(first.spoken);
    expect(second.shown).toBe(second.spoken);
    expect(second.marked).toBe(1);
    await page.context().close();
  });

  it("is read by pointing", async () => {
    const { page } = await open(browser, files.comparison);
    const mark = page.locator(".drawing:has(#differences-percent-title) .mark").nth(2);
    await mark.hover();
    const words = await mark.getAttribute("data-read");
    expect(words).toMatch(/braking impulse/);
    expect(await page.locator(".drawing:has(#differences-percent-title) .readout").textContent()).toBe(words);
    await page.context().close();
  });

  it("shows another metric of the single steps, and newtons for body weights, on request", async () => {
    const { page } = await open(browser, files.comparison);
    const title = (select: string) =>
      page.locator(`.chooser:has(> .choice > #${select}) > .panel.shown svg > title`).first();
    expect(await title("series").textContent()).toMatch(/peak vertical force/i);
    await page.selectOption("#series", { label: "Contact time, s" });
    expect(await title("series").textContent()).toMatch(/contact time/i);
    await page.selectOption("#curves", { label: "newtons" });
    const drawn = (unit: string) => page.locator(`svg:has(> #curve-${unit}-vertical-left-title)`).isVisible();
    expect(await drawn("N")).toBe(true);
    expect(await drawn("BW")).toBe(false);
    await page.context().close();
  });

  it.each(["comparison", "trial"] as const)("the %s is whole with scripts off", async (name) => {
    const { page, trouble } = await open(browser, files[name], { javaScriptEnabled: false });
    expect(await page.locator(".panel").count()).toBeGreaterThan(3);
    expect(await page.locator(".panel:visible").count()).toBe(await page.locator(".panel").count());
    expect(await page.locator(".view:visible").count()).toBe(await page.locator(".panel").count());
    expect(await page.locator("select:visible, button:visible, .hint:visible").count()).toBe(0);
    await page.locator("summary").last().click();
    expect(await page.locator("textarea").last().isVisible()).toBe(true);
    expect(trouble.filter((line) => !/script/i.test(line))).toEqual([]);
    await page.context().close();
  });
});

interface AxeResult {
  readonly passes: readonly unknown[];
  readonly violations: readonly {
    readonly id: string;
    readonly nodes: readonly { readonly html: string }[];
  }[];
}

/** Numbers as print sets them: a minus sign, narrow spaces between thousands. */
function numbersIn(text: string): readonly string[] {
  return (
    text
      .replaceAll("−", "-")
      .replace(/(\d)\u202f(?=\d)/g, "$1")
      .match(/[-+]?\d+(?:\.\d+)?(?:e\d+)?/g) ?? []
  );
}

/** Whether a printed number is the value to half a unit of its last digit. */
function prints(printed: string, value: number): boolean {
  const decimals = printed.split(".")[1]?.length ?? 0;
  return Math.abs(Number(printed) - value) <= 0.5000001 * 10 ** -decimals;
}
