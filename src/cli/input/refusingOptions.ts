import { InvalidArgumentError } from "commander";
import { isGaitKineticsError } from "../../units/index.js";
import { optionWords } from "../output/optionWords.js";

/** A column's new name that this reader does not know is bad usage, whatever the file holds. */
export async function refusingOptions<T>(read: () => T | Promise<T>): Promise<T> {
  try {
    return await read();
  } catch (caught) {
    if (isGaitKineticsError(caught) && caught.argument === "columns" && caught.where === undefined) {
      throw new InvalidArgumentError(optionWords(caught.message));
    }
    throw caught;
  }
}
