import { CATALOGUE, type Metric } from "../metrics/index.js";
import { fail, requireNumber, requireOneOf, withDefaults } from "../units/index.js";
import { isRecord, shown } from "./given.js";
import { COMPARE_TRIALS_DEFAULTS, type CompareTrialsOptions, type Settings } from "./options.js";
import { requireEntries } from "./requireEntries.js";

/** Completes and checks the options. */
export function settingsOf(options: CompareTrialsOptions): Settings {
  const settings = withDefaults<CompareTrialsOptions>(COMPARE_TRIALS_DEFAULTS, options);
  requireEntries(settings.metrics);
  requireNumber("shownLevel", settings.shownLevel, { above: 0, below: 1 });
  requireNumber("readingLevel", settings.readingLevel, { above: 0, below: 1 });
  requireNumber("minimumStrides", settings.minimumStrides, { from: 2, whole: true });
  requireNumber("minimumStridesCorrelated", settings.minimumStridesCorrelated, { from: 2, whole: true });
  requireNumber("similarMargin", settings.similarMargin, { from: 0, to: 1000 });
  requireNumber("speedTolerance", settings.speedTolerance, { from: 0 });
  requireOneOf("speedEffect", settings.speedEffect, ["kept", "removed"]);
  requireOneOf("method", settings.method, ["student", "bootstrap"]);
  requireNumber("resamples", settings.resamples, { from: 100, to: 1_000_000, whole: true });
  requireNumber("seed", settings.seed, { from: 0, to: 4294967295, whole: true });
  for (const option of ["smallestDetectableChange", "margins", "speedEffects"] as const) {
    const changes: unknown = settings[option];
    if (!isRecord(changes)) {
      fail(
        "wrong-type",
        `${option} is ${shown(changes)}; an object is needed that holds ${ENTRY} by metric id`,
        {
          argument: option,
        },
      );
    }
    for (const [id, change] of Object.entries(changes)) requireSourced(option, id, change, settings.metrics);
  }
  return settings;
}

/** In any unit; a larger one times a mean need not be finite. */
const LARGEST_CHANGE = 1e9;
const ENTRY = "{ value, unit, source }";

/** A metric of the catalogue that is not compared may have a change, as those of `reliability` do. */
function requireSourced(
  option: "smallestDetectableChange" | "margins" | "speedEffects",
  id: string,
  change: unknown,
  metrics: readonly Metric[],
): void {
  const argument = `${option}.${id}`;
  const metric = [...metrics, ...CATALOGUE].find((entry) => entry.id === id);
  if (metric === undefined) {
    fail("out-of-range", `${argument}: "${id}" is neither in the catalogue nor among the metrics compared`, {
      argument,
      values: { given: id, allowed: metrics.map((entry) => entry.id) },
    });
  }
  const { normalised } = metric;
  const allowed = [
    metric.unit,
    "%",
    ...(normalised !== undefined && normalised.by !== "mass and distance" ? [normalised.unit] : []),
  ];
  if (!isRecord(change)) {
    fail(
      "wrong-type",
      `${argument} is ${shown(change)}; ${ENTRY} is needed, in ${allowed.join(" or ")}, with the source it is from`,
      { argument, values: { allowed } },
    );
  }
  const { value, unit, source, degreesOfFreedom } = change;
  requireNumber(argument, value, {
    from: option === "speedEffects" ? -LARGEST_CHANGE : 0,
    to: LARGEST_CHANGE,
    ...(typeof unit === "string" && { unit }),
  });
  if (degreesOfFreedom !== undefined) {
    requireNumber(`${argument}.degreesOfFreedom`, degreesOfFreedom, { above: 0 });
  }
  if (typeof source !== "string" || source.trim() === "") {
    fail("missing-value", `${argument} names no source; a change that somebody measured needs one`, {
      argument,
    });
  }
  if (typeof unit !== "string" || !allowed.includes(unit)) {
    fail(
      "unit-mismatch",
      `${argument} is in ${typeof unit === "string" ? unit : shown(unit)}; it must be in ${allowed.join(" or ")}`,
      {
        argument,
        values: { given: unit, allowed },
      },
    );
  }
}
