/**
 * The words for body panels of five more languages, as German, French, Spanish, Italian and Dutch body
 * shops use them. A word that two languages share must mean the same in both, and a word that English
 * knows must keep its English meaning: `post` (a pillar), `av` and `avg` (the average) are therefore
 * known only in phrases that leave no doubt, and `del` (front, or `of the`) with both its senses.
 */
import type { Sense } from './panel-sense.ts';
import {
  bonnet,
  boot,
  bumper,
  door,
  driver,
  filler,
  front,
  left,
  mirror,
  passenger,
  quarter,
  rail,
  rear,
  rearDoors,
  right,
  roof,
  sill,
  tailgate,
  vanSide,
  type WordRow,
  wing,
} from './panel-word-rows.ts';

const german: readonly WordRow[] = [
  [bonnet, 'motorhaube, haube, kühlerhaube'],
  [roof, 'dach'],
  [wing, 'kotflügel, kotfl'],
  // A left hand in English, and `links hinten`: beside a German word it may be either.
  [{ ...wing, ...rear, ...left }, 'kotflügel lh, kotflügel l h, kotfl lh, kotfl l h'],
  [{ ...door, ...rear, ...left }, 'tür lh, tür l h, türe lh, türe l h'],
  [door, 'tür, türe'],
  [rearDoors, 'tür hinten, türe hinten, türen hinten, hintere tür, hintere türen'],
  [{ ...door, ...front }, 'vordertür'],
  [[rearDoors, { ...door, ...rear }], 'hintertür'],
  [{ ...door, ...driver }, 'fahrertür'],
  [{ ...door, ...passenger }, 'beifahrertür'],
  [[tailgate, rearDoors], 'hecktür, hecktüren'],
  [[quarter, vanSide], 'seitenteil, seitenwand'],
  [boot, 'kofferraumdeckel, kofferraumklappe, kofferraum, kofferdeckel, heckdeckel'],
  [tailgate, 'heckklappe'],
  [bumper, 'stoßstange, stoßfänger'],
  [{ ...bumper, ...front }, 'frontschürze'],
  [{ ...bumper, ...rear }, 'heckschürze'],
  [sill, 'schweller, seitenschweller, türschweller'],
  [mirror, 'spiegel, außenspiegel, seitenspiegel'],
  [rail, 'dachholm, dachrahmen'],
  [front, 'vorne, vorn, vorder, vordere, vorderer, vorderes, vo'],
  [rear, 'hinten, hinter, hintere, hinterer, hinteres, heck, hi'],
  [left, 'links, linke, linker, linkes, li'],
  [right, 'rechts, rechte, rechter, rechtes, re'],
  [{ ...front, ...left }, 'vl, v l'],
  [{ ...front, ...right }, 'vr, v r'],
  [{ ...rear, ...left }, 'hl, h l'],
  [{ ...rear, ...right }, 'hr, h r'],
  [driver, 'fahrer, fahrerseite'],
  [passenger, 'beifahrer, beifahrerseite'],
  [filler, 'seite'],
];

const french: readonly WordRow[] = [
  [bonnet, 'capot, capot moteur'],
  [roof, 'toit, pavillon'],
  [wing, 'aile'],
  [door, 'porte, portière'],
  [rearDoors, 'porte arrière, porte ar, portes arrière, portes ar, portière arrière'],
  [boot, 'coffre, malle'],
  [tailgate, 'hayon'],
  [bumper, 'pare choc, pare chocs, parechoc, parechocs, bouclier'],
  [sill, 'bas de caisse'],
  [mirror, 'rétroviseur'],
  [front, 'avant'],
  [{ ...wing, ...front }, 'aile av'],
  [{ ...door, ...front }, 'porte av, portière av'],
  [{ ...bumper, ...front }, 'pare choc av, pare chocs av'],
  [rear, 'arrière, ar'],
  [left, 'gauche'],
  [right, 'droit, droite'],
  [{ ...front, ...left }, 'av g'],
  [{ ...front, ...right }, 'avd, av d'],
  [{ ...rear, ...left }, 'arg, ar g'],
  [{ ...rear, ...right }, 'ard, ar d'],
  [{ ...wing, ...front, ...left }, 'aile avg'],
  [{ ...door, ...front, ...left }, 'porte avg, portière avg'],
  [driver, 'conducteur'],
  [passenger, 'passager'],
  [filler, 'côté, de, la, le'],
];

const spanish: readonly WordRow[] = [
  [bonnet, 'capó'],
  [roof, 'techo'],
  [wing, 'aleta, guardabarros, guardabarro, guardafango, salpicadera'],
  [door, 'puerta, pta'],
  [rearDoors, 'puerta trasera, puertas traseras'],
  [boot, 'maletero, cajuela, baúl, tapa del maletero, tapa de maletero'],
  [tailgate, 'portón, portalón'],
  [bumper, 'paragolpes, parachoques'],
  [sill, 'estribo, talonera'],
  [mirror, 'espejo, retrovisor'],
  [front, 'delantero, delantera'],
  [rear, 'trasero, trasera, tras'],
  [left, 'izquierdo, izquierda, izq, izqdo, izqda, izdo, izda'],
  [right, 'derecho, derecha, dcho, dcha, dch, der'],
  [[front, filler], 'del'],
  [driver, 'conductor'],
  [passenger, 'pasajero, acompañante, copiloto'],
  [filler, 'lado, el'],
];

const italian: readonly WordRow[] = [
  [bonnet, 'cofano, cofano motore'],
  [roof, 'tetto'],
  [wing, 'parafango'],
  [door, 'porta, portiera'],
  [rearDoors, 'porta posteriore, portiera posteriore, porte posteriori'],
  [quarter, 'fiancata posteriore'],
  [vanSide, 'fiancata'],
  [boot, 'baule, bagagliaio, cofano posteriore, cofano baule'],
  [tailgate, 'portellone, portellone posteriore'],
  [bumper, 'paraurti'],
  [sill, 'sottoporta, brancardo, minigonna'],
  [mirror, 'specchietto, specchio, retrovisore'],
  [front, 'anteriore, ant, anteriori'],
  [rear, 'posteriore, posteriori'],
  [left, 'sinistro, sinistra, sx'],
  [right, 'destro, destra, dx'],
  [{ ...rear, ...left }, 'post sx, post sinistra, post sinistro'],
  [{ ...rear, ...right }, 'post dx, post destra, post destro'],
  [{ ...bumper, ...rear }, 'paraurti post'],
  [driver, 'guidatore, conducente'],
  [passenger, 'passeggero'],
  [filler, 'lato'],
];

const dutch: readonly WordRow[] = [
  [bonnet, 'motorkap'],
  [roof, 'dak'],
  [wing, 'spatbord, spatscherm, scherm'],
  [door, 'portier, deur'],
  [rearDoors, 'deur achter, deuren achter'],
  [[rearDoors, { ...door, ...rear }], 'achterdeur, achterdeuren'],
  [vanSide, 'zijpaneel, zijwand'],
  [boot, 'kofferklep, kofferdeksel, koffer, kofferbak'],
  [tailgate, 'achterklep'],
  [sill, 'dorpel'],
  [mirror, 'spiegel, buitenspiegel, zijspiegel'],
  [front, 'voor, voorste'],
  [rear, 'achter, achterste'],
  [left, 'links, linker'],
  [right, 'rechts, rechter'],
  [driver, 'bestuurder, bestuurderszijde'],
  [passenger, 'bijrijder, bijrijderszijde'],
  [filler, 'zijde, kant'],
];

export const wordsAbroad = { german, french, spanish, italian, dutch };

/** As written, and as a keyboard without the letters writes it: `tür`, `tuer` and `tur`. */
export function plainSpellings(word: string): readonly string[] {
  if (/^[a-z ]*$/.test(word)) return [word];
  const unsharp = word.replaceAll('ß', 'ss');
  const twoLetters = unsharp.replace(/[äöü]/gu, (letter) => `${bare(letter)}e`);
  return [...new Set([word, unsharp, twoLetters, bare(unsharp)])];
}

const bare = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '');

/** Every word abroad with its senses, in all its spellings. */
export const abroadEntries = (
  rows: readonly WordRow[],
): readonly (readonly [string, readonly Sense[]])[] =>
  rows.flatMap(([meaning, words]) => {
    const senses = Array.isArray(meaning) ? meaning : [meaning];
    return words
      .split(', ')
      .flatMap(plainSpellings)
      .map((word) => [word, senses] as const);
  });
