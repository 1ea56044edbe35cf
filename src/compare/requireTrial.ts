import { fail } from "../units/index.js";
import { isRecord } from "./given.js";

const LISTS = ["contacts", "partialContacts", "steps", "notComputed", "cautions"] as const;
const OBJECTS = ["settings", "subject", "summary", "curves"] as const;

/**
 * Refuses what is no trial, or lacks a part that every trial has, which plain JavaScript may hand over.
 *
 * @param argument - Its name, for the message.
 */
export function requireTrial(argument: string, trial: unknown): void {
  if (!isRecord(trial) || trial.schema !== "gait-kinetics/trial/1") {
    fail("wrong-type", `${argument} is no trial; what analyseTrial returns is needed`, { argument });
  }
  const lacks = [
    ...OBJECTS.filter((name) => !isRecord(trial[name])),
    ...(isRecord(trial.settings) && !isRecord(trial.settings.events) ? ["settings.events"] : []),
    ...LISTS.filter((name) => !Array.isArray(trial[name])),
  ];
  if (lacks.length === 0) return;
  fail(
    "wrong-type",
    `${argument} calls itself a trial and lacks ${lacks.join(", ")}; all that analyseTrial returns is needed`,
    { argument, values: { lacks } },
  );
}
