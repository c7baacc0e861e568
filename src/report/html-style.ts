import { drawingStyle } from '../drawing';

/** The style of the web page: readable on a screen, light and dark, and set for paper when printed. */
export const style = `
:root { color-scheme: light dark; --ink: #1b1b1b; --paper: #fff; --faint: #555; --line: #b5b5b5; --head: #eef1f4;
  --no: #a4161a; --yes: #14632a; --doubt: #7a4b00;
  --kf-ink: var(--ink); --kf-faint: var(--faint); --kf-paper: var(--paper); --kf-fill: #a9c4e6; }
@media screen and (prefers-color-scheme: dark) { :root { --ink: #e8e8e8; --paper: #1d1f21; --faint: #b4b4b4;
  --line: #5a5a5a; --head: #2b2f33; --no: #ff9a9a; --yes: #8fdca5; --doubt: #f2c879; --kf-fill: #3d638f; } }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 62rem; padding: 1.5rem; font: 1rem/1.5 system-ui, "Segoe UI", "DejaVu Sans", sans-serif;
  color: var(--ink); background: var(--paper); }
h1 { font-size: 1.7rem; line-height: 1.2; margin: 0 0 .25rem; }
h2 { font-size: 1.25rem; margin: 2rem 0 .5rem; padding-bottom: .2rem; border-bottom: 2px solid var(--line); }
h3 { font-size: 1.08rem; margin: 1.4rem 0 .4rem; }
h4, h5 { font-size: 1rem; margin: 1.1rem 0 .3rem; }
.kind { color: var(--faint); margin: 0 0 1rem; }
table { border-collapse: collapse; width: 100%; margin: .6rem 0 1rem; font-size: .92rem; }
th, td { border: 1px solid var(--line); padding: .3rem .5rem; text-align: left; vertical-align: top; overflow-wrap: break-word; }
thead th { background: var(--head); }
.right { text-align: right; font-variant-numeric: tabular-nums; }
tfoot td { font-weight: 600; border-top: 2px solid var(--ink); }
.wide { overflow-x: auto; }
.wide > table { min-width: 34rem; }
.fields { width: auto; min-width: 50%; }
.fields th { font-weight: 600; background: none; white-space: nowrap; }
.fields td { min-width: 14rem; }
.banner { border: 2px solid var(--doubt); border-left-width: .6rem; padding: .5rem 1rem; margin: 1rem 0; }
.banner.error { border-color: var(--no); }
.banner p { font-weight: 700; margin: .2rem 0; }
.step { margin: .35rem 0; }
.step math, td math { font-size: 1.05em; }
.note { color: var(--faint); font-size: .9rem; }
.yes, .no, .doubt { font-weight: 700; }
.yes { color: var(--yes); } .no { color: var(--no); } .doubt { color: var(--doubt); }
.group { border-left: 3px solid var(--line); padding-left: .9rem; margin: .7rem 0; }
.group > .title { font-weight: 600; margin: .2rem 0; overflow-wrap: anywhere; }
${drawingStyle}
.picture img { max-width: 100%; height: auto; }
.drawing { margin: .2rem 0 .8rem; overflow-x: auto; }
blockquote { margin: .8rem 0; padding-left: 1rem; border-left: 4px solid var(--line); }
pre { overflow-x: auto; padding: .6rem; border: 1px solid var(--line); white-space: pre-wrap; }
code { font-family: ui-monospace, "DejaVu Sans Mono", monospace; font-size: .92em; }
.signatures td { height: 3rem; }
a { color: inherit; }
@page { size: auto; margin: 18mm 16mm 20mm;
  @bottom-right { content: "page " counter(page) " of " counter(pages); font: 9pt sans-serif; }
  @bottom-left { content: var(--foot); font: 9pt sans-serif; } }
@media print { body { max-width: none; padding: 0; font-size: 10pt; }
  h2, h3, h4, h5, .title { break-after: avoid; } tr, .step, .banner, .picture, .drawing, .signatures { break-inside: avoid; }
  thead { display: table-header-group; } tfoot { display: table-row-group; } .wide { overflow: visible; }
  .wide > table { min-width: 0; } }
`;
