/**
 * Loads every entry of the built package as a user's program would, by its name, with `import` and `require`, and
 * prints what is wrong, one line each, and the count of checks. Run by Node alone: a loader that reads TypeScript would
 * hide a module that CommonJS cannot require.
 */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

const manifest = JSON.parse(readFileSync(new URL("../package.json", import.meta.url), "utf8"));
const entries = Object.keys(manifest.exports).filter(
  (path) => path !== "./package.json" && !path.includes("*"),
);
const require = createRequire(import.meta.url);
const problems = [];
let checks = 0;
function check(holds, problem) {
  checks += 1;
  if (!holds) problems.push(problem);
}

/** A wrong call for an entry, to see which class of error it throws. */
const provocations = {
  "gait-kinetics": ({ convert }) => convert(1, "N", "kg"),
  "gait-kinetics/units": ({ convert }) => convert(1, "N", "kg"),
  "gait-kinetics/units/parse": ({ parseQuantity }) => parseQuantity("70 kg", "speed"),
  "gait-kinetics/io": ({ readCsv }) => readCsv(""),
  "gait-kinetics/filters": ({ lowPass }) => lowPass(new Float64Array(100), { cutoff: 600, sampleRate: 1000 }),
  "gait-kinetics/synthetic": ({ syntheticRun }) => syntheticRun({ mass: -70 }),
  "gait-kinetics/trial": ({ analyseTrial }) => analyseTrial({}, { noSuchOption: 1 }),
};

const formats = { import: new Map(), require: new Map() };
for (const entry of entries) {
  const name = manifest.name + entry.slice(1);
  const ways = { import: () => import(name), require: async () => require(name) };
  for (const [way, load] of Object.entries(ways)) {
    try {
      formats[way].set(name, await load());
      check(true);
    } catch (error) {
      check(false, `${way} of ${name} fails: ${error}`);
    }
  }
}

for (const [name, exports] of formats.import) {
  const names = (of) =>
    Object.keys(of ?? {})
      .sort()
      .join(" ");
  check(
    names(exports) === names(formats.require.get(name)),
    `${name} exports other names with import than with require`,
  );
}

const rootOf = (way) => formats[way].get(manifest.name) ?? {};
check(
  rootOf("import").GaitKineticsError !== rootOf("require").GaitKineticsError,
  "import and require share one error class, so what follows proves nothing",
);
for (const [way, other] of [
  ["import", "require"],
  ["require", "import"],
]) {
  const errorClass = rootOf(way).GaitKineticsError;
  for (const [name, provoke] of Object.entries(provocations)) {
    let caught;
    try {
      provoke(formats[way].get(name) ?? {});
    } catch (error) {
      caught = error;
    }
    check(
      errorClass !== undefined && caught instanceof errorClass,
      `${name} (${way}) throws "${caught}", no instance of the root's GaitKineticsError`,
    );
    check(
      rootOf(other).isGaitKineticsError?.(caught) === true,
      `isGaitKineticsError (${other}) does not know "${caught}" of ${name}`,
    );
  }
}

for (const problem of problems) console.error(problem);
console.log(
  `loaded: ${checks - problems.length} of ${checks} checks passed, ${entries.length} entries, import and require`,
);
process.exit(problems.length > 0 ? 1 : 0);
