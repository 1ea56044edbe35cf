import fc from "fast-check";
import { expect, it } from "vitest";
import { type ReadCsvOptions, readCsv, writeCsv } from "../../src/io/index.js";
import { checkRecording } from "../../src/recording/index.js";
import { isGaitKineticsError } from "../../src/units/index.js";
import { fixture, TREADMILL_RUN } from "./fixtures.js";

const own = writeCsv(readCsv(fixture("io/python-quoted-crlf.csv")));
const treadmill = fixture("treadmill-run/forces-2.5ms.txt").split("\n").slice(0, 12).join("\n");
const pieces = fc.oneof(
  fc.constantFrom(
    ",",
    ";",
    "\t",
    "\n",
    "\r\n",
    "\r",
    '"',
    '""',
    "#",
    "# mass: 70 kg\n",
    ":",
    "[N]",
    "up [N]",
    "NaN",
    "-",
    ".",
    "1e9",
    "\0",
    "\uFEFF",
    " ",
    "0x1F",
    "٣",
  ),
  fc.string({ unit: "binary", maxLength: 6 }),
);
const edits = fc.array(
  fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    cut: fc.integer({ min: 0, max: 12 }),
    piece: pieces,
  }),
  {
    minLength: 1,
    maxLength: 6,
  },
);

/** Either a recording that is whole, or the library's own error in one line. */
function readOrRefuse(text: string, options: ReadCsvOptions): void {
  try {
    checkRecording(readCsv(text, options));
  } catch (caught) {
    if (!isGaitKineticsError(caught)) throw caught;
    expect(caught.message).not.toMatch(/[\r\n]/);
    expect(caught.message.length).toBeLessThan(1000);
  }
}

it.each<[string, string, ReadCsvOptions]>([
  ["own format", own, {}],
  ["treadmill run", treadmill, TREADMILL_RUN],
])(
  "property: the %s, cut and patched anywhere, is read or refused by the library's own error",
  (_, text, options) =>
    fc.assert(
      fc.property(edits, (changes) => {
        const changed = changes.reduce((whole, { at, cut, piece }) => {
          const place = Math.floor(at * whole.length);
          return whole.slice(0, place) + piece + whole.slice(place + cut);
        }, text);
        readOrRefuse(changed, options);
      }),
      { numRuns: 1500, seed: 20 },
    ),
);

it("property: any text at all is read or refused by the library's own error", () =>
  fc.assert(
    fc.property(fc.array(pieces, { maxLength: 60 }), (parts) =>
      readOrRefuse(parts.join(""), { sampleRate: 1 }),
    ),
    { numRuns: 1500, seed: 20 },
  ));
