import { existsSync } from "node:fs";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { describe } from "vitest";

const PLACES: readonly (string | undefined)[] = [
  process.env.CHROMIUM,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
];

const ARGUMENTS: readonly string[] = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

const found = PLACES.find((place) => place !== undefined && existsSync(place));

/** Runs tests that need Chromium; where there is none they are skipped, with the reason, or fail where one is required. */
export function describeInBrowser(name: string, tests: () => void): void {
  if (found === undefined && process.env.REQUIRE_BROWSER !== "1") {
    describe.skip(`${name} (no Chromium on this machine: install it or name it in CHROMIUM)`, tests);
    return;
  }
  describe(name, tests);
}

/** Starts Chromium without a window. */
export function launch(): Promise<Browser> {
  if (found === undefined)
    throw new Error(`REQUIRE_BROWSER is set and no Chromium is at ${PLACES.join(", ")}`);
  return chromium.launch({ executablePath: found, args: [...ARGUMENTS] });
}

/** A page as it opened, and what it did that it should not have. */
export interface Opened {
  readonly page: Page;
  /** Errors and warnings of the console, uncaught errors, dialogs, and requests beyond the file itself. */
  readonly trouble: readonly string[];
}

/** Opens a file in a context of its own; close the context of its page behind it. */
export async function open(
  browser: Browser,
  file: string,
  options: BrowserContextOptions = {},
): Promise<Opened> {
  const context = await browser.newContext({ viewport: { width: 1200, height: 900 }, ...options });
  const page = await context.newPage();
  const trouble: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") trouble.push(message.text());
  });
  page.on("pageerror", (error) => trouble.push(error.message));
  page.on("dialog", (dialog) => {
    trouble.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on("request", (request) => {
    if (request.url() !== `file://${file}`) trouble.push(`request: ${request.url()}`);
  });
  await page.goto(`file://${file}`);
  return { page, trouble };
}
