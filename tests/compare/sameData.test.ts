import { describe, expect, it } from "vitest";
import { compareRunners, compareSessions, compareTrials } from "../../src/compare/index.js";
import { CATALOGUE } from "../../src/metrics/index.js";
import { baseline, changed, trialOf, typicalStrides } from "./trialOf.js";

const codes = ({ cautions }: { readonly cautions: readonly { readonly code: string }[] }) =>
  cautions.map(({ code }) => code);
const WORDS = "one recording against itself, or overlapping parts of it, tells nothing";

describe('2026-11-25: a recording against itself read "all similar" without a word', () => {
  it("the same trial, a copy, and one whose contacts stand later in time", () => {
    const one = baseline();
    const later = {
      ...one,
      steps: one.steps.map((row) => ({ ...row, initialContact: row.initialContact + 7 })),
    };
    for (const other of [one, structuredClone(one), later]) {
      const { cautions, overall } = compareTrials(one, other);
      expect(cautions[0]).toEqual({
        code: "same-data",
        message: `80 of 80 contacts have the very same numbers in both trials: ${WORDS}`,
        where: "baseline trial, changed trial",
        values: { contacts: 80, same: 80, pairs: 1 },
      });
      expect(overall.reading).toBe("no clear change");
      expect(overall.sentence).toContain(
        `80 of 80 contacts have the very same numbers in both trials: ${WORDS}.`,
      );
    }
  });
  it("parts of one trial that overlap by a third; parts that meet share nothing", () => {
    const whole = baseline(60);
    const part = (from: number, to: number) => ({ ...whole, steps: whole.steps.slice(from, to) });
    expect(compareTrials(part(0, 60), part(40, 100)).cautions[0]).toMatchObject({
      code: "same-data",
      values: { same: 20, contacts: 60 },
    });
    expect(codes(compareTrials(part(0, 60), part(60, 120)))).not.toContain("same-data");
  });
  it("another trial, one force scaled, and numbers that do not vary are not the same data", () => {
    expect(codes(compareTrials(baseline(), changed()))).not.toContain("same-data");
    const scaled = trialOf(typicalStrides(1, 40, { brakingImpulse: 1.01 }));
    expect(codes(compareTrials(baseline(), scaled))).not.toContain("same-data");
    const flat = trialOf({ peakVerticalForce: Array.from({ length: 40 }, () => 1650) });
    expect(codes(compareTrials(flat, structuredClone(flat)))).not.toContain("same-data");
  });
  it("a tenth of the contacts is let be, more is said", () => {
    const strides = typicalStrides(1, 40);
    const own = typicalStrides(2, 40);
    const shared = (n: number) =>
      trialOf(
        Object.fromEntries(
          Object.entries(own).map(([id, values]) => [
            id,
            [...(strides[id] ?? []).slice(0, n), ...values.slice(n)],
          ]),
        ),
      );
    expect(codes(compareTrials(trialOf(strides), shared(4)))).not.toContain("same-data");
    expect(compareTrials(trialOf(strides), shared(5)).cautions[0]?.values).toMatchObject({
      same: 10,
      contacts: 80,
    });
  });
  it("a trial of both conditions, or twice in one, among several", () => {
    const [one, two, other] = [baseline(), trialOf(typicalStrides(3, 40)), changed()];
    const both = compareTrials([one, two], [structuredClone(two), other]);
    expect(both.cautions[0]?.where).toBe("baseline trial 2, changed trial 1");
    expect(both.overall.sentence).toContain("very same numbers in baseline trial 2 and changed trial 1");
    const again = compareTrials([one, structuredClone(one)], [other, two]);
    expect(again.cautions[0]?.where).toBe("baseline trial 1, baseline trial 2");
  });
  it("a runner's trial in both conditions, and a session recorded twice", () => {
    const runners = Array.from({ length: 6 }, (_, k) => {
      const trial = trialOf(typicalStrides(10 + k, 30));
      return {
        runner: `r${k}`,
        baseline: trial,
        changed: k === 2 ? structuredClone(trial) : trialOf(typicalStrides(30 + k, 30)),
      };
    });
    const found = compareRunners(runners);
    expect(found.cautions[0]).toMatchObject({ code: "same-data", where: "r2, baseline, r2, changed" });
    expect(found.overall.sentence).toContain(WORDS);
    const metrics = CATALOGUE.filter(({ id }) => id === "peakVerticalForce");
    const sessions = [1, 2, 1].map((seed, k) => ({
      name: `week ${k}`,
      trials: trialOf(typicalStrides(seed, 40)),
    }));
    const series = compareSessions(sessions, { metrics, baselineSessions: 2 });
    expect(series.cautions[0]).toMatchObject({ code: "same-data", where: "week 0, week 2" });
    expect(series.sentences.join(" ")).toContain(WORDS);
  });
});

it("2026-11-25: strides fewer than the false alarms were measured with went unsaid", () => {
  const of = (options: object) => codes(compareTrials(baseline(), changed(), options));
  expect(of({ minimumStrides: 5 })).toContain("fewer-strides-than-tested");
  expect(of({ minimumStridesCorrelated: 20 })).toContain("fewer-strides-than-tested");
  expect(of({ minimumStrides: 30 })).not.toContain("fewer-strides-than-tested");
});

it("2026-11-25: three trials were said to be recorded before and after the change, which nobody knew", () => {
  const { settings } = compareTrials([baseline(), trialOf(typicalStrides(3, 40))], changed());
  expect(settings.design.kind).toBe("baseline again");
  expect(settings.design.variation).toMatch(/^the difference of the two baselines/);
});
