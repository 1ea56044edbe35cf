import type { ContactSpan, LandingRecord } from "../../../src/models/index.js";
import springLeg from "../../fixtures/landing/springLeg.json" with { type: "json" }; // landing.py, NumPy 2.4.6, SciPy 1.17.1

type Runner = (typeof springLeg.runners)["fast"];

/** The simulated runners by name. */
export const RUNNERS: readonly [string, Runner][] = Object.entries(springLeg.runners);

/** Force and moment of a simulated runner, with the foot's place as the centre of pressure, and the contacts at 20 N. */
export function springLegRecord(runner: Runner): { record: LandingRecord; contacts: ContactSpan[] } {
  const { sampleRate } = runner;
  const up = Float64Array.from(runner.upTenths, (tenths) => tenths / 10);
  const forward = Float64Array.from(runner.forwardTenths, (tenths) => tenths / 10);
  const right = new Float64Array(up.length);
  for (const { first, last, place } of runner.contacts) {
    for (let i = Math.floor(first * sampleRate) - 1; i <= last * sampleRate + 1; i++) {
      right[i] = place * (up[i] as number);
    }
  }
  const at = (i: number, step: 1 | -1) => {
    const [inside, outside] = [up[i] as number, up[i + step] as number];
    return (i + (step * (inside - 20)) / (inside - outside)) / sampleRate;
  };
  const contacts = runner.contacts.map(({ first, last }) => {
    let [from, to] = [Math.floor(first * sampleRate), Math.ceil(last * sampleRate)];
    while ((up[from] as number) < 20) from++;
    while ((up[to] as number) < 20) to--;
    return { initialContact: at(from, -1), toeOff: at(to, 1) };
  });
  return { record: { sampleRate, force: { up, forward }, moment: { right } }, contacts };
}
