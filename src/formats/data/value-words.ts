/**
 * Words that stand as values: in a column of states, behind a key of a settings file, before a row of a quote. Each
 * says what it means there.
 */
import type { GlossaryEntry } from './glossary.ts';

const word = (term: string, also: readonly string[], meaning: string): GlossaryEntry => ({
  term,
  also,
  meaning,
  kind: 'value',
});

export const valueWords: readonly GlossaryEntry[] = [
  // States of jobs and of what is to be bought.
  word(
    'refused',
    [],
    'Of a job of a batch: what was given cannot be used, as its record says; mend it and run it again.',
  ),
  word(
    'failed',
    [],
    'Of a job of a batch: a file is missing or cannot be read, or it is a bug of ours.',
  ),
  word(
    'buy',
    ['packs', 'packs to buy'],
    'On a list of what to buy: stock does not cover what the jobs need; so many whole packs are to be bought.',
  ),
  word(
    'in-stock',
    ['in stock'],
    'On a list of what to buy: what is on the shelf covers what the jobs need.',
  ),
  word(
    'not-on-price-list',
    [],
    'On a list of what to buy: the price list of the shop does not name this material, so it is neither charged nor counted.',
  ),
  word(
    'counted-at',
    [],
    'On a list of what to buy: the aim whose amounts are counted, and how many jobs are at it.',
  ),
  word(
    'job-left-out',
    [],
    'On a list of what to buy: a job without a quote, whose materials are in none of the rows.',
  ),
  word('towel-loads', ['loads of towels', 'loads'], 'Loads of towels to wash after the jobs.'),
  word(
    'to buy',
    [],
    'Whole packs that stock does not cover, for each aim of the quote. Materials without a stock in the price list are not among them.',
  ),
  word(
    'given away',
    ['not charged'],
    'Materials that are used and that the price list does not name: nothing is charged for them.',
  ),
  word(
    'nothing polished',
    [],
    'Of jobs of a batch: nothing is worked under any aim, as the paint allows nothing or no mark wants it.',
  ),
  word(
    'amount',
    [],
    'On the list of materials: how much of it is used up, and for what: a job, a wheel, a m², a fresh pad.',
  ),
  word(
    'short of the aim',
    ['where fewer marks go'],
    'Panels on which less of the marks goes than the aim asks for, and how much does.',
  ),

  word(
    'no price',
    [],
    'Why a quote has none: no price is made up, and the keys that are wanting in the shop file are named.',
  ),
  word(
    'materials by stage',
    [],
    'What each stage uses up, at the prices of the list and before its markup.',
  ),
  word(
    'terms',
    [],
    'What the shop has written under terms in its price list; it stands on the page for the owner.',
  ),

  word(
    'no-stock-given',
    [],
    'On a list of what to buy: the price list names the material and not what is in stock of it, so that nobody knows how much to buy.',
  ),
  word('not done', [], 'Jobs of a batch that were refused or failed, each with what is wrong.'),

  // Parts of a price.
  word(
    'to pay in cash',
    [],
    'The total as coins can pay it, where the price list rounds to the least coin.',
  ),
  word('labour', [], 'Hours of work at the shop’s rates, whole minutes by skill.'),
  word(
    'measuring and inspecting',
    [],
    'The part of labour that reads, inspects and tests the paint.',
  ),
  word(
    'washing and cleaning the paint',
    [],
    'The part of labour that washes the car and takes off what sticks to its paint.',
  ),
  word(
    'polishing',
    [],
    'The part of labour that works the paint: with the machine, wiping, inspecting, changing pads.',
  ),
  word('subtotal', [], 'All lines of a quote together, before tax.'),
  word(
    'discount',
    [],
    'What is taken off the sum of the lines, by a share or an amount of the price list.',
  ),
  word(
    'vat',
    ['gst', 'vat 20 %'],
    'The tax on the lines of a quote, by the rate and the rounding of the price list. Where it is not the rate of the subtotal to the last figure, the page says why.',
  ),
  word('deposit', [], 'The part of the price that is paid beforehand.'),
  word(
    'validity',
    ['holds for', 'valid until'],
    'How long the offer holds, by validity_days of the price list.',
  ),
  word(
    'uk-vat',
    [],
    'A preset of tax: VAT at 20 % on top of the prices, reckoned on the whole and rounded down. From memory: check it.',
  ),
  word(
    'au-gst',
    [],
    'A preset of tax: GST at 10 % within the prices, reckoned on the whole; half a cent goes up. From memory: check it.',
  ),
  word(
    'eu-e-invoice',
    [],
    'A preset of tax: VAT on top of the prices, rounded for each rate on its sum; the shop says the rate. From memory: check it.',
  ),
  word(
    'perhaps',
    [],
    'Of a panel on a film record (`over_allowed`): the film that came off measured more than might go, and the truth may be less.',
  ),
  word('half-up', [], 'Rounding to the nearest; a half goes away from nothing.'),
  word('half-even', [], 'Rounding to the nearest; a half goes to the even figure.'),
  word('up', [], 'Of rounding: away from nothing, whatever stands behind the point.'),
  word('down', [], 'Of rounding: towards nothing, whatever stands behind the point.'),

  // What a job or a shop file says of a car and of how it is worked.
  word(
    'room',
    ['panel and room'],
    'The air around the panels while they are worked: room_c in the job file, 20 °C if nobody says.',
  ),
  word(
    'light',
    [],
    'Of colour_depth: a light colour, on which fine haze hardly shows. Of arrival: hardly dirty.',
  ),
  word(
    'dark',
    [],
    'Of colour_depth: a dark colour shows any haze, so that a finer finish is asked for.',
  ),
  word(
    'soft',
    [],
    'Of hardness: paint that gives way faster than usual; steps take more, and a finer finish is asked for.',
  ),
  word('hard', [], 'Of hardness: paint that gives way more slowly than usual; steps take less.'),
  word(
    'unknown',
    [],
    'Said of a fact that nobody knows: as if it were not said, what is safe is assumed.',
  ),
  word(
    'clear-over-base',
    ['clear over base'],
    'Of finish: a clear coat over a base coat that carries the colour.',
  ),
  word(
    'single-stage-solid',
    [],
    'Of finish: solid colour and gloss in one coat, with no clear over it.',
  ),
  word(
    'single-stage-metallic',
    [],
    'Of finish: metallic colour and gloss in one coat, with no clear over it.',
  ),
  word(
    'usual',
    [],
    'Of arrival: a car as dirty as most. Elsewhere what a setting is where nobody says.',
  ),
  word('chemical', [], 'Of decontamination: by iron and tar removers alone, without clay.'),
  word('on', [], 'Of wheels: cleaned on the vehicle; off means that they are taken off for it.'),
  word(
    'none',
    [],
    'Nothing of the kind: no protection, no decontamination, no tax. In a table there is no value.',
  ),
  word('auto', [], 'Of colour: where a terminal shows it.'),
  word('always', [], 'Of colour: also into files and pipes.'),
  word('never', [], 'Of colour: nowhere.'),
  word(
    'share g',
    [],
    'How much of what the total reads over or under the expected counts as clear: the rest is put down to the layers under it and to the gauge.',
  ),

  word('length', ['width', 'height'], 'Of a vehicle or a template: from end to end, over all.'),
  word(
    'thinner',
    ['thicker'],
    'Of the two zones of a panel: the one with less film, or with more.',
  ),
  word('class', [], 'Of a spread in a rubric: what the trainees of the class show themselves.'),
  word('right', [], 'The side as seen from the driver’s seat.'),

  // How an export is laid out and measured.
  word('long', [], 'Of a layout: a reading in each row.'),
  word('wide', [], 'Of a layout: a panel in each row or column, its readings beside or under it.'),
  word('blocks', [], 'Of a layout: readings under the name of their panel, block by block.'),
  word('list', [], 'Of a layout: readings one after the other, with the panels said beside them.'),
  word(
    'mm',
    ['cm', 'nm', 'inch'],
    'A unit of length: readings in it are read where their numbers prove it, and shown in µm.',
  ),
  word('ml', [], 'Millilitres: what is poured or sprayed is counted in them.'),
  word('pieces', [], 'What is counted one by one: pads, towels, clay blocks.'),
  word('m', [], 'Metres: tape is counted in them.'),

  // What works the paint. `leastcut methods show` takes a combination apart.
  word(
    'da-forced',
    [],
    'A machine: orbital polisher whose pad is driven round as well, and cannot stall.',
  ),
  word('da-small', [], 'A machine: small orbital polisher with a 75 mm pad, for tight places.'),
  word('foam-soft', [], 'A pad: soft foam, the mildest, to finish with.'),
  word('foam-medium', [], 'A pad: medium foam, to cut mildly or to refine.'),
  word('foam-firm', [], 'A pad: firm foam, which cuts more than medium.'),
  word('microfibre', [], 'A pad of microfibre: it cuts more than foam and leaves haze.'),
  word('wool', [], 'A pad of wool: it cuts most and leaves most haze.'),
];
