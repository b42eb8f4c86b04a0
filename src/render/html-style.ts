/**
 * How a page looks, on a screen in light and dark and on A4 or Letter paper. Blue is that of Okabe and
 * Ito, distinct for every kind of colour vision; what it marks is bold as well.
 */
export const pageStyle = `
:root { color-scheme: light dark; --ink: #1a1a1a; --quiet: #5a5a5a; --line: #b5b5b5;
  --paper: #ffffff; --mark: #0072b2; }
@media (prefers-color-scheme: dark) {
  :root { --ink: #ececec; --quiet: #a9a9a9; --line: #5c5c5c; --paper: #161616; --mark: #56b4e9; }
}
* { box-sizing: border-box; }
body { margin: 2rem auto; max-width: 62rem; padding: 0 1rem; background: var(--paper);
  color: var(--ink); font: 15px/1.45 system-ui, sans-serif; }
h1 { font-size: 1.3rem; margin: 0 0 .8rem; }
h2 { font-size: 1rem; margin: 1.2rem 0 .3rem; }
p { margin: .4rem 0; max-width: 46rem; }
ul { margin: .2rem 0 .8rem; padding-left: 1.2rem; }
table { border-collapse: collapse; margin: .8rem 0; width: 100%; font-variant-numeric: tabular-nums; }
th, td { border-bottom: 1px solid var(--line); padding: .2rem .5rem; text-align: left; }
th { color: var(--quiet); font-weight: 600; }
.right { text-align: right; }
.strong { font-weight: 700; }
.quiet { color: var(--quiet); }
.binding { color: var(--mark); font-weight: 600; }
.wide { overflow-x: auto; }
svg { display: block; }
.strip { width: 14rem; height: 1rem; }
.form { display: grid; grid-template-columns: repeat(2, 1fr); gap: .9rem 1.5rem; margin: 1rem 0; }
.form div { display: flex; align-items: flex-end; gap: .5rem; }
.form i { flex: 1; border-bottom: 1px solid var(--ink); height: 1.3rem; }
figure { display: inline-block; width: 31.5%; margin: .5rem .7% .4rem 0; break-inside: avoid; }
figcaption { font-weight: 600; font-size: .85rem; }
.points { width: 100%; height: auto; }
@media (max-width: 40rem) { figure { width: 48%; } .form { grid-template-columns: 1fr; } }
@page { margin: 12mm; }
@media print {
  :root { color-scheme: light; --ink: #000000; --quiet: #444444; --line: #999999;
    --paper: #ffffff; --mark: #0072b2; }
  body { margin: 0; padding: 0; max-width: none; font-size: 10pt; }
  figure { width: 31.5%; }
  .form { grid-template-columns: repeat(2, 1fr); }
  tr, li { break-inside: avoid; }
  thead { display: table-header-group; }
}
`;
