/** Installs what is missing, builds the library and runs the command line's demo; arguments are passed on. */
import { spawnSync } from "node:child_process";
import { root, setUp, show } from "./setUp.mjs";

await setUp();
console.log("Building the library …");
const built = await show("node node_modules/tsx/dist/cli.mjs scripts/build.ts --js", "building");
if (built !== 0) process.exit(built);
console.log("Running: gait-kinetics demo\n");
const { status } = spawnSync(process.execPath, ["dist/esm/cli/main.js", "demo", ...process.argv.slice(2)], {
  cwd: root,
  stdio: "inherit",
});
process.exit(status ?? 1);
