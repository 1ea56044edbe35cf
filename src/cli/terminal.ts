/** What a command line writes to: nothing else of the process is touched while a command runs. */
export interface Terminal {
  /** Standard output: results only. */
  readonly out: (text: string) => void;
  /** Standard error: problems and, where a person watches, progress. */
  readonly err: (text: string) => void;
  /** Whether a person watches standard error. */
  readonly interactive: boolean;
}
