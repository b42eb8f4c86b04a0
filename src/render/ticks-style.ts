/**
 * How things to do look: to be read standing, from some two metres. By the rule of thumb that a letter
 * wants a 200th of the distance, capitals of a name are 7 mm or more (29 pt), of what is done 5 mm (20 pt).
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
  .ticks { font-size: 12.5pt; margin-top: 6mm; }
  .ticks :is(h2, h3):not(.title) { font-size: 29pt; }
  .ticks header p { font-size: 19pt; }
  .ticks .strong { font-size: 20pt; font-weight: 400; }
  .ticks li { margin: 1.2mm 0; }
  .notice { font-size: 14pt; line-height: 1.3; }`;
