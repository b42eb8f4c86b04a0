/**
 * What a key of a record means in one place where that differs from what it means elsewhere, or where there is
 * more to say than `record-key-meanings.ts` does of all its places. Named by the end of the place, as far back
 * as it takes to tell it: `lines.kind`, or with the record before it `quote.kind`.
 */
export const recordPlaceMeanings: Readonly<Record<string, string>> = {
  // What stands around every record.
  'metadata.value': 'What the file says of it.',
  'metadata.line': 'The line of the file that says so, counted from 1.',
  'decisions.evidence': 'Why the file was read so, in sentences.',
  'decisions.unit': 'The unit that the file has its readings in; a record has them in µm.',
  'at.file': 'The file that is to blame, as it was named.',
  'at.line': 'Its line, counted from 1; null where the file as a whole is meant.',
  'at.column':
    'Its column, counted from 1 in UTF-16 units; null where a whole line or the file is meant.',
  'settings.name': 'The setting, by the name that it has in a settings file.',
  'settings.value': 'What it is set to; null where nothing is.',

  // read
  'readings.file': 'The file that the reading is from.',
  'readings.line': 'The line of the file that the reading stands in, counted from 1.',
  'readings.column': 'Where in that line, counted from 1 in UTF-16 units.',
  'readings.time': 'When it was taken, as the file writes it; null where it does not.',
  'readings.substrate':
    'What the gauge or the file says that the panel is made of, as it is written; null where nothing does.',
  'excluded.text': 'The text of the cell.',
  'excluded.class':
    'Why, in one word: missing, over-range, error, deleted, not-film or statistics.',
  'excluded.file': 'The file that the cell stands in.',
  'excluded.line': 'The line of the file that the cell stands in, counted from 1.',
  'excluded.column': 'Where in that line, counted from 1 in UTF-16 units.',
  'excluded.vehicle': 'Whose it would have been as a reading; null where that is not known.',
  'excluded.panel': 'The panel that it would have been of; null where that is not known.',
  'excluded.point': 'The point that it would have been of; null where that is not known.',
  'read.template': 'The id of the template that its panel names fit best; null where none fits.',

  // compare
  'points_apart.point': 'The point, by its name.',
  'points_apart.before_um': 'What it read before, in µm.',
  'points_apart.after_um': 'What it read after, in µm.',
  'points_apart.counted':
    'Whether the point counts in what came off the panel: the more that the panel lost with it or without it is held.',

  // survey
  'survey.panels.excluded':
    'Every cell of the panel that was left out, blank ones too, and why; of a zone none.',
  'survey.panels': 'What is known of each panel, in walking order.',
  'survey.panels.baseline_um':
    'What the film of this panel would be if it was usual for the car, in µm: the baseline, with as much zinc as lies under that; null without any.',
  'to_read.point': 'The name to read it by; null of a door shut, where any does.',
  'panels.mean_um': 'Mean of the points of the face, in µm; null where none was read.',
  'panels.sd_um':
    'Standard deviation of the points of the face, in µm; null where fewer than two were read.',
  'panels.evidence': 'What the condition of the panel rests on.',
  'survey.panels.also':
    'What else is true of the panel besides its condition, strongest first, such as “thin”.',
  'survey.panels.clear': 'What is believed of the topcoat where the panel is thinnest.',
  'clear.mean_um': 'Expected topcoat, in µm; null where the total tells nothing of it.',
  'clear.sd_um': 'Standard deviation of that, in µm; null likewise.',
  'survey.panels.limits': 'Every limit, with what it allows in µm as value.',
  'other_points.mean_um': 'Mean of what was read at the point, in µm.',
  'why.readings': 'Every point that was read, with its readings.',
  'why.readings.mean_um': 'Mean of what was read at the point, in µm.',
  'if_otherwise.condition': 'What the panel would be on the other side of its line.',
  'if_otherwise.budget_um':
    'What might go there, in µm; null of a panel that has two zones, or would have.',
  'may_be.condition': 'What the panel may be besides its word.',
  'may_be.clear_um':
    'The topcoat expected then where the panel is thinnest, in µm; null where no removal would be safe.',
  'advice.value':
    'How much more might go, in µm, once it is done; less than 0 where less might; absent where nobody can tell.',
  'sources.source': 'Where that part of the uncertainty is from, by name.',
  'sources.dof':
    'How much evidence stands behind it, in degrees of freedom; null where nothing limits them.',
  'survey.panels.uncertainty.sources.sd_um': 'The size of it, as a standard uncertainty in µm.',
  'advice.points': 'How many more points to read; null where it is not about points.',
  'advice.time_min': 'What it takes to find out, in minutes; null where nobody can say.',
  'doubt.source':
    'Where that part is from: layers, removal, spread, sampling (too few points) or gauge.',
  'why.clear':
    'How what is believed of the topcoat comes about; null where the total tells nothing of it.',
  'why.clear.finish': 'What the topcoat is: clear over base, or single-stage.',
  'why.clear.taken_um': 'What earlier work is held to have taken all over the panel, in µm.',
  'why.spread.sd_um': 'What comes of both, in µm.',
  'why.spread.dof': 'How much evidence stands behind that, in degrees of freedom.',
  'why.thinnest.min_um': 'The smallest reading of the face, in µm.',
  'why.thinnest.thinnest_um':
    'What comes of it: the thinnest credible film, in µm; null where one reading is all there is.',
  'thinnest.confidence_pct': 'How sure that is to be, in per cent.',
  'distribution_free.confidence_pct': 'How sure the points make it, in per cent.',
  'survey.panels.why.limits': 'The sum behind each limit; empty of a panel in two zones.',
  'facts.finish': 'What the topcoat is, with who says so.',
  'facts.taken_um':
    'What earlier work took besides what is on record, in µm, with who says so; its value null where nobody knows.',
  'facts.clear_um':
    'The clear as it is stated of the panel or the car, in µm; its value null where nobody states it.',
  'facts.under_um':
    'What lies under the clear as it is stated of the panel or the car, in µm; its value null where nobody states it.',
  'facts.painted_days_ago':
    'How many days ago it was painted again; its value null where nobody says that it was.',
  'taken_um.value': 'What earlier work took, in µm; null where nobody knows.',
  'recorded_um.value': 'What visits on record took, and its spread; null without a record.',
  'recorded_um.value.value': 'What they took, in µm.',
  'recorded_um.value.gained_um':
    'Film that came on by as much as paint adds at visits on record, in µm; null where none did.',
  'clear_um.value': 'The clear as it is stated, and its spread; null where nobody states it.',
  'clear_um.value.value': 'The clear as it is stated, in µm.',
  'under_um.value':
    'What is stated to lie under the clear, and its spread; null where nobody states it.',
  'under_um.value.value': 'What lies under the clear as it is stated, in µm.',
  'painted_days_ago.value':
    'How many days ago it was painted again; null where nobody says that it was.',

  // plan
  'plan.panels': 'What to do on each panel, in walking order.',
  'plan.panels.verdict': 'What to do on the panel: polish, lighter, hand, leave or refinish.',
  'plan.panels.removal_um': 'What all steps together take off the panel, in µm.',
  'plan.panels.risk_prob':
    'Chance, after the steps, of clear under its floor on more than a twentieth of the panel; null where the total tells nothing of the clear.',
  'plan.panels.risk_if_thin_prob':
    'The same chance, were the clear thinner than believed; null likewise.',
  'plan.panels.already_prob':
    'The part of the chance that stands before any polishing; null likewise.',
  'plan.panels.why.limits': 'Every limit, with what it allows in µm as value.',
  'local.defect': 'The mark that is worked at its place, by its id.',
  'local.steps': 'What to do there, in order; empty where nothing more may go.',
  'local.removal_um': 'What the spot takes at its place, in µm.',
  'local.reasons': 'Why no more is done there, or none.',
  'local.cleared_pct': 'How much of such a mark goes, in per cent.',
  'local.risk_prob':
    'Chance of clear under its floor there; null where the total tells nothing of the clear, or nothing is done.',
  'at_place.removal_um': 'What goes there in all, in µm, the middle of it.',
  'at_place.budget_um': 'What may go there, in µm.',
  'rejected.kind': 'Whether the steps are milder or stronger than those taken, or quicker.',
  'rejected.steps': 'The steps that were not taken, in order.',
  'rejected.removal_um': 'What they would take, in µm, the middle of it.',
  'rejected.time_min': 'Machine time they would take, in minutes.',
  'rejected.expected_pct':
    'The share of the marks they would clear, in per cent; null where they were ruled out before that was reckoned.',
  'test_spots.panel':
    'The panel whose paint was tried, where that is not the factory’s; null for the factory paint.',
  'plan.time': 'Hours of the correction alone; job_time is that of the whole job.',
  'plan.time.p50_h': 'Hours of the correction that half of such jobs take at most.',
  'plan.time.p80_h': 'Hours of the correction that eight of ten such jobs take at most.',
  'plan.time.p95_h': 'Hours of the correction that nineteen of twenty such jobs take at most.',
  'job_time.p50_h': 'Hours of the whole job that half of such jobs take at most.',
  'job_time.p80_h': 'Hours of the whole job that eight of ten such jobs take at most.',
  'job_time.p95_h': 'Hours of the whole job that nineteen of twenty such jobs take at most.',
  'plan.materials': 'What the correction uses up; job_materials is that of the whole job.',
  'order.text': 'What is done, in words.',
  'stages.text': 'What is done, in words.',
  'stages.materials': 'What the stage uses up.',
  'plan.pads': 'The pads to have ready.',
  'plan.pads.id': 'The short name of the pad as a material, as a price list has it.',
  'days.day': 'Which day of the job it is, counted from 1.',
  'days.stages': 'The stages of that day, in order.',
  'days.stages.panels':
    'The panels that are worked then; empty for a stage that is not done by panel.',
  'days.points': 'Exposure to vibration on that day, in points, one figure for each pair of hands.',
  'history.stages': 'What those hours say of single stages.',
  'history.factor': 'How many times their estimates the jobs on record took.',
  'history.stages.factor': 'How many times its estimate the stage took.',
  'plan.panels.budget_um':
    'The largest median removal that keeps every limit, in µm: what the steps are held to.',

  // quote
  'quote.kind': 'What it is: an estimate, which may change, or a quotation, a fixed offer.',
  'quote.aim': 'The aim that the job has.',
  'quote.date': 'The day of the quote as it was asked for; null where nobody says.',
  'price_list.file': 'The file that the prices stand in.',
  'options.aim': 'The aim of this row: enhance, correct, full, or a per cent.',
  'options.risk_prob':
    'The highest chance, over the panels that are worked, of clear under its floor on more than a twentieth of one; null where none is worked.',
  'options.spent_um':
    'Mean film taken over all paint that was read, is bare and sound, and has marks, in µm; null where there is none.',
  'curve.spent_um':
    'Mean film taken over all paint that was read, is bare and sound, and has marks, in µm; null where there is none.',
  'per_extra_pct.spent_um': 'The film that each further per cent takes, in µm.',
  'per_extra_pct.price_minor':
    'What each further per cent costs, in the least unit of the currency; null without prices.',
  'options.notes':
    'What the aim has to say for itself beside the aims before it, or beside a further one that is not quoted: where it clears or takes less, clears no more, costs less, or is the same, and why.',
  'once_read_again.panels': 'The panels, by their ids.',
  'once_read_again.time': 'By how many hours the job is longer for them.',
  'once_read_again.time.p50_h': 'Of hours that half of such jobs take at most.',
  'once_read_again.time.p80_h': 'Of hours that eight of ten such jobs take at most.',
  'once_read_again.charged_min': 'Of the minutes that are charged.',
  'once_read_again.total_minor':
    'Of the total, its tax with it, in the least unit of the currency; null without prices.',
  'options.time': 'Hours of the whole job.',
  'options.time.p50_h':
    'Hours of the whole job that half of such jobs take at most; null where there is nothing to work.',
  'options.time.p80_h':
    'Hours of the whole job that eight of ten such jobs take at most; null where there is nothing to work.',
  'options.time.p95_h':
    'Hours of the whole job that nineteen of twenty such jobs take at most; null where there is nothing to work.',
  'options.days': 'Days in the bay at the middle of its time; null where there is nothing to work.',
  'options.days_p80':
    'Days in the bay if it takes as long as four in five such jobs at most; null where there is nothing to work.',
  'options.tax_minor':
    'The tax of the whole quote, in the least unit of the currency; null without prices.',
  'lines.kind':
    'What the line is: labour, material, fixed, discount, or minimum (up to the least that a job costs).',
  'lines.id': 'What is charged, by its id: a stage, a material, or a line of the price list.',
  'lines.name': 'What is charged, in words.',
  'lines.quantity': 'How much of it; null where the line is a sum and has no quantity.',
  'lines.unit': 'The unit of the quantity: min, ml, pieces or m; null likewise.',
  'lines.price_minor':
    'The price of as much as per says, in the least unit of the currency, as the price list has it: with its tax where tax.included is true. Null likewise.',
  'lines.tax_minor':
    'The part of the tax that the line has, in the least unit of the currency; the parts add up to the tax. A discount has, for each rate, a part under 0: what the taxes of the lines of that rate come to less for it.',
  'materials.price_minor':
    'The price of a pack without tax, in the least unit of the currency; where the prices of the list hold their tax it is taken out of each pack, to the nearest unit. Null where the price list does not have it.',
  'short.verdict': 'What is done on the panel: polish, lighter, hand, leave or refinish.',
  'short.zone': 'The zone of the panel that it is about; null where that is the whole panel.',
  'short.reasons': 'Why no more of the marks goes there.',
  'exclusions.panels': 'The panels that it is about; empty where that is the car.',

  // spot
  'spot.advice': 'What would make more known of the paint, or the next trial better.',
  'spots.sets': 'How many sets the trial was worked.',
  'spots.removed_um':
    'What the trial took by the gauge, in µm, with its 95 % interval; null where no film was read.',
  'spots.seen_surely_um':
    'A removal of this size is told from nothing nineteen times of twenty, in µm; null where no film was read.',
  'spots.cleared_pct': 'How much of the marks went, by eye, in per cent; null where nobody looked.',
  'spots.haze_grade': 'The haze that was left, 0 mirror to 4 heavy; null where nobody looked.',
  'spot.hardness':
    'How the paint gives way: how many times as much goes as of usual paint, and the word for it.',
  'hardness.word': 'The same in a word: soft, medium or hard.',
  'test_spots.hardness': 'How many times as much of the paint goes as of usual paint.',
  'hardness.factor': 'The middle of how many times as much goes as of usual paint.',
  'spot.provisional': 'True while no trial has been judged yet.',
  'ladder.state': 'How the rung stands: too-mild, cleared, over-budget or open.',
  'spot.next': 'What to try next.',
  'next.code':
    'What to do next, in a word: start, again, step-up, refine, done, stop-colour, stop-overrun, stop-risk or stop-ladder.',
  'next.combination': 'With which combination; null where there is none to try.',

  // compare
  'compare.panels':
    'What came off each panel, what is left, and whether to go on, in walking order.',
  'panels.removed_um':
    'What came off the panel, in µm, with its 95 % interval; null where it cannot be told.',
  'car.removed_um':
    'What came off the panels on average, in µm, with its 95 % interval; null where it cannot be told.',
  'compare.panels.uncertainty':
    'What it is uncertain by, source by source; empty where it cannot be told.',
  'compare.panels.uncertainty.source': 'Where that part is from, by name.',
  'compare.panels.uncertainty.sd_um': 'The size of it, as a standard uncertainty in µm.',
  'compare.panels.seen_surely_um':
    'A change of this size shows nineteen times of twenty, in µm; null where none can be told.',
  'compare.panels.steps':
    'The steps of the plan, with what was worked of each; empty without a plan.',
  'compare.panels.steps.sets': 'How many sets the plan has of it.',
  'compare.places':
    'The places that the plan worked deeper than their panels, by a spot at a deep defect; empty without any.',
  'compare.places.panel': 'The panel that the place lies on.',
  'compare.places.defect': 'The defect at which the spot was, by its id.',
  'compare.places.point': 'The name of the point at which the place is read.',
  'compare.places.worked_sets':
    'Sets of the spot that were worked; null where the plan does not say them.',
  'compare.places.planned_um':
    'What the spot was to take there beyond the panel’s own steps, in µm.',
  'compare.places.planned_um.median': 'The middle of it, in µm.',
  'compare.places.planned_um.high': 'The same at most, in 95 cases of 100.',
  'compare.places.measured_um':
    'What was measured there beyond what the panel lost, in µm, and its standard uncertainty; null where nobody read it.',
  'compare.places.measured_um.value': 'What was measured there beyond what the panel lost, in µm.',
  'compare.places.held_um':
    'What is held to have gone there beyond what the panel lost, by the plan and that reading, in µm; null where nobody read it.',
  'compare.places.budget_um': 'What might go there by the plan, in µm; null where it does not say.',
  'compare.places.budget_left_um':
    'What is left there, in µm; null where it was not compared what the panel lost.',
  'held_um.mean': 'Mean of what is held to be gone, in µm.',
  'compare.panels.clear_um':
    'Clear that is left on the thinnest part of the panel, in µm; null where the total tells nothing of it.',
  'compare.panels.clear_um.mean': 'The clear expected to be left, in µm.',
  'compare.panels.bound_by': 'The code of the limit that allows least; null where nobody can tell.',
  'compare.panels.limits': 'Every limit, with what it still allows in µm as value.',
  'compare.panels.verdict': 'Whether to go on: go-on, stop or unresolved.',
  'one_more_set.from': 'Whose step it is: plan, or mildest.',
  'one_more_set.removal_um': 'What it would take, in µm, the middle of it.',
  'one_more_set.risk_prob':
    'Chance, after it, of clear under its floor on more than a twentieth of the panel; null where the total tells nothing of the clear.',
  'compare.common_shift':
    'One amount that all panels lost more than was to go, or less, as a gauge shows that was set otherwise: to be settled before more comes off. Null where they did not.',
  'common_shift.by_um':
    'How much more came off than was planned, or in all, in µm, with its 95 % interval; below 0, how much less.',
  'common_shift.by_um.mean': 'How much more, in µm, the middle of it; below 0, how much less.',
  'common_shift.by_um.low': 'Lower end of its 95 % interval, in µm.',
  'common_shift.by_um.high': 'Upper end of its 95 % interval, in µm.',
  'common_shift.over': 'What it is more than: plan, or nothing where it is all that came off.',
  'common_shift.n_left_alone': 'How many of the panels the plan leaves alone.',
  'common_shift.as_by_rate':
    'Whether steps that all cut more by one factor would show as much; else it is most likely the gauge, and no rate is learned.',
  'visits.from': 'The earlier file.',
  'visits.panels': 'What came off each panel between the two.',
  'compare.rates.factor':
    'How many times as much the combination took as was foretold, the middle of it.',
  'gloss.n_points': 'At how many places the gloss was read.',
  'gained_gu.mean': 'The mean gain, in gloss units.',
  'gained_gu.low': 'Lower end of its 95 % interval, in gloss units; null from one place.',
  'gained_gu.high': 'Upper end of its 95 % interval, in gloss units; null from one place.',
  'removed_um.mean': 'What came off, in µm, the middle of it.',
  'removed_um.low':
    'Lower end of its 95 % interval, in µm; less than 0 where more film may be there.',
  'removed_um.high': 'Upper end of its 95 % interval, in µm.',

  // grade
  'reference.kind': 'What it is: an expert’s survey, or the consensus of the class.',
  'reference.file': 'The file of the reference; null with a consensus.',
  'reference.date': 'The day of the reference, as its file writes it; null where it does not.',
  'grade.sigma_pt_um': 'How far a panel mean may fairly be off, as a standard deviation in µm.',
  'grade.pass_mark_pct': 'The mark that a survey needs to pass, in per cent.',
  'trainees.file': 'The file that the survey stands in.',
  'trainees.date': 'The day of the survey, as its file writes it; null where it does not.',
  'trainees.verdict':
    'The verdict on the survey as a whole: satisfactory, questionable, unsatisfactory or not-read.',
  'trainees.repeatability_um':
    'How far the trainee’s readings of one place differ, as a standard deviation in µm; null where no place was read twice.',
  'trainees.repeatability_dof':
    'How much evidence stands behind that, in degrees of freedom; null likewise.',
  'trainees.low_spots':
    'Low spots of the reference that the trainee found; null where the file could not be read.',
  'trainees.repaired_panels':
    'Repaired panels of the reference that the trainee found; null where the file could not be read.',
  'trainees.conditions':
    'How often the panels read as what the reference reads them as; null where none can be compared.',
  'class.conditions':
    'The same over the surveys of the whole class; null where none can be compared.',
  'trainees.reasons': 'What the survey falls short in.',
  'reasons.file': 'The file where that shows; null where it is about the survey as a whole.',
  'reasons.line': 'The line of the file where that shows, counted from 1; null likewise.',
  'reasons.panels': 'The panels that it is about; empty where that is the whole survey.',
  'scores.n': 'How many points of the trainee the mean is of.',
  'scores.mean_um': 'Mean of the trainee, in µm.',
  'scores.verdict': 'The verdict on the panel: satisfactory, questionable or unsatisfactory.',
  'bias.mean_um': 'How much the trainee reads more than the reference, in µm.',
  'bias.low_um': 'Lower end of its 95 % interval, in µm.',
  'bias.high_um': 'Upper end of its 95 % interval, in µm.',
  'bias.verdict': 'The verdict on that: satisfactory, questionable or unsatisfactory.',
  'agreement.n': 'How many panels they rest on.',
  'agreement.mean_um': 'Mean of the differences, in µm.',
  'agreement.sd_um': 'Standard deviation of the differences, in µm.',
  'agreement.low_um': 'The lower limit of agreement, in µm.',
  'agreement.high_um': 'The upper limit of agreement, in µm.',
  'low_limit.low_um': 'Lower end of its 95 % interval, in µm.',
  'low_limit.high_um': 'Upper end of its 95 % interval, in µm.',
  'high_limit.low_um': 'Lower end of its 95 % interval, in µm.',
  'high_limit.high_um': 'Upper end of its 95 % interval, in µm.',
  'conditions.otherwise.condition': 'What the panel is by the trainee.',
  'grade.class': 'The class as a whole.',
  'class.panels': 'What the class made of each panel of the reference.',
  'class.panels.condition': 'What the panel is by the reference.',
  'class.panels.n_points': 'How many points of it the reference has.',
  'class.panels.n_trainees': 'How many read it.',
  'gauge_rr.repeatability_um':
    'Repeatability: standard deviation within one trainee’s readings of a part, in µm.',
  'gauge_rr.n_trainees': 'How many trainees it is about.',
  'copied.trainees': 'The two, or the one where the other side is the reference.',
  'copied.out_of': 'Of how many values that both have.',

  // gauge
  'gauge.verdict': 'The verdict on the gauge: pass, fail or undecided.',
  'gauge.instrument': 'What the gauge is called; null where nothing says.',
  'gauge.serial': 'The serial number of the gauge, as text; null where nothing says.',
  'gauge.resolution_um':
    'The smallest step that the gauge shows, in µm; null where its readings do not tell.',
  'gauge.repeatability_um':
    'How far readings of one shim differ, as a standard deviation in µm; null where none was read twice.',
  'gauge.repeatability_dof':
    'The degrees of freedom behind that: how many repeats it rests on; null likewise.',
  'shims.check':
    'Whether the shim was read before the work or after it; null where there was one check.',
  'shims.verdict': 'The verdict on this shim: pass, fail or undecided.',
  'permitted_error.proportional_pct':
    'The part of the permitted error that grows with the film, in per cent.',
  'adjustment.verdict': 'The verdict on the gauge once it is adjusted: pass, fail or undecided.',

  // template
  'template.template': 'The id of the template that the sheet is for.',
  'templates.template': 'The id of the template.',
  'templates.file': 'The file that the template stands in; null where it is built in.',
  'templates.length_m':
    'The outer length of the vehicle in m; null where the template does not say.',
  'templates.width_m':
    'The outer width of the vehicle in m, without its mirrors; null where the template does not say.',
  'templates.height_m':
    'The outer height of the vehicle in m; null where the template does not say.',
  'templates.area_m2': 'The painted area of all its panels, in m².',
  'templates.trim_m': 'The length of trim and edges to tape on all its panels, in m.',
  'templates.n_panels': 'How many panels it has.',
  'templates.panels': 'Its panels, in walking order.',
  'templates.panels.also': 'Other words by which the panel goes.',
  'templates.panels.origin': 'Whether the panel is as the file says, or built in.',
  'templates.panels.n_points': 'How many points are to be read on it.',
  'templates.panels.mirror':
    'The panel on the other side, which names this one in turn; null on the centre line.',
  'panels.points': 'The points to read on the panel.',
  'zones.points': 'The points of the zone, by their names.',
  'sheet.points': 'The points to read on the panel.',
  'sheet.place': 'Where they lie: on its face, or in the shut of a door.',
  'points.u':
    'How far across the panel the point lies, 0 front or left to 1; null of a place that is none of the template.',
  'points.v': 'How far down the panel the point lies, 0 top to 1 bottom; null likewise.',
  'template.basis': 'On what grounds the numbers of built-in templates stand, key by key.',
  'basis.area_m2': 'On what grounds the areas of panels stand, which are in m².',
  'basis.substrate': 'On what grounds it stands what panels are made of.',
  'basis.facing': 'On what grounds it stands how panels stand.',
  'basis.flat_width_mm': 'On what grounds the flat widths of panels stand, which are in mm.',
  'basis.trim_m': 'On what grounds the lengths to tape stand, which are in m.',
  'basis.points': 'On what grounds the points stand.',
  'basis.length_m': 'On what grounds the outer measures of vehicles stand, which are in m.',
  'basis.spans': 'On what grounds it stands which measures panels grow with.',

  // methods
  'methods.id': 'The short name of what is shown.',
  'methods.name': 'What it is called.',
  'methods.materials': 'What a job may use up.',
  'uses.quantity': 'How much of it, in its unit.',
  'uses.per':
    'What that amount is for: job; wheels, a wheel; vehicle-area and worked-area, a m²; worked-trim, a m; set-area, a m² and set; fresh-pad; section.',
  'numbers.id':
    'The id of the number, by which explain tells it and a shop file sets it; null where it has none.',
  'numbers.basis':
    'On what grounds it stands: published, common practice, from memory, derived, assumption; or stated, by the shop.',
  'combinations.basis':
    'What the rate rests on: learned (by the shop’s observations of it), related (by those of combinations with a part in common), measured (as the shop states it) or derived (from the settings).',
  'combinations.observations': 'How many observations of the shop it rests on.',
  'pads.factor': 'How many times as much the pad takes as the reference pad.',
  'products.factor': 'How many times as much the product takes as the reference product.',
  'pads.stages': 'The stages of a correction that the pad is for.',
  'products.stages': 'The stages of a correction that the product is for.',
  'combinations.stages': 'The stages of a correction that the combination is for.',
  'machines.rpm': 'Turns a minute of a rotary; null of any other machine.',
  'machines.throw_mm': 'How wide the orbit is, in mm; null of a machine that has none.',
  'machines.orbits_per_min': 'Orbits a minute of a dual action machine; null of any other.',
  'machines.forced_rpm':
    'Turns a minute that gears force on a dual action pad, 0 for free-spinning; null of any other machine.',
  'heat.verdict': 'What to make of it: cool, caution or stop.',
  'own_rates.file': 'The rates file, as it was named.',
  'own_rates.observations': 'How many measured removals it holds.',
  'usual_paint.factor': 'The middle of how many times as much goes as is built in.',
  'observed.line': 'The line of the rates file, counted from 1; null where that is not known.',
  'observed.day': 'The date of the observation.',
  'observed.vehicle': 'The vehicle as the file names it; null where it does not.',
  'observed.panel': 'The panel as the file names it; null where it does not.',
  'observed.removed_um': 'What came off by the gauge, in µm.',
  'worked.sets': 'How many sets of it were worked.',

  // explain, doctor, init, batch
  'topics.id': 'The word, code, key, option or number that is explained.',
  'topics.also': 'Other words by which it is found.',
  'topics.kind':
    'What it is: a word, a key of files or records, a column, an option, a code or a number.',
  'topics.word': 'The word that was asked for; null where everything was.',
  'details.text': 'What there is to say of it.',
  'example.command': 'What is typed to see it, after leastcut.',
  'example.files': 'The files that it takes, with what stands in them.',
  'files.text': 'What stands in the file.',
  'example.files.name': 'What the file is called.',
  'doctor.files': 'The settings files that were looked for.',
  'files.kind': 'What kind of settings file it is: job, shop, project or user.',
  'files.file': 'The file, or where it was looked for.',
  'files.state': 'Whether it was named, found, or not found.',
  'checked.kind': 'What kind of file it is.',
  'checked.file': 'The file that was checked, as it was named.',
  'init.next': 'What to type next.',
  'batch.command': 'The command that was run on the job: survey, plan or quote.',
  'batch.inputs.sha256': 'Checksum of the bytes that were read; null where the file could not be.',
  'result.schema': 'Which record the result is, and in which version.',
};
