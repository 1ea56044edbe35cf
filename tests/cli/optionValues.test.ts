import { describe, expect, it } from "vitest";
import { writeCsv } from "../../src/io/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import { command, emptyFolder, expectRefused, fileIn } from "./command.js";

const folder = emptyFolder();
const good = fileIn(folder, "good.csv", writeCsv(demoRecordings().usual));

describe("values that no recording allows: exit 2, the option named, no file blamed", () => {
  it.each<[readonly string[], readonly (string | RegExp)[]]>([
    [
      ["--order", "3"],
      [/--order/, /'3'/, /even/],
    ],
    [
      ["--order", "1000"],
      [/--order/, /'1000'/, /100/],
    ],
    [
      ["--axes", "x=north"],
      [/--axes/, /north/, /forward, backward, up/],
    ],
    [
      ["--axes", "w=up"],
      [/--axes/, /"w" is no axis/],
    ],
    [
      ["--axes", "x=forward,y=forward"],
      [/--axes/, /x and y/, /one line/],
    ],
    [
      ["--axes", "x=forward,x=up"],
      [/--axes/, /"x" stands twice/],
    ],
    [
      ["--units", "up=N,up=kN"],
      [/--units/, /"up" stands twice/],
    ],
    [
      ["--columns", "a=up, a=right"],
      [/--columns/, /"a" stands twice/],
    ],
    [
      ["--columns", "up=down"],
      [/--columns/, /"down"/, /cop_forward/, /--columns up=Fz/, /--axes z=down/],
    ],
    [
      ["--columns", "up=vertical"],
      [/--columns/, /"vertical"/, /cop_forward/],
    ],
    [
      ["--mass", "1000 kg"],
      [/--mass/, /1000 kg/, /below 500 kg/, /newtons/],
    ],
    [
      ["--height", "178 m"],
      [/--height/, /178 m/, /below 3 m/, /centimetres/],
    ],
    [
      ["--speed", "300 m/s"],
      [/--speed/, /300 m\/s/, /below 13 m\/s/, /km\/h/],
    ],
    [
      ["--grade", "2"],
      [/--grade/, /'2'/, /0\.05/],
    ],
    [
      ["--grade", "-120 %"],
      [/--grade/, /-1\.2/],
    ],
    [
      ["--from", "10 s", "--to", "5 s"],
      [/--from/, /10 s/, /--to/, /5 s/],
    ],
    [
      ["--from", "5 s", "--to", "5 s"],
      [/--from/, /--to/],
    ],
    [
      ["--report", ""],
      [/--report/, /name/],
    ],
    [
      ["--report", "page.pdf"],
      [/--report/, /page\.pdf/, /\.html/],
    ],
  ])("%j", async (options, words) => {
    const analysed = await command("analyse", good, ...options);
    expectRefused(analysed, 2, ...words);
    expect(analysed.err).not.toContain("good.csv");
    const compared = await command("compare", good, good, ...options);
    expectRefused(compared, 2, ...words);
    expect(compared.err).not.toContain("good.csv");
  });

  it.each<[readonly string[], readonly RegExp[]]>([
    [
      ["--zero", "0 s"],
      [/--zero/, /"0 s to 0\.2 s"/],
    ],
    [
      ["--zero", "0 to 0.2"],
      [/--zero/, /unit/],
    ],
    [
      ["--zero", "0.2 s to 0.1 s"],
      [/--zero/, /0\.2 s to 0\.1 s/, /end after it begins/],
    ],
    [
      ["--zero", "0 s to 1 s to 2 s"],
      [/--zero/, /two times/],
    ],
    [
      ["--delimiter", "x"],
      [/--delimiter/, /comma, semicolon, tab, bar, blanks/],
    ],
    [
      ["--skip", "-1"],
      [/--skip/, /whole number from 0/],
    ],
    [
      ["--header", "one"],
      [/--header/, /whole number from 0/],
    ],
    [
      ["--unit-row", "yes"],
      [/--unit-row/, /auto or read or skip or none/],
    ],
    [
      ["--plates", "both"],
      [/--plates/, /auto or apart or together/],
    ],
    [
      ["--offset", "zero"],
      [/--offset/, /auto or flights or file or none/],
    ],
    [
      ["--force-on", "plate"],
      [/--force-on/, /runner or ground or auto/],
    ],
    [
      ["--cover-thickness", "10"],
      [/--cover-thickness/, /unit/],
    ],
    [
      ["--cover-thickness", "-1 mm"],
      [/--cover-thickness/, /at least zero/],
    ],
    [
      ["--sides", "L=links"],
      [/--sides/, /"links" is no foot/, /left or right/],
    ],
    [
      ["--length-unit", "km"],
      [/--length-unit/, /mm or cm or m/],
    ],
    [
      ["--origin-sign", "minus"],
      [/--origin-sign/, /auto or stored or negated/],
    ],
    [
      ["--axes", "x=right,y=north,z=up"],
      [/--axes/, /north/],
    ],
  ])("%j", async (options, words) => {
    const outcome = await command("analyse", good, ...options);
    expectRefused(outcome, 2, ...words);
    expect(outcome.err).not.toContain("good.csv");
  });

  it("a window of one of two recordings", async () => {
    expectRefused(
      await command("compare", good, good, "--from", "0 s, 10 s", "--to", "5 s, 5 s"),
      2,
      /--from is 10 s and --to 5 s/,
    );
  });

  it("a demo folder without a name", async () => {
    expectRefused(await command("demo", "--out", ""), 2, /--out/, /name/);
  });
});

describe("one comma and one unit in a comparison: exit 2, both readings written out", () => {
  it.each<[string, string, string, string]>([
    ["--mass", "70,80 kg", "70.80 kg", "70 kg, 80 kg"],
    ["--mass", "70,8 kg", "70.8 kg", "70 kg, 8 kg"],
    ["--height", "1,78 m", "1.78 m", "1 m, 78 m"],
    ["--speed", "3,4 m/s", "3.4 m/s", "3 m/s, 4 m/s"],
    ["--grade", "2,3 %", "2.3 %", "2 %, 3 %"],
    ["--rate", "300,500 Hz", "300.500 Hz", "300 Hz, 500 Hz"],
    ["--from", "0,15 s", "0.15 s", "0 s, 15 s"],
    ["--to", "15,30 s", "15.30 s", "15 s, 30 s"],
  ])("%s %j", async (option, text, one, two) => {
    const outcome = await command("compare", good, good, option, text);
    expectRefused(outcome, 2, option, `"${one}"`, `"${two}"`, /either/);
  });

  it("with more than one number before the unit", async () => {
    expectRefused(await command("compare", good, good, "--mass", "70,5,80 kg"), 2, /--mass/, /either/);
    expectRefused(await command("compare", good, good, "--height", "5 ft 11,5 in"), 2, /--height/, /either/);
  });

  it("a decimal comma of one recording, or of each of two, is no question", async () => {
    expect((await command("analyse", good, "--mass", "70,8 kg")).code).toBe(0);
    const again = fileIn(folder, "again.csv", writeCsv(demoRecordings().usual));
    expect((await command("compare", good, again, "--mass", "70,8 kg, 71,2 kg")).code).toBe(0);
  });
});
