import type { Step } from "../events/index.js";
import type { GroundReaction } from "../force/index.js";
import type { Metric, MetricNeed } from "../metrics/index.js";
import { fail } from "../units/index.js";
import { unmetNeed } from "./notComputed.js";
import type { StepRow } from "./trial.js";

/**
 * Every metric whose needs the trial meets, for every contact, and the first unmet need of each of the others.
 * @param steps - Those of one pass share results.
 */
export function computeRows(
  ground: GroundReaction,
  steps: readonly Step[],
  metrics: readonly Metric[],
): { rows: StepRow[]; unmet: Map<string, MetricNeed> } {
  const unmet = new Map<string, MetricNeed>();
  const possible: Metric[] = [];
  for (const metric of metrics) {
    const need = unmetNeed(metric, ground, steps);
    if (need === null) possible.push(metric);
    else unmet.set(metric.id, need);
  }
  // Copies of one object with every id have one shape, which is quicker to make and to read than ids added one by one.
  const blank: Record<string, number | null> = Object.fromEntries(possible.map(({ id }) => [id, null]));
  const rows = steps.map((step): StepRow => {
    const values = { ...blank };
    for (const { id, compute } of possible) {
      const value = compute(ground, step);
      if (value !== null && !Number.isFinite(value)) refuseValue(id, value, step);
      values[id] = value;
    }
    const { side, initialContact, toeOff } = step.contact;
    return { side, initialContact, toeOff, values };
  });
  return { rows, unmet };
}

function refuseValue(id: string, value: unknown, { contact }: Step): never {
  fail(
    "not-finite",
    `the metric "${id}" gives ${String(value)} for the contact at ${contact.initialContact.toFixed(3)} s; a finite number or null is needed`,
    {
      argument: "metrics",
      where: id,
      values: { given: String(value), initialContact: contact.initialContact },
    },
  );
}

/** Refuses a list that holds anything but catalogue entries. */
export function requireMetrics(metrics: readonly Metric[]): void {
  const odd = Array.isArray(metrics)
    ? metrics.find((metric) => typeof metric?.compute !== "function")
    : metrics;
  if (Array.isArray(metrics) && odd === undefined && !metrics.includes(undefined as never)) return;
  fail(
    "wrong-type",
    `metrics holds ${JSON.stringify(odd) ?? String(odd)}; a list of catalogue entries is needed, such as metricById("contactTime")`,
    {
      argument: "metrics",
    },
  );
}
