/**
 * The words for body panels of languages written in Latin letters beside those of `panel-words-abroad.ts`:
 * Portuguese, Polish, Czech, Swedish, Danish, Turkish, Finnish and Hungarian. What is said there of shared words holds here.
 */
import type { WordRow } from './panel-word-rows.ts';

const portuguese: readonly WordRow[] = [
  ['bonnet', 'capô'],
  ['roof', 'teto, tejadilho'],
  ['wing', 'guarda lama, guarda lamas, paralama, para lama'],
  ['door', 'porta'],
  ['boot', 'porta malas, porta mala, tampa da mala, tampa do porta malas'],
  ['bumper', 'para choque, para choques, parachoque'],
  ['mirror', 'espelho, retrovisor'],
  ['front', 'dianteiro, dianteira'],
  ['rear', 'traseiro, traseira'],
  ['left', 'esquerdo, esquerda'],
  ['right', 'direito, direita'],
  ['driver', 'motorista'],
  ['passenger', 'passageiro'],
];

const polish: readonly WordRow[] = [
  ['bonnet', 'maska, pokrywa silnika'],
  ['roof', 'dach'],
  ['wing', 'błotnik, blotnik'],
  // `lt` is `lewy tył` here, and left in English; `pt` is `prawy tył`, and a point.
  ['wing rear left', 'błotnik lt, blotnik lt, lt błotnik, lt blotnik', 'as one'],
  ['wing rear right', 'błotnik pt, blotnik pt, pt błotnik, pt blotnik', 'as one'],
  ['wing front left', 'błotnik lp, blotnik lp, lp błotnik, lp blotnik', 'as one'],
  ['wing front right', 'błotnik pp, blotnik pp, pp błotnik, pp blotnik', 'as one'],
  ['door rear left', 'drzwi lt, lt drzwi', 'as one'],
  ['door rear right', 'drzwi pt, pt drzwi', 'as one'],
  ['door front left', 'drzwi lp, lp drzwi', 'as one'],
  ['door front right', 'drzwi pp, pp drzwi', 'as one'],
  ['door', 'drzwi'],
  ['boot', 'bagażnik, klapa bagażnika, pokrywa bagażnika'],
  ['tailgate', 'klapa tylna, tylna klapa'],
  ['bumper', 'zderzak'],
  ['sill', 'próg'],
  ['mirror', 'lusterko'],
  ['front', 'przedni, przednia, przednie, przód'],
  ['rear', 'tylny, tylna, tylne, tył, tyl'],
  ['left', 'lewy, lewa, lewe'],
  ['right', 'prawy, prawa, prawe'],
  ['driver', 'kierowcy, kierowca'],
  ['passenger', 'pasażera'],
];

const czech: readonly WordRow[] = [
  ['bonnet', 'kapota, přední kapota, kapota motoru'],
  ['roof', 'střecha'],
  ['wing', 'blatník'],
  ['door', 'dveře'],
  ['boot', 'kufr, víko kufru, zadní kapota'],
  ['bumper', 'nárazník'],
  ['sill', 'práh'],
  ['mirror', 'zrcátko'],
  ['front', 'přední'],
  ['rear', 'zadní'],
  ['left', 'levý, levá, levé'],
  ['right', 'pravý, pravá, pravé'],
  ['driver', 'řidič, řidiče'],
  ['passenger', 'spolujezdec, spolujezdce'],
];

const swedish: readonly WordRow[] = [
  ['bonnet', 'motorhuv, motorhuven, huv'],
  ['roof', 'tak, taket'],
  ['wing', 'skärm, framskärm'],
  ['quarter', 'bakskärm'],
  ['door', 'dörr'],
  ['door front', 'framdörr'],
  ['door rear', 'bakdörr'],
  ['boot', 'bagagelucka, bakluckan'],
  ['tailgate', 'baklucka'],
  ['bumper', 'stötfångare'],
  ['sill', 'tröskel'],
  ['mirror', 'backspegel, sidospegel'],
  ['front', 'fram, främre'],
  ['rear', 'bak, bakre'],
  ['left', 'vänster, vänstra'],
  ['right', 'höger, högra'],
  ['front left', 'vf, v f'],
  ['front right', 'hf, h f'],
  ['rear left', 'vb, v b'],
  ['rear right', 'hb, h b'],
];

const danish: readonly WordRow[] = [
  ['bonnet', 'motorhjelm, kølerhjelm, motorpanser'],
  ['door', 'dør'],
  ['door front', 'fordør, framdør'],
  ['door rear', 'bagdør, bakdør'],
  ['wing', 'forskærm, forskjerm'],
  ['quarter', 'bagskærm, bakskjerm'],
  ['boot', 'bagagerumsklap, bagklap, bagasjelokk'],
  ['bumper', 'kofanger, støtfanger'],
  ['mirror', 'sidespejl, sidespeil'],
  ['front', 'forreste'],
  ['rear', 'bageste'],
  ['left', 'venstre'],
  ['right', 'højre, høyre'],
];

const turkish: readonly WordRow[] = [
  ['bonnet', 'kaput, motor kaputu'],
  ['roof', 'tavan'],
  ['wing', 'çamurluk'],
  ['door', 'kapı, kapi'],
  ['boot', 'bagaj, bagaj kapağı, bagaj kapagi'],
  ['bumper', 'tampon'],
  ['sill', 'marşpiyel'],
  ['mirror', 'ayna, dış ayna, yan ayna'],
  ['front', 'ön'],
  ['rear', 'arka'],
  ['left', 'sol'],
  ['right', 'sağ'],
  ['driver', 'sürücü'],
  ['passenger', 'yolcu'],
  ['filler', 'taraf'],
];

const finnish: readonly WordRow[] = [
  ['bonnet', 'konepelti'],
  ['roof', 'katto'],
  ['wing', 'lokasuoja, etulokasuoja'],
  ['quarter', 'takalokasuoja'],
  ['door', 'ovi'],
  ['door front', 'etuovi'],
  ['door rear', 'takaovi'],
  ['boot', 'takaluukku, takakansi'],
  ['bumper', 'puskuri'],
  ['bumper front', 'etupuskuri'],
  ['bumper rear', 'takapuskuri'],
  ['sill', 'kynnyskotelo, helma'],
  ['mirror', 'sivupeili, peili'],
  ['front', 'etu, edessä'],
  ['rear', 'taka, takana'],
  ['left', 'vasen, vasemman'],
  ['right', 'oikea, oikean'],
];

const hungarian: readonly WordRow[] = [
  ['bonnet', 'motorháztető, géptető'],
  ['roof', 'tető'],
  ['wing', 'sárvédő'],
  ['door', 'ajtó'],
  ['boot', 'csomagtartó, csomagtérfedél'],
  ['tailgate', 'csomagtérajtó'],
  ['bumper', 'lökhárító'],
  ['sill', 'küszöb'],
  ['mirror', 'tükör, visszapillantó tükör'],
  ['front', 'első'],
  ['rear', 'hátsó'],
  ['left', 'bal'],
  ['right', 'jobb'],
];

export const wordsFurther = {
  ...{ portuguese, polish, czech, swedish, danish, turkish },
  ...{ finnish, hungarian },
};
