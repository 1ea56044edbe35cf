/** The page's whole look. Colours are variables, which a page around a figure may set too. */
export const STYLE_SHEET: string = `
:root { color-scheme: light dark; --paper: #ffffff; --ink: #1b1f24; --soft: #555d68; --hair: #cfd4da; --edge: #767e89; --wash: #f4f5f7;
  --figure-first: #1f6aa5; --figure-second: #a4541b; --figure-rule: #8a8f98; --figure-ink: #1b1f24;
  --figure-font: "Helvetica Neue", Arial, "Liberation Sans", sans-serif;
  --serif: Charter, "Bitstream Charter", "Sitka Text", Cambria, Georgia, "Liberation Serif", serif; }
@media (prefers-color-scheme: dark) { :root { --paper: #15181c; --ink: #e3e6ea; --soft: #a3abb6; --hair: #3b424b; --edge: #848d99; --wash: #1e2227;
  --figure-first: #6fb3e6; --figure-second: #e2a06a; --figure-rule: #7d8590; --figure-ink: #e3e6ea; } }
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; }
body { margin: 0; background: var(--paper); color: var(--ink); font: 1.0625rem/1.55 var(--serif); }
main { max-width: 66rem; margin: 0 auto; padding: 2.5rem 1.5rem 4rem; }
.kind { margin: 0; max-width: none; color: var(--soft); font: 0.875rem/1.4 var(--figure-font); }
h1 { margin: 0.35rem 0 0; font-size: 2rem; line-height: 1.2; font-weight: 600; }
.answer { margin: 0.9rem 0 0; font-size: 1.25rem; line-height: 1.5; max-width: 44rem; }
.sure { color: var(--soft); }
h2 { margin: 3rem 0 0.5rem; padding-top: 0.6rem; border-top: 1px solid var(--hair); font-size: 1.3rem; line-height: 1.3; font-weight: 600; }
h3 { margin: 1.6rem 0 0.3rem; font-size: 1.05rem; font-weight: 600; }
p, ul { max-width: 44rem; }
h1, .kind, p, li, dd, th:first-child, caption, figcaption, summary, option { overflow-wrap: anywhere; unicode-bidi: isolate; }
td, th { overflow-wrap: break-word; }
ul { padding-left: 1.2rem; }
li { margin: 0.35rem 0; }
figure { margin: 1.2rem 0 0; }
figure svg { display: block; width: 100%; }
.single { max-width: 30rem; }
.row { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 17rem), 1fr)); gap: 1.2rem 2rem; align-items: start; }
.row > .drawing { max-width: 25rem; }
.columns { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 26rem), 1fr)); gap: 0 3rem; align-items: start; }
.columns > * { min-width: 0; }
.sources { color: var(--soft); font: 0.875rem/1.45 var(--figure-font); }
figcaption, .readout, .view { margin: 0.4rem 0 0; max-width: 44rem; color: var(--soft); font: 0.875rem/1.45 var(--figure-font); }
.reader { display: block; appearance: none; width: 100%; height: 1.5rem; margin: 0; background: linear-gradient(var(--hair), var(--hair)) center / 100% 1px no-repeat; cursor: ew-resize; }
.reader::-webkit-slider-thumb { appearance: none; width: 0.55rem; height: 0.9rem; border: 1px solid var(--paper); border-radius: 0.2rem; background: var(--edge); }
.reader::-moz-range-thumb { width: 0.55rem; height: 0.9rem; border: 1px solid var(--paper); border-radius: 0.2rem; background: var(--edge); }
.readout { margin-top: 0; min-height: 1.45em; color: var(--ink); }
.hint { display: none; color: var(--soft); font: 0.875rem/1.45 var(--figure-font); }
.live .hint { display: block; }
.mark.read { stroke: var(--figure-ink); stroke-opacity: 1; stroke-width: 2; }
.choice { display: none; margin: 1rem 0 0; font: 0.9rem/1.5 var(--figure-font); }
.live .choice { display: block; }
.live .panel:not(.shown), .live .view { display: none; }
.view { margin-top: 1.2rem; font-weight: 600; color: var(--ink); }
select, button, textarea { max-width: 100%; border: 1px solid var(--edge); border-radius: 2px; background: var(--paper); color: var(--ink); font: 0.875rem/1.4 var(--figure-font); }
select, button { min-height: 1.9rem; padding: 0.15rem 0.6rem; }
button { display: none; }
.live button { display: inline-block; }
:focus-visible { outline: 2px solid var(--figure-first); outline-offset: 2px; }
details { margin: 0.8rem 0 0; }
summary { padding: 0.2rem 0; cursor: pointer; font: 0.9rem/1.5 var(--figure-font); }
textarea { display: block; width: 100%; margin-top: 0.5rem; padding: 0.5rem; font-family: ui-monospace, "Liberation Mono", monospace; font-size: 0.8rem; }
table { width: 100%; margin: 1.2rem 0 0; border-collapse: collapse; font: 0.875rem/1.4 var(--figure-font); font-variant-numeric: tabular-nums; }
caption { padding-bottom: 0.4rem; text-align: left; color: var(--soft); }
th, td { padding: 0.32rem 0.5rem; border-bottom: 1px solid var(--hair); text-align: right; vertical-align: baseline; }
.columns table { font-size: 0.8125rem; }
.columns th, .columns td { padding-left: 0.3rem; padding-right: 0.3rem; }
thead th { color: var(--soft); font-weight: 400; border-bottom: 1px solid var(--ink); vertical-align: bottom; }
th:first-child, td:first-child { padding-left: 0; text-align: left; font-weight: 400; }
th:last-child, td:last-child { padding-right: 0; }
tbody.primary th, tr.primary th { font-weight: 600; }
tr.group th { padding-top: 1.1rem; font: 600 0.95rem/1.3 var(--serif); border-bottom-color: var(--soft); }
dl { margin: 1rem 0 0; display: grid; grid-template-columns: 11rem 1fr; gap: 0.35rem 1rem; font: 0.9rem/1.5 var(--figure-font); }
dt { color: var(--soft); }
dd { margin: 0; max-width: 44rem; }
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
  :root { color-scheme: light; --paper: #ffffff; --ink: #000000; --soft: #444444; --hair: #bbbbbb; --edge: #767676; --wash: #ffffff;
    --figure-first: #1f6aa5; --figure-second: #a4541b; --figure-rule: #888888; --figure-ink: #000000; }
  @page { margin: 10mm 13mm; }
  html { font-size: 9.6px; }
  body { line-height: 1.32; }
  main { max-width: none; padding: 0; }
  .answer { margin-top: 0.5rem; font-size: 1.3rem; line-height: 1.35; }
  h2 { margin: 1rem 0 0.2rem; padding-top: 0.4rem; }
  h3 { margin: 0.6rem 0 0; }
  p, ul, dd, figcaption, .answer { max-width: none; }
  p { margin: 0.35rem 0 0; orphans: 3; widows: 3; }
  ul { margin: 0.3rem 0 0; padding-left: 1.6rem; }
  li { margin: 0.1rem 0; }
  dl { margin-top: 0.4rem; gap: 0.05rem 1rem; line-height: 1.3; }
  figure { margin-top: 0.5rem; }
  figcaption, .sources { margin-top: 0.2rem; line-height: 1.3; }
  table { margin-top: 0.6rem; line-height: 1.18; }
  caption { padding-bottom: 0.1rem; }
  th, td { padding-top: 0.07rem; padding-bottom: 0.07rem; }
  tr.group th { padding-top: 0.35rem; }
  h2, h3, caption, thead, tr.group, .columns h2 + p { break-after: avoid; }
  figure, .drawing, tr, .health, .alternative, table.short { break-inside: avoid; }
  .row { grid-template-columns: repeat(3, 1fr); gap: 0.4rem 1.2rem; }
  .columns { display: block; columns: 2; column-gap: 2rem; }
  .columns h2 { margin-top: 0; }
  .columns h2:not(:first-child), .columns section + section h2 { margin-top: 0.8rem; }
  .single { max-width: 7.1cm; }
  .drawing:has(#landing-title), .drawing:has(#symmetry-title) { max-width: 6.2cm; }
  .alternative, .methods { font-size: 0.98rem; }
  .choice, .live .choice, .reader, .readout, .hint, .live .hint, details, .panel:not(.shown), button, .view, .screen, .alternative li.motion { display: none; }
  .health { margin-top: 1rem; padding: 0 0.8rem; }
  .health h2 { margin-top: 0.3rem; }
}
`;
