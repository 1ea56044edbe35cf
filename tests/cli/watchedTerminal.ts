import { clearLine, cursorTo, moveCursor } from "node:readline";
import { Writable } from "node:stream";

/** A terminal of 80 columns without a person: what stands on it, what ever stood there, whether its cursor is hidden. */
export class WatchedTerminal extends Writable {
  readonly isTTY = true;
  readonly columns = 80;
  cursorHidden = false;
  /** Every state that the screen was left in by a write. */
  readonly states: string[] = [];
  #lines = [""];
  #row = 0;
  #column = 0;

  get screen(): string {
    return this.#lines.join("\n");
  }

  cursorTo(x: number): void {
    cursorTo(this, x);
  }

  moveCursor(dx: number, dy: number): void {
    moveCursor(this, dx, dy);
  }

  clearLine(direction: -1 | 0 | 1): void {
    clearLine(this, direction);
  }

  override _write(chunk: Buffer, _: string, done: () => void): void {
    // biome-ignore lint/suspicious/noControlCharactersInRegex: the sequences of a terminal begin with one.
    for (const part of chunk.toString().matchAll(/\u001b\[([?\d;]*)([A-Za-z])|[^\u001b]/g)) this.#take(part);
    this.states.push(this.screen);
    done();
  }

  #take([text, parameter = "", command]: RegExpMatchArray): void {
    const here = this.#lines[this.#row] ?? "";
    switch (command) {
      case undefined:
        if (text === "\n") {
          this.#row++;
          this.#column = 0;
          this.#lines[this.#row] ??= "";
          return;
        }
        this.#lines[this.#row] =
          here.slice(0, this.#column).padEnd(this.#column) + text + here.slice(++this.#column);
        return;
      case "G":
        this.#column = Number(parameter) - 1;
        return;
      case "A":
        this.#row -= Number(parameter);
        return;
      case "K":
        this.#lines[this.#row] = here.slice(0, this.#column);
        return;
      case "h":
      case "l":
        if (parameter === "?25") this.cursorHidden = command === "l";
        return;
      case "m":
        return;
      default:
        throw new Error(`the terminal knows no sequence ${JSON.stringify(text)}`);
    }
  }
}
