/**
 * How a page looks, on a screen in light and dark and on A4 or Letter paper. The blue is that of Okabe
 * and Ito, distinct for every kind of colour vision; what it marks has a sign, a shape or bold type too.
 */
import { ticksIfNarrow, ticksOnPaper, ticksOnScreen } from './ticks-style.ts';

export type Colours = {
  readonly ink: string;
  readonly quiet: string;
  readonly mark: string;
  readonly paper: string;
  /** Rules between rows: decoration, nothing is to be read from them. */
  readonly rule: string;
};

/** Okabe & Ito (2008), Color Universal Design: blue 0, 114, 178 and sky blue 86, 180, 233. */
export const themes: Readonly<Record<'light' | 'dark' | 'print', Colours>> = {
  light: { ink: '#1a1a1a', quiet: '#595959', mark: '#0072b2', paper: '#ffffff', rule: '#c4c4c4' },
  dark: { ink: '#ececec', quiet: '#b0b0b0', mark: '#56b4e9', paper: '#161616', rule: '#4a4a4a' },
  print: { ink: '#000000', quiet: '#444444', mark: '#0072b2', paper: '#ffffff', rule: '#c4c4c4' },
};

const colours = (theme: Colours): string =>
  Object.entries(theme)
    .map(([name, value]) => `--${name}: ${value};`)
    .join(' ');

const screen = `
* { box-sizing: border-box; }
body { margin: 2.5rem auto; max-width: 66rem; padding: 0 1.25rem; background: var(--paper);
  color: var(--ink); font: 15px/1.45 system-ui, sans-serif; }
.title { font-size: 1.4rem; line-height: 1.25; margin: 0 0 1rem; padding-bottom: .5rem;
  border-bottom: 2px solid var(--ink); overflow-wrap: anywhere; }
h2.title { font-size: 1.2rem; border-width: 1px; }
.under { display: block; font-size: 1rem; font-weight: 400; color: var(--quiet); }
.unseen { position: absolute; clip-path: inset(50%); width: 1px; height: 1px; overflow: hidden; }
.sheet + .sheet { margin-top: 3.5rem; }
:is(h2, h3):not(.title) { font-size: 1.05rem; margin: 1.6rem 0 .4rem; }
h2, h3, figcaption { overflow-wrap: anywhere; }
p { margin: .5rem 0; max-width: 48rem; overflow-wrap: anywhere; }
ul, ol { margin: .3rem 0 .8rem; padding-left: 1.2rem; max-width: 48rem; overflow-wrap: anywhere; }
ol { padding-left: 1.8rem; }
li ul { margin: 0; list-style-type: circle; }
.fact { display: grid; grid-template-columns: 9.5rem 1fr; gap: 0 1rem; max-width: 58rem; }
.notice { border: 2px solid var(--ink); border-left-width: .8rem; padding: .6rem .8rem;
  font-size: 1.15rem; max-width: none; display: block; }
.wide { overflow-x: auto; margin: 1rem 0; }
table { border-collapse: separate; border-spacing: 0; width: 100%; font-variant-numeric: tabular-nums; }
th, td { border-bottom: 1px solid var(--rule); padding: .25rem .55rem; text-align: left;
  vertical-align: top; white-space: nowrap; }
:is(th, td):first-child { padding-left: 0; }
:is(th, td):last-child { padding-right: .25rem; }
thead :is(th, td) { color: var(--quiet); font-weight: 600; vertical-align: bottom;
  white-space: normal; border-bottom: 1px solid var(--ink); }
tbody th { font-weight: 400; }
.prose { white-space: normal; min-width: 14rem; overflow-wrap: anywhere; }
.right { text-align: right; }
.strong, tbody .strong { font-weight: 700; }
.whole-word { white-space: nowrap; }
.quiet { color: var(--quiet); }
.binding, tbody .binding { color: var(--mark); font-weight: 700; }
.drawn { width: 1%; }
.axis { display: block; width: 15rem; padding: 0 .5rem; text-align: center; white-space: normal; }
.axis .ends { display: flex; justify-content: space-between; font-weight: 400; }
svg { display: block; fill: none; stroke: none; }
svg text { fill: var(--ink); }
.strip { width: 15rem; height: 1.2rem; }
.strip circle { fill: var(--ink); }
.strip .open { fill: var(--paper); stroke: var(--ink); stroke-width: 1.4; }
.strip .base { stroke: var(--rule); }
.strip .floor { stroke: var(--ink); stroke-width: 1.4; stroke-dasharray: 3 2; }
.strip .mark { stroke: var(--mark); stroke-width: 2.2; }
.strip .beyond { stroke: var(--ink); stroke-width: 1.4; }
.strip .span { stroke: var(--ink); stroke-width: 1.6; }
.strip .range { stroke: var(--ink); stroke-width: 1.2; }
.strip .extent { fill: var(--mark); fill-opacity: .28; stroke: var(--mark); }
.strip .stop { stroke: var(--ink); stroke-width: 2.6; }
figure { margin: 0; break-inside: avoid; }
figcaption { font-weight: 600; font-size: .9rem; margin-bottom: .2rem; }
figcaption small { display: block; font-size: .85rem; font-weight: 400; color: var(--quiet); }
.figures { display: grid; grid-template-columns: repeat(auto-fill, minmax(14rem, 1fr));
  gap: 1rem 1.2rem; margin: .6rem 0 1rem; }
.walk { columns: 3; column-gap: 1.2rem; margin-top: 1rem; }
.walk figure { margin-bottom: .7rem; }
.towards { font-weight: 400; color: var(--quiet); margin-left: .4rem; white-space: nowrap; }
.towards.right { float: right; text-align: inherit; }
.points { width: 100%; height: auto; }
.points .frame { stroke: var(--ink); }
.points .box { stroke: var(--quiet); }
.points .name { font-size: 13px; fill: var(--quiet); }
.points .value { font-size: 16px; }
.points .stands-out { font-weight: 700; }
.points .sign { fill: var(--mark); }
.whole { max-width: 44rem; }
.curve { width: 100%; height: auto; font-size: 13px; }
.curve .grid { stroke: var(--rule); }
.curve .foot { stroke: var(--ink); }
.curve .line { stroke: var(--mark); stroke-width: 2.2; }
.curve .ring { fill: var(--paper); stroke: var(--ink); stroke-width: 1.6; }
.curve .letter { font-weight: 700; }
.form { display: grid; grid-template-columns: repeat(2, 1fr); gap: .9rem 1.5rem; margin: 1.2rem 0; }
.form div { display: flex; align-items: flex-end; gap: .5rem; }
.form i { flex: 1; border-bottom: 1px solid var(--ink); height: 1.3rem; }`;

/** The widest table, of seven figures and a strip, stands whole in a window of half a screen. */
const middle = `
@media screen and (max-width: 62rem) {
  .strip, .axis { width: 11rem; }
  .strip { height: .95rem; }
}`;

const narrow = `
@media screen and (max-width: 44rem) {
  body { margin: 1.25rem auto; }
  .fact { display: block; }
  .walk { columns: 1; }
  .curve { font-size: 18px; }
  .curve .letter { font-size: 14px; }
  .form { grid-template-columns: 1fr; }
  .whole-word { white-space: normal; }
  thead th:first-child, tbody th { position: sticky; left: 0; background: var(--paper);
    border-right: 1px solid var(--rule); }
  .prose { min-width: 11rem; }
  :is(thead, tbody) th:first-child { white-space: normal; overflow-wrap: break-word;
    min-width: 5rem; max-width: 8rem; }
  .wide { font-size: 13.5px; background:
    linear-gradient(to left, var(--paper) 40%, transparent) 100% 0 / 2.2rem 100% no-repeat local,
    linear-gradient(to left, var(--quiet), transparent) 100% 0 / .6rem 100% no-repeat scroll; }
  .wide :is(th, td) { padding: .3rem .35rem; }${ticksIfNarrow}
}`;

/**
 * Either size of paper: its own is not asked for, and no measure is wider than the narrower of both. Above a
 * line stays the room that the tallest fonts draw in, else a browser draws its upper edge on the sheet before.
 */
const paper = `
@page { margin: 12mm 13mm 14mm;
  @bottom-right { content: counter(page) " / " counter(pages); font: 8pt system-ui, sans-serif; } }
@media print {
  :root { color-scheme: light; ${colours(themes.print)} }
  body { margin: 0; padding: 0; max-width: none; font-size: 9pt; line-height: 1.34;
    print-color-adjust: exact; }
  .title { font-size: 14pt; margin: 0 0 .5rem; padding-bottom: .25rem; }
  h2.title { font-size: 13pt; }
  .under { font-size: 10pt; }
  :is(h2, h3):not(.title) { font-size: 10.5pt; margin: .8rem 0 .2rem; }
  p { margin: .25rem 0; max-width: none; }
  ul, ol { margin: .2rem 0 .45rem; max-width: none; }
  li ul { margin: 0; }
  .wide { margin: .5rem 0; }
  .sheet:not(.head) + .sheet { margin: 0; break-before: page; }
  .head + .sheet { margin-top: 2rem; }
  h1, h2, h3, figcaption { break-after: avoid; }
  p, li, tr, figure { break-inside: avoid; }
  li:first-child:not(:last-child), li:nth-last-child(2) { break-after: avoid; }
  p, li { orphans: 3; widows: 3; padding-top: .1em; }
  thead { display: table-header-group; }
  .wide { overflow: visible; }
  th, td { padding: .1rem .3rem; }
  .prose { min-width: 0; }
  .strip, .axis { width: 40mm; }
  .strip { height: 3.7mm; }
  .axis { padding: 0 1.5mm; }
  .many { font-size: 8.5pt; }
  .many :is(th, td):not(:first-child) { padding: .1rem .2rem; }
  .fact { grid-template-columns: 31mm 1fr; max-width: none; }
  .short { break-inside: avoid; }
  figcaption { font-size: 9pt; padding-top: .1em; }
  figcaption small { font-size: 8.5pt; }
  .figures { display: block; }
  .figures figure { display: inline-block; vertical-align: top; width: 31.5%;
    margin: 0 1.8% 3mm 0; }
  .walk { column-gap: 5mm; margin-top: .6rem; }
  .walk figure { margin-bottom: 1.4mm; }
  .walk figcaption { font-size: 8pt; margin: 0; }
  .whole { max-width: 140mm; }
  .form { grid-template-columns: repeat(2, 1fr); gap: .3rem 1.5rem; margin: .45rem 0; }${ticksOnPaper}
}`;

export const pageStyle = `
:root { color-scheme: light dark; ${colours(themes.light)} }
@media (prefers-color-scheme: dark) { :root { ${colours(themes.dark)} } }${screen}${ticksOnScreen}${middle}${narrow}${paper}
`;
