import { fail, isGaitKineticsError } from "../../units/index.js";

/**
 * Runs a stage of the work on a recording and puts the recording's name in front of what goes wrong.
 *
 * @throws GaitKineticsError what the stage throws, with the name in front.
 */
export function naming<T>(name: string, stage: () => T): T {
  try {
    return stage();
  } catch (caught) {
    return rethrowNamed(name, caught);
  }
}

/** The same for a stage that takes its time. */
export async function namingLater<T>(name: string, stage: () => Promise<T>): Promise<T> {
  try {
    return await stage();
  } catch (caught) {
    return rethrowNamed(name, caught);
  }
}

function rethrowNamed(name: string, caught: unknown): never {
  if (!isGaitKineticsError(caught)) throw caught;
  const { code, message, argument, where, values } = caught;
  return fail(code, `${name}: ${message}`, { argument, where, values });
}
