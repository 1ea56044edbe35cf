const WORDS: Readonly<Record<string, string>> = {
  plates: "told by the plate or belt under each foot",
  "recorded events": "told by the events in the file",
  markers: "told by the markers on the feet",
  "first foot": "told by the first foot, as stated",
  "centre of pressure": "told by the centre of pressure",
  "mediolateral force": "told by the sideways force",
  alternation: "taken in turn; which foot is which is not known",
  none: "not told",
};

/** Says how left and right were told. */
export function sideWords(sides: string): string {
  // A trial read from a file may name a way that no version knows.
  return Object.hasOwn(WORDS, sides) ? (WORDS[sides] as string) : `told by ${sides}`;
}
