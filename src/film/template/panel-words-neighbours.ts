/**
 * The words for body panels of further languages of Europe: Norwegian, Slovak, Slovenian, Croatian (with Serbian and Bosnian),
 * Romanian, Estonian, Latvian, Lithuanian, Ukrainian and Bulgarian. What is said in `panel-words-abroad.ts` of
 * shared words holds here: `tag` (a roof in Danish, a day in German) and `capota` (a bonnet in Romanian, a soft top in Spanish) are left out.
 */
import type { WordRow } from './panel-word-rows.ts';

const norwegian: readonly WordRow[] = [
  ['bonnet', 'panser'],
  ['tailgate', 'bakluke'],
];

const slovak: readonly WordRow[] = [
  ['bonnet', 'predná kapota'],
  ['roof', 'strecha'],
  ['door', 'dvere'],
  ['boot', 'kufor, veko kufra, zadná kapota'],
  ['mirror', 'spätné zrkadlo, zrkadlo'],
  ['front', 'predný, predná, predné'],
  ['rear', 'zadný, zadná, zadné'],
  ['left', 'ľavý, ľavá, ľavé'],
  ['driver', 'vodiča'],
  ['passenger', 'spolujazdca'],
];

const slovenian: readonly WordRow[] = [
  ['bonnet', 'pokrov motorja'],
  ['roof', 'streha'],
  ['wing', 'blatnik'],
  ['boot', 'pokrov prtljažnika'],
  ['bumper', 'odbijač'],
  ['front', 'sprednji, sprednja, sprednje'],
  ['left', 'levi, leva, leve'],
];

const croatian: readonly WordRow[] = [
  ['bonnet', 'hauba, poklopac motora'],
  ['roof', 'krov'],
  ['wing', 'blatobran'],
  ['door', 'vrata'],
  ['boot', 'prtljažnik, poklopac prtljažnika, gepek'],
  ['bumper', 'branik, odbojnik'],
  ['sill', 'prag'],
  ['mirror', 'retrovizor, ogledalo'],
  ['front', 'prednji, prednja, prednje'],
  ['rear', 'stražnji, stražnja, stražnje, zadnji, zadnja, zadnje'],
  ['left', 'lijevi, lijeva, lijevo'],
  ['right', 'desni, desna, desno'],
  ['driver', 'vozač, vozača'],
  ['passenger', 'suvozač, suvozača'],
];

const romanian: readonly WordRow[] = [
  ['bonnet', 'capotă motor'],
  ['roof', 'plafon, acoperiș'],
  ['wing', 'aripă'],
  ['door', 'ușă, portieră'],
  ['boot', 'portbagaj, capac portbagaj'],
  ['bumper front', 'bară față'],
  ['bumper rear', 'bară spate'],
  ['mirror', 'oglindă'],
  ['front', 'față'],
  ['rear', 'spate'],
  ['left', 'stânga'],
  ['right', 'dreapta'],
  ['driver', 'șofer'],
];

const estonian: readonly WordRow[] = [
  ['bonnet', 'kapott'],
  ['roof', 'katus'],
  ['wing', 'poritiib, tiib, esitiib'],
  ['quarter', 'tagatiib'],
  ['door', 'uks'],
  ['door front', 'esiuks'],
  ['door rear', 'tagauks'],
  ['boot', 'pagasiluuk'],
  ['bumper', 'põrkeraud'],
  ['mirror', 'küljepeegel'],
  ['front', 'eesmine'],
  ['rear', 'tagumine'],
  ['left', 'vasak'],
  ['right', 'parem'],
];

const latvian: readonly WordRow[] = [
  ['bonnet', 'motora pārsegs, kapots'],
  ['roof', 'jumts'],
  ['wing', 'spārns'],
  ['door', 'durvis'],
  ['boot', 'bagāžnieks, bagāžnieka vāks'],
  ['sill', 'slieksnis'],
  ['mirror', 'spogulis'],
  ['front', 'priekšējais, priekšējā, priekšējās'],
  ['rear', 'aizmugurējais, aizmugurējā, aizmugurējās'],
  ['left', 'kreisais, kreisā, kreisās'],
  ['right', 'labais, labā, labās'],
];

const lithuanian: readonly WordRow[] = [
  ['bonnet', 'kapotas, variklio dangtis'],
  ['roof', 'stogas'],
  ['wing', 'sparnas'],
  ['door', 'durys, durelės'],
  ['boot', 'bagažinė, bagažinės dangtis'],
  ['bumper', 'bamperis, buferis'],
  ['sill', 'slenkstis'],
  ['mirror', 'veidrodis, veidrodėlis'],
  ['front', 'priekinis, priekinė, priekinės'],
  ['rear', 'galinis, galinė, galinės'],
  ['left', 'kairys, kairė, kairysis, kairioji, kairiosios'],
  ['right', 'dešinys, dešinė, dešinysis, dešinioji, dešiniosios'],
];

const ukrainian: readonly WordRow[] = [
  ['roof', 'дах'],
  ['wing', 'крило'],
  ['door', 'двері'],
  ['boot', 'кришка багажника'],
  ['sill', 'поріг'],
  ['mirror', 'дзеркало'],
  ['front', 'передній, переднє, передні'],
  ['rear', 'задній, задня, заднє, задні'],
  ['left', 'лівий, ліва, ліве, ліві'],
  ['right', 'правий, права, праве, праві'],
  ['driver', 'водія'],
  ['passenger', 'пасажира'],
];

const bulgarian: readonly WordRow[] = [
  ['bonnet', 'преден капак'],
  ['roof', 'таван, покрив'],
  ['wing', 'калник'],
  ['door', 'врата'],
  ['boot', 'заден капак'],
  ['bumper', 'броня'],
  ['sill', 'праг'],
  ['mirror', 'огледало'],
  ['front', 'преден, предна, предно'],
  ['rear', 'заден, задна, задно'],
  ['left', 'ляв, лява, ляво'],
  ['right', 'десен, дясна, дясно'],
];

export const wordsOfNeighbours = {
  ...{ norwegian, slovak, slovenian, croatian, romanian, estonian },
  ...{ latvian, lithuanian, ukrainian, bulgarian },
};
