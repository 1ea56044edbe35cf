import { fail } from "../../units/index.js";
import { shown } from "../shown.js";

/** A form of the intraclass correlation by Shrout & Fleiss's name or McGraw & Wong's. */
export type CorrelationForm =
  | "ICC(1,1)"
  | "ICC(2,1)"
  | "ICC(3,1)"
  | "ICC(1,k)"
  | "ICC(2,k)"
  | "ICC(3,k)"
  | "ICC(1)"
  | "ICC(A,1)"
  | "ICC(C,1)"
  | "ICC(k)"
  | "ICC(A,k)"
  | "ICC(C,k)";

/** What a form is: its model and whether it is of one trial or of the mean of all. */
export interface FormParts {
  /** `one-way`: each subject has trials of its own; `agreement`, `consistency`: all share them. */
  readonly model: "one-way" | "agreement" | "consistency";
  readonly of: "single" | "mean";
  readonly form: CorrelationForm;
  readonly alsoCalled: CorrelationForm;
}

/** Shrout & Fleiss's name first. */
const FORMS: readonly FormParts[] = [
  { form: "ICC(1,1)", alsoCalled: "ICC(1)", model: "one-way", of: "single" },
  { form: "ICC(2,1)", alsoCalled: "ICC(A,1)", model: "agreement", of: "single" },
  { form: "ICC(3,1)", alsoCalled: "ICC(C,1)", model: "consistency", of: "single" },
  { form: "ICC(1,k)", alsoCalled: "ICC(k)", model: "one-way", of: "mean" },
  { form: "ICC(2,k)", alsoCalled: "ICC(A,k)", model: "agreement", of: "mean" },
  { form: "ICC(3,k)", alsoCalled: "ICC(C,k)", model: "consistency", of: "mean" },
];

/** The six forms by Shrout & Fleiss's names, single trials first. */
export const CORRELATION_FORMS: readonly CorrelationForm[] = [
  "ICC(1,1)",
  "ICC(2,1)",
  "ICC(3,1)",
  "ICC(1,k)",
  "ICC(2,k)",
  "ICC(3,k)",
];

/** Finds a form by either name. */
export function formParts(form: unknown): FormParts {
  const found = FORMS.find((parts) => parts.form === form || parts.alsoCalled === form);
  if (found !== undefined) return found;
  const allowed = FORMS.flatMap((parts) => [parts.form, parts.alsoCalled]);
  return fail("out-of-range", `form is ${shown(form)}; it is one of ${allowed.join(", ")}`, {
    argument: "form",
    values: { given: form, allowed },
  });
}
