/** What people get wrong in a shop file: each mistake gives one sentence that leads to the mend. */
import { expect, test } from 'vitest';
import { readShop } from '../../src/formats/shop/shop.ts';

/** Each text follows a first line that opens the file and says its kind. */
const mistakes: readonly {
  readonly mistake: string;
  readonly text: string;
  /** `line:column sentence | hint`. */
  readonly told: readonly string[];
}[] = [
  {
    mistake: 'a word in place of a list',
    text: '"pads": "foam"}',
    told: [
      '2:9 "pads" is "foam"; it takes a list in brackets, each entry a known pad or a description of one | write a list of ids, such as ["foam-soft", "foam-medium"]',
    ],
  },
  {
    mistake: 'an id in place of a list',
    text: '"pads": "foam-soft"}',
    told: [
      '2:9 "pads" is "foam-soft"; it takes a list in brackets, each entry a known pad or a description of one | write ["foam-soft"]',
    ],
  },
  {
    mistake: 'an empty list',
    text: '"machines": []}',
    told: [
      '2:13 "machines" is an empty list; it takes a list in brackets, each entry a known machine or a description of one | leave the key out to have every machine',
    ],
  },
  {
    mistake: 'a misspelt id',
    text: '"machines": ["rotary", "rottary"]}',
    told: [
      '2:24 "machines[1]" is "rottary"; it takes the id of a known machine, or a description: { "id": … } | did you mean "rotary"?',
    ],
  },
  {
    mistake: 'a part of an id',
    text: '"pads": ["soft"]}',
    told: [
      '2:10 "pads[0]" is "soft"; it takes the id of a known pad, or a description: { "id": … } | did you mean "foam-soft"?',
    ],
  },
  {
    mistake: 'a machine nobody knows',
    text: '"machines": ["my polisher"]}',
    told: [
      '2:14 "machines[0]" is "my polisher"; it takes the id of a known machine, or a description: { "id": … } | known are rotary, da, da-forced, da-small, hand; describe one of your own',
    ],
  },
  {
    mistake: 'a motion by its trade word',
    text: '"machines": [{ "id": "x", "motion": "dual action", "throw_mm": 15, "orbits_per_min": 4800 }]}',
    told: [
      '2:37 "machines[0].motion" is "dual action"; it takes "rotary", "orbital" or "hand" | a dual action is "orbital"; one that is driven has a forced_rpm',
    ],
  },
  {
    mistake: 'an id written twice',
    text: '"machines": ["da", "da"]}',
    told: ['2:20 "machines[1]" names "da" again | keep one of the two'],
  },
  {
    mistake: 'an own machine that does not say how it moves',
    text: '"machines": [{"id": "mine"}]}',
    told: [
      '2:14 "machines[0]" does not say how it moves | add "motion": "rotary", "orbital" or "hand", or "like": "da"',
    ],
  },
  {
    mistake: 'an own machine without what its motion needs',
    text: '"machines": [{"id": "mine", "motion": "orbital"}]}',
    told: [
      '2:14 "machines[0]" lacks throw_mm, orbits_per_min and pad_mm: an orbital machine needs them | say them, or "like": "da" to take what is left out from the built-in one',
    ],
  },
  {
    mistake: 'an own rotary without its pad',
    text: '"machines": [{"id": "mine", "motion": "rotary", "rpm": 1500}]}',
    told: [
      '2:14 "machines[0]" lacks pad_mm: a rotary needs it | say it, or "like": "rotary" to take what is left out from the built-in one',
    ],
  },
  {
    mistake: 'a key without its unit',
    text: '"machines": [{"id": "mine", "motion": "rotary", "rpm": 1500, "pad": 150}]}',
    told: ['2:62 the key "pad" means nothing here | write pad_mm'],
  },
  {
    mistake: 'a key in inches',
    text: '"machines": [{"id": "mine", "motion": "rotary", "rpm": 1500, "pad_inch": 6}]}',
    told: ['2:62 the key "pad_inch" means nothing here | write pad_mm: 152.4'],
  },
  {
    mistake: 'a pad size in inches under a key in mm',
    text: '"machines": [{"id": "mine", "like": "da", "pad_mm": 6}]}',
    told: [
      '2:53 "machines[0].pad_mm" is 6; it takes a number from 10 to 300 | sizes are in mm: 6 inches are 152.4',
    ],
  },
  {
    mistake: 'a size as text with its unit',
    text: '"machines": [{"id": "mine", "like": "da", "pad_mm": "6 inch"}]}',
    told: [
      '2:53 "machines[0].pad_mm" is "6 inch"; it takes a number from 10 to 300 | write the number of mm alone: 152.4',
    ],
  },
  {
    mistake: 'an arm speed in cm/s',
    text: '"machines": [{"id": "mine", "like": "da", "arm_speed_m_per_s": 12}]}',
    told: [
      '2:64 "machines[0].arm_speed_m_per_s" is 12; it takes a number from 0.005 to 1 | an arm moves at some 0.05 to 0.2 m/s: 12 cm/s are 0.12',
    ],
  },
  {
    mistake: 'an arm speed under a key in cm/s',
    text: '"machines": [{"id": "mine", "like": "da", "arm_speed_cm_per_s": 12}]}',
    told: ['2:43 the key "arm_speed_cm_per_s" means nothing here | write arm_speed_m_per_s: 0.12'],
  },
  {
    mistake: 'likeness to a machine that is not built in',
    text: '"machines": [{"id": "mine", "like": "daa"}]}',
    told: [
      '2:37 "machines[0].like" is "daa"; it takes "rotary", "da", "da-forced", "da-small" or "hand" | did you mean "da"?',
    ],
  },
  {
    mistake: 'turns of a machine that orbits',
    text: '"machines": [{"id": "da", "rpm": 1500}]}',
    told: [
      '2:34 "machines[0].rpm" belongs to a rotary machine, and this is not one | an orbital machine takes throw_mm, orbits_per_min, forced_rpm',
    ],
  },
  {
    mistake: 'a number in quotes',
    text: '"machines": [{"id": "da", "orbits_per_min": "4200"}]}',
    told: [
      '2:45 "machines[0].orbits_per_min" is "4200"; it takes a number from 200 to 20000 | write it without quotes: 4200',
    ],
  },
  {
    mistake: 'a number in quotes with a decimal comma',
    text: '"risk_pct": "2,5"}',
    told: [
      '2:13 "risk_pct" is "2,5"; it takes a number from 0.1 to 50 | write it without quotes and with a point: 2.5',
    ],
  },
  {
    mistake: 'a number with its unit',
    text: '"machines": [{"id": "da", "force_n": "49 N"}]}',
    told: [
      '2:38 "machines[0].force_n" is "49 N"; it takes a number from 1 to 300 | write the number alone, in the unit of the key: 49',
    ],
  },
  {
    mistake: 'an id with blanks',
    text: '"machines": [{"id": "my da", "like": "da"}]}',
    told: [
      '2:21 "machines[0].id" is "my da"; it takes a short name without blanks and slashes | write "my-da"; "name" takes any words',
    ],
  },
  {
    mistake: 'arm speed and minutes both',
    text: '"machines": [{"id": "da", "arm_speed_m_per_s": 0.07, "min_per_section": 4}]}',
    told: [
      '2:73 "machines[0].min_per_section" says the same as arm_speed_m_per_s: keep one | the arm speed follows from the minutes, or the minutes from it',
    ],
  },
  {
    mistake: 'stages by other words, and misspelt',
    text: '"pads": [{"id": "x", "factor": 1, "stages": ["polishing", "finnish"]}]}',
    told: [
      '2:46 "pads[0].stages[0]" is "polishing"; it takes "cut", "refine" or "finish" | write "refine"',
      '2:59 "pads[0].stages[1]" is "finnish"; it takes "cut", "refine" or "finish" | did you mean "finish"?',
    ],
  },
  {
    mistake: 'a pad that says nothing of itself',
    text: '"pads": [{"id": "waffle"}]}',
    told: [
      '2:10 "pads[0]" lacks factor and stages, and does not say what it is like | "like": "foam-medium" takes what is left out from the built-in pad',
    ],
  },
  {
    mistake: 'a factor of the wrong sign',
    text: '"products": [{"id": "own", "like": "medium", "factor": -1}]}',
    told: ['2:56 "products[0].factor" is -1; it takes a number from 0.05 to 10'],
  },
  {
    mistake: 'a misspelt number',
    text: '"numbers": {"film.earlier.unknown_cleer_um": 3}}',
    told: [
      '2:13 the key "film.earlier.unknown_cleer_um" means nothing here | did you mean "film.earlier.unknown_clear_um"?',
    ],
  },
  {
    mistake: 'a number without its unit',
    text: '"numbers": {"film.earlier.unknown_clear": 3}}',
    told: [
      '2:13 the key "film.earlier.unknown_clear" means nothing here | did you mean "film.earlier.unknown_clear_um"?',
    ],
  },
  {
    mistake: 'a number without its section',
    text: '"numbers": {"unknown_clear_um": 3}}',
    told: [
      '2:13 the key "unknown_clear_um" means nothing here | did you mean "film.earlier.unknown_clear_um"?',
    ],
  },
  {
    mistake: 'numbers written as a tree',
    text: '"numbers": {"film": {"earlier": {"unknown_clear_um": 3}}}}',
    told: [
      '2:13 the key "film" means nothing here | an id is written whole, such as film.measurement.fixed_um, film.measurement.proportional, film.measurement.repeatability_um',
    ],
  },
  {
    mistake: 'a number out of its range',
    text: '"numbers": {"correction.removal.overlap": 2}}',
    told: ['2:43 "numbers.correction.removal.overlap" is 2; it takes a number from 0 to 0.9'],
  },
  {
    mistake: 'a number that is another name for a key beside it',
    text: '"risk_pct": 5, "numbers": {"film.limits.risk_pct": 4}}',
    told: ['2:52 "numbers.film.limits.risk_pct" says the same as risk_pct: keep one'],
  },
  {
    mistake: 'a rate of two parts',
    text: '"rates": {"da/foam-medium": {"rate_um_per_set": 1}}}',
    told: [
      '2:11 "da/foam-medium" cannot be a key here; it takes a combination: machine/pad/product',
    ],
  },
  {
    mistake: 'a rate of a misspelt pad',
    text: '"rates": {"da/foam-medum/medium": {"rate_um_per_set": 1}}}',
    told: [
      '2:11 "rates.da/foam-medum/medium" names "foam-medum", which is not among the pads of this shop | did you mean "foam-medium"?',
    ],
  },
  {
    mistake: 'a rate of a pad the shop does not own',
    text: '"pads": ["foam-soft"], "rates": {"da/wool/heavy": {"rate_um_per_set": 2}}}',
    told: [
      '2:34 "rates.da/wool/heavy" names "wool", which is not among the pads of this shop | pads: foam-soft',
    ],
  },
  {
    mistake: 'a rate as a bare number',
    text: '"rates": {"da/foam-medium/medium": 0.9}}',
    told: [
      '2:36 "rates.da/foam-medium/medium" is 0.9; it takes an object: { … } | write { "rate_um_per_set": 0.9 }',
    ],
  },
  {
    mistake: 'half of a key',
    text: '"rates": {"da/foam-medium/medium": {"rate_um": 0.9}}}',
    told: ['2:37 the key "rate_um" means nothing here | write rate_um_per_set'],
  },
  {
    mistake: 'a share in place of per cent',
    text: '"risk_pct": 0.05}',
    told: [
      '2:13 "risk_pct" is 0.05; it takes a number from 0.1 to 50 | it is in per cent: write 5 for 5 %',
    ],
  },
  {
    mistake: 'a risk below nothing',
    text: '"risk_pct": -5}',
    told: ['2:13 "risk_pct" is -5; it takes a number from 0.1 to 50'],
  },
  {
    mistake: 'seconds in place of minutes',
    text: '"minutes": {"wipe_s_per_section": 40}}',
    told: [
      '2:13 the key "wipe_s_per_section" means nothing here | write wipe_min_per_section: 0.6667',
    ],
  },
  {
    mistake: 'mil in place of µm',
    text: '"floor_mil": 3.5}',
    told: ['2:1 the key "floor_mil" means nothing here | write floor_um: 88.9'],
  },
  {
    mistake: 'a capital letter',
    text: '"Machines": ["da"]}',
    told: ['2:1 the key "Machines" means nothing here | write machines'],
  },
  {
    mistake: 'yes in place of true',
    text: '"galvanised": "yes"}',
    told: ['2:15 "galvanised" is "yes"; it takes true or false | write true, without quotes'],
  },
  {
    mistake: 'a unit in the plural',
    text: '"show_unit": "mils"}',
    told: ['2:14 "show_unit" is "mils"; it takes "um" or "mil" | did you mean "mil"?'],
  },
  {
    mistake: 'a finish by another word',
    text: '"finish": "2K"}',
    told: [
      '2:11 "finish" is "2K"; it takes "clear-over-base", "single-stage-solid", "single-stage-metallic", "lacquer", "matte" or "unknown" | paint with a clear coat over the colour is "clear-over-base"',
    ],
  },
  {
    mistake: 'a key of a machine at the top',
    text: '"rpm": 1500}',
    told: ['2:1 the key "rpm" means nothing here | "rpm" stands inside "machines"'],
  },
  {
    mistake: 'null',
    text: '"aim": null}',
    told: [
      '2:8 "aim" is null; it takes "enhance", "correct", "full" or a number from 1 to 99 | leave the key out when nothing is known',
    ],
  },
  {
    mistake: 'a comment',
    text: '"risk_pct": 5 // ours\n}',
    told: ['2:15 this is a comment | JSON has no comments: remove it'],
  },
  {
    mistake: 'a trailing comma',
    text: '"risk_pct": 5,\n}',
    told: ['2:14 nothing follows this comma | JSON has no trailing comma: remove it before }'],
  },
  {
    mistake: 'a missing comma',
    text: '"risk_pct": 5\n"aim": "full"}',
    told: ['3:1 a comma is missing before "aim" | put a comma before it'],
  },
  {
    mistake: 'a decimal comma',
    text: '"risk_pct": 2,5}',
    told: ['2:13 2,5 is written with a decimal comma | write 2.5'],
  },
  {
    mistake: 'a key written twice',
    text: '"risk_pct": 5, "risk_pct": 4}',
    told: ['2:16 the key "risk_pct" is written twice; first on line 2 | keep one of the two'],
  },
  {
    mistake: 'curly quotes',
    text: '“aim”: "correct"}',
    told: ['2:1 “ is not a quote of JSON | use double quotes: "aim"'],
  },
  {
    mistake: 'single quotes',
    text: '\'aim\': "correct"}',
    told: ['2:1 \' is not a quote of JSON | use double quotes: "aim"'],
  },
  {
    mistake: 'a file that is not closed',
    text: '"risk_pct": 5',
    told: ['2:14 the file ends before { is closed | close it with }'],
  },
];

const told = (text: string): readonly string[] =>
  readShop('shop.json', `{"schema": "leastcut/shop/1",\n${text}`).diagnostics.map(
    ({ at, message, hint }) =>
      `${at?.line}:${at?.column} ${message}${hint === undefined ? '' : ` | ${hint}`}`,
  );

test.each(mistakes)('$mistake is told with the way to mend it', ({ text, told: wanted }) => {
  expect(told(text)).toEqual(wanted);
});

test('all mistakes of a file are told at once, in the order they stand', () => {
  const text = `"machines": [{"id": "da", "nam": "mine"}, "rotry", {"id": "own"}],
    "pads": ["wol"], "risk_pct": "5", "numbers": {"work.setup_min": 3}}`;
  expect(told(text).map((sentence) => sentence.replace(/^(\S+) .*\| /, '$1 '))).toEqual([
    '2:27 did you mean "name"?',
    '2:43 did you mean "rotary"?',
    '2:52 add "motion": "rotary", "orbital" or "hand", or "like": "da"',
    '3:14 did you mean "wool"?',
    '3:34 write it without quotes: 5',
    '3:51 did you mean "work.set_up_min"?',
  ]);
});

test('a byte order mark is no mistake', () => {
  expect(readShop('shop.json', '\uFEFF{"schema": "leastcut/shop/1"}').diagnostics).toEqual([]);
});
