import { existsSync, readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { loadTarget } from "../../scripts/fuzz/loadTarget.js";
import type { TargetName } from "../../scripts/fuzz/target.js";
import { isGaitKineticsError } from "../../src/units/index.js";

const folder = new URL("../fixtures/fuzz/", import.meta.url);
const kept = readdirSync(folder).filter((name) => name.endsWith(".json"));

it.each(kept)("%s is read, or refused in one line", async (name) => {
  const { reader, options, files } = JSON.parse(readFileSync(new URL(name, folder), "utf8")) as {
    readonly reader: TargetName;
    readonly options: unknown;
    readonly files?: unknown;
  };
  const file = new URL(name.replace(/\.json$/, ".bin"), folder);
  const bytes: unknown = existsSync(file) ? new Uint8Array(readFileSync(file)) : files;
  const target = await loadTarget(reader);
  try {
    target.read({ bytes, options });
  } catch (caught) {
    if (!isGaitKineticsError(caught)) throw caught;
    expect(caught.message).not.toMatch(/[\r\n]/);
  }
});
