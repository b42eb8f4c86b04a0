/** What the codes in a record’s assumptions, advice, reasons, cautions, limits and notes mean. */

export type RemarkKind =
  | 'assumption'
  | 'advice'
  | 'reason'
  | 'caution'
  | 'limit'
  | 'note'
  | 'exclusion';

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
const exclusion = one('exclusion');

export const remarkMeanings: readonly RemarkMeaning[] = [
  assumption(
    'template',
    'No template was named: the one whose panels fit best was taken.',
    'Name it with --template, or "template" in the job file.',
  ),
  assumption(
    'same-gauge',
    'Readings before and after are taken to be of one gauge, so that its own error cancels.',
    'Where two gauges read the car, name them with --gauge and --gauge-after.',
  ),
  assumption(
    'gauges-differ',
    'Readings before and after are of two gauges, or of one that moved: both errors count in full.',
    'Read the car with one gauge, and check it on shims before and after.',
  ),
  assumption(
    'place-by-name',
    'A point called by a defect and counted, as “deep scratches 1”, is taken for the place of a spot: it tells nothing of what came off the rest of its panel.',
    'Name the plan with --plan, and what was taken there is told; call a point of the panel by another name.',
  ),
  reason(
    'film-gained',
    'The panel reads more film than before, beyond chance: polishing adds none. So much as paint adds counts as repaint.',
    'Check the gauge, wipe off wax and polish, and read the same places again; or make a test spot on it.',
  ),
  reason(
    'change-not-resolved',
    'The change is within what the readings scatter: it may be nothing, or more than it looks.',
    'Read more points, marked before the work.',
  ),
  reason('one-more-set', 'What one more set takes, and what may go.'),
  reason(
    'less-as-held',
    'Less may go than a survey of the later readings says: plan and other panels speak for more gone than was measured.',
  ),
  reason(
    'less-as-stated',
    'Less may go than a survey of the later readings says: the clear the job states is taken to be from before the work.',
    'State the clear as it is now, and survey the car anew.',
  ),
  reason(
    'less-as-vague',
    'Less may go than a survey of the later readings says: how the step to go on with cuts is known less well than usual.',
  ),
  reason(
    'less-as-before',
    'Less may go than a survey of the later readings says: what was read before the work counts as well.',
    'Read the points again that were read before the work.',
  ),
  reason(
    'more-than-before',
    'More may go than before the work. Work adds no film: the readings differ, not the paint.',
    'Where before the work less might go than one more set takes, read the panel again before more comes off.',
  ),
  reason(
    'more-than-allowed',
    'More came off than might go before the work, beyond what the readings may be off by; the value is what might go.',
    'Do not work the panel further; wipe it, let it cool, read the same points again.',
  ),
  reason(
    'perhaps-more-than-allowed',
    'What was measured is more than might go before the work, though by no more than the readings may be off by; the value is what might go.',
    'Wipe the panel, let it cool, and read the same points again before more comes off.',
  ),
  reason(
    'film-rose',
    'The panel read more film at one visit than at the one before it; the value is how much more. No work adds film.',
    'Name the files in the order of the visits; else find out what moved.',
  ),
  reason(
    'point-stands-out',
    'What came off at a marked point stands out from the panel’s other points; the value is what came off there. It is a slip of the readings, or work on that place.',
    'Read the point again, and look at the sheet; then correct the file and compare again.',
  ),
  reason(
    'points-swapped',
    'The marked points fit those of another panel, or one another from the other end, far better than as they are named.',
    'Settle which is which, correct the file, and compare again.',
  ),
  reason(
    'life-passed',
    'More is gone than may come off over the life of the panel; the value is what is gone.',
    'Leave the panel alone, now and at every later visit.',
  ),
  reason(
    'total-passed',
    'The smallest point reads less than must stay of the total; the value is what it reads.',
    'Leave the panel alone.',
  ),
  reason(
    'clear-passed',
    'Less clear is expected on the thinnest part of the panel than must stay; the value is what is expected.',
    'Leave the panel alone.',
  ),
  reason(
    'clear-at-risk',
    'With what came off, the clear is under its floor by now with more than the chance that was accepted; the value is that chance.',
    'Leave the panel alone.',
  ),
  reason('not-compared', 'The panel was read both times, and there is nothing to compare by.'),
  reason('only-before', 'The panel was read before and not after.'),
  reason('only-after', 'The panel was read after and not before.'),
  reason(
    'no-common-ground',
    'No point was found again, and the gauge tells no mean of the panel.',
    'Mark points before the work, and say so.',
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
    'defect-extent',
    'A defects file states how far defects go in figures. It is kept as a note: a panel is worked as a whole, by its deepest general defect.',
    'Leave a panel out with --panel, or grade it 0, if nothing is to be done there.',
  ),
  assumption(
    'materials',
    'Nobody said what panels are made of: it is as the template has it. A gauge for metal reads no film on plastic or carbon.',
    'State "substrate" of a panel in the job file.',
  ),
  assumption(
    'eddy-current',
    'Readings on aluminium are taken to be of the eddy-current side of the gauge: a magnetic one reads no film there, and then nothing may go.',
    'Say it in a column of the readings, or read the panel with a gauge that reads both.',
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
    'files-doubted',
    'Files taken as one vehicle are perhaps of two: readings of the same points are too far apart, one file reads higher than the other, or their own words name two cars.',
    'Survey each file alone, or make sure that both are of one car on one visit.',
  ),
  assumption(
    'gauge-widened',
    'The gauge failed its check: its readings are taken to be off by at least as much as it was on the worst shim.',
    'Read the car with a gauge that passes.',
  ),
  assumption(
    'gauge-failed-unsaid',
    'The gauge failed its check, and its file does not say by how much it is off: nothing is allowed for it.',
    'Read the car with a gauge that passes, or check this one on shims.',
  ),
  assumption(
    'gauge-drifted',
    'The gauge file proves that the gauge moved between its two checks: a change of film between readings from before and from after may be the gauge’s.',
    'Read both anew when the gauge has settled.',
  ),
  assumption(
    'gauge-untested',
    'No shim of the gauge’s check was as thick as a film: its share of the film is taken to be no better than is usual.',
    'Check the gauge on shims on either side of the film, and give its new file.',
  ),
  assumption(
    'gauge-adjusted',
    'The gauge file holds an adjustment, and every reading of the whole film was put right by it.',
    'Set "adjustment" to null in the gauge file to survey the readings as they stand.',
  ),
  assumption(
    'rates',
    'Removals are foretold from what was measured on earlier vehicles of the shop, with what is built in.',
    'leastcut methods list --rates shows how well they foretell; spot and compare add to them.',
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
    'taken-exact',
    'What the job states as taken by earlier work has no SD beside it, so nothing is counted for what it may be off by. What a film record holds has one.',
    'Write it as { "value": 3, "sd": 1 } in the job file.',
  ),
  assumption(
    'taken-instead',
    'Where nobody knows what earlier work took, a usual amount is allowed for. What the job states takes its place: less than that lets more go, as it is then known.',
    'State "taken_um" only as far as somebody knows it; else "unknown".',
  ),
  assumption(
    'record-and-stated',
    'The job states film as taken of a panel whose earlier work is on record: both count, as what is stated is what went besides the record.',
    'If the record holds it, take it out of "taken_um": 0 where nothing else was ever done.',
  ),
  assumption(
    'spots-on-record',
    'The film record keeps test spots of earlier visits, and their file was not named: what they took is gone from their places, and one that left colour under a clear still lets nothing go from its panel.',
    'Name their file with --spots as well, for what they showed of the paint to count.',
  ),
  assumption(
    'record-vehicle',
    'The film record names its vehicle, and neither the readings nor the job do: they are held to be of that one, and what went from it counts.',
    'Name the vehicle in the readings or in the job. If the record is of another, leave it out.',
  ),
  assumption(
    'spots-counted-once',
    'A trial of --spots is on the film record already: its spot, panel, combination, sets, readings of each mark, share cleared and haze are the same. It counts once, as recorded. What it took is not held against what may go now: more might go when it was made.',
    'If it was another trial, give the spot another name.',
  ),
  assumption(
    'spots-before-paint',
    'The job says that a panel was painted after a test spot on record was made there, or the readings name no day that tells which came first. What the spot showed was of other paint: it frees nothing of the panel, and where it is surely older it holds nothing there either. Colour that it left still speaks of the paint that the car had.',
    'Make a test spot on the new paint. Give the readings their day where they name none.',
  ),
  assumption(
    'risk',
    'The risk was not chosen, so the built-in one holds.',
    'State --risk-pct, or "risk_pct" in the job or shop file.',
  ),
  assumption(
    'strict-policy',
    'The strict policy asks for so much clear that a total reading hardly ever shows it; of paint without a clear no strict floor is known.',
    'Use it with an instrument that shows the clear by itself.',
  ),
  assumption(
    'scope',
    'Nobody said all of what is to be done besides the correction, who does it and how dirty it comes in.',
    'State "scope", "arrival", "hands" and "hours_per_day" in the job file.',
  ),
  assumption(
    'temperature',
    'The panel or the room was not measured, so usual temperatures were taken.',
    'State "panel_c" and "room_c" in the job file.',
  ),
  assumption('hours', 'Hours that jobs took are on record, and the estimate goes by them.'),
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
    'A magnetic gauge counts zinc as paint. If there is some, less may go than is shown: knowing it helps no panel, and keeps from taking too much.',
    'Find out whether the steel is galvanised, and state "galvanised".',
  ),
  note(
    'keying-slip',
    'One value is ten times its neighbours, or a tenth of them. It is asked about before anything is made of it, and never changed.',
    'Look at the gauge, or read the point again.',
  ),
  note(
    'over-range',
    'On metal a point is beyond the range of the gauge, and no reading was taken there: thicker than the gauge can show, so it counts as filler, unless the probe was lifted. It enters no mean.',
    'Read the point again: film read there settles it. Beyond the range again, make a test spot first.',
  ),
  advice(
    'ultrasound',
    'Under the paint there is no metal, and the usual gauge needs metal.',
    'Read it with an ultrasonic gauge (ASTM D6132).',
  ),
  advice('read', 'The panel was not read, so nothing may go.', 'Read it.'),
  advice(
    'read-again',
    'One value looks keyed wrongly, stands out from the others, or is beyond the range of the gauge, and the figures hang on it.',
    'Read that point again, or correct the file.',
  ),
  advice(
    'edge-point',
    'A point reads low, and film is thin towards edges and on body lines: there it enters no statistic.',
    'If it lies there, write edge in its column place; else read it again.',
  ),
  advice(
    'settle',
    'The panel is near a line, and what may go hangs on which side of it it lies.',
    'Its own words say by what it is settled: so many points, that point again, word of a repaint, a test spot of its own.',
  ),
  advice(
    'settle-clear',
    'The panel may be cut back, and no number of points settles whether it is.',
    'Read its clear by itself: that says what may go, whichever it is. With a gauge for totals keep to the figure told.',
  ),
  advice(
    'wait',
    'The paint is so young that it still hardens.',
    'Leave it for the days that are named.',
  ),
  advice(
    'uncover',
    'What lies over the paint is read as paint.',
    'Read the panel once the film, wrap or coating is off.',
  ),
  advice(
    'sound-panel-first',
    'From repaint no more may go than from the original panel that allows least, and from that one nothing may go till it is settled what it is.',
    'Settle what that panel is: what may go from it may then go here, with a test spot of its own.',
  ),
  advice(
    'beyond-help',
    'Nothing that could still be found out would let any film go.',
    'Leave the panel, or have it painted.',
  ),
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
  reason(
    'nothing-fits',
    'Even the mildest steps of the shop would take more than may go.',
    'A softer pad or a finer product takes less.',
  ),
  reason(
    'shop-too-mild',
    'More film may go than anything the shop has takes: its strongest ways clear no more of the marks.',
    'A stronger pad, product or machine clears more; the plan holds it to what may go.',
  ),
  reason('not-worth-it', 'What may go would clear so few marks that the film is worth more.'),
  reason('aim-out-of-reach', 'The aim takes more film than may go; the plan stops short of it.'),
  reason('by-hand', 'A machine does not fit here or takes too much; the hand takes least.'),
  reason('as-elsewhere', 'Of steps that are as good here, those that other panels need anyway.'),
  reason(
    'of-these-steps',
    'Survey and plan differ in what may go: the survey speaks of a step not tried on this paint, the plan of its own steps, which a test spot or the shop’s rates foretell better or worse.',
  ),
  reason(
    'tried-first',
    'A step that a test spot on this paint proved, by its film and with no more haze than the aim lets stand, stands before a milder one that was not tried there, as long as it takes no more, neither in the middle nor in nine cases of ten.',
  ),
  reason('local-spot', 'Extra sets of a small pad at one deep mark, before the panel’s own steps.'),
  reason(
    'local-less',
    'Less may go at the place of a deep defect than by the panel’s own steps: the spot takes a step that is foretold less well, as one not tried on this paint, or the risk accepted is so small that it counts how thin a single place may be.',
  ),
  reason(
    'local-mildest',
    'Of single combinations of the smallest pad the mildest that clears as much of the mark. Where the panel’s own steps take less, as at a lower aim, the spot has to take more, and may need a harsher pad for the same share.',
  ),
  reason('local-left', 'A spot would gain too little at this mark, or may take nothing there.'),
  reason(
    'local-over-cut',
    'More came off this panel than might at a visit on record, and nothing more may go from it: no spot either.',
  ),
  reason(
    'local-place-unread',
    'A spot at a deep defect was planned on this panel at a visit on record, and its place was not read since: no other spot on it, be it at that place or beside it.',
    'Read that place as a point of the panel, called by its defect and counted (deep scratches 1), and name the film record: what it reads then counts.',
  ),
  reason(
    'local-aim',
    'A spot could clear more within every limit, and the aim asks for no more: with what it could clear, in %.',
  ),
  reason('local-limit', 'What keeps a spot from more sets: the film of that place.'),
  reason('local-haze', 'Stronger sets on a spot would leave haze that no later step clears.'),
  reason('pad-lies-flat', 'The pad is wider than the flat of the panel.'),
  reason('full-size-where-it-fits', 'A small pad where a full-size one lies flat costs hours.'),
  reason(
    'stronger-than-tried',
    'Of repaint nothing is known but what test spots on it showed: no step is planned there that is stronger than the strongest tried on it without colour on the pad.',
    'Try the next rung on a spot of that panel, and name it with --spots.',
  ),
  reason('each-step-milder', 'Each step must be milder than the one before.'),
  reason('last-step-not-rotary', 'A rotary leaves holograms: it is never the last step.'),
  reason('haze-cleared', 'More haze would be left than may be.'),
  reason('within-budget', 'Takes more than may go; the value is how much more, in µm.'),
  reason('clears-less', 'Clears less than can be had; the value is how much, in points.'),
  reason('stronger-step', 'Clears no more, and its strongest step is stronger.'),
  reason('more-film', 'Clears no more, and takes more film; the value is how much, in µm.'),
  reason(
    'not-tried-here',
    'Clears no more, by a step that no test spot on this paint proved; the one that is planned was proved, and takes no more than what would be planned without it.',
  ),
  reason(
    'may-take-more',
    'Clears no more, by a step that was tried on this paint, and takes more than what would be planned without any that was: in the middle, or in nine cases of ten.',
  ),
  reason('more-time', 'As good, and takes longer; the value is how much, in minutes.'),
  reason('more-set-ups', 'As good on this panel, and the car would need more combinations.'),
  reason('by-name', 'As good in everything; of such the first by name is taken.'),
  reason('local-defect', 'A deep mark is worked at its place, or left; never chased over a panel.'),
  reason('not-polishing', 'The defect does not go away by polishing.'),
  reason('limit-clear', 'Nothing may go, since the clear may already be at its floor.'),
  reason('limit-life', 'Nothing may go, since what a panel may lose in its life is gone.'),
  reason('limit-total', 'Nothing may go, since a point is at the floor of the total film.'),
  reason('limit-readings', 'Nothing may go on the word of a single point.'),
  reason('limit-finish', 'Nothing may go from a matte finish: polishing makes it shine.'),
  reason('limit-covered', 'Nothing may go through a film, wrap or coating.'),
  reason('limit-clear-coat-failure', 'Nothing may go from clear that has failed.'),
  reason('limit-fresh-paint', 'Nothing may go from paint that is not hard yet.'),
  reason(
    'limit-near-line',
    'The panel is near its line: no more goes than keeps the risk over all that it may be.',
  ),
  reason(
    'limit-colour-at-spot',
    'Nothing may go from a panel where a test spot left colour on the pad, on paint that should have a clear.',
  ),
  reason(
    'limit-as-compared',
    'Nothing more may go by the readings that ended the visit on record: nothing was left then.',
  ),
  reason(
    'limit-place',
    'Nothing more may go at the place that was worked deeper, or not before it is read.',
  ),
  reason('limit-test-spot', 'Nothing may go before a test spot on this very panel.'),
  reason(
    'limit-sound-panels',
    'Nothing may go from repaint where nothing may go from some original panel.',
  ),
  reason(
    'limit-spot-depth',
    'Nothing more may go from repaint that was worked as deep as its test spot was since.',
  ),
  reason('limit-no-data', 'Nothing may go where nothing is known of the film.'),
  caution('edges-read', 'Points near an edge were read apart: the film is thinner there.'),
  caution('low-points', 'Some points read lower than the panel’s others: go easy there.'),
  caution(
    'colour-on-pad',
    'Colour on the pad is normal on single-stage paint; under clear coat it means stop.',
  ),
  caution(
    'colour-on-repaint',
    'A repainted panel of a car whose paint has no clear: what it was painted with may have one, over a base coat, and colour on the pad is the first sign that it is gone.',
    'Look at the pad after each set; at the first colour, stop on that panel. If that panel itself has no clear, state its finish in the job (panels).',
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
  advice(
    'spot-place-short',
    'The next step goes on at the place of a trial, and what that took with what the step takes is more than might go there, as its marks read before.',
    'Run survey with --spots first. If too much came off, leave that place, and try a milder step or fewer sets on a fresh one.',
  ),
  advice(
    'spot-place-unknown',
    'The next step goes on at the place of a trial of which the marks do not tell what might go: none were read, too few, or the film is thick as repaint.',
    'Run survey with --spots before that place is worked on.',
  ),
  advice('spot-done', 'The mildest trial that cleared is enough, in as many sets as it had.'),
  advice(
    'spot-stop-colour',
    'Colour came off on the pad.',
    'Stop polishing there. On single-stage paint colour is normal: state "finish" in the job.',
  ),
  advice(
    'spot-colour-repaint',
    'Colour came off on the pad where the car has no clear: normal of its own paint, and of repaint perhaps a base coat under clear.',
    'Survey the panel first. If it is repaint, stop, and find out its finish.',
  ),
  advice(
    'spot-stop-overrun',
    'A trial surely took more than might go where it was worked, as its marks read before.',
    'Work nothing further till its marks are read again and it is known what took it.',
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
    'spot-clear-shown',
    'A trial left no colour on the pad where a finish without a clear is stated: one of the two is wrong, and till it is settled the finish is held to be unknown.',
    'Look at the pad again on a hidden place, and correct the finish or colour_on_pad.',
  ),
  advice(
    'spot-film-gained',
    'After a trial the film reads more than before, beyond noise: nothing is learnt from it of paint or rates.',
    'Check the gauge, wipe off polish and wax, let the panel cool, and read again.',
  ),
  advice(
    'spot-unresolved',
    'What a trial took is less than its marks can tell from nothing.',
    'Read more marks, each several times, or stack sets.',
  ),
  advice('spot-heat', 'The panel was warmer than the caution.', 'Move faster, or rest.'),
  advice('spot-dusting', 'The product dusted.', 'Clean the pad and take less product.'),
  advice(
    'substrate',
    'A gauge that needs metal showed film on a panel that is taken for plastic: the panel may be of metal.',
    'State "substrate" of the panel in the job file, if it is.',
  ),
  advice(
    'gauge-check',
    'Nobody checked the gauge: what a gauge without any error would gain, and how little of the doubt it is.',
    'Check it on shims with leastcut gauge, and give its file with --gauge.',
  ),
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
    'clear-coat-failure',
    'The clear lifts, whitens or peels: polishing takes what is left of it.',
    'Have the panel refinished.',
  ),
  limit(
    'colour-at-spot',
    'A test spot left colour on the pad, on paint that should have a clear: it is through the clear there, or the finish is not what was said. Its trial teaches nothing of how the paint gives way.',
    'Leave the panel alone; settle what the finish is before the car is worked.',
  ),
  limit(
    'test-spot',
    'On refinished or filled panels the total says nothing of the clear.',
    'Look for the edge of a protection film first, which leaves no colour on a pad either. Then try a small spot on this panel.',
  ),
  limit(
    'sound-panels',
    'On repaint with a test spot of its own no more goes than on the original panel that allows least.',
  ),
  limit(
    'spot-depth',
    'Of repaint nobody knows how much clear it has: no more goes in the middle than the sets of its deepest test spot take there, as foretold by all that is learnt of that paint, which left no colour on the pad; less what visits took off the panel since.',
    'Work the spot deeper, set by set, and look at the pad after each; then name it with all its sets (--spots).',
  ),
  limit(
    'near-line',
    'The panel is near the line that its word hangs on: no more goes than keeps the risk over all that it may be, each by its chance (not on each side alone), in the survey and in the plan.',
    'Settle what it is first; survey --why PANEL says by what.',
  ),
  limit(
    'place',
    'A spot at a deep defect, or a test spot, took more at one place of the panel than all over it: no more goes than what might go there without it, less all of that. Of a spot that was planned and not read since no more goes than the plan leaves at its place, less what the panel lost beyond its plan.',
    'Read that place, as a point called by its defect and counted (deep scratches 1), before anything more comes off the panel; if the spot was not worked, say so with --worked, 0 sets of it.',
  ),
  limit(
    'as-compared',
    'The readings are those after a visit on record, and nothing more was read of the panel: no more goes than was left then, by the readings of both visits and what its plan and the other panels say of it.',
    'Read the panel again, best at more points: new readings say anew what may go.',
  ),
  limit('no-data', 'Nothing is known of the film.', 'Read the panel.'),
  assumption(
    'quote-kind',
    'Nothing says whether the quote is an offer: it is an estimate, which may change.',
    'Say --kind quotation, or kind among the prices of the shop file.',
  ),
  assumption(
    'quote-hours',
    'A quote is priced at hours that a share of such jobs keep within: half for an estimate, four in five for a quotation.',
    'Set price.hours.estimate_pct or price.hours.quotation_pct among the numbers of the shop file.',
  ),
  assumption(
    'quote-tax',
    'How the quote is taxed rests on a preset that nobody checked, or on nothing being said.',
    'Hold it against the rules of your country; say rate_pct, level and rounding in the shop file.',
  ),
  assumption(
    'quote-materials',
    'What is used and has no price on the list is not charged apart.',
    'Add it to materials among the prices, or see that the price of an hour covers it.',
  ),
  note(
    'aim-clears-less',
    'On this car the aim clears less than the one before it, as full does where a finish without haze costs the film that the marks would need.',
    'Quote the one before it, or see which panels it leaves.',
  ),
  note(
    'aim-clears-no-more',
    'On this car the aim clears no more than the one before it, and costs as much or more; it may end with a finer finish.',
    'Quote the one before it, unless the finish is wanted.',
  ),
  note(
    'aim-takes-less-film',
    'On this car the aim clears more than the one before it and takes less film: choices that hardly differ count as one.',
  ),
  note(
    'aim-costs-less',
    'On this car the aim costs less than the one before it, or without prices takes less time.',
    'See what it leaves, and what more film it takes.',
  ),
  note(
    'further-aim-costs-less',
    'Of an aim that is quoted alone: a further one that is not quoted clears as much and costs less.',
    'Quote that aim as well, and weigh the film it takes.',
  ),
  note(
    'once-read-again',
    'How many of the hours of an aim, and how much of its price, are for panels that are worked only once they are read again.',
    'Read them again before the quote is given, and have it made anew.',
  ),
  note(
    'aim-same',
    'On this car the aim gets and costs what an earlier one does, so that the owner is not offered it.',
  ),
  exclusion('not-measured', 'A panel was not read, so nothing is promised there.'),
  exclusion('under-film', 'A panel lies under film or wrap and is not worked.'),
  exclusion('clear-failed', 'The clear is coming off: new paint is the answer, not polishing.'),
  exclusion('matte-paint', 'A matte finish is not polished.'),
  exclusion(
    'risk-unknown',
    'An aim works the panel though no reading counts for its clear, as on repaint freed by a test spot of its own: its risk is not known, and is in none that the quote tells.',
  ),
  exclusion('filler-found', 'There is filler under the paint: what can be had shows on the car.'),
  exclusion('painted-again', 'The panel reads as if it was painted again after the factory.'),
  exclusion('thin-paint', 'The panel has little paint left.'),
  exclusion('worked-before', 'The panel reads as if it was sanded or polished before.'),
  exclusion('deep-marks', 'Single deep marks get fainter or stay: they are not chased.'),
  exclusion('not-by-polishing', 'A fault was noted that polishing does not mend.'),
  exclusion(
    'edges-apart',
    'Edges and shuts of the panel were read apart: their film is thinner, and they are not polished.',
  ),
  exclusion('colour-came', 'At a test spot of the panel colour came on the pad: it is not worked.'),
  exclusion(
    'finish-doubted',
    'Colour came on the pad at a test spot of another panel: nothing is worked here until the finish is settled.',
  ),
  exclusion(
    'clear-shown',
    'A finish without a clear was stated, and no colour came on the pad at a test spot of the panel: the lesser of both reckonings holds until it is settled.',
  ),
  exclusion(
    'left-alone',
    'The panel is left as it is at every aim of the quote, for the reason of its plan.',
  ),
  exclusion(
    'left-at-aim',
    'The panel is left as it is at the aims that are named, for the reason of their plan, and is worked at others.',
  ),
  exclusion('history-unknown', 'Nobody knows what earlier polishing took.'),
  exclusion('no-trial-yet', 'No test spot was made on this paint.'),
  assumption(
    'rubric',
    'No rubric was named: the usual weights and pass mark hold.',
    'Write a rubric file and name it with --rubric.',
  ),
  assumption(
    'sigma-pt',
    'Nobody stated how far a trainee’s mean may scatter: a usual standard deviation was taken.',
    'State "sigma_pt_um" in the rubric, or "class" to take it from the class.',
  ),
  assumption(
    'sigma-pt-class',
    'The rubric asks for the scatter of the class, and too few surveys read the same panels.',
    'Grade more surveys together, or state "sigma_pt_um" as a number.',
  ),
  assumption(
    'usual-repeats',
    'How much readings of one point differ on a car was taken as usual: what repeats, ζ and copies are judged by.',
    'Set film.measurement.repeatability_um among the numbers of the shop file, by repeats on cars; shims are flatter than any panel.',
  ),
  assumption(
    'one-gauge',
    'Nothing says that several gauges were used: what the one is off by cancels in each difference. On thick film, where two would differ by more than σ_pt holds, scores allow for what a gauge may usually be off by.',
    'Name the gauge of everybody with --gauge, and that of a trainee with --trainee-gauge, if it was another.',
  ),
  assumption(
    'own-points',
    'No marked point was read by both sides: scores allow for the film between the points.',
    'Mark the points and say so in a column marked, or with --marked.',
  ),
  assumption(
    'consensus-marks',
    'Points are marked, and the class is its own reference: a consensus is of the means of panels and has no marks, so no two readings of a mark are compared, no drift and no mark that reads off is looked for.',
    'Name the file of an expert who read the marks as the reference, in place of --consensus.',
  ),
  assumption('own-gauge', 'A trainee read with a gauge of their own, by its file.'),
  reason(
    'unit-slip',
    'Readings are 25.4 times the reference, or that part of it: mil and µm were mixed up.',
    'Name the unit that the gauge showed, in the heading or with the readings.',
  ),
  reason(
    'decimal-slip',
    'A reading is ten or a hundred times the reference, or that part of it.',
    'Look at the gauge before you write; mend the decimal mark.',
  ),
  reason(
    'sides-swapped',
    'With left and right changed the readings agree with the reference, as they stand they do not.',
    'Left and right are as seen from the driver’s seat.',
  ),
  reason(
    'panels-swapped',
    'With the names of two panels or more changed the readings agree with the reference, as they stand they do not.',
    'Write the name of a panel while you stand before it.',
  ),
  reason(
    'points-turned',
    'With the points of a panel counted from the other end, or in one order that is the same on all panels, the readings agree with the reference, as they stand they do not.',
    'Number points as the marks on the panel are.',
  ),
  reason(
    'swapped-or-turned',
    'With the names of two panels changed the readings agree with the reference, and in another order of their points nearly as well; as they stand they do not. Which of the two it was the values do not show, and each counts as questionable.',
    'Look which it was; write the name of a panel while you stand before it, and number points as the marks on the panel are.',
  ),
  reason(
    'step-changes',
    'Far more readings than chance allows lack the last figure that the others show: a display has one step all through.',
    'Write each reading as the gauge shows it.',
  ),
  reason(
    'values-alike',
    'All points of a panel read the same, which film does not.',
    'Read each point, and write what the gauge shows.',
  ),
  reason(
    'values-repeated',
    'Two panels have the same values in the same order.',
    'Write each panel while you stand before it.',
  ),
  reason(
    'values-in-order',
    'On more panels than chance allows the values only rise or only fall.',
    'Write readings in the order that you take them.',
  ),
  reason(
    'too-regular',
    'Points of a panel differ far less than its film does: they lie at one place of it, such as the middle, or nobody read them. Which of the two, the values do not show; either way they tell nothing of the rest of the panel, and where chance is as good as ruled out it counts as not read.',
    'Spread the points over the panel, and write each reading as it comes.',
  ),
  reason(
    'too-few-to-tell',
    'Too few points were handed in to tell, by how they scatter, values that were read from values that were made up.',
    'Nothing is held against the trainee. Read more panels, at more points.',
  ),
  reason(
    'survey-copied',
    'The values agree with the reference, or with another survey of the class, more closely than two measurements can: one has the other’s values, or neither was read at the car.',
    'Each reads the car alone, and writes what the gauge shows.',
  ),
  reason(
    'car-off',
    'The survey reads more, or less, than the reference over the whole car.',
    'Set the gauge to zero, check it on a shim, hold it square, and wipe the paint first.',
  ),
  reason(
    'gauge-drift',
    'At marked points the survey reads more and more, or less and less, beside the reference, in the order of the file. What is read last shows film that is not there, or misses some. By itself it takes no marks: panels that it puts off do; over 2 σ_pt the survey is questionable.',
    'Check the zero and a shim before, in between and after; let the gauge come to the temperature of the car.',
  ),
  reason(
    'marks-off',
    'At some marks the survey is off on panel after panel, at others of the same panels it agrees.',
    'Set the whole foot of the probe on the paint, square, and away from edges and bends.',
  ),
  reason(
    'not-following',
    'From mark to mark of a panel, or from panel to panel, the values rise and fall otherwise than the reference’s, as they would by chance: an honest hand, even one that sets down unsteadily, looks like this in one survey of 1,000. Marks read in another order do as well. It takes no marks; the survey is questionable.',
    'Read each mark where it is, and write it under its own name. If that is how the car was read, say so.',
  ),
  reason(
    'panel-off',
    'The mean of the panel is three deviations or more from the reference.',
    'Read it again.',
  ),
  reason(
    'panel-doubtful',
    'The mean of the panel is over two deviations from the reference.',
    'Read it again.',
  ),
  reason(
    'panels-unread',
    'Panels of the reference were not read.',
    'Walk round the car in one order.',
  ),
  reason('few-points', 'Panels were read at fewer points than the reference has.'),
  reason(
    'low-spot-missed',
    'The reference has a low spot on the panel and no reading comes near it.',
    'Read closer points where the panel looks or feels worked.',
  ),
  reason(
    'repair-missed',
    'The panel is repaired, as the reference reads it, and the survey does not show it.',
    'Read more points, nearer to each other.',
  ),
  reason(
    'repair-invented',
    'The panel reads repaired, and the reference does not.',
    'Read it again.',
  ),
  reason(
    'repeats-apart',
    'Readings of one point differ by more than is usual.',
    'Lift the probe and set it down at the very same place, square and without sliding.',
  ),
  reason(
    'repeats-alike',
    'Repeats are the same figure at nearly every point, finer than a hand repeats to: how well readings repeat is not known, is not marked, and is no part of the gauge R&R.',
    'Nothing else is held against the trainee. Lift the probe, set it down again and write what the gauge shows each time.',
  ),
  reason(
    'not-repeated',
    'No point was read twice: how well readings repeat is not known.',
    'Read each point three times.',
  ),
  reason('panel-extra', 'The reference did not read the panel, so it has no score.'),
  note(
    'record-put-back',
    'Film that earlier work took, by a film record or as the job states it ("taken_um"), is put back before panels are compared with each other: what was polished off some makes no other panel thick. What may go is told from what each reads now.',
  ),
  caution(
    'overrun-on-record',
    'At an earlier visit surely more came off the panel than might go, by a comparison that the film record kept. What went counts in its limits, with what it is uncertain by; what took so much (sets, pad, pressure, softer paint) nobody wrote down.',
  ),
  caution(
    'worked-unread',
    'At an earlier visit the panel was worked, and not read after: the film record holds what its plan foretold to be gone, with the spread of that, as nobody measured it. It counts in what may go.',
    'Compare the readings of before that work with these, and keep that on the record: what is measured takes the place of what was foretold.',
  ),
  caution(
    'left-by-number',
    'The film record says what was left of the panel after a visit, and keeps none of the readings that ended it, as older ones do. The panel is read at fewer points than then: whether some of those were left out nobody can say, so no more may go than was left.',
    'Read the panel at as many points as then, or more; or compare the readings of that visit again and keep the new record.',
  ),
  caution(
    'place-on-record',
    'At an earlier visit a spot at a deep defect was planned on the panel: it was to take so much at one place beyond what the panel lost. Nobody has read that place since. What may go is told of the rest of the panel; a plan works no other spot on it.',
    'Keep off that place. Read it, as a point of the panel called by the defect and counted (deep scratches 1), before anything more comes off there.',
  ),
  caution(
    'place-read',
    'At an earlier visit a spot at a deep defect was planned on the panel, and its place was read since: what is held to have gone there, by the plan and that reading, is gone at one place of the panel. Like a test spot’s it counts in what may go, and other spots may be planned again. Read beside the place less than the middle of the plan counts only where the reading bears it.',
    'If the reading is of another place, give its point another name.',
  ),
  caution(
    'spot-overrun',
    'A test spot surely took more than might go on its panel: the whole 95 % interval of what its marks lost lies over it. Whatever took so much is not known yet.',
    'Work nothing further till the marks are read again and it is known what took it.',
  ),
  note(
    'clear-read-apart',
    'The clear that an instrument for layers read of a panel and its total leave next to nothing for the base coat and the primer: both can hardly be right. They are not averaged; what may go is the least that either allows.',
    'Read the clear and the total of that panel again.',
  ),
  note(
    'spots-one-place',
    'Test spots of a panel under several names may be one place that was worked on: nothing tells them apart. Their marks begin where those of another ended, as well as the gauge can tell, or their film was not read, and no place is named. All that they took is then held to be gone there, and not the most of one alone.',
    'Say where each was made, in the column place of the test spots: other words, other places.',
  ),
  caution(
    'spot-perhaps-overrun',
    'What the marks of a test spot, or of several that may be one place, lost lies over what might go on its panel, though its 95 % interval reaches under that.',
    'Read the same points again, wiped and cool.',
  ),
  reason(
    'deeper-than-clear',
    'A defect is stated to be deeper than the clear that is reckoned there, or than all the paint: polishing would be through before it is out.',
    'Check the depth; if it stands, only new paint mends it.',
  ),
  note(
    'spot-contradicts',
    'What a test spot took lies outside the 95 % that was foretold of it, what the gauge may be off by counted: the paint, the way of working or a reading is not as held. What steps take is then held to be no surer than on a paint that nobody tried, and no more may go for it. What it took counts where it is more than was foretold; where it is less, nothing of the trial counts, as stronger steps on the strength of a slip would cost the clear.',
    'Read its marks again, and try another place.',
  ),
  caution(
    'few-of-finish',
    'The job states another finish for some panels than most have (a roof in single stage on a car of clear over base). Film of another number of layers is no measure of theirs, and too few of them agree to be compared with each other: they are compared with the others all the same, as it only lets less go.',
    'Read more panels of that finish; or state the layers of those panels (clear_um, under_um).',
  ),
  caution(
    'thick-baseline',
    'The panels of the car agree on a film that reads like repaint to what factories paint: a car painted again all over reads so, and one under a wrap or paint protection film ("covered"), which leaves no colour on a pad. Its edges show a film, a test spot what paint lies on it.',
  ),
  caution(
    'thin-or-painted',
    'Most panels agree and one reads far less, on a car of more film than factories mostly paint: it was cut back, or they were painted over. Both count in what may go: the thin panel as cut back, the others as repaint by the chance that they are, never held to be likelier than not. A third of the panels or more that read as factories paint, 40 µm or 35 % under the others, show that those were painted over.',
    'Read the clear of the thinnest panel by itself, or state what was painted again (painted_days_ago).',
  ),
  note(
    'mirror-difference',
    'Two panels that face each other differ more than paint lines do. One such pair in forty is painted so; else the thicker one may have been painted again, or the thinner one cut back.',
    'Look for signs of repaint on the thicker one (overspray in the shuts, other orange peel), and ask what was painted again (painted_days_ago).',
  ),
  caution(
    'side-painted',
    'Neighbouring panels of one side read over the panels that face them, together, by more than sides painted alike differ (25 µm): they may have been painted again as one, or the factory did so. More readings do not tell which. Panels of neither side that lie nearer to them than to the panels that face them are held with them. Nothing may go from any of these till it is settled, and those of the side are no measure of what may go from other repaint.',
    'State what was painted again (painted_days_ago); or read the shuts of two doors and of those that face them (place shut), which are masked when a side is painted: apart as the faces are, it was not, and alike, the film on the faces came later; or make a test spot on each: without colour as much may go as from the least of the other original panels.',
  ),
  note(
    'sound-panel-cap',
    'On refinished or filled panels never more goes than on the original panel that allows least.',
  ),
  note(
    'layer-readings',
    'Readings of single layers are kept apart from those of the whole film; those of the clear speak for it.',
  ),
];
