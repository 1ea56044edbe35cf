import type { Caution } from "../../units/index.js";
import type { C3dGroup, C3dParameter } from "./c3dFile.js";
import type { NumberAccess } from "./numberAccess.js";
import { quoted, refuseFile } from "./refuse.js";
import type { TextReader } from "./text.js";

/** Bytes of one value by the code of its type; the sign of −1 only marks characters. */
const TYPES: Readonly<Record<number, C3dParameter["type"]>> = {
  "-1": "character",
  1: "byte",
  2: "integer",
  4: "float",
};

interface OpenGroup {
  readonly head: Omit<C3dGroup, "parameters">;
  readonly parameters: C3dParameter[];
}

/** What was met that is odd but readable. */
interface Oddities {
  unknownTypes: number;
  cutDescriptions: number;
  repeatedGroups: number;
  repeatedParameters: number;
}

/**
 * Reads the list of groups and parameters. It goes on past the blocks it was declared to take, up to the first data
 * block: files exist whose count is too small.
 *
 * @param from - Place of the first record.
 * @param to - Place of the first data block.
 */
export function readParameters(
  numbers: NumberAccess,
  texts: TextReader,
  from: number,
  to: number,
): { readonly groups: readonly C3dGroup[]; readonly cautions: readonly Caution[] } {
  const groups = new Map<number, OpenGroup>();
  const known = new Map<number, Set<string>>();
  const named = new Set<number>();
  const odd: Oddities = { unknownTypes: 0, cutDescriptions: 0, repeatedGroups: 0, repeatedParameters: 0 };
  const openGroup = (id: number): OpenGroup => {
    const open = groups.get(id) ?? {
      head: { id, name: `GROUP${id}`, description: "", locked: false },
      parameters: [],
    };
    groups.set(id, open);
    return open;
  };
  let at = from;
  while (at + 2 <= to) {
    const length = int8(numbers.uint8(at));
    const id = int8(numbers.uint8(at + 1));
    if (length === 0) break;
    const where = `parameter record at byte ${at}`;
    const pointer = at + 2 + Math.abs(length);
    if (pointer + 2 > to) refuseFile(where, `it runs past byte ${to}, where the data begin`);
    if (id === 0) refuseFile(where, "its group is 0; groups are numbered from 1 to 127");
    const step = numbers.uint16(pointer);
    const end = step === 0 ? to : pointer + step;
    if (end > to) {
      refuseFile(where, `it points ${step} bytes on, past byte ${to}, where the data begin`, { step, to });
    }
    const name = texts.read(at + 2, pointer);
    const record = { where: `${where} (${quoted(name)})`, name, locked: length < 0, id };
    if (id < 0) {
      const description = readDescription(pointer + 2, end, numbers, texts, odd, record.where);
      const open = openGroup(-id);
      if (named.has(-id)) odd.repeatedGroups++;
      else {
        named.add(-id);
        groups.set(-id, { ...open, head: { id: -id, name, description, locked: length < 0 } });
      }
    } else {
      const parameter = readParameter(record, pointer + 2, end, numbers, texts, odd);
      if (parameter !== null) {
        const names = known.get(id) ?? new Set();
        known.set(id, names);
        if (names.has(name)) odd.repeatedParameters++;
        names.add(name);
        openGroup(id).parameters.push(parameter);
      }
    }
    if (step === 0) break;
    at = end;
  }
  const nameless = [...groups.keys()].filter((id) => !named.has(id));
  return {
    groups: [...groups.values()].map(({ head, parameters }) => ({ ...head, parameters })),
    cautions: cautionsOf(odd, nameless),
  };
}

function readParameter(
  { where, name, locked }: { readonly where: string; readonly name: string; readonly locked: boolean },
  from: number,
  end: number,
  numbers: NumberAccess,
  texts: TextReader,
  odd: Oddities,
): C3dParameter | null {
  if (from + 2 > end) refuseFile(where, `it ends at byte ${end}, before its type and its dimensions`);
  const code = int8(numbers.uint8(from));
  const start = from + 2 + numbers.uint8(from + 1);
  if (start > end) refuseFile(where, `it ends at byte ${end}, within its dimensions`);
  const dimensions = Array.from({ length: start - from - 2 }, (_, k) => numbers.uint8(from + 2 + k));
  const type = TYPES[code];
  if (type === undefined) {
    odd.unknownTypes++;
    return null;
  }
  const size = Math.abs(code);
  // A zero first: a product of many sizes may be infinite, and 0 × infinity is no number.
  const count = dimensions.includes(0) ? 0 : dimensions.reduce((product, one) => product * one, 1);
  if (start + count * size > end) {
    refuseFile(
      where,
      `its dimensions ${dimensions.slice(0, 7).join(" × ")}${dimensions.length > 7 ? " × …" : ""} need ${count * size} bytes and the record has ${end - start}`,
      { dimensions, bytes: end - start },
    );
  }
  const description = readDescription(start + count * size, end, numbers, texts, odd, where);
  const head = { name, description, locked, dimensions };
  if (type === "character") {
    const width = dimensions[0] ?? 1;
    const data = Array.from({ length: count === 0 ? 0 : count / width }, (_, k) =>
      texts.read(start + k * width, start + (k + 1) * width),
    );
    return { ...head, type, data };
  }
  const value = {
    byte: (at: number) => int8(numbers.uint8(at)),
    integer: numbers.int16,
    float: numbers.float32,
  }[type];
  return { ...head, type, data: Array.from({ length: count }, (_, k) => value(start + k * size)) };
}

/** Reads the text behind a record's data; one that runs over into the next record is cut there. */
function readDescription(
  at: number,
  end: number,
  numbers: NumberAccess,
  texts: TextReader,
  odd: Oddities,
  where: string,
): string {
  if (at > end) refuseFile(where, `it ends at byte ${end}, within its own data`);
  if (at === end) return "";
  const last = at + 1 + numbers.uint8(at);
  if (last > end) odd.cutDescriptions++;
  return texts.read(at + 1, Math.min(last, end));
}

function int8(byte: number): number {
  return (byte << 24) >> 24;
}

function cautionsOf(odd: Oddities, nameless: readonly number[]): Caution[] {
  const say = (code: string, count: number, message: string): Caution[] =>
    count === 0 ? [] : [{ code, message, where: "parameters", values: { count } }];
  return [
    ...say(
      "parameter-type-unknown",
      odd.unknownTypes,
      `${odd.unknownTypes} of the parameters have a type the format does not define and were left out`,
    ),
    ...say(
      "description-cut",
      odd.cutDescriptions,
      `${odd.cutDescriptions} of the descriptions run into the next record and were cut there`,
    ),
    ...say(
      "parameter-repeated",
      odd.repeatedGroups + odd.repeatedParameters,
      `${odd.repeatedGroups} groups and ${odd.repeatedParameters} parameters are in the file more than once; the first of each is used`,
    ),
    ...say(
      "group-missing",
      nameless.length,
      `parameters belong to group ${nameless.join(", ")}, which the file does not name`,
    ),
  ];
}
