/**
 * How things to do look. By the rule of thumb that a letter wants a 200th of the distance, capitals are to be
 * 3.5 mm for a page at arm's length (.7 m): on paper a name and what is done are 14 pt or more, in two columns so
 * that a car is two or three sheets; what is done once for each panel is smaller.
 */

export const ticksOnScreen = `
.ticks { break-inside: avoid; font-size: 1.15rem; margin-top: 1.8rem; }
.ticks header { display: flex; flex-wrap: wrap; align-items: baseline; column-gap: 1.2rem;
  border-bottom: 2px solid var(--ink); }
.ticks :is(h2, h3):not(.title) { font-size: 2.2rem; line-height: 1.15; margin: 0; }
.ticks header p { font-size: 1.5rem; margin: 0; max-width: none; }
.ticks ul { list-style: none; padding: 0; margin: .4rem 0 0; max-width: none; }
.ticks li { display: flex; align-items: flex-start; gap: .35em; margin: .35rem 0; }
.ticks .strong { font-size: 1.7rem; line-height: 1.2; }
.ticks b { flex: none; width: 1.1em; height: 1.1em; margin-top: .15em;
  border: 2px solid var(--ink); border-radius: 2px; }
.ticks li > span { margin-left: .25em; }
.ticks li > span:first-child { margin-left: 1.7em; }`;

export const ticksIfNarrow = `
  .ticks :is(h2, h3):not(.title) { font-size: 1.7rem; }
  .ticks .strong { font-size: 1.35rem; }`;

export const ticksOnPaper = `
  .sheet:has(> .ticks) { columns: 2; column-gap: 5mm; }
  .sheet:has(> .ticks) + .sheet { break-before: auto; break-inside: avoid; padding-top: 5mm; }
  .sheet:has(> .ticks) > :not(.ticks) { column-span: all; }
  .ticks { font-size: 10.5pt; line-height: 1.2; margin: 0; padding-top: 2.2mm; }
  .ticks :is(h2, h3):not(.title) { font-size: 16pt; line-height: 1.2; }
  .ticks header { column-gap: .8rem; }
  .ticks header p { font-size: 10.5pt; }
  .ticks .strong { font-size: 14pt; line-height: 1.1; font-weight: 400; }
  .ticks ul { margin-top: .8mm; }
  .ticks :is(p, li) { padding-top: 0; }
  .ticks li { margin: .6mm 0; gap: .22em; }
  .ticks b { width: .82em; height: .82em; border-width: 1.2pt; }
  .ticks li > span:first-child { margin-left: 1.25em; }
  .notice { font-size: 11pt; line-height: 1.25; }`;
