/** What each key of a settings file means. A key means the same in every file that has it. */

export type SettingsFile =
  | 'job'
  | 'shop'
  | 'template'
  | 'film record'
  | 'gauge'
  | 'rates'
  | 'rubric'
  | 'decisions';

export type KeyMeaning = {
  readonly key: string;
  readonly files: readonly SettingsFile[];
  readonly meaning: string;
  /** A line as it may stand in the file. */
  readonly example: string;
};

const key =
  (...files: readonly SettingsFile[]) =>
  (name: string, example: string, meaning: string): KeyMeaning => ({
    key: name,
    files,
    meaning,
    example: `"${name}": ${example}`,
  });
const any = key('job', 'shop', 'template', 'film record', 'gauge', 'rates', 'rubric', 'decisions');
const both = key('job', 'shop');
const job = key('job');
const shop = key('shop');
const template = key('template');
const record = key('film record');
const gauge = key('gauge');
const rates = key('rates');
const rubric = key('rubric');
const decisions = key('decisions');

export const keyMeanings: readonly KeyMeaning[] = [
  any(
    'schema',
    '"leastcut/shop/1"',
    'What kind of file this is, and in which version: leastcut/job/1, leastcut/shop/1, leastcut/template/1 and so on.',
  ),
  any(
    '$schema',
    '"./schemas/shop.schema.json"',
    'Where your editor finds the description of this file, to help you write it. The tool does not read it.',
  ),
  key('shop', 'template', 'rubric')(
    'name',
    '"Invented Detailing"',
    'What the shop, the machine, the pad, the product, the template, the panel or the rubric is called.',
  ),
  any('note', '"bought in May"', 'Anything you want to remember; nothing is read from it.'),

  both(
    'aim',
    '"correct"',
    'How many of the marks to clear: enhance, correct, full, or a number of per cent.',
  ),
  both(
    'risk_pct',
    '5',
    'The risk of leaving clear under its floor that you take on each panel, in per cent.',
  ),
  both(
    'policy',
    '"standard"',
    'Which published clear floor to keep: standard, or strict for instruments that show layers.',
  ),
  both(
    'floor_um',
    '80',
    'The least that any point may read when all is done, all layers together, in µm.',
  ),
  both(
    'finish',
    '"clear-over-base"',
    'What the topcoat is. On a panel it stands above what is said of the car.',
  ),
  both(
    'galvanised',
    'true',
    'Whether the steel is coated with zinc, which a magnetic gauge counts as paint.',
  ),
  both('template', '"saloon"', 'The vehicle template: the id of one, or a template file.'),
  both('gauge', '"gauge.json"', 'The gauge file, found from the folder of this file.'),
  shop(
    'templates',
    '["our-van.json"]',
    'Template files of your own, found from the folder of the shop file.',
  ),
  shop('reading_unit', '"um"', 'The unit of readings where the file does not say: um or mil.'),
  shop(
    'nearside',
    '"left"',
    'The side that files call the nearside: left where traffic keeps left. Without it such names are refused.',
  ),
  shop('show_unit', '"mil"', 'The unit of the text output: um or mil.'),
  shop('color', '"never"', 'Colour in the text: auto, always or never.'),

  shop(
    'prices',
    '{ "currency": "GBP", "labour_minor_per_h": 4500 }',
    'What you charge. Amounts are whole numbers of the least unit of the currency: pence, cents, yen.',
  ),
  shop('currency', '"GBP"', 'The currency by its three letters (ISO 4217).'),
  shop(
    'kind',
    '"estimate"',
    'What a quote of yours is: an estimate may change, a quotation is a fixed offer.',
  ),
  shop(
    'labour_minor_per_h',
    '{ "polish": 5400, "other": 4200 }',
    'The price of an hour, one for all work or one by skill.',
  ),
  shop('wash', '4200', 'An hour of washing and cleaning the paint.'),
  shop('survey', '4200', 'An hour of inspecting and measuring.'),
  shop('polish', '5400', 'An hour of polishing, with what belongs to it.'),
  shop('protect', '4200', 'An hour of protecting and finishing off.'),
  shop('other', '4200', 'An hour of whatever skill is not listed.'),
  shop(
    'materials',
    '[{ "id": "medium", "pack": 1000, "unit": "ml", "price_minor": 3750, "stock": 210 }]',
    'What you charge materials at, by pack. What is not listed is not charged apart.',
  ),
  shop('pack', '1000', 'What a pack holds, in its unit.'),
  shop('price_minor', '3750', 'The price of a pack, or of an item that every job is charged.'),
  shop('stock', '210', 'What is on the shelf, in the unit of the pack.'),
  shop('markup_pct', '20', 'What is put on top of the price of materials, in per cent.'),
  shop(
    'fixed',
    '[{ "name": "collection", "price_minor": 2500 }]',
    'What every job is charged, whatever is done.',
  ),
  shop('tax_pct', '5', 'The rate of tax of one item, where it is not the usual one.'),
  shop(
    'minimum_minor',
    '18000',
    'The least that a job is charged, after any discount; what is wanting is added. Tax comes on top, unless your prices have it in them.',
  ),
  shop('discount_pct', '10', 'What is taken off labour, materials and items, in per cent.'),
  shop(
    'discount_minor',
    '5000',
    'What is taken off labour, materials and items, as an amount: before tax, unless your prices have it in them.',
  ),
  shop(
    'tax',
    '{ "preset": "uk-vat" }',
    'How a quote is taxed: by a preset, which gives whatever is left out beside it (eu-e-invoice gives no rate: say rate_pct), or without one by rate_pct, level, rounding and included, all four of them. The name may always be left out.',
  ),
  shop(
    'preset',
    '"uk-vat"',
    'Tax as some countries have it: uk-vat, au-gst, eu-e-invoice, none. They are from memory: check them.',
  ),
  shop('rate_pct', '20', 'The rate of tax, in per cent.'),
  shop(
    'level',
    '"total"',
    'What tax is rounded on: each line, the lines of one rate together (as EN 16931 has it), or the total. A discount is a line of its own at each rate, with its part of the tax; the parts of all lines add up to the tax. Where it is each line, a line is taxed whole, as without a discount, and the discount gets what it takes off those taxes.',
  ),
  shop(
    'rounding',
    '"half-up"',
    'How an amount is rounded to the least unit: half-up, half-even, down or up.',
  ),
  shop('included', 'false', 'Whether your prices have the tax in them.'),
  shop('cash_rounding_minor', '5', 'The least coin: what is to be paid in cash is rounded to it.'),
  shop(
    'deposit_pct',
    '25',
    'What is to be paid beforehand, in per cent of the total with its tax.',
  ),
  shop('validity_days', '30', 'How many days a quote holds.'),
  shop(
    'contact',
    '["4 Kiln Lane, Fernhollow", "telephone 0555 0142"]',
    'Your address and how to be reached, under your name on a quote.',
  ),
  shop('terms', '["The rest is due when you collect it."]', 'Your terms, as they are printed.'),
  shop(
    'example',
    'true',
    'True while the prices are made up: they are checked and no quote takes them. Take it out when they are yours.',
  ),
  shop(
    'machines',
    '["da", "hand"]',
    'The machines you own: ids of built-in ones, or machines of your own.',
  ),
  shop(
    'pads',
    '["foam-soft", "foam-medium"]',
    'The pads you own: ids of built-in ones, or pads of your own.',
  ),
  shop(
    'products',
    '["fine", "medium"]',
    'The products you own: ids of built-in ones, or products of your own.',
  ),
  shop(
    'rates',
    '{ "da/foam-medium/medium": { "rate_um_per_set": 0.7 } }',
    'What you measured yourself, by combination. It stands in place of the reckoned rate.',
  ),
  shop(
    'rates_file',
    '"rates.json"',
    'The rates file with what was measured on your earlier vehicles; relative to this file.',
  ),
  shop(
    'rate_um_per_set',
    '0.7',
    'What one set of the combination takes off, in µm, as you measured it.',
  ),
  shop(
    'ln_sd',
    '0.3',
    'How far your own rate varies from job to job, as a spread of its logarithm.',
  ),
  shop('like', '"da"', 'The built-in thing that fills in whatever you do not state.'),
  shop('motion', '"orbital"', 'How the machine moves its pad: rotary, orbital or hand.'),
  shop('rpm', '1500', 'Turns a minute of a rotary.'),
  shop('throw_mm', '15', 'How wide the orbit is, in mm.'),
  shop('orbits_per_min', '4200', 'Orbits a minute of a dual action machine.'),
  shop(
    'forced_rpm',
    '480',
    'Turns a minute that gears force on a dual action pad; 0 for free-spinning.',
  ),
  shop('pad_mm', '150', 'The diameter of the pad, in mm.'),
  shop('force_n', '49', 'The force on the pad, in newtons; a kilogram presses with 9.8.'),
  shop('arm_speed_m_per_s', '0.075', 'How fast the machine is moved over the panel, in m/s.'),
  shop(
    'vibration_m_per_s2',
    '6.5',
    'What the machine shakes into the hand, in m/s², as its maker states or you measured.',
  ),
  shop(
    'min_per_section',
    '4.4',
    'How many minutes one set takes on one section; the arm speed follows from it.',
  ),
  shop('factor', '1.2', 'Removal against a medium foam pad, or against a medium polish.'),
  shop('haze', '2', 'The least haze grade that the pad or product leaves, 0 mirror to 4 heavy.'),
  shop(
    'stages',
    '["cut", "refine"]',
    'Where in a correction a pad or product serves: cut, refine, finish.',
  ),
  shop(
    'minutes',
    '{ "wipe_min_per_section": 1 }',
    'How long the small recurring jobs take in your shop.',
  ),
  shop('wipe_min_per_section', '0.75', 'Minutes to wipe and inspect a section after a set.'),
  shop('pad_cleaning_min_per_section', '1', 'Minutes to clean the pad after a section.'),
  shop('setup_min_per_combination', '10', 'Minutes to set up a combination.'),
  shop(
    'numbers',
    '{ "film.earlier.unknown_clear_um": 3 }',
    'Any number of the model in place of the built-in one, by its id.',
  ),

  key('job', 'film record', 'rates')(
    'vehicle',
    '{ "id": "FH-1", "make": "Invented" }',
    'Which vehicle this is, and its outer size.',
  ),
  key('job', 'shop', 'template')(
    'id',
    '"FH-1"',
    'The short name by which files and options mean the thing.',
  ),
  job('make', '"Invented"', 'Who made the vehicle.'),
  job('model', '"Saloon"', 'Which model it is.'),
  job('year', '1998', 'The year it was built.'),
  job('colour', '"dark blue"', 'Its colour, for the page.'),
  job('owner', '"A. Owner"', 'Whose it is, for the page.'),
  key('job', 'template')(
    'length_m',
    '4.6',
    'The outer length of the vehicle in m; a built-in template is scaled to it.',
  ),
  key('job', 'template')(
    'width_m',
    '1.8',
    'The outer width of the vehicle in m, without its mirrors; the template is scaled to it.',
  ),
  key('job', 'template')(
    'height_m',
    '1.45',
    'The outer height of the vehicle in m; the template is scaled to it.',
  ),
  job(
    'colour_depth',
    '"dark"',
    'Whether the colour is light or dark: dark shows every haze, so none is left.',
  ),
  job('hardness', '"soft"', 'How the paint answers: soft, medium, hard or unknown.'),
  key('job', 'film record')(
    'taken_um',
    '3',
    'What earlier work took, in µm; in a job besides what a film record holds, 0 if surely nothing else, "unknown" if nobody knows, { "value": 3, "sd": 1 } in a job if it may be off. It is put back before panels are compared with each other.',
  ),
  job(
    'scope',
    '{ "interior": true, "protection": "coating" }',
    'What is to be done to the vehicle besides the correction; its hours and days follow from it.',
  ),
  job('wheels', '"off"', 'Wheels cleaned on the vehicle (on), taken off for it (off), or none.'),
  job('shuts', 'true', 'Whether the door shuts are cleaned.'),
  job(
    'decontamination',
    '"clay"',
    'Before any machine: full (iron, tar, clay), chemical, clay, or none where it is done.',
  ),
  job('trim', 'true', 'Whether small metal and trim are cleaned and dressed.'),
  job('engine_bay', 'true', 'Whether the engine bay is cleaned.'),
  both('interior', 'true', 'Whether the interior is cleaned; among prices, an hour of that.'),
  job('glass', 'true', 'Whether the glass is cleaned.'),
  job('protection', '"wax"', 'What goes on last: none, wax, sealant or coating.'),
  job('arrival', '"heavy"', 'How dirty the vehicle comes in: light, usual or heavy.'),
  both('hands', '2', 'How many people work on the vehicle; limits of vibration are a person’s.'),
  both('hours_per_day', '8', 'Working hours of a day in the bay.'),
  job(
    'order',
    '["record", "wash", "dry", "read", "mask", "cut", "refine", "finish", "unmask-dust", "panel-wipe"]',
    'An order of your own: stages of the job by their ids, held against the rules of the trade.',
  ),
  job('panel_c', '28', 'Temperature of the panels as the job begins, in °C.'),
  job('room_c', '18', 'Temperature of the air around them, in °C.'),
  shop(
    'history',
    '"hours.csv"',
    'Path of the hours that jobs took against their estimates (CSV): your own pace follows.',
  ),
  job('covered', 'true', 'Whether film, wrap or coating lies over the paint.'),
  job(
    'painted_days_ago',
    '30',
    'How many days ago it was painted again: no factory film, and left alone while fresh.',
  ),
  job(
    'clear_um',
    '{ "value": 45, "sd": 3 }',
    'The clear by itself, in µm: of a panel what is there now, of the car what was painted.',
  ),
  job('under_um', '{ "value": 72, "sd": 4 }', 'All that lies under the clear, in µm.'),
  job('value', '45', 'The thickness itself, in µm.'),
  job('sd', '3', 'What the thickness may be off by, as a standard deviation in µm.'),
  job(
    'film_record',
    '"2025-film.json"',
    'Path of the film record: what earlier visits took from each panel.',
  ),
  key('job', 'template', 'film record')(
    'panels',
    '{ "bonnet": { "taken_um": 3 } }',
    'What is said of single panels, or the panels of a template.',
  ),
  key('job', 'template')(
    'substrate',
    '"aluminium"',
    'What is under the paint: steel, aluminium, plastic or composite.',
  ),
  job('clear_coat_failure', 'true', 'Whether the clear of this panel lifts, whitens or peels.'),

  template('base', '"saloon"', 'The built-in template that this one changes.'),
  template(
    'remove',
    '["door-rear-left", "door-rear-right"]',
    'Panels of the base that this vehicle does not have.',
  ),
  template(
    'change',
    '{ "roof": { "area_m2": 2.4 } }',
    'Panels of the base that differ, by id, and how.',
  ),
  template(
    'add',
    '[{ "id": "scoop", "after": "bonnet", … }]',
    'Panels that the base does not have, each said in full.',
  ),
  template('after', '"bonnet"', 'Behind which panel a new one comes in walking order.'),
  template('area_m2', '1.2', 'The painted area of the panel, in m².'),
  template(
    'flat_width_mm',
    '400',
    'The narrowest flat stretch of the panel, in mm: a wider pad does not lie flat.',
  ),
  template('trim_m', '2.5', 'The length of trim and edges to tape, in m.'),
  template('facing', '"horizontal"', 'How the panel stands: horizontal, vertical or low.'),
  template(
    'mirror',
    '"door-front-right"',
    'The panel on the other side, which names this one in turn; leave it out on the centre line.',
  ),
  key('template', 'film record')(
    'points',
    '[{ "point": "1", "u": 0.2, "v": 0.5 }]',
    'The points of the panel: where to read it, or what was read there.',
  ),
  key('template', 'film record')(
    'point',
    '"1"',
    'The name of a point, as the readings file calls it.',
  ),
  template(
    'u',
    '0.2',
    'How far across the panel a point lies, 0 to 1: from the front, or from the left.',
  ),
  template('v', '0.5', 'How far down the panel a point lies, 0 to 1.'),
  template(
    'point_count',
    '5',
    'How many points to read, spread evenly, where "points" is not said.',
  ),
  template(
    'also',
    '["Motorhaube", "capot"]',
    'Other labels by which a readings file may call the panel, in any language.',
  ),
  template(
    'spans',
    '["length", "width"]',
    'The measures of the vehicle the panel grows with when the template is scaled: what it is long in, then what its flat width lies in; [] if none.',
  ),

  record(
    'visits',
    '[{ "date": "2026-03-31", "panels": [] }]',
    'What was done at each visit, one after the other.',
  ),
  key('film record', 'gauge', 'rates')(
    'date',
    '"2026-03-31"',
    'The day of the visit, the check or the test spot: year, month, day.',
  ),
  key('film record', 'rates')('panel', '"bonnet"', 'Which panel it is.'),
  record('taken_sd_um', '0.8', 'What the film taken may be off by, as a standard deviation in µm.'),
  record(
    'allowed_um',
    '2.4',
    'What might go before that work, in µm, by its plan or the survey of the readings before; null where nobody said, and of a panel whose zones are told apart.',
  ),
  record(
    'over_allowed',
    'false',
    'Whether surely more came off than might go: the next survey and plan say so of the panel. "perhaps" where what was measured is more, by no more than it may be off by: they say that too. Null where what might go is not known, or where what was measured is more and the readings tell too little, such as means of panels.',
  ),
  record(
    'left_um',
    '0.8',
    'What might still go after that visit, in µm: no survey of its later readings, or of some of them, allows more, until something more is read of the panel.',
  ),
  record(
    'left_by',
    '"near-line"',
    'What held it back, where that was the line that the word of the panel hangs on: a test spot of its own that is made later may settle it, and it holds no more then.',
  ),
  record('left_points', '5', 'At how many points the panel was read after that visit.'),
  record('left_mean_um', '107.4', 'What these points read on average, in µm.'),
  record(
    'left_read_um',
    '[105.2, 108.1, 107.4]',
    'Each reading at these points, in µm: some of them alone are nothing new either.',
  ),
  record(
    'not_read',
    'true',
    'Of a panel that was worked and not read after: what went is the mean of what its plan foretold of the sets that were worked, with the spread of that, and nobody measured it.',
  ),
  record(
    'gained_um',
    '29.8',
    'How much film came on, in µm, where that is as much as paint adds: nothing was taken then, and nothing may go before a test spot. If it was no paint, take it off the record.',
  ),
  record(
    'zones',
    '[{ "zone": "thinner", "taken_um": 2 }]',
    'What came off each zone of a panel with two kinds of film.',
  ),
  record('zone', '"thinner"', 'Which zone it is: thinner or thicker than the other.'),
  record(
    'places',
    '[{ "panel": "boot", "defect": "deep-scratches", "median_um": 4.2, "high_um": 9.8 }]',
    'Places that the plan of the visit worked deeper than their panel, by a spot at a deep defect. Until they are read, as points called by the defect and counted (deep scratches 1), later plans work no other spot on that panel.',
  ),
  record('defect', '"deep-scratches"', 'The defect at which the spot was planned.'),
  record(
    'median_um',
    '4.2',
    'What the spot was to take at its place beyond what the panel lost, in µm, in the middle.',
  ),
  record('high_um', '9.8', 'The same at most, in 95 cases of 100.'),
  record(
    'spots',
    '[{ "spot": "A", "panel": "boot", "taken_um": 0.9, "taken_sd_um": 0.4 }]',
    'The test spots of the visit, a trial each: what it took is gone from its place at every later visit.',
  ),
  record('spot', '"A"', 'The name of the test spot, as its file has it.'),
  record(
    'marks',
    '[{ "mark": "1", "before_um": 116, "after_um": 115.1 }]',
    'The marked points of a test spot; none where it was judged by eye.',
  ),
  record('mark', '"1"', 'The name of a marked point of a test spot.'),
  record(
    'colour_on_pad',
    'false',
    'Whether colour came on the pad at a test spot. Under a clear nothing may go from that panel at any later visit; take the spot out of the record once the panel has been painted anew.',
  ),
  record(
    'place',
    '"left front corner"',
    'Where on its panel a test spot was made, in the words of its file: spots at other places have other ones.',
  ),
  record('before_um', '121', 'What the point, or the mark, read before the work, in µm.'),
  record('after_um', '118', 'What the point, or the mark, read after the work, in µm.'),

  gauge('instrument', '"Invented G2"', 'What the gauge is called.'),
  gauge('serial', '"0042"', 'The serial number of the gauge, as text.'),
  gauge(
    'permitted_error',
    '{ "fixed_um": 1, "proportional_pct": 2 }',
    'What the maker says the gauge may be off by; the two add up.',
  ),
  gauge('fixed_um', '1', 'The part of the permitted error that is the same everywhere, in µm.'),
  gauge('proportional_pct', '2', 'The part of the permitted error that grows with the film, in %.'),
  gauge('resolution_um', '0.1', 'The smallest step that the gauge shows, in µm.'),
  gauge(
    'repeatability_um',
    '0.8',
    'How far readings of one place differ, as a standard deviation in µm.',
  ),
  gauge(
    'verdict',
    '"pass"',
    'Whether the gauge keeps within its permitted error: pass, fail or undecided; null before any check.',
  ),
  gauge('checks', '[{ "shim_um": 100, … }]', 'How the gauge did on each shim.'),
  gauge('shim_um', '100', 'The thickness of the shim as its certificate states, in µm.'),
  gauge(
    'shim_uncertainty_um',
    '0.5',
    'What that thickness may be off by, in µm, as stated (k = 2).',
  ),
  gauge('mean_um', '101.2', 'The mean of what the gauge showed on the shim, in µm.'),
  gauge('n', '5', 'How many readings the mean is of.'),
  gauge('error_um', '1.2', 'The mean less the thickness of the shim, in µm.'),
  gauge('expanded_um', '0.9', 'What the error, or the change, may itself be off by, in µm (95 %).'),
  gauge(
    'adjustment',
    '{ "offset_um": -0.4, "slope": 0.99 }',
    'What makes a reading true: offset + slope · reading. null where none was asked for.',
  ),
  gauge('offset_um', '-0.4', 'What is added to a reading to make it true, in µm.'),
  gauge('slope', '0.99', 'What a reading is multiplied by to make it true.'),
  gauge(
    'repeatability_dof',
    '32',
    'The degrees of freedom behind the repeatability: how many repeats it rests on.',
  ),
  gauge('check', '"before"', 'Whether the shim was read before the work or after it.'),
  gauge(
    'drift',
    '[{ "shim_um": 100, … }]',
    'How far the gauge moved on each shim between the check before the work and the one after it.',
  ),
  gauge('change_um', '0.3', 'The mean after the work less the mean before it, in µm.'),
  gauge('proved', 'false', 'Whether that is more than readings scatter by themselves.'),

  rates(
    'observations',
    '[{ "date": "2026-03-31", … }]',
    'What test spots and finished panels showed, one after the other; a new one is added at the end.',
  ),
  rates(
    'steps',
    '[{ "combination": "da/foam-medium/medium", "sets": 2 }, … ]',
    'What was worked where it was more than one combination; the film is what all of them took.',
  ),
  key('film record', 'rates')(
    'combination',
    '"da/foam-medium/medium"',
    'What was worked with: machine/pad/product.',
  ),
  key('film record', 'rates')('sets', '2', 'How many sets were worked before it was measured.'),
  rates('removed_um', '1.8', 'What all the sets together took off, in µm.'),
  rates('standard_error_um', '0.6', 'What that may be off by, as a standard error in µm.'),
  key('film record', 'rates')(
    'cleared_pct',
    '70',
    'How much of the marks went, by eye, in per cent.',
  ),
  key('film record', 'rates')('haze_grade', '1', 'The haze that was left, 0 mirror to 4 heavy.'),

  rubric('pass_mark_pct', '70', 'How much of the marks a survey needs to pass, in per cent.'),
  rubric(
    'weights',
    '{ "accuracy": 3, "coverage": 1 }',
    'What each part of the mark counts; only their ratios matter.',
  ),
  rubric('accuracy', '3', 'Weight of how near the panel means come to the reference.'),
  rubric('coverage', '1', 'Weight of how many of the panels and points were read.'),
  rubric('low_points', '2', 'Weight of the low points of the reference that were found.'),
  rubric('repairs', '2', 'Weight of the repaired panels of the reference that were found.'),
  rubric('repeatability', '1', 'Weight of how well readings of one place agree.'),
  rubric(
    'sigma_pt_um',
    '3',
    'How far a panel mean may fairly be off, as a standard deviation in µm; "class" takes it from the class.',
  ),

  decisions(
    'encoding',
    '"utf-8"',
    'The encoding of the exports: utf-8, utf-16le, windows-1252, macintosh, shift_jis and others.',
  ),
  decisions(
    'delimiter',
    '";"',
    'The sign between two columns: ",", ";", "|" or a tab, which is "\\t".',
  ),
  decisions('decimal', '","', 'The decimal mark of the exports: "." or ",".'),
  decisions(
    'layout',
    '"long"',
    'How the table is laid out: long, a reading in each row; wide, a column for each panel; repeats, several columns of readings; blocks, a line above names the panel; list, no line names the columns.',
  ),
  key('decisions', 'shop')(
    'unit',
    '"um"',
    'The unit of the readings: um or mil; as a column, where each row says its own. Of a pack: ml, pieces or m.',
  ),
  decisions('header_line', '4', 'The line that names the columns, counted from 1.'),
  decisions(
    'columns',
    '{ "panel": "Bauteil", "time": ["Datum", "Uhrzeit"] }',
    'What the exports call each column that they have: a name, or a list where two are read as one.',
  ),
  decisions(
    'panel_names',
    '{ "Haube": "bonnet" }',
    'Which panel is meant by a word of the exports.',
  ),
  decisions('deleted', '"Gelöscht"', 'The column that takes a row back.'),
  decisions('valid', '"Gültig"', 'The column that says whether a row counts.'),
  decisions(
    'status',
    '"Status"',
    'The column that may say, among other things, that a row does not count.',
  ),
];
