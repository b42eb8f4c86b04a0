/**
 * What the keys of machine records mean. A key that settings files have too, and that means the same
 * there, is in `key-meanings.ts` and not here.
 */
export const recordKeyMeanings: Readonly<Record<string, string>> = {
  schema: 'Which record this is, and in which version; a version only ever gains keys.',
  version: 'The version of leastcut that wrote it.',
  command: 'The command that wrote it; of a batch, the command of its jobs.',
  vehicle: 'Which vehicle it is about; null where that is not said, or where it is about none.',
  inputs: 'The files that were read, in the order they were named.',
  file: 'The file, as it was named.',
  sha256: 'Checksum of the bytes that were read.',
  decisions: 'How an export was read; null for a file of which nothing had to be decided.',
  encoding: 'The encoding of the text.',
  delimiter: 'The sign between two columns.',
  decimal: 'The decimal mark.',
  layout:
    'How the readings lie. long: a reading in each row. wide: a column for each panel. repeats: several columns of readings. blocks: a line above names the panel. list: no line names the columns.',
  unit: 'The unit of the value.',
  header_line: 'The line that names the columns, counted from 1; 0 where none does.',
  columns: 'What the file calls its columns, by what they are.',
  metadata: 'What lines beside the readings say: serial number, date, operator and the like.',
  key: 'What the file calls it.',
  job: 'The name of the job in its list.',
  seq: 'Which job of the list it is, counted from 1.',
  status:
    'What became of the job. done: there is a result, also where its answer is no. refused: what was given cannot be used. failed: a file could not be read, or the fault is ours.',
  exit: 'The exit code that the command of the job would have ended with.',
  settings_sha256: 'Checksum of what was asked besides the files: the same question has the same.',
  readings_sha256:
    'Checksum of the readings that were read, whatever the form of their file: the same panels, points and values have the same. Null where there is no result.',
  result: 'The record of the command; null where there is none.',
  assumptions: 'What the result rests on and nobody measured or stated.',
  diagnostics: 'What there is to say about the input; any error, and there is no result.',
  severity:
    'How grave it is. error: no result. warning: a stated decision was taken. note: worth knowing.',
  message: 'What is the matter, and why.',
  at: 'Where that is; null where no file is to blame.',
  hint: 'What to do about it; null where nothing is known.',
  length: 'How many UTF-16 units it takes from there; null where there is no column.',
  line_text: 'The line as it is written in the file; null where there is no line.',
  code: 'A stable word for machines; leastcut explain says what it means.',
  text: 'The same for people, or the text of the cell.',
  origin:
    'Who said it: a flag, the environment, a settings file, the readings, or what is built in.',
  where: 'The place to look for it: --risk-pct, LEASTCUT_AIM, shop.json:4.',
  settings: 'The settings that are in force, each with its origin.',
  name: 'What it is called.',
  value:
    'A figure that goes with the code, absent where there is none: in µm, but points a hand of vibration, per cent of clears-less, minutes of more-time, panels of record-put-back.',
  template: 'The id of the vehicle template; null where none fits.',

  readings: 'Every reading as it is understood, in the order of the files.',
  excluded: 'Every cell that was left out, and why.',
  defect: 'Which marks were looked at: swirl marks, holograms, oxidation and the like.',
  reason: 'Why it was left out.',
  repeat: 'Which reading it is at its point, counted from 1.',
  reading_um: 'The reading in µm.',
  layer: 'Empty for the whole film, else the layer that was read.',
  place: 'Where the point lies; only the face enters the statistics.',
  marked: 'Whether the point is marked, so that it can be found again.',
  curved: 'Whether the surface is curved there.',
  operator: 'Who measured; null where the file does not say.',
  u: 'How far across the panel the point lies, as the file writes it; null where it does not.',
  v: 'How far down the panel the point lies, as the file writes it; null where it does not.',
  note: 'What the file notes of the reading; null where it notes nothing.',

  baseline_um:
    'The usual film of this car, in µm: the median of its metal panels that do not read like repaint; of a panel, with as much zinc as lies under that. Null without any.',
  notes: 'What is to be said of the survey as a whole.',
  panel: 'The panel, by its id in the template, or as its file names it.',
  n_points: 'How many points of the face were read.',
  n_readings: 'How many readings that took.',
  mean_um: 'Mean of the points, or of the estimate, in µm.',
  sd_um: 'Standard deviation of the points, or of the estimate, in µm; null from one point.',
  min_um: 'The smallest point, in µm; null where none was read.',
  max_um: 'The largest point, in µm; null where none was read.',
  median_um: 'The median of the points, in µm; null where none was read.',
  moderated_sd_um:
    'The standard deviation, drawn towards what the other panels show, in µm: of a panel in two zones, that of the zone that allows least; null where none was read.',
  moderated_dof: 'How much evidence stands behind that, in degrees of freedom; null likewise.',
  calibration_um:
    'What the gauge may be off by on all readings alike, as a standard uncertainty in µm; null where none was read.',
  thinnest_um:
    'The thinnest credible film, in µm: nearly the whole panel exceeds it; null where too little was read to tell.',
  facts: 'What is held of the paint besides its readings, each with its origin.',
  condition: 'What the panel is.',
  condition_sure:
    'How sure the condition is: clear, or near the line it was decided by; null where no figure decides it.',
  condition_margin_um:
    'How far the figure that it hangs on is from its line, in µm; null where no figure decides it.',
  condition_evidence:
    'The comparison that the condition hangs on; null where no figure decides it.',
  comparisons:
    'The comparisons that could have made the condition another, nearest its line first.',
  compared: 'The figure that was held against a line.',
  line_um: 'The line, in µm.',
  put_back_um:
    'The part of the figure that was not read, in µm: film known to have been taken before, put back.',
  by_baseline: 'Whether the line is drawn from the baseline of the car.',
  side: 'On which side of the line the condition lies.',
  beyond: 'What the panel is beyond the line.',
  is_beyond: 'Whether the figure is there.',
  other_side_prob: 'Chance that the truth lies on the other side of the line.',
  beside: 'The comparisons that the words beside the condition hang on.',
  if_otherwise:
    'Of a panel near its line: what it would be on the other side, and what might go then; null of any other.',
  if_word_holds_um:
    'Of a panel near its line: what might go if its condition was settled, in µm; budget_um is what to work to until then.',
  work_to_um:
    'What may go at the risk taken, over all that the panel may be, in µm; it is budget_um; null of a panel that has two zones, or would have.',
  risk_over_both_prob:
    'Risk of taking all that might go if the condition holds, over all that the panel may be; null where the total tells nothing of the clear.',
  risk_left_prob:
    'Risk of taking what is worked to, over all that the panel may be; that of taking nothing is part of it; null likewise.',
  baseline_expanded_um:
    'What the baseline is uncertain by, to 95 %, in µm; null where one panel makes it.',
  baseline_panels: 'The panels whose medians the baseline is the middle of.',
  to_read:
    'Places to read besides the points that advice asks for, whatever panels were asked for: the shuts of doors that tell whether a side was painted again, and places worked deeper at a visit on record that nobody has read since. `template sheet --for` has a row for each.',
  substrate: 'What the panel is made of, as the template or the job says.',
  may_be:
    'What a panel of factory film may be besides its word, as far as that moves what may go: with the chance of it (condition_prob) and the topcoat expected then where it is thinnest (clear_um; null where no removal would be safe). What may go keeps the risk over all of it.',
  value_otherwise:
    'The same as value where it comes out the other way: more was polished off than is assumed, or the clear reads as on the other side of the line, or as factories paint where it is held to that of other panels; null where there is no other way.',
  condition_prob: 'The chance that the panel is this, 0 to 1.',
  by_word_um:
    'What the limit would allow if the word of the panel held for certain, in µm; null where nothing may go whatever the film.',
  low_um: 'What it exceeds with a chance of 95 %, in µm; null where the total tells nothing of it.',
  budget_um:
    'The largest median removal that keeps every limit, in µm, at the risk over all that the panel may be; under if_otherwise what might go there.',
  bound_by: 'The code of the limit that allows least.',
  low_points: 'Points that read low for their panel.',
  high_points: 'Points that read high for their panel.',
  other_points: 'Points off the face, kept apart: near an edge, on a body line or in a shut.',
  advice: 'What would make more known of the panel, or a removal safer.',
  zones: 'Parts of the panel whose film differs; empty where the panel is one.',
  zone: 'Which zone it is: thinner or thicker than the other zone of the panel.',
  recorded_um:
    'What visits on record took, in µm, with its spread; its value null without a record.',
  sd: 'Standard deviation, in µm.',
  of: 'Whether the layer is stated of this panel, or of the car.',

  steps: 'What to do, in order; empty where the panel is left alone.',
  sets: 'How many times the section is worked with one load of product.',
  passes: 'How many passes a set has.',
  time_min: 'Machine time of the step on this panel, in minutes.',
  removal_um: 'What it takes off, in µm.',
  median: 'The middle: half of all outcomes lie below.',
  mean: 'The mean of all outcomes.',
  low: 'One outcome of twenty lies below.',
  high: 'One outcome of twenty lies above.',
  correction: 'How many of the general marks go.',
  aimed_pct: 'The share that was asked for, in per cent.',
  expected_pct: 'The share to expect, in per cent.',
  risk_prob:
    'Chance of clear under its floor on more than a twentieth of the panel; null where the total tells nothing of the clear.',
  risk_if_thin_prob:
    'The same chance, were the clear thinner than believed; null where the total tells nothing of it.',
  already_prob:
    'The part of the chance that stands before any polishing; null where the total tells nothing of the clear.',
  provisional: 'True until a test spot on this paint has been seen.',
  reasons: 'Why the verdict is what it is.',
  cautions: 'What to look out for.',
  local: 'What is done at each named deep mark, on top of the panel’s own steps.',
  looked_at: 'How many sequences of steps were looked at.',
  rejected:
    'What else was looked at, and why it was not taken: of a kind and a reason three at most, the nearest in removal.',
  car: 'The car as a whole.',
  expected_panels_below_floor: 'How many panels to expect with clear under its floor.',
  at_place:
    'What goes there in all, the panel’s own steps counted in, and what may; null where nothing is worked there.',
  panels_below_floor_already: 'How many of them to expect before any polishing.',
  vibration_points:
    'Exposure of all hands to vibration over the job at the machine minutes of its steps, in points; the days have it at the hours that half of such jobs take at most.',
  materials: 'What will be used up.',
  material: 'What it is.',
  quantity: 'How much of it.',
  order: 'The stages of the job, in order.',
  scope: 'What is done to the vehicle besides the correction, as stated or assumed.',
  wheels: 'Wheels cleaned on the vehicle, off it, or not at all.',
  shuts: 'Whether the door shuts are cleaned.',
  decontamination: 'What comes off the paint before any machine.',
  trim: 'Whether small metal and trim are cleaned.',
  engine_bay: 'Whether the engine bay is cleaned.',
  interior: 'Whether the interior is cleaned.',
  glass: 'Whether the glass is cleaned.',
  protection: 'What goes on last.',
  arrival: 'How dirty the vehicle comes in.',
  hands: 'How many people work on it.',
  hours_per_day: 'Working hours of a day.',
  job_time: 'Hours of the whole job, of one person’s hands.',
  stages: 'The stages of the job that have something to do, in order.',
  part: 'Whether the stage belongs to the correction or to the rest of the job.',
  skill: 'The trade that the stage wants.',
  mean_min: 'Mean time, of one person’s hands, in minutes.',
  p50_min:
    'Its part of the hours that half of such jobs take at most (p50_h of job_time), in minutes; the days are laid out by it.',
  sd_min: 'Standard deviation of that time by itself, in minutes.',
  wait_min: 'Time on the clock that must pass after it, in minutes.',
  spread_pct: 'Its part in the variance of the whole job’s time, in per cent.',
  time_spread: 'The same variance by its grounds, in per cent.',
  stages_pct: 'What is the stages’ own, in per cent.',
  pace_pct: 'What is the pace of the shop, not known yet, in per cent.',
  job_pct: 'What is one job against the next, in per cent.',
  days: 'The job laid into days, at the middle of its time.',
  hours_h: 'At work on that day, on the clock, in hours.',
  clock_min: 'Time of the stage on that day, on the clock, in minutes.',
  a8_m_per_s2: 'Daily exposure A(8) of the hands that have most of it, in m/s².',
  action_passed: 'Whether a pair of hands passes the action value on that day.',
  days_p80: 'Days in the bay if it takes as long as four in five such jobs at most.',
  job_materials: 'What the whole job uses up, by the ids of a price list.',
  ready: 'How many to have ready.',
  worn_out: 'How many of them the job wears out.',
  towel_loads: 'Loads of towels to wash.',
  history: 'What the shop’s own hours teach; null where none are given.',
  jobs: 'How many jobs are on record.',
  middle: 'The middle of what is known of it.',
  records: 'How many jobs have a record of it.',
  error_before_pct: 'How far off estimates were, in per cent; null with fewer than two jobs.',
  error_after_pct:
    'The same by the pace that all the other jobs teach, in per cent; null likewise.',
  stage: 'The stage.',
  machine: 'The machine, by its id.',
  pad: 'The pad, by its id.',
  product: 'The product, by its id.',

  templates: 'The templates asked for.',
  sheet: 'The panels to read, in walking order.',
  repeats: 'How often each point is to be read.',
  base: 'The built-in template that a file changes; null for any other.',
  basis: 'On what grounds a number stands.',
  source: 'Where it is published, or how it follows.',

  machines: 'The machines in use.',
  pads: 'The pads in use.',
  products: 'The products in use.',
  combinations: 'Machine, pad and product together, mildest first.',
  combination: 'A combination: machine/pad/product.',
  id: 'The short name it goes by.',
  shown: 'What kind of thing is shown.',
  owned: 'False for something built in that the shop does not list.',
  numbers: 'The numbers it is made of.',
  removal_um_per_set: 'What a set takes off, in µm, as it is reckoned with.',
  derived_um_per_set: 'What a set takes off, in µm, as it follows from the settings.',
  measured_um_per_set: 'What a set takes off, in µm, as the shop measured it; null if it did not.',
  learned_um_per_set:
    'What a set takes off, in µm, by the shop’s observations on earlier vehicles; null without any.',
  own_rates: 'What the shop’s observations on earlier vehicles say; null without a rates file.',
  vehicles: 'How many vehicles that is.',
  by_eye: 'Observations judged by eye alone, which say nothing of film.',
  not_known: 'Observations of things that are not known here, left out.',
  usual_paint: 'How the paint that comes to the shop gives way there, against what is built in.',
  foretelling:
    'How well each vehicle is foretold by the others alone; null where there is too little to say.',
  error_um_per_set: 'How far off that is: root mean square of measured less foretold, in µm a set.',
  built_in_error_um_per_set: 'The same by the built-in rates, in µm a set.',
  noise_um_per_set: 'What of both is the gauge’s own noise, in µm a set.',
  within_range: 'Observations within the range that is to hold nine of ten.',
  vehicles_nearer: 'Vehicles that the others foretold nearer than the built-in rates did.',
  observed: 'Each observation, beside what was foretold of it.',
  worked: 'What was worked before it was measured.',
  standard_error_um: 'What a removal may be off by, as a standard error in µm.',
  foretold_um: 'What the other vehicles foretell of it, in µm.',
  built_in_um: 'What the built-in rates foretell of it, in µm.',
  place_prob:
    'Where it lies among what the others let expect, as the chance of less: near 0 or 1 it is unlike them.',
  kept: 'What was added to a rates file, and what stood there already; null where nothing was asked.',
  added: 'Observations added.',
  already: 'Observations that stood in the file already.',
  ln_sd: 'Standard deviation of the logarithm.',
  min_per_m2: 'Minutes of a set on a square metre (m²).',
  chain:
    'From the settings to the rate, in the order of the reckoning; null of anything but a combination.',
  range: 'Its range, given where the median alone would say too much; null elsewhere.',
  formula: 'How it is reckoned.',
  heat: 'How warm the panel gets, by what is under the paint; null of anything but a combination.',
  skin: 'What the panel is made of.',
  per_pass_k: 'Warming by one pass, in kelvin.',
  per_set_k: 'Warming by one set, in kelvin.',
  per_step_k: 'Warming by the most sets in a row, in kelvin.',
  reached_c: 'The temperature it then has, in °C.',
  standing_s: 'How long the running pad may stand on one spot, in seconds.',
  compared_with: 'The combination it is compared with; null for none.',
  compared_times: 'How many times faster it cuts than that; null where there is none.',
  measured_at: 'Where the shop states its own rate; null if it does not.',

  topics: 'Every meaning of every word asked for.',
  meaning: 'What it means.',
  details: 'What else there is to say.',
  label: 'What the text is about.',
  number: 'The number as it stands; null where it is none.',
  built_in: 'The value without any settings.',
  least: 'The least it may be set to.',
  most: 'The most it may be set to.',
  used: 'Where it is used.',
  change: 'The line that changes it in a shop file.',
  example: 'The smallest input that shows it; null where none is kept.',

  node: 'The version of Node.',
  platform: 'The system it runs on.',
  locale: 'The locale of the system; no figure depends on it.',
  terminal: 'How text is written; null where only files were checked.',
  width: 'Columns of the text.',
  width_from: 'Where the width is from.',
  color: 'Whether the text is coloured.',
  color_why: 'Why it is, or is not.',
  ascii: 'Whether the text is written in signs of ASCII only.',
  ascii_why: 'Why it is, or is not.',
  checked: 'The settings files that were checked and are sound.',
  written: 'The files that were written.',

  spots: 'The trials, in the order of the file.',
  spot: 'The trial, as its file names it.',
  marks: 'At how many marked points the film was read before and after.',
  resolvable_um:
    'A removal of this size is told from nothing half of the time, in µm; null where no film was read.',
  colour_on_pad: 'Whether the colour of the car came off on the pad; null where nobody said.',
  panel_c: 'How warm the panel was, in °C; null where that was not read.',
  depth_scale: 'How deep this car’s marks are against what was taken, with its 90 % range.',
  factor: 'The middle of what is known of it.',
  ladder:
    'Combinations on this paint, mildest first; none where colour came and nothing more is to be tried.',
  before_um_per_set: 'What a set was held to take before the trials, in µm.',
  reaches_aim_prob: 'Chance to reach the aim within two sets.',
  tried: 'Whether it was tried.',
  test_spots:
    'What test spots taught of each paint that was tried; no panel names the factory paint.',
  trials: 'How many there were.',

  compared_by: 'By what the panel was compared: pairs of marked points, means, or nothing.',
  n_pairs: 'How many marked points were read both times.',
  n_before: 'How many points of the face were read before.',
  n_after: 'How many points of the face were read after.',
  removed_sd_um:
    'What that may be off by, as a standard uncertainty in µm; null where it cannot be told.',
  removed_dof:
    'How much evidence stands behind it, in degrees of freedom; null where nothing limits them.',
  resolved: 'Whether the readings show that film came off; false is no proof that none did.',
  gained: 'Whether more film is there than before, beyond chance.',
  seen_half_um: 'A change of this size shows half of the time, in µm; null where none can be told.',
  planned_um: 'What the plan foretold, in µm, with its 90 % range; null without a plan.',
  worked_um:
    'What the sets that were worked were to take, in µm, with its 90 % range; as planned where nothing else is said; null without a plan.',
  sets_worked: 'How many sets of the step were worked.',
  planned_sets: 'Sets that the plan has on the panel, all steps together; null without a plan.',
  worked_sets: 'Sets that were worked of them; null without a plan.',
  against_plan:
    'Whether it is more or less than was foretold, beyond what both may be off by; null without a plan.',
  allowed_um:
    'What might go before the work, in µm; null where nobody says, and for a panel whose zones are told apart.',
  allowed_by:
    'Who says so: the plan that was worked to, or the survey of the readings before; null where nobody does.',
  overrun:
    'More came off than might go, or a limit is passed: the panel is not to be worked further. Empty where all was kept.',
  held_um:
    'What is held of the removal, by plan and readings together, in µm; null where nothing can be.',
  budget_left_um:
    'The largest median removal that still keeps every limit, in µm; null where nobody can tell.',
  one_more_set:
    'What one more set would be: of the plan’s main step, else of the mildest there is; null where there is none.',
  to: 'The later file.',
  points_apart:
    'Marked points whose change stands out from that of the panel’s others: to be read again; empty without any. The panel is told with them and without, by the safer of the two; the other panels without.',
  others_um: 'What came off at the panel’s other points, in the middle, in µm.',
  lost: 'Whether more came off there than at the others, or less.',
  odd: 'The reading that lies farther from those of its own time: before or after.',
  swapped_um:
    'That reading with two neighbouring digits exchanged, in µm, where this agrees with the others; else null.',
  unpaired: 'Points that were read and went into no pair, and why.',
  not_read_again: 'Points read before and not after.',
  not_read_before: 'Points read after and not before.',
  not_marked: 'Points read both times under one name and not marked both times.',
  off_the_face: 'Points near an edge, on a body line or in a shut.',
  not_compared: 'Panels of which nothing can be said, and why.',
  n_panels: 'How many panels it is about.',
  visits: 'What came off from each visit to the next; empty where there were two.',
  rates: 'How each combination took film against what the plan foretold, over its panels.',
  looks: 'Whether its rate looks too low or too high; null where it may be right.',
  gloss: 'Gloss before and after: it tells of the look, not of the film.',
  angle_deg: 'The angle of the gloss meter, in degrees.',
  before_gu: 'Mean gloss before, in gloss units.',
  after_gu: 'Mean gloss after, in gloss units.',
  gained_gu: 'What the gloss gained, in gloss units, with its 95 % interval.',
  haze_hu: 'Haze before and after (ISO 13803); null where it was not read.',
  before: 'The haze before, in haze units.',
  after: 'The haze after, in haze units.',
  better_angle_deg:
    'The angle that ISO 2813 reads at besides, in degrees; null where this one is right.',

  uncertainty:
    'What the mean of the panel is uncertain by, source by source; null where none was read, and of a panel in two zones.',
  value_um: 'The value that is uncertain, in µm.',
  standard_um: 'Its combined standard uncertainty, in µm.',
  dof: 'How much evidence stands behind it, in degrees of freedom; null where nothing limits them.',
  expanded_um:
    'Half the width of the interval that holds the value with the confidence named, in µm.',
  confidence_pct: 'That confidence, in per cent.',
  sources: 'Where the uncertainty is from, by size.',
  share: 'Its part of the variance, from 0 to 1.',
  why: 'The panel taken apart; null unless --why asks for it.',
  readings_um: 'What was read at the point, in µm.',
  spread:
    'How much film varies over the panel, and how that figure comes about; null where none was read, and of a panel in two zones.',
  own_sd_um: 'By the panel’s own points, in µm; null from fewer than three.',
  own_dof: 'How much evidence those points are, in degrees of freedom.',
  prior_sd_um: 'What the car’s panels show together, in µm.',
  prior_dof: 'The weight that this has, in degrees of freedom.',
  thinnest:
    'How the thinnest credible film comes about; null where none was read, and of a panel in two zones.',
  content_pct: 'The share of the face that is thicker, in per cent.',
  tolerance_factor:
    'The one-sided tolerance factor k: how many standard deviations lie under the mean; null where too little was read.',
  bound_um: 'The mean less k standard deviations, in µm; null likewise.',
  gauge_margin_um: 'What is taken off for the gauge’s own error, in µm; null likewise.',
  distribution_free: 'What the points prove if nothing is assumed of how film varies.',
  points_needed: 'How many points the full confidence would take then.',
  held: 'What is held of the topcoat before the total is looked at; null where the total says it all.',
  under: 'What lies under the topcoat.',
  by_total: 'The topcoat by the total alone.',
  share_g: 'The share of the gap between the two that is believed.',
  gap_counted_um:
    'The gap as far as it counts, in µm: a thick total proves nothing of the topcoat.',
  over_panel: 'The topcoat over the whole panel.',
  gone_at_place:
    'What went at one place of the panel, a test spot or a deep defect, beyond what went all over it: 0 where nothing did.',
  within_sd_um: 'The part of the spread over the panel that is put down to the topcoat, in µm.',
  thinnest_share_pct: 'The share of the face that the estimate is about, in per cent.',
  on_thinnest: 'The topcoat there.',
  risk: 'The chances, if a plan took the whole budget; null where the total tells nothing of the topcoat.',
  allows_um: 'The largest median removal that the limit allows, in µm.',
  room_um:
    'What the limit leaves for a removal, in µm: film over a floor, or what is left of a ceiling; null where nothing may go whatever the film.',
  room_sd_um:
    'Standard deviation of that, in µm; 0 where it is exact, null where there is no room.',
  limit_risk_prob:
    'The risk of passing the limit that is taken, 0 to 1; null where nothing may go whatever the film.',
  removal_factor:
    'How many times its median a removal may be with the chance of the risk; null where the room is uncertain too, or there is none.',
  removal_mean_um:
    'Mean of the removal of that median, in µm; null where the room is exact, or there is none.',
  removal_sd_um: 'Standard deviation of that removal, in µm; null likewise.',
  together_sd_um: 'Standard deviation of room and removal together, in µm; null likewise.',
  sds: 'How many of these lie between the mean removal and the room; null likewise.',
  doubt: 'What the doubt about the topcoat that is left is made of, by size.',
  flag_rule: 'Which rule looked for points that stand out.',
  ashman_d:
    'How far apart two zones lie, by Ashman; shown, never decided by; null of a panel that has none.',
  shims: 'How the gauge did on each shim.',
  permitted_um: 'The largest error that the gauge may have on this shim, in µm.',
  conformance_prob:
    'The chance that the true error is within what is permitted, 0 to 1 (JCGM 106).',
  residual_um: 'What the adjustment leaves of the error, in µm; null where none was asked for.',
  n_shims: 'How many different shims it rests on.',
  valid_until:
    'The last day on which it holds; null where no day or no number of days is said, or no price is made.',
  currency: 'The currency by its three letters (ISO 4217); null without prices.',
  currency_digits: 'How many digits of an amount stand after the point; null without prices.',
  tax: 'How the quote is taxed; null without prices.',
  rate_pct: 'The rate of tax, in per cent.',
  options: 'The aims side by side, from the mildest to the strongest.',
  aim: 'The aim: enhance, correct, full, or a per cent; of a quote as a whole, the one its job has.',
  expected_polished_pct:
    'Share of the general marks that go where the paint is polished, in per cent; null where none is.',
  spent_polished_um: 'Mean film taken where the paint is polished, in µm; null where none is.',
  left_um:
    'The least topcoat that is expected to be left on the thinnest part of a panel that is worked, in µm; null where none is worked.',
  charged_min: 'The minutes that are charged; null where there is nothing to work.',
  overrun_prob:
    'The chance that the job takes longer than is charged, 0 to 1; null where there is nothing to work.',
  lines: 'What is charged, line by line; they add up to the subtotal.',
  used_up:
    'What is gone of it after the job, shares of a piece too; of pads what is worn of them, of towels nothing. It is what a price charges: ml and m rounded to whole ones, pieces to hundredths.',
  stage_costs:
    'What the materials of each stage cost the shop, before markup; stages that use nothing of the price list are left out.',
  materials_minor:
    'What is used up of them at the price of a pack without tax, before any markup, in the least unit of the currency.',
  uses: 'How much of it is used up; more than one where stages differ.',
  used_by: 'The stages that use it, or polishing.',
  lasts: 'Whether what lies ready serves the next job as well, as pads and towels do.',
  price_list:
    'Whose prices they are: what the shop is called, and its file; null where there are none.',
  shop: 'What the shop is called; null where its file does not say.',
  per: 'What that price is for, in the unit: 60 of an hour, or what a pack holds; null likewise.',
  markup_pct: 'What is put on top of it, in per cent; null likewise.',
  tax_pct: 'The rate of tax of the line, in per cent.',
  amount_minor:
    'The amount of the line without tax, in the least unit of the currency; a discount is under 0.',
  subtotal_minor:
    'The sum of the lines without tax, in the least unit of the currency; null without prices.',
  total_minor: 'Subtotal and tax together, in the least unit of the currency; null without prices.',
  payable_minor:
    'The total as coins can pay it, in the least unit of the currency; null without prices.',
  deposit_minor:
    'What is to be paid beforehand, in the least unit of the currency, as coins can pay it and never over the total; null without prices, and where the price list asks for none.',
  once_read_again:
    'What of the row is for panels that are worked only once they are read again, as a 0, a value beyond the range or one keyed wrongly stands there: the row less the same row with nothing done on them. Null where it works no such panel.',
  per_extra_pct:
    'What each further per cent of correction costs from the row before: what the total and the film rise by, over what expected_pct rises by, the price to the least unit. Null for the first, and where no more is to be had.',
  short: 'Panels on which less than the aim is to be had, and why.',
  pack: 'What a pack holds; null where the price list does not have it.',
  stock: 'What is on the shelf; null where nobody says.',
  to_buy:
    'Packs to buy so that stock and packs cover the job; null where nobody says what is on the shelf.',
  curve: 'The same for aims in even steps, to draw a curve through.',
  missing_keys: 'Keys of the shop file without which there is no price.',
  exclusions: 'What the quote does not promise and why, for the owner of the car.',

  trainees: 'Whose surveys were graded: one entry for each survey, in the order of the files.',
  trainee: 'Who handed the survey in: by the column operator, the line Operator, or the file.',
  attempt: 'Which of the trainee’s surveys it is, counted from 1 in the order of the files.',
  attempts: 'How many surveys of this trainee there are.',
  reference: 'What the surveys are compared with.',
  assessor: 'Who took the reference; null where its file does not say.',
  rubric: 'The rubric by its name, or the file it stands in; null where the usual weights hold.',
  sigma_pt_from:
    'Where that figure is from. stated: by the rubric or as built in. class: from how the class scatters.',
  verdict_because: 'What makes the verdict: each ground in a word; none of a satisfactory survey.',
  mark_pct:
    'The mark, in per cent of what could be reached; null where the file could not be read or nothing could be judged.',
  criteria: 'What the mark is made of.',
  criterion: 'What is judged, as the rubric names it.',
  weight: 'Its share of the whole, before what cannot be judged is left out.',
  counted_pct:
    'Its weight among what could be judged, in per cent: what counts in the mark; null where there was nothing to judge by.',
  reached_pct: 'How much of it was reached, in per cent; null where there was nothing to judge by.',
  scores: 'How far each panel is from the reference.',
  score:
    'By what the panel is scored. z: the same marked points, and a reference known well enough. z-prime: allows besides for what the comparison is uncertain by.',
  reference_um: 'Mean of the reference, in µm.',
  difference_um: 'Mean of the trainee less that of the reference, in µm.',
  shared_points:
    'Marked points that both read, and by which the panel is compared; 0 where too few are shared, and with a consensus, which has no marks: the means of all points are compared then.',
  z: 'The difference in units of what is allowed; 2 and 3 are the limits of ISO 13528.',
  zeta: 'The difference in units of the standard uncertainties of both; null where one of them is not known.',
  en: 'The difference in units of the expanded uncertainties of both, where gauge files state them; null else.',
  coverage_pct:
    'Points of the reference that were read, in per cent; null where the file could not be read.',
  panels_read: 'Panels of the reference that were read; null where the file could not be read.',
  points_read:
    'Points that were read, of a panel no more than the reference has; null where the file could not be read.',
  bias: 'How far the trainee is from the reference over the whole car; null under three panels.',
  agreement:
    'Limits of agreement of the panels with the reference, without those that a slip explains; null under three panels, or where more are left out than stay.',
  slipped_panels:
    'Panels that a slip explains, or that were made up: the bias and the limits of agreement leave them out.',
  low_limit: 'What the lower limit is known to, 95 %.',
  high_limit: 'What the upper limit is known to, 95 %.',
  low_spots: 'Low spots of the reference that were found.',
  repaired_panels: 'Repaired panels of the reference that were found.',
  found: 'How many were found.',
  out_of: 'Of how many.',
  low_pct:
    'Lower end of the 95 % interval of the share, in per cent, the exact one of Clopper and Pearson; null where there are none.',
  high_pct: 'Upper end of that interval, in per cent; null where there are none.',
  missed: 'What of the reference was missed.',
  what: 'What was missed. panel: not read at all. low-spot or repair: read and not found.',
  alike_pct: 'Panels that do, in per cent; of a class those of all surveys together.',
  kappa:
    'Cohen’s kappa of that: 1 is full agreement, 0 what chance would give; null where one of the two calls all panels the same, for chance then gives what was found.',
  otherwise: 'Panels that the two call by different words.',
  reference_condition: 'What the panel is by the reference.',
  n_trainees: 'How many trainees.',
  n_graded: 'How many of them have a survey that could be read.',
  reference_u_um: 'Standard uncertainty of the reference’s mean, the gauge left out, in µm.',
  low_spot: 'The point of the low spot; null where there is none.',
  robust_mean_um:
    'Robust mean of the class, in µm: the median of fewer than eight, else by Algorithm A (ISO 13528); null where nobody read it.',
  robust_sd_um:
    'Robust standard deviation of the class, in µm: the scaled median absolute deviation of fewer than eight, else by Algorithm A; null where fewer than two read it.',
  satisfactory_pct:
    'Surveys that are satisfactory on the panel, in per cent; null where nobody read it.',
  gauge_rr:
    'Repeatability and reproducibility of the class by analysis of variance; null where the readings do not allow it.',
  parts_are:
    'What the parts are. marked-points: with their repeats. panels: with points of one’s own, so that the film between them is in the repeatability.',
  n_parts: 'How many parts.',
  n_trials: 'Readings of each part by each trainee.',
  reproducibility_um: 'Standard deviation between trainees, in µm.',
  interaction_um: 'Standard deviation of trainees going apart on single parts, in µm.',
  interaction_prob: 'Chance of so much interaction where there is none.',
  interaction_pooled: 'True where the interaction was not proved, and counts as repeatability.',
  rr_um: 'Repeatability and reproducibility together, as a standard deviation in µm.',
  part_um: 'Standard deviation between parts, in µm.',
  total_um: 'All of it together, as a standard deviation in µm.',
  study_variation_pct:
    'Repeatability and reproducibility as a share of all, in per cent; null where nothing varies.',
  ndc: 'Classes of parts that can be told apart, by analysis of variance; compares with no other method; null where repeatability and reproducibility are nothing.',
  void_panels: 'Panels whose readings a blunder voids; the mark counts them so.',
  void_as:
    'What becomes of it. unread: the values are made up beyond reasonable doubt, and count as not read. wrong: a slip spoils the readings, and the panel counts as unsatisfactory. turned: the points are numbered from the other end, or in another order, or perhaps so (swapped-or-turned), and the panel counts as questionable at the best.',
  mark_if_sound_pct:
    'What the mark would be if no panel were void, in per cent; null where none is.',
  left_out: 'Trainees whom the figures of panels and of gauge R&R leave out.',
  left_out_as:
    'Why. slip: the readings hold a slip. made-up: values look made up. copied: values are too like another’s. gauge-drift: the gauge drifts. not-following: values do not follow the panels. half-unread: less than half of the panels were read, or at one point a panel. repeats-alike: the gauge alone leaves it out, as its repeats are all the same figure. few-marks: the gauge alone leaves it out, as it would leave few marks or panels that all read twice.',
  copied:
    'Pairs of surveys that hold the same values, or nearly the same, more often than chance allows.',
  identical:
    'Whether they are the same. file: the two are one file, byte by byte. readings: the same readings in the same order. null: neither.',
  copied_panels:
    'Whole panels that both hold reading for reading, where these give them away; none else.',
  apart_um:
    'Standard deviation of the differences of the two, in µm, where that gives them away; null where the same values do.',
  usual_um: 'What it usually is between two of this class, in µm; null likewise.',
  same: 'Values that are the same.',
  from_reference: 'Whether the other side is the reference itself.',
  grade: 'How bad the defect is, from 0 (none) to 5 (severe).',
  depth_um: 'Depth of the marks, the middle of them, in µm.',
};
