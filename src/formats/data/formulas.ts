/**
 * How each default enters the reckoning, and where its effect is seen: by the beginning of its id,
 * the longest that fits.
 */

export type DefaultUse = {
  /** The beginning of the ids that this is about. */
  readonly prefix: string;
  /** Written out in words and signs; empty where the number is used as it stands. */
  readonly formula: string;
  /** Commands and parts of their output. */
  readonly used: string;
};

const use = (prefix: string, formula: string, used: string): DefaultUse => ({
  prefix,
  formula,
  used,
});

const SURVEY = 'survey and plan: the table of panels';
const THIN = `${SURVEY}, columns thin and may go`;
const BUDGET = `${SURVEY}, columns may go and bound by; -v lists every limit`;
const CLEAR =
  'clear on the thinnest 5 % ~ N(μ − e + g·min(0, x̄ − (μ + μ_under − e)) − 1.645·√v, …), with g = A/(A + B + u² + s²/n)';
const RATE = 'removal a set = κ·pad·product·hardness · pressure · sliding speed · contact time';
const METHODS = 'plan: every step; methods: rates, minutes and heat';
const SPREAD = 'ln-SD of a removal = √(hardness² + combination² + step²)';
const DEPTH = 'correction = Φ( ln(removal/depth) / √(σ_depth² + σ_scale² + σ_removal²) )';
const SPOT_DOUBTED = 'every command that takes test spots: the error spot-doubted';
const STEPS = 'plan: which steps are chosen for a panel';
const TIME = 'plan: time, and the minutes of each step';

export const defaultUses: readonly DefaultUse[] = [
  use(
    'film.measurement',
    'u_calibration = (fixed + proportional·reading)/√3; repeatability/√repeats where readings were not repeated',
    THIN,
  ),
  use(
    'film.measurement.film_shim',
    'a check that no shim reaches is undecided, and the usual share of the film stands where it is the greater',
    'gauge: its verdict; survey and plan: what the gauge is off by',
  ),
  use(
    'film.spread',
    's̃² = (d₀·s₀² + d·s²)/(d₀ + d), with d₀ at most the cap (Smyth 2004)',
    `${SURVEY}, column thin, and the points called low or high`,
  ),
  use(
    'film.tolerance',
    'thinnest = min(mean − k·s̃, smallest point) − 1.645·u_calibration, k the tolerance factor for this content and confidence',
    `${SURVEY}, column thin`,
  ),
  use('film.conditions', 'compared with the readings as it stands', `${SURVEY}: the condition`),
  use(
    'film.conditions.near_risk',
    'near where P(T_ν > |figure − line|/u) is over it, u the standard uncertainty of the figure against its line (JCGM 106)',
    'survey: how sure each condition is; condition_sure of a record',
  ),
  use('film.conditions.mirror', 'compared with the difference of the two means', 'survey: notes'),
  use('film.layers', CLEAR, BUDGET),
  use('film.topcoat', CLEAR, BUDGET),
  use('film.stated', CLEAR, BUDGET),
  use(
    'film.earlier.unknown_clear',
    'e = what was taken before; the clear is thinner by it',
    BUDGET,
  ),
  use('film.earlier', 'removal allowed = life limit − taken before, at the chosen risk', BUDGET),
  use(
    'film.limits.life',
    'P(removal > life − taken before) ≤ risk; the budget is the largest median that keeps it',
    BUDGET,
  ),
  use(
    'film.limits.clear_floor',
    'Σ chance × P(clear on the thinnest 5 % − removal < floor) ≤ risk, over all that the panel may be (original, cut back; a repaint counts as 1)',
    BUDGET,
  ),
  use(
    'film.limits.single_stage_floor',
    'P(topcoat on the thinnest 5 % − removal < floor) ≤ risk',
    BUDGET,
  ),
  use('film.limits', 'smallest point − removal (its upper 95 %) ≥ floor', BUDGET),
  use(
    'film.thinner_clear',
    'the risk once more, with the mean of the clear lower by this',
    'plan: the line on risk; survey --why; risk_if_thin_prob of a record',
  ),
  use('film.fresh_paint', 'compared with painted_days_ago as it stands', BUDGET),
  use(
    'film.measuring',
    'points still to be read × minutes a point; minutes of the clear, or of a test spot, as they stand',
    'survey: What would help; minutes of advice in a record',
  ),
  use(
    'film.reading.most_points',
    'no more points are advised from this many on',
    'survey: What would help; template sheet --for',
  ),
  use(
    'film.reading',
    'compared with each reading',
    'read, survey, plan: readings refused or doubted',
  ),
  use('film.limits.risk_pct', 'the risk at which each limit is kept', BUDGET),
  use(
    'film.limits.total_floor_risk_pct',
    'smallest point − removal (its upper 95 %) ≥ floor',
    BUDGET,
  ),
  use('film', 'used as it stands', SURVEY),

  use('correction.machines.rotary.rpm', 'sliding speed = ⅔·2π·rpm/60·pad/2', METHODS),
  use(
    'correction.machines',
    'pressure = force/(π·pad²/4); sliding speed by orbit = π·throw·orbits/60; contact time = passes·π·pad/(4·arm speed·(1 − overlap))',
    METHODS,
  ),
  use('correction.pads', RATE, METHODS),
  use('correction.products', RATE, METHODS),
  use('correction.defects', DEPTH, 'plan: the correction expected, and so the steps'),
  use(
    'correction.grain',
    'depth of sanding marks = mean grain / grain_per_depth',
    'plan: where a defects file names sanding marks',
  ),
  use(
    'correction.sanding',
    'depth of sanding marks = mean grain / grain_per_depth',
    'plan: where a defects file names sanding marks',
  ),
  use(
    'correction.heat.friction',
    'heat into the panel = share·friction·pressure·sliding speed',
    'methods show: how warm it gets',
  ),
  use(
    'correction.heat.panel_share',
    'heat into the panel = share·friction·pressure·sliding speed',
    'methods show: how warm it gets',
  ),
  use(
    'correction.heat.plastic_effusivity',
    'warming in one contact = 2·heat·√(time/π)/effusivity',
    'methods show: how warm plastic gets',
  ),
  use(
    'correction.heat.cooling',
    'what a pass left cools as exp(−cooling·time/heat of the sheet)',
    'methods show: how warm it gets',
  ),
  use(
    'correction.heat.steel_sheet',
    'warming in one contact = heat·time/heat of the sheet',
    'methods show: how warm steel gets',
  ),
  use(
    'correction.heat.aluminium_sheet',
    'warming in one contact = heat·time/heat of the sheet',
    'methods show: how warm aluminium gets',
  ),
  use(
    'correction.heat.room',
    'a panel goes to it as room + (start − room)·e^(−cooling·time/heat of the sheet)',
    'methods show: how warm it gets; plan: the caution on heat',
  ),
  use(
    'correction.heat',
    'compared with the temperature reached = start + warming',
    'methods show: how warm it gets; plan: the caution on rotary heat',
  ),
  use('correction.removal.preston', RATE, METHODS),
  use(
    'correction.removal.overlap',
    'contact time = passes·π·pad/(4·arm speed·(1 − overlap)); time of a set = passes·area/(arm speed·pad·(1 − overlap))',
    METHODS,
  ),
  use(
    'correction.removal.passes',
    'contact time = passes·π·pad/(4·arm speed·(1 − overlap)); time of a set = passes·area/(arm speed·pad·(1 − overlap))',
    METHODS,
  ),
  use('correction.removal.section', 'minutes a section = time of a set on this area', METHODS),
  use('correction.removal.soft', RATE, 'plan: paint declared soft in the job file'),
  use('correction.removal.hard_factor', RATE, 'plan: paint declared hard in the job file'),
  use(
    'correction.shop_rates',
    'variance learned from a shop’s vehicles = share · ln-SD², related combinations with their parts in common; the rest stays from vehicle to vehicle',
    'methods, spot, survey, plan and quote with --rates',
  ),
  use('correction.removal', SPREAD, 'plan: ranges and risk; survey: may go; methods: ranges'),
  use('correction.depth', DEPTH, 'plan: the correction expected'),
  use('correction.assumed_grade', DEPTH, 'plan: where no defects file is given'),
  use('correction.aims', 'compared with the correction expected', 'plan: the aim'),
  use(
    'correction.local_section',
    'minutes of a spot = sets · time of a set on this area',
    'plan: local work on deep defects',
  ),
  use('correction.least_correction', 'compared with the correction expected', STEPS),
  use(
    'correction.least_for_place',
    'share cleared there ≥ this · film taken there/film that may go there, the panel’s own steps with the spot',
    'plan: local work on deep defects',
  ),
  use(
    'correction.haze',
    'haze left = max(pad, product + rotary); grades cleared = removal/cleared',
    STEPS,
  ),
  use('correction.most_sets', 'no stage has more sets of one combination', STEPS),
  use('correction.choice', 'differences smaller than this do not decide', STEPS),
  use(
    'correction.spot.loss_beyond_sds',
    'refused where loss − SDs · its standard error > usual · e^(SDs · ln-SD of a removal)',
    SPOT_DOUBTED,
  ),
  use(
    'correction.spot.marks_off',
    'refused where a mark before lies so far under the least or over the most that its panel reads',
    SPOT_DOUBTED,
  ),
  use('correction', 'used as it stands', METHODS),

  use(
    'work.per_section',
    'minutes of a step = machine time + sets·sections·(wipe + pad cleaning)',
    TIME,
  ),
  use('work.set_up', 'once for every combination of the plan', TIME),
  use(
    'work.polishing',
    'mean = (least + 4·likely + most)/6; variance = (mean − least)(most − mean)/7',
    'plan: P50, P80 and P95 of the time',
  ),
  use(
    'work.stages',
    'mean = (least + 4·likely + most)/6; variance = (mean − least)(most − mean)/7',
    'plan: P50, P80 and P95 of the time',
  ),
  use('work.wait', 'passes on the clock before the next stage', 'plan: days in the bay'),
  use(
    'work.usual',
    'time of a stage = its number · area (or trim) of this vehicle/that of the usual one',
    TIME,
  ),
  use('work.size', 'time of a stage that goes by size = its number · factor of the class', TIME),
  use('work.soiling', 'time of a stage that cleans = its number · factor', TIME),
  use(
    'work.history',
    'ln factor of a stage = (Σ ln(actual/estimated/pace)/noise²)/(1/prior² + n/noise²)',
    'plan and quote with --history: hours',
  ),
  use('work.materials.towels_per_load', 'towels/towels in a load, rounded up', 'plan -v: towels'),
  use('work.materials.pad_life', 'sets·sections/sections of a pad’s life', 'plan -v: pads'),
  use('work.materials', 'sets·area·ml/m² + first loads; pieces are rounded up', 'plan: materials'),
  use(
    'work.vibration',
    'points = 2·a² for each hour with the machine running',
    'plan: the caution on vibration',
  ),
  use(
    'work',
    'ln-variance of the time = stages + pace² + job²',
    'plan: P50, P80 and P95 of the time',
  ),

  use(
    'price.hours',
    'minutes that are charged = this quantile of the time of the whole job; overrun = 1 − Φ(ln(charged/median)/ln-SD)',
    'quote: labour, price and overrun',
  ),
  use(
    'price.cash',
    'asked about where the least coin > this share of the least total',
    'quote: the warning price-coin-large',
  ),
  use(
    'price.packs',
    'asked about where used/pack > most, or pack of a liquid < least, and price ≥ this much labour',
    'quote: the warning price-pack-small',
  ),
  use(
    'price.curve',
    'a plan for each aim from the mildest in even steps up to the strongest',
    'quote: the curve, and curve in a record',
  ),

  use(
    'training.scores',
    'z′ = d/√(σ_pt² + s̃²·(1/n + 1/n_ref) + u²); at the same marked points z = d/σ_pt, while u_ref ≤ share·σ_pt',
    'grade: scores and verdicts',
  ),
  use(
    'training.scores.sigma_pt_film_um',
    'u² of gauges that nobody named = Σ (share·(film − this))²/3 of both sides, where film is over this',
    'grade: z′ of thick panels',
  ),
  use(
    'training.scores.slipped_share',
    'score of a panel in the mark = min(by its verdict, this) where a slip spoils its readings',
    'grade: mark, and the void panels',
  ),
  use(
    'training.marks',
    'mark = Σ weight·reached/Σ weight over what can be judged',
    'grade: mark and verdict, where no rubric is given',
  ),
  use(
    'training.class.least_surveys',
    'compared with the surveys that read a panel',
    'grade --consensus, a sigma_pt of the class, and its hard panels',
  ),
  use(
    'training.slips.likeness',
    'slip where reading/(factor·reference) lies within this, either way',
    'grade: unit and decimal slips',
  ),
  use(
    'training.slips.false_alarm',
    'a check speaks where an honest survey would look like this with a smaller chance',
    'grade: swapped sides, copied, alike, ordered and too regular values',
  ),
  use(
    'training.slips.proved_alarm',
    'panels of a check for made-up values count as not read where an honest survey would look like this with a smaller chance',
    'grade: mark, and the void panels',
  ),
  use(
    'training.slips.whole_survey',
    'compared with the share of the readings that are the reference by one factor',
    'grade: unit and decimal slips, of the whole survey or by panel',
  ),
  use(
    'training.slips.even_panel',
    'panels whose F against the reference has a smaller chance are counted, and their number judged by the binomial law',
    'grade: too regular values',
  ),
  use(
    'training.slips.honest_rest',
    'where the other panels together have a smaller chance, the survey is too regular as a whole',
    'grade: too regular values, of some panels or of all',
  ),
  use(
    'training.slips.made_up_spread',
    'too few to tell where F = its square has no chance under the false alarm, at the points that were read',
    'grade: what is said where too little was handed in',
  ),
  use(
    'training.slips.finest_step_um',
    'chance that two values are the same = step/(2·s·√π), step this or the display’s',
    'grade: alike, repeated and copied values',
  ),
  use(
    'training.verdict',
    'panels at fault, and panels read, are compared with this',
    'grade: the verdict, and who is left out of the class',
  ),
  use(
    'training.copies',
    'same values by the binomial law, near ones by F against what is usual in the class',
    'grade: copies',
  ),
  use(
    'training.patterns',
    'marks and panels in common are counted; a drift by t and F, marks that read off by F',
    'grade: a gauge that drifts, marks that read off',
  ),

  use('template', 'used as it stands', 'template; survey and plan: areas and points of panels'),
];
