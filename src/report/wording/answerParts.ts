/** An answer with the list of what else differs apart. */
export interface AnswerParts {
  /** The verdict and what belongs to it. */
  readonly answer: string;
  /** The sentence that lists secondary metrics; empty where there is none. */
  readonly besides: string;
}

/** Takes the list of secondary metrics out of an answer, which it would drown: it is shown on its own below. */
export function answerParts(sentence: string): AnswerParts {
  const sentences = sentence.split(/(?<=[.!?])\s+(?=\p{Lu})/u);
  const listed = sentences.filter((one) => one.startsWith(ALSO));
  return {
    answer: sentences.filter((one) => !listed.includes(one)).join(" "),
    besides: listed.join(" "),
  };
}

/** How the sentence of secondary metrics begins. */
const ALSO = "Also more load by ";
