import { fail } from "../../units/index.js";

/** An object of a JSON file; its own fields alone are looked up. */
export type JsonObject = Readonly<Record<string, unknown>>;

/** Reads a sidecar: JSON with one object. */
export function readObject(text: string, argument: string): JsonObject {
  const value = parsed(text, argument);
  if (!isObject(value)) {
    fail("unreadable-file", `${argument} holds no JSON object; a sidecar is one`, {
      argument,
      where: argument,
    });
  }
  return value;
}

/** Tells an object from lists and values. */
export function isObject(value: unknown): value is JsonObject {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** A field of an object; `undefined` where it has none of its own. */
export function fieldOf(value: JsonObject, name: string): unknown {
  return Object.hasOwn(value, name) ? value[name] : undefined;
}

function parsed(text: string, argument: string): unknown {
  try {
    return JSON.parse(text);
  } catch (caught) {
    const reason = caught instanceof Error ? caught.message.replace(/\s+/g, " ").slice(0, 160) : "";
    fail("unreadable-file", `${argument} is no JSON (${reason})`, { argument, where: argument });
  }
}
