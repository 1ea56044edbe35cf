/** A label and what is said under it. */
export interface Fact {
  readonly label: string;
  readonly text: string;
}
