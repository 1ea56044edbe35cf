import type { Newtons, Seconds } from "../units/index.js";

/** One time that one foot is on the ground. */
export interface Contact {
  readonly side: "left" | "right" | "unknown";
  /** Upward crossing of the threshold, between samples, from the recording's start. */
  readonly initialContact: Seconds;
  /** Last downward crossing of the threshold, between samples. */
  readonly toeOff: Seconds;
  /** Level of the vertical force that both times are read at. */
  readonly threshold: Newtons;
  /** Index into the ground reaction's `plates`, where these are kept apart: the plate that this foot is on. */
  readonly plate?: number;
  /**
   * Both feet were on one plate in double support: the force there is that of both, and what one foot bore is known only in
   * `singleSupport`.
   */
  readonly shared?: true;
  /** In walking, the time in which no other foot is on the ground, where the contacts before and after are known. */
  readonly singleSupport?: { readonly from: Seconds; readonly to: Seconds };
}

/** A contact with the neighbours that some metrics need. */
export interface Step {
  readonly contact: Contact;
  /** The next contact, of the other foot. */
  readonly next?: Contact;
  /** The next contact of the same foot; from `contact` to here is one stride. */
  readonly nextSameSide?: Contact;
}
