import { fail } from "../../units/index.js";
import { decoded8 } from "../bytes/decode.js";

/** The text of one of the files, with `\n` alone for line ends and without a byte order mark. */
export function textOf(given: unknown, argument: string): string {
  let text = given;
  if (given instanceof Uint8Array) {
    text = decoded8(given);
    if (text === null) {
      fail("unreadable-file", `${argument} is not in UTF-8, as the standard asks for`, {
        argument,
        where: argument,
      });
    }
  }
  if (typeof text !== "string") {
    const is = given === null ? "null" : typeof given;
    fail("wrong-type", `${argument} is ${is}; the file's text or bytes are needed`, { argument });
  }
  return (text.startsWith("\uFEFF") ? text.slice(1) : text).replace(/\r\n?/g, "\n");
}
