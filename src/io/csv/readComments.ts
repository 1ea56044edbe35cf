import { checkFootwear, PLAUSIBLE_BOUNDS, type Recording } from "../../recording/index.js";
import { type Caution, fail, isGaitKineticsError, requireNumber, unitFactor } from "../../units/index.js";
import { plainName, quoted } from "./words.js";

/** What the comment lines say of runner and trial, SI units. */
export interface Statements {
  readonly mass?: number;
  readonly height?: number;
  readonly speed?: number;
  readonly surface?: NonNullable<Recording["surface"]>;
  readonly grade?: number;
  readonly firstFoot?: NonNullable<Recording["firstFoot"]>;
  readonly footwear?: string;
  readonly sampleRate?: number;
}

type Key = keyof Statements;

/** What a comment may state: a number in one SI unit, one of a few words, or any text. */
interface Kind {
  readonly key: Key;
  readonly unit?: string;
  readonly words?: readonly string[];
  readonly text?: true;
}

/** By the key's letters alone. */
const KINDS: Readonly<Record<string, Kind>> = {
  mass: { key: "mass", unit: "kg" },
  height: { key: "height", unit: "m" },
  speed: { key: "speed", unit: "m/s" },
  grade: { key: "grade", unit: "" },
  samplerate: { key: "sampleRate", unit: "Hz" },
  surface: { key: "surface", words: ["ground", "belt"] },
  firstfoot: { key: "firstFoot", words: ["left", "right"] },
  footwear: { key: "footwear", text: true },
};

/** Keys that people write for one of ours; not read, but said. */
const NEAR: Readonly<Record<string, string>> = {
  weight: "mass: 70 kg",
  bodyweight: "mass: 70 kg",
  bodymass: "mass: 70 kg",
  velocity: "speed: 3.3 m/s",
  beltspeed: "speed: 3.3 m/s",
  slope: "grade: 0.05",
  incline: "grade: 0.05",
  inclination: "grade: 0.05",
  shoe: "footwear: road shoe",
  shoes: "footwear: road shoe",
  foot: "first foot: left",
  side: "first foot: left",
  rate: "sample rate: 1000 Hz",
  samplingrate: "sample rate: 1000 Hz",
  frequency: "sample rate: 1000 Hz",
  samplingfrequency: "sample rate: 1000 Hz",
};

/** Reads comment lines as they come. */
export interface CommentReader {
  /** Takes what stands behind the `#` of a line. */
  readonly take: (text: string, line: number) => void;
  /** What was stated so far. */
  readonly statements: Statements;
  readonly cautions: readonly Caution[];
}

/**
 * Makes a reader of `# key: value` lines. Case, spaces, hyphens and underscores of a key do not matter; a known key must
 * state an SI unit; a line that is no such statement is a plain comment, and one that was probably meant as a statement is
 * named in a `Caution`.
 */
export function commentReader(): CommentReader {
  const statements: Partial<Record<Key, string | number>> = {};
  const cautions: Caution[] = [];
  const said = new Set<string>();
  const take = (text: string, line: number): void => {
    const [, name, value] = /^([^:]{1,40}):(.*)$/s.exec(text) ?? [];
    if (name === undefined || value === undefined) return;
    const letters = plainName(name).replaceAll("_", "");
    const kind = Object.hasOwn(KINDS, letters) ? KINDS[letters] : undefined;
    if (kind === undefined) {
      if (!Object.hasOwn(NEAR, letters) || said.has(letters)) return;
      said.add(letters);
      cautions.push({
        code: "comment-not-read",
        message: `line ${line}: the comment ${quoted(text.trim())} was not read; if it is meant, write it as "# ${NEAR[letters]}"`,
        where: `line ${line}`,
      });
      return;
    }
    const stated = withoutTrail(value);
    const read = statementOf(kind, name.trim(), stated, line);
    const earlier = statements[kind.key];
    if (earlier !== undefined && earlier !== read) {
      fail(
        "unreadable-file",
        `line ${line} states ${name.trim()} ${quoted(stated)}, an earlier line states ${earlier}; it may be stated once`,
        { where: `line ${line}`, values: { given: read, earlier } },
      );
    }
    statements[kind.key] = read;
  };
  return { take, statements: statements as Statements, cautions };
}

/** Takes off what a table program that saved the file again puts behind a comment: a delimiter for each column. */
export function withoutTrail(value: string): string {
  let length = value.length;
  while (length > 0 && ', ;\t\n"'.includes(value[length - 1] as string)) length--;
  return value.slice(0, length).trim();
}

function statementOf(
  { key, unit, words, text }: Kind,
  name: string,
  value: string,
  line: number,
): string | number {
  const where = `line ${line}`;
  if (text) return checkFootwear(`${name} (${where})`, value);
  if (words !== undefined) {
    const word = words.find((known) => known === value.toLowerCase());
    if (word !== undefined) return word;
    fail("unreadable-file", `${where}: ${name} is ${quoted(value)}; it must be ${words.join(" or ")}`, {
      argument: key,
      where,
      values: { given: value, allowed: words },
    });
  }
  const [, digits = "", rest = ""] = /^([+-]?[\d.]+(?:e[+-]?\d+)?)(.*)$/is.exec(value) ?? [];
  const allowed = `comment lines take ${unit === "" ? "a plain number" : `SI units, here ${unit}`}: "# ${name}: ${EXAMPLES[key]}"`;
  if (!Number.isFinite(Number(digits)) || digits === "") {
    fail("unreadable-file", `${where}: ${name} is ${quoted(value)}, which is no number; ${allowed}`, {
      argument: key,
      where,
      values: { given: value },
    });
  }
  const written = rest.trim();
  if (written !== unit) refuseUnit(`${where}: ${name} is ${quoted(value)}`, written, key, where, allowed);
  const bounds = key === "sampleRate" ? { above: 0, unit: "Hz" } : PLAUSIBLE_BOUNDS[key as "mass"];
  return requireNumber(`${name} (${where})`, Number(digits), bounds);
}

const EXAMPLES: Readonly<Partial<Record<Key, string>>> = {
  mass: "70 kg",
  height: "1.78 m",
  speed: "3.3 m/s",
  grade: "0.05",
  sampleRate: "1000 Hz",
};

function refuseUnit(sentence: string, written: string, key: Key, where: string, allowed: string): never {
  const details = { argument: key, where, values: { given: written } };
  if (written === "") fail("unknown-unit", `${sentence}, without a unit; ${allowed}`, details);
  try {
    unitFactor(written);
  } catch (caught) {
    if (!isGaitKineticsError(caught)) throw caught;
    fail("unknown-unit", `${sentence}, whose unit is not known; ${allowed}`, details);
  }
  fail("unit-mismatch", `${sentence}; ${allowed}`, details);
}
