/** A command of `bowline`, one file each. */
export interface Command {
  name: string;
  /** What follows the name, as shown in the help. */
  usage: string;
  /** One line for the list of commands. */
  summary: string;
  /** Exit code: 0 done, 1 findings or refused. Bad input is thrown as BadInput. */
  run(args: string[]): Promise<number>;
}

/** What was typed or read cannot be used; the sentences go to the standard error stream and the exit code is 2. */
export class BadInput extends Error {
  readonly sentences: readonly string[];

  constructor(...sentences: string[]) {
    super(sentences.join('\n'));
    this.sentences = sentences;
  }
}
