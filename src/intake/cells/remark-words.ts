/**
 * Words behind a number for what was seen of the paint there: `114 (patched)`, `111 stone chip`. They say nothing of
 * the reading, so it counts, and they are kept as its note. Words for a place (`edge`) or against a reading
 * (`slipped`) are none of these, nor is any word that stands in no list here.
 */
import { wordKey, wordKeys } from './word-key.ts';

const seen = wordKeys(
  'patched, patch, patchy, repainted, repaint, painted, resprayed, respray, sprayed, overspray, repaired, repair',
  'refinished, refinish, blended, filler, filled, touched up, touchup, retouched, polished, chip, chips, chipped',
  'stonechip, stonechips, scratch, scratches, scratched, scuff, scuffed, dent, dents, dented, rust, rusty, faded, swirls',
  'nachlackiert, neulackiert, lackiert, überlackiert, beilackiert, repariert, gespachtelt, spachtel, ausgebessert',
  'nachgebessert, steinschlag, steinschläge, kratzer, zerkratzt, delle, dellen, beule, beulen, rost, poliert',
  'repeint, repeinte, peint, peinte, retouché, retouchée, réparé, réparée, mastic, mastiqué, mastiquée, rayure',
  'rayures, rayé, rayée, gravillons, rouille, poli, polie',
  'repintado, repintada, pintado, pintada, retocado, retocada, reparado, reparada, masilla, arañazo, arañazos',
  'abolladura, abolladuras, óxido, pulido, pulida, riverniciato, riverniciata, verniciato, verniciata, ritoccato',
  'ritoccata, riparato, riparata, stucco, stuccato, stuccata, graffio, graffi, ammaccatura, ruggine, lucidato, lucidata',
  'overgespoten, gespoten, gerepareerd, plamuur, geplamuurd, kras, krassen, deuk, deuken, steenslag, roest, gepolijst',
  'lakierowany, lakierowana, lakierowane, malowany, malowana, malowane, szpachla, szpachlowany, szpachlowana, rysa, rysy',
);
const beside = wordKeys(
  'a, the, is, was, been, has, and, with, small, big, large, light, heavy, deep, minor, slight, slightly, partly, fully',
  'recently, body, stone, spot, smart, up, touch, here, neu, leicht, leichte, leichter, klein, kleine, kleiner, tief, tiefer',
  'und, mit, großflächig, et, avec, petit, petite, léger, légère, y, con, pequeño, pequeña, e, piccolo, piccola, leggero',
  'en, met, kleine, lichte',
);

/** What can be counted: `30 stone chips` are no film of 30 µm. */
const counted = wordKeys(
  'chips, stonechips, scratches, scuffs, dents, marks, steinschläge, kratzer, dellen, beulen, rayures, gravillons',
  'arañazos, abolladuras, graffi, krassen, deuken, rysy',
);
export const countsMarks = (text: string): boolean =>
  text
    .split(/[\s,/&+-]+/u)
    .map(wordKey)
    .some((word) => counted.has(word));

/** Longer is no remark on one number. */
const mostWords = 5;

export function isRemark(text: string): boolean {
  const words = text.split(/[\s,/&+-]+/u).map(wordKey);
  return (
    words.length <= mostWords &&
    words.some((word) => seen.has(word)) &&
    words.every((word) => seen.has(word) || beside.has(word))
  );
}
