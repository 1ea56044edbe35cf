import type { WrittenColumn } from "./tableColumns.js";

/** A name that ends in an axis: `HEELx`, `m1_X`, `Mark01 Y`. */
const ON_AXIS = /^(.*[^\s_.:-])([\s_.:-]*)([xyz])$/i;
const IS_FORCE = /^(?:.*grf|f|force)$|force/i;
/** Quantities that a body part has along axes and that are no place. */
const NO_PLACE = /ang|mom|pow|vel|acc|gyr|emg|^m$/i;

/** What single names most likely stand for, in the words that the reader of tables knows. */
const WORDS: readonly (readonly [RegExp, string])[] = [
  [/^(?:time|zeit|timestamp)\b/i, "time"],
  [/^(?:frame|sample|index)\b/i, "sample"],
  [/free.?moment/i, "free_moment"],
  [/cop.*(?:ml|medi|later)/i, "cop_right"],
  [/cop.*(?:ap|anter|poster)/i, "cop_forward"],
];

/** The same of forces. */
const FORCE_WORDS: readonly (readonly [RegExp, string])[] = [
  [/anterior|posterior|\bap\b/i, "forward"],
  [/medio|lateral|\bml\b/i, "right"],
  [/vertical|\bv?grf\b|force/i, "up"],
];

/** Names by pattern or exact, with what they most likely stand for; only where something speaks for it. */
export function likelyColumns(unknown: readonly WrittenColumn[]): Readonly<Record<string, string>> {
  const onAxes = partsOf(unknown);
  const names = onAxes.map(({ name }) => name);
  return { ...singles(unknown.filter(({ name }) => !names.includes(name))), ...alongAxes(onAxes) };
}

function singles(unknown: readonly WrittenColumn[]): Record<string, string> {
  const found: Record<string, string> = {};
  for (const { name, unit } of unknown) {
    const isForce = unit === "" ? /grf|force|^vertical$/i.test(name) : /^(?:k?N|lbf)$/.test(unit);
    const words = isForce ? [...WORDS, ...FORCE_WORDS] : WORDS;
    const word = words.find(([pattern]) => pattern.test(name))?.[1];
    if (word !== undefined && !Object.values(found).includes(word) && isTypable(name)) found[name] = word;
  }
  // A table of ground reactions with one moment has the one about the vertical.
  const moments = unknown.filter(({ name }) => /^M_?[xyz]$/i.test(name));
  const [only] = moments;
  if (moments.length === 1 && only !== undefined) found[only.name] = `T${only.name.slice(-1).toLowerCase()}`;
  return found;
}

/** A name with the axis it ends in. */
interface Part {
  readonly name: string;
  readonly base: string;
  readonly between: string;
  readonly axis: string;
}

/** Names that others share all but the axis with. */
function partsOf(unknown: readonly WrittenColumn[]): Part[] {
  const parts = unknown.flatMap(({ name }) => {
    const [, base = "", between = "", axis = ""] = ON_AXIS.exec(name) ?? [];
    return base === "" || !isTypable(name) ? [] : [{ name, base, between, axis }];
  });
  return parts.filter(({ base }) => parts.filter((other) => other.base === base).length > 1);
}

function alongAxes(whole: readonly Part[]): Record<string, string> {
  const forces = whole.filter(({ base }) => IS_FORCE.test(base));
  const bases = new Set(forces.map(({ base }) => base));
  const places = whole.filter(({ base }) => !IS_FORCE.test(base) && !NO_PLACE.test(base));
  return {
    ...Object.fromEntries(
      forces.map(({ name, base, axis }) => [
        name,
        `F${axis.toLowerCase()}${bases.size > 1 ? `@${base}` : ""}`,
      ]),
    ),
    ...Object.fromEntries(
      places.map(({ between, axis }) => [`*${between}${axis}`, `marker:*:${axis.toLowerCase()}`]),
    ),
  };
}

/** Whether a name can stand in a list of pairs with commas between, in quotes. */
export function isTypable(name: string): boolean {
  return name !== "" && !/[,"*]/.test(name);
}
