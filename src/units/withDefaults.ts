import { fail } from "./error.js";

/** Every option present, none `undefined`. */
export type Complete<O> = { readonly [K in keyof O]-?: Exclude<O[K], undefined> };

/**
 * Completes a caller's options with the defaults; an option that is left out or `undefined` takes its default.
 *
 * @param defaults - Every option with its default; an option that may be absent has the default `null`.
 * @param options - What the caller gave.
 * @throws GaitKineticsError `unknown-option`: a name that is not among the defaults; `wrong-type`: options are no object.
 * @example
 * withDefaults<{ order?: number | undefined }>({ order: 4 }, {}).order // 4
 */
export function withDefaults<O extends object>(defaults: Complete<O>, options: O): Complete<O> {
  if (typeof options !== "object" || options === null) {
    fail("wrong-type", `options are ${String(options)}; an object is needed`, { argument: "options" });
  }
  const complete = { ...defaults } as Record<string, unknown>;
  // The usual case in hot paths.
  if ((options as object) === defaults) return complete as Complete<O>;
  for (const name of Object.keys(options)) {
    if (!Object.hasOwn(defaults, name)) {
      const allowed = Object.keys(defaults);
      fail("unknown-option", `"${name}" is no option here; the options are ${allowed.join(", ")}`, {
        argument: name,
        values: { allowed },
      });
    }
    const value = options[name as keyof O];
    if (value !== undefined) complete[name] = value;
  }
  return complete as Complete<O>;
}
