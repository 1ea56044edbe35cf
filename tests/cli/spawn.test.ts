import { spawnSync } from "node:child_process";
import { expect, it } from "vitest";
import { emptyFolder } from "./command.js";

const root = new URL("../../", import.meta.url).pathname;
const spawn = (shell: string) => spawnSync("bash", ["-c", shell], { cwd: root, encoding: "utf8" });
const program = `"${process.execPath}" --import tsx src/cli/main.ts`;

it("as a process: results on standard output, exit 0", () => {
  const { status, stdout, stderr } = spawn(`${program} demo --out "${emptyFolder()}"`);
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  expect(stdout).toMatch(/^Shifted/);
});

it("as a process: a bad file is exit 1, a bad command line exit 2, each with one line", () => {
  const missing = spawn(`${program} analyse nowhere.csv`);
  expect(missing).toMatchObject({ status: 1, stdout: "" });
  expect(missing.stderr).toMatch(/^gait-kinetics: nowhere\.csv: [^\n]+\n$/);
  const unknown = spawn(`${program} analyse nowhere.csv --weight 3`);
  expect(unknown).toMatchObject({ status: 2, stdout: "" });
  expect(unknown.stderr).toMatch(/^gait-kinetics: analyse: unknown option [^\n]+\n$/);
});

it("as a process: a reader that stops early is no problem", () => {
  const { status, stderr, stdout } = spawn(`set -o pipefail; ${program} metrics | head -n 1`);
  expect({ status, stderr, stdout }).toEqual({ status: 0, stderr: "", stdout: "Vertical\n" });
});

it("as a process: a full disk behind standard output is one line and exit 1", () => {
  const table = `${program} metrics > /dev/full`;
  const { status, stderr } = spawn(table);
  expect({ status, stderr }).toEqual({
    status: 1,
    stderr: "gait-kinetics: standard output: cannot be written: the disk is full\n",
  });
});

it("as a process: standard error that cannot be written leaves the code", () => {
  expect(spawn(`${program} analyse nowhere.csv 2> /dev/full`).status).toBe(1);
  expect(spawn(`${program} analyse 2> /dev/full`).status).toBe(2);
});
