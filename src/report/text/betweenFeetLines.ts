import type { Metric } from "../../metrics/index.js";
import type { Trial } from "../../trial/index.js";
import { betweenFeet } from "../wording/betweenFeet.js";
import { tableHead } from "./tableHead.js";
import { type Column, tableRow } from "./tableRow.js";
import { wrap } from "./wrap.js";

/** Sets the two feet beside each other under their heading; nothing where the trial has no metric that speaks. */
export function betweenFeetLines(trial: Trial, metrics: readonly Metric[]): string[] {
  const { rows, notes, level } = betweenFeet(trial, metrics);
  if (rows.length === 0 && notes.length === 0) return [];
  const columns: readonly Column[] = [
    { heading: "Left and right", width: 26, left: true },
    { heading: "index, %", width: 9 },
    { heading: `${level} interval`, width: 18 },
    { heading: "right − left", width: 20 },
  ];
  return [
    ...(rows.length === 0 ? ["Left and right"] : tableHead(columns)),
    ...rows.flatMap(({ name, index, interval, difference }) =>
      tableRow(columns, [`  ${name}`, index, interval, difference]),
    ),
    ...(rows.length === 0
      ? []
      : wrap("Index: 100 (right − left) ÷ mean of both feet; positive where the right is the larger.")),
    ...notes.flatMap((note) => wrap(note)),
    "",
  ];
}
