import { join } from "node:path";
import { writeCsv } from "../../io/index.js";
import { demoRecordings } from "../../synthetic/index.js";
import { makeFolder } from "../output/makeFolder.js";
import { writeReport } from "../output/writeReport.js";
import type { Terminal } from "../terminal.js";
import { compare } from "./compare.js";

/** Where the demo writes when no folder is named. */
export const DEMO_FOLDER = "demo-output";

/** Writes the two synthetic recordings, compares them as files, prints the answer and says what to try next. */
export async function demo({ out: folder }: { readonly out: string }, terminal: Terminal): Promise<void> {
  makeFolder(folder);
  await terminal.progress.say("making two recordings");
  const { usual, furtherAhead, files, runner, club } = demoRecordings();
  const paths = {
    usual: join(folder, files.usual),
    ahead: join(folder, files.furtherAhead),
    report: join(folder, "report.html"),
  };
  writeReport(
    [
      { path: paths.usual, content: writeCsv(usual) },
      { path: paths.ahead, content: writeCsv(furtherAhead) },
    ],
    terminal,
  );
  await compare({ baseline: paths.usual, changed: paths.ahead }, { report: paths.report }, terminal);
  terminal.out(nextSteps(paths, `${runner} of the ${club}`));
}

type Paths = Readonly<Record<"usual" | "ahead" | "report", string>>;

function nextSteps({ usual, ahead, report }: Paths, who: string): string {
  const program = "npx gait-kinetics";
  return `
Both recordings are synthetic, runner and club invented:
${who}, on a treadmill,
as usual and landing further ahead of the centre of mass.

Written
  ${usual}
  ${ahead}
  ${report}  (open it in a browser)

Try next
  ${program} analyse ${quoted(usual)}
  ${program} compare ${quoted(usual)} ${quoted(ahead)} --csv
  ${program} metrics brakingImpulse
  ${program} analyse --help    (for recordings of your own)
`;
}

function quoted(path: string): string {
  return /[^\w./\\:-]/.test(path) ? `"${path}"` : path;
}
