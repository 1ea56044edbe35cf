/** The page's whole look. Colours are variables, which a page around a figure may set too. */
export const STYLE_SHEET: string = `
:root { color-scheme: light dark; --paper: #ffffff; --ink: #1b1f24; --soft: #555d68; --hair: #cfd4da; --wash: #f4f5f7;
  --figure-first: #1f6aa5; --figure-second: #a4541b; --figure-rule: #8a8f98; --figure-ink: #1b1f24;
  --figure-font: "Helvetica Neue", Arial, "Liberation Sans", sans-serif;
  --serif: Charter, "Bitstream Charter", "Sitka Text", Cambria, Georgia, "Liberation Serif", serif; }
@media (prefers-color-scheme: dark) { :root { --paper: #15181c; --ink: #e3e6ea; --soft: #a3abb6; --hair: #3b424b; --wash: #1e2227;
  --figure-first: #6fb3e6; --figure-second: #e2a06a; --figure-rule: #7d8590; --figure-ink: #e3e6ea; } }
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; }
body { margin: 0; background: var(--paper); color: var(--ink); font: 1.0625rem/1.55 var(--serif); }
main { max-width: 58rem; margin: 0 auto; padding: 2.5rem 1.25rem 4rem; }
.kind { margin: 0; color: var(--soft); font: 0.875rem/1.4 var(--figure-font); overflow-wrap: anywhere; }
h1 { margin: 0.35rem 0 0; font-size: 2rem; line-height: 1.2; font-weight: 600; }
.answer { margin: 0.9rem 0 0; font-size: 1.25rem; line-height: 1.5; max-width: 44rem; }
h2 { margin: 3rem 0 0.5rem; padding-top: 0.6rem; border-top: 1px solid var(--hair); font-size: 1.3rem; line-height: 1.3; font-weight: 600; }
h3 { margin: 1.6rem 0 0.3rem; font-size: 1.05rem; font-weight: 600; }
p, ul { max-width: 44rem; }
p, li, dd, td, th { overflow-wrap: anywhere; }
ul { padding-left: 1.2rem; }
li { margin: 0.35rem 0; }
figure { margin: 1.2rem 0 0; }
figure svg { display: block; width: 100%; --figure-width: 30rem; }
figcaption { margin-top: 0.4rem; max-width: 44rem; color: var(--soft); font: 0.875rem/1.45 var(--figure-font); }
.pair { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 19rem), 1fr)); gap: 1.2rem 2rem; }
table { width: 100%; margin: 1rem 0 0; border-collapse: collapse; font: 0.875rem/1.4 var(--figure-font); font-variant-numeric: tabular-nums; }
caption { padding-bottom: 0.4rem; text-align: left; color: var(--soft); }
th, td { padding: 0.32rem 0.5rem; border-bottom: 1px solid var(--hair); text-align: right; vertical-align: baseline; }
thead th { color: var(--soft); font-weight: 400; border-bottom: 1px solid var(--ink); vertical-align: bottom; }
th:first-child, td:first-child { padding-left: 0; text-align: left; font-weight: 400; }
th:last-child, td:last-child { padding-right: 0; }
tbody.primary th, tr.primary th { font-weight: 600; }
.words { text-align: left; }
tr.group th { padding-top: 1.1rem; font: 600 0.95rem/1.3 var(--serif); border-bottom-color: var(--soft); }
dl { margin: 1rem 0 0; display: grid; grid-template-columns: 11rem 1fr; gap: 0.35rem 1rem; font: 0.9rem/1.5 var(--figure-font); }
dt { color: var(--soft); }
dd { margin: 0; }
.health { margin-top: 3rem; padding: 0.2rem 1.1rem; border-left: 3px solid var(--ink); background: var(--wash); }
.health h2 { margin-top: 0.8rem; padding-top: 0; border: 0; }
@media (max-width: 40rem) {
  main { padding: 1.5rem 1rem 3rem; }
  h1 { font-size: 1.6rem; }
  .answer { font-size: 1.125rem; }
  dl { grid-template-columns: 1fr; gap: 0; }
  dd { margin-bottom: 0.6rem; }
  table, caption, tbody, tr, th, td { display: block; }
  thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  tbody tr { display: grid; grid-template-columns: 1.25fr 1.25fr 1fr; gap: 0.25rem 0.75rem; padding: 0.55rem 0; border-bottom: 1px solid var(--hair); }
  th, td, th:first-child, td:first-child, th:last-child, td:last-child { padding: 0; border: 0; text-align: left; }
  tbody th:first-child { grid-column: 1 / -1; font-weight: 600; }
  td::before { content: attr(data-label); display: block; color: var(--soft); font-size: 0.75rem; line-height: 1.3; }
  td:empty { display: none; }
}
@media print {
  :root { color-scheme: light; --paper: #ffffff; --ink: #000000; --soft: #444444; --hair: #bbbbbb; --wash: #ffffff;
    --figure-first: #1f6aa5; --figure-second: #a4541b; --figure-rule: #888888; --figure-ink: #000000; }
  @page { margin: 16mm; }
  html { font-size: 11px; }
  h2 { margin-top: 1.6rem; }
  th, td { padding-top: 0.15rem; padding-bottom: 0.15rem; }
  .health { margin-top: 1.6rem; }
  main { max-width: none; padding: 0; }
  h2, h3 { break-after: avoid; }
  figure, tr, .health { break-inside: avoid; }
  figure svg { --figure-width: 10cm; }
}
`;
