import type { Seconds } from "../units/index.js";

/** From an initial contact to a toe-off. */
export interface Span {
  readonly initialContact: Seconds;
  readonly toeOff: Seconds;
}

/** Whether the middle of one of the spans lies after the toe-off of one contact and before the next begins. */
export function spanBetween(here: Span, next: Span, spans: readonly Span[]): boolean {
  return spans.some(({ initialContact, toeOff }) => {
    const middle = (initialContact + toeOff) / 2;
    return middle > here.toeOff && middle < next.initialContact;
  });
}
