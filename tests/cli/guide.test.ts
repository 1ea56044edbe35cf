import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { command, emptyFolder, fileIn, TREADMILL_RUN, WALK } from "./command.js";

const folder = emptyFolder();
const guide = readFileSync(new URL("../../docs/bring-your-own-recording.md", import.meta.url), "utf8");

/** Two steps a second of 0.3 s half sines with a peak of 1500 N, at 200 Hz. */
const table = (heading: string, row: (time: string, up: number, i: number) => string): string =>
  [
    heading,
    ...Array.from({ length: 1000 }, (_, i) => {
      const part = ((i / 200) % 0.5) / 0.3;
      return row((i / 200).toFixed(3), part < 1 ? 1500 * Math.sin(Math.PI * part) : 0, i);
    }),
  ].join("\n");

/** The files that the page's commands name. */
const files: Readonly<Record<string, string | Uint8Array>> = {
  "walk.c3d": readFileSync(WALK),
  "cut.c3d": readFileSync(WALK).subarray(0, 60_000),
  "treadmill.txt": readFileSync(TREADMILL_RUN),
  "run.csv": table("time [s],up [N]", (time, up) => `${time},${up.toFixed(2)}`),
  "plate.csv": table("time [s],Fx [N],Fy [N],Fz [N]", (time, up) => `${time},0,0,${up.toFixed(2)}`),
  "no-units.csv": table("time,up", (time, up) => `${time},${up.toFixed(2)}`),
  "own-names.csv": table("time [s],Vertical GRF [N]", (time, up) => `${time},${up.toFixed(2)}`),
  "on-the-ground.csv": table("time [s],up [N]", (time, up) => `${time},${(-up).toFixed(2)}`),
  "gap.csv": table("time [s],up [N]", (time, up, i) => `${time},${i >= 100 && i < 103 ? "" : up.toFixed(2)}`),
};
for (const [name, content] of Object.entries(files)) fileIn(folder, name, content);

/** Each command of the page with the lines under it. */
const quoted = [...guide.matchAll(/^```console\n([\s\S]*?)^```$/gm)].flatMap(([, block = ""]) =>
  block
    .split(/^\$ /m)
    .filter((part) => part !== "")
    .map((part) => {
      const [line = "", ...output] = part.trimEnd().split("\n");
      return { line, output };
    }),
);

/** Words of a command line, in double quotes or without. */
const wordsOf = (line: string): string[] =>
  [...line.matchAll(/"([^"]*)"|[^\s"]+/g)].map(([word, inner]) => inner ?? word);

/** A pattern of lines, in which `...` stands for any number of lines. */
const patternOf = (lines: readonly string[]): RegExp =>
  new RegExp(
    `^${lines.map((line) => (line === "..." ? "(?:.*\\n)*?" : `${line.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}\\n`)).join("")}$`,
  );

it("the page quotes commands with what they print, ten mistakes among them", () => {
  expect(guide.match(/^\*\*\d+\. /gm)).toHaveLength(10);
  expect(quoted.length).toBeGreaterThanOrEqual(14);
  for (const { line, output } of quoted) {
    expect(line).toMatch(/^npx gait-kinetics (describe|analyse|compare|convert) /);
    expect(
      output.filter((text) => text !== "..."),
      line,
    ).not.toHaveLength(0);
  }
});

it.each(quoted)("$line", async ({ line, output }) => {
  const argv = wordsOf(line.replace(/^npx gait-kinetics /, "")).map((word) =>
    /^[\w-]+\.(?:c3d|csv|txt)$/.test(word) ? join(folder, word) : word,
  );
  const { out, err } = await command(...argv);
  const printed = `${err}${out}`.replaceAll(`${folder}/`, "");
  expect(printed).toMatch(patternOf(output));
});
