/**
 * Installs what the lock file names, where it is not there yet. Uses nothing but Node and npm, because it runs before
 * anything is installed.
 */
import { spawn } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("..", import.meta.url));

/** @returns {Record<string, { version?: string, optional?: boolean }>} Packages by their place in a lock file. */
function packagesOf(file) {
  return JSON.parse(readFileSync(`${root}/${file}`, "utf8")).packages;
}

/** Whether every package of the lock file stands in node_modules with the version it names. */
export function isInstalled() {
  if (!existsSync(`${root}/node_modules/.package-lock.json`)) return false;
  const installed = packagesOf("node_modules/.package-lock.json");
  return Object.entries(packagesOf("package-lock.json")).every(
    ([place, { version, optional }]) => place === "" || optional || installed[place]?.version === version,
  );
}

/**
 * Runs a command in the project's folder and shows what it prints, and each ten seconds that it still runs.
 *
 * @param {string} command - As typed in a shell.
 * @param {string} doing - What to say meanwhile.
 * @returns {Promise<number>} Its exit code.
 */
export function show(command, doing) {
  const begin = Date.now();
  const waiting = setInterval(
    () => console.log(`  … ${doing}, ${Math.round((Date.now() - begin) / 1000)} s`),
    10_000,
  );
  return new Promise((resolve) => {
    const child = spawn(command, { cwd: root, shell: true, stdio: "inherit" });
    const end = (code) => {
      clearInterval(waiting);
      resolve(code);
    };
    child.on("error", (error) => {
      console.error(error.message);
      end(1);
    });
    child.on("close", (code) => end(code ?? 1));
  });
}

/** Makes the project ready to build and run; ends the process where that fails. */
export async function setUp() {
  if (Number(process.versions.node.split(".")[0]) < 20) {
    console.error(`Node ${process.versions.node} is too old: Node 20 or later is needed.`);
    process.exit(1);
  }
  if (isInstalled()) return;
  const needed = Object.entries(packagesOf("package-lock.json")).filter(
    ([place, { optional }]) => place !== "" && !optional,
  );
  console.log(`Installing the ${needed.length} packages this project is built and checked with (npm ci) …`);
  if ((await show("npm ci --ignore-scripts --no-audit --no-fund", "installing")) !== 0) {
    console.error("The packages could not be installed: see npm's message above.");
    process.exit(1);
  }
}
