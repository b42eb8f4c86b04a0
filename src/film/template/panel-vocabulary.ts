/**
 * The words of the trade for body panels, British and American and of other languages, and what
 * each can mean. A word may have several senses (`r` is right or rear); phrases are keys of several
 * words. All are singular.
 */
import { once } from '../../base/kept.ts';
import type { End, KerbWord, Part, Sense, Side } from './panel-sense.ts';
import { wordSenses } from './panel-word-rows.ts';
import { wordsAbroad } from './panel-words-abroad.ts';
import { wordsEast } from './panel-words-east.ts';
import { wordsFurther } from './panel-words-further.ts';
import { wordsOfNeighbours } from './panel-words-neighbours.ts';

const same = (senses: readonly Sense[], ...spellings: readonly string[]) =>
  spellings.map((spelling): readonly [string, readonly Sense[]] => [spelling, senses]);
const parts = (part: Part, ...spellings: readonly string[]) => same([{ part }], ...spellings);
const kerb = (word: KerbWord, ...spellings: readonly string[]) =>
  same([{ kerb: word }], ...spellings);
const corner = (end: End, side: Side, ...spellings: readonly string[]) =>
  same([{ end, side }], ...spellings);
const kerbCorner = (word: KerbWord, end: End, ...spellings: readonly string[]) =>
  same([{ kerb: word, end }], ...spellings);

export type Vocabulary = ReadonlyMap<string, readonly Sense[]>;

export const englishWords: Vocabulary = new Map([
  ...parts('bonnet', 'bonnet', 'hood'),
  ...parts('roof', 'roof', 'top', 'rooftop', 'roof top'),
  ...parts('wing', 'wing', 'fender', 'guard'),
  ...parts('quarter', 'quarter', 'qtr', 'quarterpanel'),
  ...parts('bedside', 'bedside', 'bed side', 'boxside', 'box side'),
  ...parts('van-side', 'body side', 'bodyside', 'van side', 'load side'),
  ...parts('boot', 'boot', 'bootlid', 'trunk', 'trunklid', 'decklid', 'deck lid'),
  ...parts('tailgate', 'tailgate', 'tail gate', 'liftgate', 'lift gate', 'liftback'),
  ...parts('tailgate', 'hatch', 'hatchback'),
  ...parts('rear-doors', 'rear door', 'door rear', 'back door', 'door back', 'barn door'),
  ...parts('bumper', 'bumper', 'bumperbar', 'bumper bar', 'fascia'),
  ...parts('sill', 'sill', 'rocker', 'skirt', 'sideskirt', 'side skirt', 'side sill'),
  ...parts('mirror', 'mirror', 'wing mirror', 'door mirror', 'side mirror', 'outside mirror'),
  ...parts('rail', 'rail', 'roofrail', 'rooftrail', 'roof rail', 'roof side', 'roof side rail'),
  ...parts('rail', 'cant rail', 'pillar'),
  ...parts('door', 'door'),
  ...parts('cab-rear', 'cab rear', 'cab back', 'rear cab', 'back of cab', 'back of the cab'),
  ...parts('cab-rear', 'rear of cab', 'rear of the cab'),
  ...same([{ end: 'front' }], 'front', 'frt', 'f'),
  ...same([{ end: 'rear' }], 'rear', 'back'),
  ...same([{ side: 'left' }], 'left', 'lt', 'l', 'lh', 'lhs', 'l h', 'l h s'),
  ...same([{ side: 'right' }], 'right', 'rt', 'rh', 'rhs', 'r h', 'r h s'),
  ...same([{ side: 'right' }, { end: 'rear' }], 'r'),
  ...corner('front', 'left', 'lf', 'fl', 'lhf', 'flh'),
  ...corner('front', 'right', 'rf', 'rhf', 'frh'),
  ...corner('rear', 'left', 'lr', 'rl', 'lhr', 'rlh'),
  ...corner('rear', 'right', 'rhr', 'rrh'),
  ...same(
    [
      { end: 'front', side: 'right' },
      { end: 'front', weak: true },
    ],
    'fr',
  ),
  ...same(
    [
      { end: 'rear', side: 'right' },
      { end: 'rear', weak: true },
    ],
    'rr',
  ),
  ...kerb('nearside', 'nearside', 'near side', 'ns', 'n s', 'kerbside', 'curbside'),
  ...kerb('offside', 'offside', 'off side', 'os', 'o s'),
  ...kerb('driver', 'driver', 'drivers', 'driverside', 'ds', 'd s'),
  ...kerb('passenger', 'passenger', 'passengers', 'passengerside', 'ps', 'p s'),
  ...kerbCorner('nearside', 'front', 'nsf', 'fns'),
  ...kerbCorner('nearside', 'rear', 'nsr', 'rns'),
  ...kerbCorner('offside', 'front', 'osf', 'fos'),
  ...kerbCorner('offside', 'rear', 'osr', 'ros'),
  ...kerbCorner('driver', 'front', 'dsf'),
  ...kerbCorner('driver', 'rear', 'dsr'),
  ...kerbCorner('passenger', 'front', 'psf'),
  ...kerbCorner('passenger', 'rear', 'psr'),
  ...same([{ part: 'van-side' }, { sideWord: true }], 'side'),
  ...same(
    [{}],
    'panel',
    'lid',
    'cover',
    'the',
    'skin',
    'shell',
    'housing',
    'assembly',
    'cab',
    'hand',
  ),
]);

/** The words of all languages; a thousand, which take long to be made. */
export const vocabulary = once(
  (): Vocabulary =>
    new Map([
      ...Object.values({
        ...wordsOfNeighbours,
        ...wordsFurther,
        ...wordsEast,
        ...wordsAbroad,
      }).flatMap(wordSenses),
      ...englishWords,
    ]),
);

/**
 * Where these words are looked up, alone and in phrases: words that are English all of them in English alone, for no
 * other language has a phrase of such words.
 */
export const vocabularyFor = (words: readonly string[]): Vocabulary =>
  words.every((word) => englishWords.has(word)) ? englishWords : vocabulary();

/** The end of the vehicle at which a part always is; other parts are at both ends or at neither. */
export const endOfPart: ReadonlyMap<Part, End> = new Map<Part, End>([
  ['bonnet', 'front'],
  ['wing', 'front'],
  ['mirror', 'front'],
  ['quarter', 'rear'],
  ['bedside', 'rear'],
  ['boot', 'rear'],
  ['tailgate', 'rear'],
  ['rear-doors', 'rear'],
  ['closure', 'rear'],
  ['cab-rear', 'rear'],
]);

/** Parts that close the rear: any word for one names whichever the template has, if it has just one. */
export const rearClosures: readonly Part[] = ['boot', 'tailgate', 'rear-doors'];
