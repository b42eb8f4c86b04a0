/** What the codes in a record’s assumptions, advice, reasons, cautions, limits and notes mean. */

export type RemarkKind = 'assumption' | 'advice' | 'reason' | 'caution' | 'limit' | 'note';

export type RemarkMeaning = {
  readonly code: string;
  /** Where it stands in a record. */
  readonly kind: RemarkKind;
  readonly meaning: string;
  /** What to do about it; empty where there is nothing to do. */
  readonly remedy: string;
};

const one =
  (kind: RemarkKind) =>
  (code: string, meaning: string, remedy = ''): RemarkMeaning => ({
    code,
    kind,
    meaning,
    remedy,
  });
const assumption = one('assumption');
const advice = one('advice');
const reason = one('reason');
const caution = one('caution');
const limit = one('limit');
const note = one('note');

export const remarkMeanings: readonly RemarkMeaning[] = [
  assumption(
    'template',
    'No template was named: the one whose panels fit best was taken.',
    'Name it with --template, or "template" in the job file.',
  ),
  assumption(
    'template-areas',
    'Areas of the built-in templates are sums of simple shapes, right to about a quarter.',
    'Measure panels that matter and give them in a template file of your own.',
  ),
  assumption(
    'template-scaled',
    'The areas of the template were scaled to the size of the vehicle that the job states.',
    'Leave length_m, width_m and height_m out of the job to take the template as it is.',
  ),
  assumption(
    'finish',
    'Nobody said what the topcoat is, so clear over base was taken, or the worse of two.',
    'State "finish" in the job file, or --finish.',
  ),
  assumption(
    'galvanised',
    'Nobody said whether the steel is galvanised. A magnetic gauge counts zinc as paint.',
    'State "galvanised" in the job file.',
  ),
  assumption(
    'gauge-not-verified',
    'No gauge file was given: the readings are taken to be off by what is usual for such gauges.',
    'Check the gauge on shims with leastcut gauge, and give its file with --gauge.',
  ),
  assumption(
    'gauge',
    'What the gauge may be off by is what its file states, and how its check came out stands beside it.',
  ),
  assumption(
    'gauge-widened',
    'The gauge failed its check: its readings are taken to be off by at least as much as it was on the worst shim.',
    'Read the car with a gauge that passes.',
  ),
  assumption(
    'gauge-adjusted',
    'The gauge file holds an adjustment, and every reading of the whole film was put right by it.',
    'Set "adjustment" to null in the gauge file to survey the readings as they stand.',
  ),
  assumption(
    'gauge-repeatability',
    'How far readings repeat comes from the check of the gauge, unless it rests on too few repeats.',
    'Read points of the car three times each: its own repeats count first.',
  ),
  assumption(
    'gauge-mpe',
    'Nobody stated the largest error that the gauge may have: that of usual gauges was taken.',
    'Look into its data sheet, and give --mpe-um and --mpe-pct or a gauge file.',
  ),
  assumption(
    'gauge-no-repeats',
    'No shim was read twice, so that a usual scatter of readings was taken.',
    'Read each shim five times.',
  ),
  assumption(
    'stated-sd',
    'A clear, or what lies under it, was stated without what it may be off by: a usual SD was taken.',
    'Write it as { "value": 45, "sd": 3 } in the job file.',
  ),
  assumption(
    'history',
    'Nobody said what earlier work took off, so a usual amount is counted as gone.',
    'State "taken_um" in the job file; 0 for paint that was never polished.',
  ),
  assumption(
    'risk',
    'The risk was not chosen, so the built-in one holds.',
    'State --risk-pct, or "risk_pct" in the job or shop file.',
  ),
  assumption(
    'strict-policy',
    'The strict policy asks for so much clear that a total reading hardly ever shows it.',
    'Use it with an instrument that shows the clear by itself.',
  ),
  assumption(
    'aim',
    'The aim was not chosen, so the built-in one holds.',
    'State --aim, or "aim" in the job or shop file.',
  ),
  assumption(
    'machines',
    'Nobody said what the shop owns, so the usual machines were taken, with every pad and product.',
    'List "machines", "pads" and "products" in the shop file.',
  ),
  assumption(
    'defects',
    'No defects were recorded, so swirl marks of a middling grade were taken.',
    'Grade what you see and give it with --defects.',
  ),
  assumption(
    'settings-file',
    'A settings file was found that the command line did not name, and it was used.',
    'Look at what it says: leastcut doctor shows every value with its file and line.',
  ),
  advice(
    'more-points',
    'The panel was read at few points. Five are good; more than nine gain little.',
    'Read more points, spread over the panel.',
  ),
  advice(
    'history',
    'What was polished off before decides more than anything else that can be found out.',
    'Ask the owner, look for a film record, and state "taken_um".',
  ),
  advice(
    'clear',
    'The total does not say how much of it is clear; an instrument that resolves layers does.',
    'Read it and give the readings the layer "clear", or state "clear_um".',
  ),
  advice(
    'test-spot',
    'How much a step takes off this paint is the next thing that nobody knows.',
    'Make a test spot, with marks read before and after.',
  ),
  advice(
    'zinc',
    'A magnetic gauge counts zinc as paint. If there is some, less may go than is shown.',
    'Find out whether the steel is galvanised, and state "galvanised".',
  ),
  note(
    'keying-slip',
    'One value is ten times its neighbours, or a tenth of them. It is asked about before anything is made of it, and never changed.',
    'Look at the gauge, or read the point again.',
  ),
  advice(
    'ultrasound',
    'Under the paint there is no metal, and the gauge needs metal.',
    'Read it with an ultrasonic gauge (ASTM D6132).',
  ),
  advice('read', 'The panel was not read, so nothing may go.', 'Read it.'),
  advice(
    'repair-edge',
    'A repair has an edge somewhere, where the film changes from point to point.',
    'Read closer together until you have found it.',
  ),
  reason(
    'clear-coat-failure',
    'The clear lifts, whitens or peels: polishing takes what is left of it.',
    'Have the panel refinished.',
  ),
  reason(
    'nothing-to-correct',
    'No general defect was recorded on the panel.',
    'Grade it in the defects file if there is one.',
  ),
  reason('no-technique', 'No machine of the shop can work the panel and end without holograms.'),
  reason('nothing-fits', 'Even the mildest steps would take more than may go.'),
  reason('not-worth-it', 'What may go would clear so few marks that the film is worth more.'),
  reason('aim-out-of-reach', 'The aim takes more film than may go; the plan stops short of it.'),
  reason('by-hand', 'A machine does not fit here or takes too much; the hand takes least.'),
  reason('local-defect', 'A deep mark is worked at its place, or left; never chased over a panel.'),
  reason('not-polishing', 'The defect does not go away by polishing.'),
  reason('limit-clear', 'Nothing may go, since the clear may already be at its floor.'),
  reason('limit-life', 'Nothing may go, since what a panel may lose in its life is gone.'),
  reason('limit-total', 'Nothing may go, since a point is at the floor of the total film.'),
  reason('limit-readings', 'Nothing may go on the word of a single point.'),
  reason('limit-finish', 'Nothing may go from a matte finish: polishing makes it shine.'),
  reason('limit-covered', 'Nothing may go through a film, wrap or coating.'),
  reason('limit-fresh-paint', 'Nothing may go from paint that is not hard yet.'),
  reason('limit-test-spot', 'Nothing may go before a test spot on this very panel.'),
  reason(
    'limit-sound-panels',
    'Nothing may go from repaint where nothing may go from some sound panel.',
  ),
  reason('limit-no-data', 'Nothing may go where nothing is known of the film.'),
  caution('edges-read', 'Points near an edge were read apart: the film is thinner there.'),
  caution('low-points', 'Some points read lower than the panel’s others: go easy there.'),
  caution(
    'colour-on-pad',
    'Colour on the pad is normal on single-stage paint; under clear coat it means stop.',
  ),
  caution('rotary-heat', 'A rotary that stands or lingers burns paint within seconds.'),
  caution(
    'panel-heat',
    'A step of the plan warms the panel past the temperature of caution.',
    'Rest between the sets, or work two sections by turns; leastcut methods show says how warm it gets.',
  ),
  caution('maker', 'What the vehicle’s maker says of the paint, and local rules, come first.'),
  caution('not-a-promise', 'A reading says what was under the probe, and no more.'),
  caution('pad', 'A tilted or resting pad cuts and burns; edges and lines have the least film.'),
  caution('protection', 'Dust, noise and shaking harm slowly; electricity and water at once.'),
  caution(
    'vibration',
    'Points of hand–arm vibration of the whole correction, by the counting of HSE.',
    'Spread the work over days or hands where it is over the day’s limit.',
  ),
  caution('chemicals', 'Solvents and iron removers need gloves and air, and are never mixed.'),
  caution('old-paint', 'Unknown old paint may hold lead or chromate: never sand it dry.'),
  advice('spot-start', 'No trial was judged yet: the mildest combination that may do is named.'),
  advice('spot-again', 'A second set on the same place may still do it, and tells more.'),
  advice('spot-step-up', 'The trial did not clear: the next rung is named.'),
  advice('spot-refine', 'The trial cleared and left haze: a milder step by dual action clears it.'),
  advice('spot-done', 'The mildest trial that cleared is enough.'),
  advice(
    'spot-stop-colour',
    'Colour came off on the pad.',
    'Stop polishing there. On single-stage paint colour is normal: state "finish" in the job.',
  ),
  advice('spot-stop-risk', 'One set of the next rung takes more than may go.', 'Leave the rest.'),
  advice('spot-stop-ladder', 'No combination of the shop is likely to reach the aim.'),
  advice(
    'spot-not-judged',
    'What a trial cleared was not judged.',
    'Wipe, look under a lamp, and write cleared_pct.',
  ),
  advice('spot-no-film', 'The film was not read at a trial.', 'Read marks before and after.'),
  advice(
    'spot-film-gained',
    'After a trial the film reads more than before, beyond noise.',
    'Check the gauge, wipe off polish and wax, let the panel cool, and read again.',
  ),
  advice(
    'spot-unresolved',
    'What a trial took is less than its marks can tell from nothing.',
    'Read more marks, each several times, or stack sets.',
  ),
  advice('spot-heat', 'The panel was warmer than the caution.', 'Move faster, or rest.'),
  advice('spot-dusting', 'The product dusted.', 'Clean the pad and take less product.'),
  advice('spot-more-evidence', 'How sure the rate would be after one more trial of some size.'),
  caution('hot-parts', 'Water on a hot brake or exhaust cracks it, and scalds.'),
  caution('licensed', 'Failing clear, airbags and structure are for licensed practice.'),
  limit('clear', 'Clear (or single-stage topcoat) that must stay on the thinnest 5 %.'),
  limit('life', 'What may come off a panel over its life, earlier work counted.'),
  limit('total', 'What the smallest point must still read, all layers together.'),
  limit('readings', 'One point is no basis for machine work.', 'Read at least three, best five.'),
  limit('finish', 'A matte finish is not polished.'),
  limit('covered', 'A film, wrap or coating lies over the paint.'),
  limit(
    'fresh-paint',
    'Paint this young still hardens.',
    'Wait, or ask the paint’s maker when it may be polished.',
  ),
  limit(
    'test-spot',
    'On refinished or filled panels the total says nothing of the clear.',
    'Try a small spot on this panel first.',
  ),
  limit(
    'sound-panels',
    'On repaint with a test spot of its own no more goes than on the least of the sound panels.',
  ),
  limit('no-data', 'Nothing is known of the film.', 'Read the panel.'),
  note('mirror-difference', 'Two panels that face each other differ more than paint lines do.'),
  note(
    'sound-panel-cap',
    'On refinished or filled panels never more goes than on the least of the car’s sound panels.',
  ),
  note(
    'layer-readings',
    'Readings of single layers are kept apart from those of the whole film; those of the clear speak for it.',
  ),
];
