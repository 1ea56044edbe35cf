import { NOT_THE_LOAD_INSIDE } from "../overallSentence.js";
import { forceOf, is, listed, sentence } from "../wording.js";
import { having, overallOf, type RunnersState } from "./readRunners.js";
import type { RunnersComparison } from "./runnersComparison.js";

const AVERAGE = "This is the change of the average runner: one runner may answer otherwise.";
const GROUPS =
  "These are different runners: what sets the groups apart beside the technique is in the difference as well.";

/** Reads the load of the average runner as a whole and puts it into words. */
export function runnersOverall(
  states: readonly RunnersState[],
  design: "paired" | "independent",
  aside: string,
): RunnersComparison["overall"] {
  const reading = overallOf(states);
  const open = having(states, "unsettled");
  const names = (of: readonly RunnersState[]) => of.map(({ component }) => component);
  const toSettle = [...new Set(adviceOf(states, reading === "unsettled"))];
  const parts = [
    verdict(states, reading),
    otherWay(states),
    aside,
    absent(states),
    design === "paired" ? AVERAGE : GROUPS,
    NOT_THE_LOAD_INSIDE,
  ];
  return {
    reading,
    sentence: parts.filter((part) => part !== "").join(" "),
    lower: names(having(states, "lower")),
    higher: names(having(states, "higher")),
    unsettled: names(open),
    ...(toSettle.length > 0 && { toSettle }),
  };
}

function moved(states: readonly RunnersState[], word: "lower" | "higher"): string {
  const those = having(states, word);
  return `${force(those)} ${is(those.length)} ${word} (${listed(those.map(({ changes }) => changes.step))})`;
}

function force(states: readonly RunnersState[]): string {
  return forceOf(states.map(({ component }) => component));
}

function verdict(states: readonly RunnersState[], reading: RunnersComparison["overall"]["reading"]): string {
  const read = states.filter((state) => state.reading !== null);
  const similar = having(read, "similar");
  const alike = similar.length === 0 ? "" : `${force(similar)} ${is(similar.length)} similar`;
  const open = having(read, "unsettled")
    .map((state) => sentence(`${force([state])} is not settled: ${state.reason}`))
    .join(" ");
  const followed = (first: string) =>
    [first, alike === "" ? "" : sentence(alike), open, kilometre(read)]
      .filter((part) => part !== "")
      .join(" ");
  switch (reading) {
    case "shifted":
      return followed(`Shifted, not reduced: ${moved(read, "lower")}, and ${moved(read, "higher")}.`);
    case "raised":
      return followed(`Raised: ${moved(read, "higher")}, and none is shown lower.`);
    case "reduced":
      return `Reduced: ${moved(read, "lower")}${alike === "" ? "" : `, and ${alike}`}; per kilometre, too, each is lower or similar.`;
    case "no clear change":
      return [
        "No clear change: no component is shown lower and none higher.",
        alike === "" ? "" : sentence(alike),
        open,
        open === "" ? "" : "What is not shown to differ need not be the same.",
        kilometre(read),
      ]
        .filter((part) => part !== "")
        .join(" ");
    case "unsettled": {
      if (read.length === 0) return "Unsettled: no component of the force can be compared.";
      if (having(read, "lower").length > 0)
        return [
          `Unsettled: ${moved(read, "lower")}, but load may have moved.`,
          alike === "" ? "" : sentence(alike),
          open,
          kilometre(read),
        ]
          .filter((part) => part !== "")
          .join(" ");
      const reasons = [...new Set(read.map(({ reason }) => reason ?? ""))];
      return reasons.length === 1
        ? `Unsettled: ${reasons[0]}.`
        : `Unsettled: ${read.map((state) => `for ${force([state])}, ${state.reason}`).join("; ")}.`;
    }
  }
}

/** What reads otherwise per kilometre. */
function kilometre(read: readonly RunnersState[]): string {
  const counted = read.filter(({ obstacle }) => obstacle === null);
  if (counted.length === 0) return "";
  const unknown = counted.filter(({ perKilometre }) => perKilometre === null);
  if (unknown.length === counted.length)
    return "Per kilometre nothing is known: speed and step time of every trial are needed.";
  const clauses = (["higher", "lower", "unsettled", "similar"] as const).flatMap((word) => {
    const those = having(counted, word, "perKilometre").filter(({ reading }) => reading !== word);
    if (those.length === 0) return [];
    const changes =
      word === "unsettled" ? "" : ` (${listed(those.map(({ changes: own }) => own.kilometre))})`;
    return [`${force(those)} ${is(those.length)} ${word === "unsettled" ? "not settled" : word}${changes}`];
  });
  if (unknown.length > 0) clauses.push(`nothing is known of ${force(unknown)}`);
  return clauses.length === 0
    ? "Per kilometre the readings are the same."
    : `Per kilometre, where the number of steps counts too, ${listed(clauses)}.`;
}

/** How many runners moved the other way, component by component. */
function otherWay(states: readonly RunnersState[]): string {
  const said = states.filter((state) => state.otherWay !== "");
  return said.map((state) => sentence(`in ${force([state])} ${state.otherWay}`)).join(" ");
}

function absent(states: readonly RunnersState[]): string {
  const missing = states.filter(({ reading }) => reading === null);
  const read = states.filter(({ reading }) => reading !== null);
  if (missing.length === 0) return "";
  const words = missing.map((state) => `${force([state])} was ${state.reason}`).join("; ");
  return read.length === 1 ? `This speaks of ${force(read)} alone: ${words}.` : sentence(words);
}

function adviceOf(states: readonly RunnersState[], unsettled: boolean): string[] {
  const read = states.filter(({ reading }) => reading !== null);
  const advice = [
    ...read.flatMap(({ toSettle }) => toSettle),
    ...(unsettled &&
    having(read, "lower").length > 0 &&
    read.some(({ perKilometre }) => perKilometre === null)
      ? ["speed and step time of every trial, for loads per kilometre"]
      : []),
    ...(unsettled
      ? states
          .filter(({ reading, recorded }) => reading === null && (recorded || read.length < 2))
          .flatMap(({ toSettle }) => toSettle)
      : []),
  ];
  if (!unsettled || advice.length > 0) return advice;
  return [
    "a choice between load per step and load per kilometre, which point different ways, or more runners",
  ];
}
