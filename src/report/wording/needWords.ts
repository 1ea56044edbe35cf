import type { MetricNeed } from "../../metrics/index.js";

const WORDS: Readonly<Record<MetricNeed, string>> = {
  forward: "the anteroposterior force",
  right: "the mediolateral force",
  copForward: "the centre of pressure, anteroposterior",
  copRight: "the centre of pressure, mediolateral",
  freeMoment: "the free moment",
  side: "which foot made the contact",
  foot: "the place of heel and toes",
  mass: "the mass",
  height: "the height",
  speed: "the speed",
  surface: "the surface (belt or ground)",
  oneFoot: "feet that do not share a plate in double support",
  next: "the next contact",
  nextSameSide: "the next contact of the same foot",
  coefficient: "a coefficient measured on the runner, stated by an entry of one's own",
};

/** Says what a metric cannot do without. */
export function needWords(need: MetricNeed): string {
  return WORDS[need];
}
