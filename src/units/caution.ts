/** Something suspect but not wrong, carried on a result: what, in words and as data, and where. */
export interface Caution {
  /** Stable code, made of words. */
  readonly code: string;
  /** One sentence for a person. */
  readonly message: string;
  /** Where: a channel, a metric, a contact, a trial. */
  readonly where?: string;
  /** The numbers behind the sentence. */
  readonly values?: Readonly<Record<string, number | string | null>>;
}
