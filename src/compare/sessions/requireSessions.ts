import type { Trial } from "../../trial/index.js";
import { fail } from "../../units/index.js";
import { type PairedTrial, paired } from "../strideSeries.js";
import type { Session } from "./options.js";

/** A session with its trials' strides paired. */
export interface KnownSession {
  readonly name: string;
  readonly trials: readonly PairedTrial[];
}

/** Takes sessions and checks that they can be set against each other: named once, real trials once each, one filter and gait. */
export function requireSessions(given: readonly Session[]): readonly KnownSession[] {
  const list: unknown = given;
  if (!Array.isArray(list) || list.length === 0) {
    fail("wrong-type", "sessions are no list, or an empty one; { name, trials } of each is needed", {
      argument: "sessions",
    });
  }
  const sessions = (list as unknown[]).map(sessionOf);
  const names = sessions.map(({ name }) => name);
  const twice = names.find((name, k) => names.indexOf(name) !== k);
  if (twice !== undefined) {
    fail("conflict", `session "${twice}" is there twice; give all trials of a session in one entry`, {
      argument: "sessions",
      values: { name: twice },
    });
  }
  const all = sessions.flatMap(({ name, trials }) => trials.map(({ trial }) => ({ name, trial })));
  const again = all.find(({ trial }, k) => all.findIndex((other) => other.trial === trial) !== k);
  if (again !== undefined) {
    fail("conflict", `a trial of session "${again.name}" is there twice; each counts once`, {
      argument: "sessions",
      where: again.name,
    });
  }
  requireAlike(all);
  return sessions;
}

function sessionOf(value: unknown, k: number): KnownSession {
  const { name, trials } = (value ?? {}) as Partial<Session>;
  const where = `sessions[${k}]`;
  if (typeof name !== "string" || name.trim() === "") {
    fail("wrong-type", `${where} has no name; { name, trials } is needed`, { argument: "sessions", where });
  }
  const own: readonly unknown[] = Array.isArray(trials) ? trials : [trials];
  if (own.length === 0) {
    fail("too-short", `session "${name}" holds no trial; at least one is needed`, {
      argument: "sessions",
      where,
    });
  }
  if (own.some((trial) => (trial as Trial | null | undefined)?.schema !== "gait-kinetics/trial/1")) {
    fail(
      "wrong-type",
      `session "${name}" holds something that is no trial; what analyseTrial returns is needed`,
      {
        argument: "sessions",
        where,
      },
    );
  }
  return { name: name as string, trials: (own as readonly Trial[]).map(paired) };
}

/** Numbers of another filter or gait are other quantities. */
function requireAlike(all: readonly { readonly name: string; readonly trial: Trial }[]): void {
  const [first] = all;
  if (first === undefined) return;
  for (const { name, trial } of all) {
    for (const [what, of] of [
      ["with", filterOf],
      ["as", gaitOf],
    ] as const) {
      if (of(trial) === of(first.trial)) continue;
      fail(
        "not-comparable",
        `session "${first.name}" was analysed ${what} ${of(first.trial)} and session "${name}" ${what} ${of(trial)}; that moves loads by as much as a technique: analyse all alike`,
        { argument: "sessions", where: name },
      );
    }
  }
}

function filterOf({ settings: { filter } }: Trial): string {
  return filter === null ? "no filter" : `a ${filter.cutoff} Hz filter of order ${filter.order}`;
}

function gaitOf({ settings }: Trial): string {
  return settings.gait ?? "running";
}
