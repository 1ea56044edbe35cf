import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { detectContacts, detectEvents } from "../../src/events/index.js";
import { mean, seededRandom } from "../../src/statistics/index.js";
import fixture from "../fixtures/events/contacts.json" with { type: "json" };
import { groundOf } from "../helpers.js";

describe("independent code: NumPy on hand-made forces (tests/fixtures/events/contacts.json)", () => {
  it.each(fixture.cases.map((entry) => [entry.name, entry] as const))("%s", (_, entry) => {
    const ground = groundOf({ up: entry.y, sampleRate: entry.sampleRateHz });
    const found = detectContacts(ground, {
      threshold: entry.thresholdN,
      shortestFlight: entry.bridgeS,
      shortestContact: entry.shortestS,
    });
    expect(found.length).toBe(entry.contacts.length);
    found.forEach((contact, k) => {
      expect(contact.initialContact).toBeCloseTo(entry.contacts[k]?.initialContact ?? Number.NaN, 11);
      expect(contact.toeOff).toBeCloseTo(entry.contacts[k]?.toeOff ?? Number.NaN, 11);
      expect(contact.threshold).toBe(entry.thresholdN);
    });
  });
});

/** Samples whose linear interpolation crosses the threshold at exactly the times given. */
function trainOf(
  events: readonly (readonly [number, number])[],
  sampleRate: number,
  threshold: number,
): number[] {
  const end = (events[events.length - 1]?.[1] ?? 0) + 0.1;
  const slope = 8000;
  return Array.from({ length: Math.ceil(end * sampleRate) + 1 }, (_, i) => {
    const t = i / sampleRate;
    const away = Math.max(-1, ...events.map(([on, off]) => Math.min(t - on, off - t)));
    return Math.max(-500, Math.min(1500, threshold + slope * away));
  });
}

const trains = fc
  .record({
    sampleRate: fc.constantFrom(250, 300, 500, 1000, 1001.5, 2000),
    threshold: fc.double({ min: 15, max: 100, noNaN: true }),
    durations: fc.array(
      fc.tuple(
        fc.double({ min: 0.04, max: 0.4, noNaN: true }),
        fc.double({ min: 0.09, max: 0.8, noNaN: true }),
      ),
      { minLength: 1, maxLength: 25 },
    ),
  })
  .map(({ durations, ...rest }) => {
    let time = 0;
    const events = durations.map(([flight, contact]) => {
      const on = time + flight;
      time = on + contact;
      return [on, time] as const;
    });
    return { ...rest, events };
  });

it.each([
  [50, 5],
  [50, 10],
  [100, 5],
  [20, 2],
])(
  "independent code: NumPy's bias and scatter of events at %d N with %d N of noise",
  (thresholdN, noiseSdN) => {
    const row = fixture.thresholdNoise.rows.find(
      (r) => r.thresholdN === thresholdN && r.noiseSdN === noiseSdN,
    );
    const random = seededRandom(17);
    const on: number[] = [];
    const off: number[] = [];
    for (let trial = 0; trial < 150; trial++) {
      const start = -0.1 + random.uniform() / 1000;
      const up = Array.from({ length: 445 }, (_, i) => stance(start + i / 1000) + noiseSdN * random.normal());
      const found = detectContacts(groundOf({ up, sampleRate: 1000 }), { threshold: thresholdN });
      expect(found.length).toBe(1);
      on.push(1000 * ((found[0]?.initialContact ?? Number.NaN) + start));
      off.push(1000 * ((found[0]?.toeOff ?? Number.NaN) + start - 0.245));
    }
    // Two means of 150 trials each differ by less than 4 standard errors, √(2/150) SD each way.
    const reach = (sd: number) => 4 * sd * Math.sqrt(2 / 150);
    expect(Math.abs(mean(on) - (row?.contactBiasMs ?? Number.NaN))).toBeLessThan(
      reach(row?.contactSdMs ?? Number.NaN),
    );
    expect(Math.abs(mean(off) - (row?.toeOffBiasMs ?? Number.NaN))).toBeLessThan(
      reach(row?.toeOffSdMs ?? Number.NaN),
    );
  },
);

/** Vertical force of the fixture's analytic stance: 70 kg, impact 0.9 body weights at 28 ms, contact 0.245 s, step 0.36 s. */
function stance(t: number): number {
  const raised = (A: number, B: number) =>
    Math.abs(t - B) <= B ? (A / 2) * (1 + Math.cos((Math.PI * (t - B)) / B)) : 0;
  const weight = 70 * 9.80665;
  return raised(0.9 * weight, 0.028) + raised((weight * 0.36 - 0.9 * weight * 0.028) / 0.1225, 0.1225);
}

it("property: random trains of contacts come back exactly, whatever rate and threshold", () => {
  fc.assert(
    fc.property(trains, ({ sampleRate, threshold, events }) => {
      const ground = groundOf({ up: trainOf(events, sampleRate, threshold), sampleRate });
      const { contacts, partialContacts } = detectEvents(ground, { threshold });
      expect(partialContacts).toEqual([]);
      expect(contacts.length).toBe(events.length);
      contacts.forEach(({ initialContact, toeOff }, k) => {
        expect(initialContact).toBeCloseTo(events[k]?.[0] ?? Number.NaN, 9);
        expect(toeOff).toBeCloseTo(events[k]?.[1] ?? Number.NaN, 9);
      });
    }),
    { numRuns: 300, seed: 20261125 },
  );
});

describe("hysteresis, by hand", () => {
  const flat = (level: number, n: number) => Array.from({ length: n }, () => level);
  const up = [...flat(0, 50), ...flat(800, 100), ...flat(15, 60), ...flat(800, 100), ...flat(0, 50)];

  it("a long dip that stays above the fall level ends no contact", () => {
    const contacts = detectContacts(groundOf({ up, sampleRate: 1000 }), { threshold: 20 });
    expect(contacts.length).toBe(1);
    expect(contacts[0]?.toeOff).toBeCloseTo(0.309 + 780 / 800 / 1000, 12);
  });
  it("the same dip ends the contact where it falls below the fall level, and toe-off is read at the threshold", () => {
    const contacts = detectContacts(groundOf({ up, sampleRate: 1000 }), { threshold: 20, fallShare: 0.8 });
    expect(contacts.length).toBe(2);
    expect(contacts[0]?.toeOff).toBeCloseTo(0.149 + 780 / 785 / 1000, 12);
  });
  it("contacts cut by the recording's ends are partial, never counted", () => {
    const events = detectEvents(groundOf({ up: up.slice(100, 290), sampleRate: 1000 }), {
      threshold: 20,
      fallShare: 1,
    });
    expect(events.contacts).toEqual([]);
    expect(events.partialContacts.map(({ initialContact, toeOff }) => [initialContact, toeOff])).toEqual([
      [0, expect.closeTo(0.049 + 780 / 785 / 1000, 12)],
      [expect.closeTo(0.109 + 5 / 785 / 1000, 12), 0.189],
    ]);
  });
});

it.each([
  [{ threshold: 0 }, "out-of-range"],
  [{ threshold: Number.NaN }, "not-finite"],
  [{ fallShare: 1.2 }, "out-of-range"],
  [{ shortestContact: -0.1 }, "out-of-range"],
  [{ firstFoot: "both" as never }, "out-of-range"],
  [{ treshold: 20 } as never, "unknown-option"],
])("refuses %o with %s", (options, code) => {
  expect(() => detectContacts(groundOf({ up: [0, 1, 0], sampleRate: 1000 }), options)).toThrow(
    expect.objectContaining({ code }),
  );
});
