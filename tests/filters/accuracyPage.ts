import { comparisons } from "./comparisons.js";

const SUPERSCRIPTS = ["⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"];
const superscript = (n: number) => [...String(n)].map((digit) => SUPERSCRIPTS[Number(digit)]).join("");

/** The power of ten an error stays below, so that the last bit of an engine does not flip a figure. */
function below(error: number): string {
  if (error === 0) return "0";
  return `10⁻${superscript(-Math.ceil(Math.log10(error)))}`;
}

/** Largest errors of every comparison, as a page. */
export function accuracyPage(): string {
  const rows = comparisons().map(({ what, against, because, cases }) => {
    const worst = Math.max(...cases.map(({ error }) => error));
    return `| ${what} | ${against} | ${cases.length} | ${below(worst)} | ${because} |`;
  });
  return `# Accuracy of the filters

How far the filters and their like lie from other software and from exact arithmetic. Errors are the largest difference
of any output, relative to the largest magnitude wanted; a figure is the power of ten that none of the cases exceeds. The
last column says what each case must stay below and why: a test fails where it does not. The inputs and what SciPy and
NumPy made of them are in \`tests/fixtures/filters\`, with the scripts that made them.

| what | held against | cases | error below | allowed |
|---|---|---|---|---|
${rows.join("\n")}

Where 10⁻¹² is not reached, the number itself is not better known. A second-order section holds its poles in two
coefficients of 53 bits, and at a cutoff of f the pole's distance from 1, about 2π f/fs, is what is left after they
cancel: a cutoff of a ten-thousandth of the rate is known to some 10⁻¹⁰ in the response, one of a two-thousandth to some 10⁻¹¹,
in SciPy as here. The gain of a low-pass and a band-stop at 0 Hz is taken from the rounded coefficients, so that a constant
passes unchanged all the same.

Gustafsson's initial states agree with SciPy to fewer digits as the order grows, because SciPy works on one long
polynomial there: at order 3 high-pass it is 2 · 10⁻¹¹ from the exact output and the sections here 6 · 10⁻¹⁴. The weights of
a Savitzky–Golay filter are within 10⁻¹⁴ of exact rational arithmetic at window 25 and degree 8, where SciPy's are off by
2 · 10⁻⁶.

The page is a snapshot of a test: \`npx vitest run tests/filters/agreement.test.ts -u\` writes it anew.
`;
}
