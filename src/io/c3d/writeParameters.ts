import { fail } from "../../units/index.js";
import type { C3dEncoding, C3dGroup, C3dParameter, C3dProcessor } from "./c3dFile.js";
import { numberAccess } from "./numberAccess.js";
import { encodeText } from "./text.js";

const CODES = { character: -1, byte: 1, integer: 2, float: 4 } as const;
const MOST_NAME = 127;
const MOST_TEXT = 255;
const MOST_RECORD = 0xffff;

/**
 * Makes the records of all groups, then of all parameters, in their order, and the end of the list.
 * @returns Bytes behind the four that begin the parameter section.
 */
export function writeParameters(
  groups: readonly C3dGroup[],
  processor: C3dProcessor,
  encoding: C3dEncoding,
): Uint8Array {
  const records = [
    ...groups.map((group) => groupRecord(group, groups, processor, encoding)),
    ...groups.flatMap((group) =>
      group.parameters.map((parameter) => parameterRecord(group, parameter, processor, encoding)),
    ),
  ];
  const bytes = new Uint8Array(records.reduce((sum, record) => sum + record.length, 2));
  let at = 0;
  for (const record of records) {
    bytes.set(record, at);
    at += record.length;
  }
  return bytes;
}

function groupRecord(
  { id, name, description, locked }: C3dGroup,
  groups: readonly C3dGroup[],
  processor: C3dProcessor,
  encoding: C3dEncoding,
): Uint8Array {
  if (!Number.isInteger(id) || id < 1 || id > 127 || groups.filter((other) => other.id === id).length > 1) {
    fail("out-of-range", `group ${name} has the id ${id}; each group has its own, from 1 to 127`, {
      argument: "groups",
      where: name,
      values: { id },
    });
  }
  return record(name, name, -id, locked, new Uint8Array(0), description, processor, encoding);
}

function parameterRecord(
  group: C3dGroup,
  parameter: C3dParameter,
  processor: C3dProcessor,
  encoding: C3dEncoding,
): Uint8Array {
  const { name, type, description, locked } = parameter;
  const where = `${group.name}:${name}`;
  const [dimensions, data] =
    parameter.type === "character"
      ? textData(parameter.dimensions, parameter.data, encoding, where)
      : [parameter.dimensions, numberData(parameter.data, parameter.type, processor, where)];
  if (dimensions.length > 255 || dimensions.some((one) => !Number.isInteger(one) || one < 0 || one > 255)) {
    fail("out-of-range", `${where} is ${dimensions.join(" × ")}; a dimension is a whole number up to 255`, {
      argument: "groups",
      where,
    });
  }
  // A product without a zero only: an empty list has any dimensions with one.
  const count = dimensions.includes(0) ? 0 : dimensions.reduce((product, one) => product * one, 1);
  if (count * Math.abs(CODES[type]) !== data.length) {
    fail(
      "unequal-lengths",
      `${where} is ${dimensions.join(" × ")} and holds ${parameter.data.length} values; its dimensions must give their number`,
      { argument: "groups", where },
    );
  }
  const body = new Uint8Array(2 + dimensions.length + data.length);
  body[0] = CODES[type];
  body[1] = dimensions.length;
  body.set(dimensions, 2);
  body.set(data, 2 + dimensions.length);
  return record(name, where, group.id, locked, body, description, processor, encoding);
}

function record(
  name: string,
  where: string,
  id: number,
  locked: boolean,
  body: Uint8Array,
  description: string,
  processor: C3dProcessor,
  encoding: C3dEncoding,
): Uint8Array {
  const label = encodeText(name, encoding);
  const text = encodeText(description, encoding);
  if (label.length < 1 || label.length > MOST_NAME) {
    refuseLength(where, "its name", label.length, `from 1 to ${MOST_NAME}`);
  }
  if (text.length > MOST_TEXT) refuseLength(where, "its description", text.length, `up to ${MOST_TEXT}`);
  const step = 2 + body.length + 1 + text.length;
  if (step > MOST_RECORD) refuseLength(where, "its record", step, `up to ${MOST_RECORD}`);
  const bytes = new Uint8Array(2 + label.length + step);
  bytes[0] = locked ? -label.length : label.length;
  bytes[1] = id;
  bytes.set(label, 2);
  numberAccess(bytes, processor).setUint16(2 + label.length, step);
  bytes.set(body, 4 + label.length);
  bytes[4 + label.length + body.length] = text.length;
  bytes.set(text, 5 + label.length + body.length);
  return bytes;
}

function refuseLength(where: string, what: string, length: number, allowed: string): never {
  fail("out-of-range", `${where}: ${what} takes ${length} bytes; the format has room for ${allowed}`, {
    argument: "groups",
    where,
    values: { given: length, allowed },
  });
}

/** Texts side by side, filled up with blanks; wider than stated where one of them needs it. */
function textData(
  dimensions: readonly number[],
  data: readonly string[],
  encoding: C3dEncoding,
  where: string,
): readonly [readonly number[], Uint8Array] {
  const texts = data.map((text) => encodeText(text, encoding));
  const stated = dimensions[0] ?? 1;
  const width = texts.reduce((most, text) => Math.max(most, text.length), stated);
  if (width > MOST_TEXT) refuseLength(where, "one of its texts", width, `up to ${MOST_TEXT}`);
  const bytes = new Uint8Array(width * texts.length).fill(0x20);
  for (const [k, text] of texts.entries()) bytes.set(text, k * width);
  return [width === 1 && dimensions.length === 0 ? [] : [width, ...dimensions.slice(1)], bytes];
}

function numberData(
  data: readonly number[],
  type: "byte" | "integer" | "float",
  processor: C3dProcessor,
  where: string,
): Uint8Array {
  const bytes = new Uint8Array(data.length * CODES[type]);
  const numbers = numberAccess(bytes, processor);
  // An integer above 32767 is a count without a sign.
  const [least, most] = type === "byte" ? [-128, 127] : [-32768, 65535];
  for (const [k, value] of data.entries()) {
    const fits =
      type === "float"
        ? numbers.setFloat32(4 * k, value)
        : Number.isInteger(value) && value >= least && value <= most;
    if (!fits) {
      fail("out-of-range", `${where} holds ${value}, which its type ${type} cannot`, {
        argument: "groups",
        where,
        values: { given: value },
      });
    }
    if (type === "byte") bytes[k] = value;
    else if (type === "integer") numbers.setUint16(2 * k, value);
  }
  return bytes;
}
