/**
 * Writes the numbers of the demo, a trial and a comparison, as `tests/numbers` holds them to: 12 significant digits. Run
 * after a number was meant to move; the changelog says which, by how much and why.
 */
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { demoNumbers } from "./numbers/demoNumbers.js";

const folder = fileURLToPath(new URL("../tests/fixtures/numbers/", import.meta.url));
for (const [name, value] of Object.entries(demoNumbers())) {
  const digits = (_key: string, inner: unknown) =>
    typeof inner === "number" ? Number(inner.toPrecision(12)) : inner;
  writeFileSync(`${folder}${name}.json`, `${JSON.stringify(value, digits)}\n`);
  console.log(`tests/fixtures/numbers/${name}.json written`);
}
