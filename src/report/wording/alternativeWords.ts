import type { Alternative, AlternativeEffect } from "../../compare/index.js";
import { capitalised } from "./capitalised.js";
import { decimalsFor } from "./decimalsFor.js";
import { formatNumber } from "./formatNumber.js";

/** Something to try, in words. */
export interface AlternativeWords {
  readonly heading: string;
  readonly sentence: string;
  /** What goes which way, a line a kind: loads, then costs as plainly, then motion. */
  readonly summary: readonly { readonly kind: AlternativeEffect["kind"]; readonly text: string }[];
  /** What published work found of each, with its source, a sentence each. */
  readonly findings: readonly string[];
}

/** What stands over every list of alternatives. */
export const ALTERNATIVES_HEADING: string = "What else could be tried, and measured";

/** What stands under it: none of it is shown for this runner. */
export const ALTERNATIVES_PREFACE: string =
  "Published experiments support trying these. What they do for this runner is not known until it is tried and measured in the same way; estimates are a model's. None is a treatment.";

const KINDS: readonly { readonly kind: AlternativeEffect["kind"]; readonly label: string }[] = [
  { kind: "load", label: "Load" },
  { kind: "cost", label: "Cost" },
  { kind: "motion", label: "Motion" },
];

const DIRECTIONS: Readonly<Record<AlternativeEffect["direction"], string>> = {
  lower: "lower",
  higher: "higher",
  unclear: "lower or higher",
};

/** Puts an alternative into words; costs are said as plainly as gains. */
export function alternativeWords({ name, sentence, effects }: Alternative): AlternativeWords {
  const kinds = KINDS.map(({ kind, label }) => ({
    kind,
    label,
    those: effects.filter((effect) => effect.kind === kind),
  })).filter(({ those }) => those.length > 0);
  return {
    heading: capitalised(name),
    sentence,
    summary: kinds.map(({ kind, label, those }) => ({
      kind,
      text: `${label}: ${those.map(movement).join("; ")}.`,
    })),
    findings: kinds.flatMap(({ label, those }) => those.map((effect) => findingOf(label, effect))),
  };
}

/** The sources of all alternatives, each once. */
export function alternativeSources(alternatives: readonly Alternative[]): string {
  return [...new Set(alternatives.flatMap(({ sources }) => sources))].join("; ");
}

/** What a cost comes to is said at once: a direction alone would say more, or less, than was found. */
function movement(effect: AlternativeEffect): string {
  const { kind, quantity, finding, estimate, direction } = effect;
  const price = priceOf(finding);
  const found =
    price === "" && (kind === "cost" || direction === "unclear") ? `: ${finding.replace(/\.$/, "")}` : "";
  const own = [...(estimate === undefined ? [] : [estimateOf(estimate)]), ...(price === "" ? [] : [price])];
  return `${quantity} ${directionWords(effect)}${own.length === 0 ? "" : ` (${own.join("; ")})`}${found}`;
}

/** What a modelled finding gives for a kilometre, where more steps add up: it decides as much as the single step. */
function priceOf(finding: string): string {
  return /[^,;]+ % a kilometre/.exec(finding)?.[0].trim() ?? "";
}

/** An estimate that reaches back to where it starts may leave the quantity as it is. */
function directionWords({ direction, estimate }: AlternativeEffect): string {
  if (estimate === undefined || direction === "unclear") return DIRECTIONS[direction];
  const { from, low, high } = estimate;
  const end = direction === "lower" ? Math.max(low, high) : Math.min(low, high);
  const decimals = decimalsFor(Math.max(Math.abs(from), Math.abs(low), Math.abs(high)));
  const unchanged = formatNumber(end, decimals) === formatNumber(from, decimals);
  return `${DIRECTIONS[direction]}${unchanged ? " or unchanged" : ""}`;
}

function findingOf(label: string, effect: AlternativeEffect): string {
  const { quantity, finding, source, estimate } = effect;
  const said = finding.replace(/\.$/, "");
  const own = estimate === undefined ? "" : ` Estimate for this runner: ${estimateOf(estimate)}.`;
  return `${label}: ${quantity} ${directionWords(effect)}: ${said} (${source}).${own}`;
}

function estimateOf({ unit, from, low, high }: NonNullable<AlternativeEffect["estimate"]>): string {
  const decimals = decimalsFor(Math.max(Math.abs(from), Math.abs(low), Math.abs(high)));
  const write = (value: number) => formatNumber(value, decimals);
  const range = write(low) === write(high) ? write(low) : `${write(low)} to ${write(high)}`;
  return `${range} ${unit}, from ${write(from)}`;
}
