import { checkFootwear, PLAUSIBLE_BOUNDS } from "../../recording/index.js";
import { fail, requireNumber, requireOneOf, withDefaults } from "../../units/index.js";
import { PATTERN_SIGN, partOf } from "./columnNames.js";
import { type CsvSettings, READ_CSV_DEFAULTS, type ReadCsvOptions } from "./options.js";
import { AXIS_NAMES, isKnownName, OWN_NAMES } from "./roleOf.js";
import { quoted } from "./words.js";

/** Completes a caller's options and refuses what no file could make sense of. */
export function checkOptions(options: ReadCsvOptions): CsvSettings {
  const settings = withDefaults(READ_CSV_DEFAULTS, options);
  const { mass, height, speed, grade, sampleRate, surface, firstFoot, footwear, decimal, delimiter } =
    settings;
  if (mass !== null) requireNumber("mass", mass, PLAUSIBLE_BOUNDS.mass);
  if (height !== null) requireNumber("height", height, PLAUSIBLE_BOUNDS.height);
  if (speed !== null) requireNumber("speed", speed, PLAUSIBLE_BOUNDS.speed);
  if (grade !== null) requireNumber("grade", grade, PLAUSIBLE_BOUNDS.grade);
  if (sampleRate !== null) requireNumber("sampleRate", sampleRate, { above: 0, unit: "Hz" });
  if (surface !== null) requireOneOf("surface", surface, ["ground", "belt"]);
  if (firstFoot !== null) requireOneOf("firstFoot", firstFoot, ["left", "right"]);
  if (footwear !== null) checkFootwear("footwear", footwear);
  if (decimal !== null) requireOneOf("decimal", decimal, [".", ","]);
  if (delimiter !== null) requireOneOf("delimiter", delimiter, [",", ";", "\t", "|", " "]);
  requireNumber("skip", settings.skip, { from: 0, to: 10_000, whole: true });
  requireNumber("header", settings.header, { from: 0, to: 10, whole: true });
  requireOneOf("unitRow", settings.unitRow, ["auto", "read", "skip", "none"]);
  requireOneOf("verticalForce", settings.verticalForce, ["needed", "optional"]);
  requireOneOf("forceOn", settings.forceOn, ["runner", "ground"]);
  if (decimal === "," && delimiter === ",") {
    fail(
      "conflict",
      'decimal and delimiter are both ","; a cell with a decimal comma is then quoted: leave delimiter out',
      {
        argument: "delimiter",
      },
    );
  }
  requireTexts("ignore", settings.ignore, 'column names, such as ["Time"]');
  requireTexts("missing", settings.missing, 'cells, such as ["", "NaN"]');
  for (const name of ["units", "columns"] as const) {
    const map: unknown = settings[name];
    if (typeof map !== "object" || map === null || !Object.values(map).every(isText)) {
      const example = name === "units" ? '{ Fx: "N" }' : '{ Fv: "up" }';
      fail("wrong-type", `${name} is no object with a text for each column, such as ${example}`, {
        argument: name,
      });
    }
  }
  for (const [name, word] of Object.entries(settings.columns)) {
    const known = name.includes(PATTERN_SIGN) ? canBeKnownName(word) : isKnownName(word);
    if (!known) refuseWord(name, word);
  }
  return settings;
}

/** Whether a word with the pattern's sign becomes a known name by some part: a name, an axis, a piece of a name. */
function canBeKnownName(word: string): boolean {
  if (["A", "x"].some((part) => isKnownName(word.replace(PATTERN_SIGN, part)))) return true;
  const names = [...OWN_NAMES, ...AXIS_NAMES.split(", ")];
  const [pattern = "", ...plate] = word.split("@");
  return names.some((name) => {
    const part = partOf(pattern.trim().toLowerCase(), name.toLowerCase());
    return part !== null && isKnownName([pattern.replace(PATTERN_SIGN, part), ...plate].join("@"));
  });
}

const isText = (value: unknown): boolean => typeof value === "string";

function requireTexts(argument: string, value: unknown, what: string): void {
  if (!Array.isArray(value) || !value.every(isText)) {
    fail("wrong-type", `${argument} is no list of ${what}`, { argument });
  }
}

function refuseWord(name: string, word: string): never {
  const turned =
    word === "down" || word === "backward" || word === "left"
      ? `; a column that points ${word} is named by an axis, as columns: { ${quoted(name)}: "Fz" } with axes: { z: "${word}" }`
      : "";
  fail(
    "out-of-range",
    `columns states ${quoted(name)} as ${quoted(word)}, which this reader does not know; known are ${OWN_NAMES.join(", ")}, with axes stated ${AXIS_NAMES}, with "@" and a plate behind them where there are several, "marker:NAME:x", and "other:" with a name${turned}`,
    { argument: "columns", values: { column: name, given: word, allowed: OWN_NAMES } },
  );
}
