/**
 * What csv each command writes: its columns in order, each with the place of the record that it is from.
 * A column bears the name of its key; of a key within another both names, its unit last (`removed_low_um`
 * of `removed_um.low`), and where the inner one only says that it is the middle, the outer name alone.
 * A list is in one cell: its words, or the codes of its remarks, with blanks between; true is yes.
 * Null: no single place of the record says that.
 */
type Columns = Readonly<Record<string, string | null>>;

const readings: Columns = {
  vehicle: 'vehicle',
  panel: 'readings[].panel',
  point: 'readings[].point',
  repeat: 'readings[].repeat',
  reading_um: 'readings[].reading_um',
  layer: 'readings[].layer',
  place: 'readings[].place',
  marked: 'readings[].marked',
  curved: 'readings[].curved',
  operator: 'readings[].operator',
  time: 'readings[].time',
  substrate: 'readings[].substrate',
  u: 'readings[].u',
  v: 'readings[].v',
  note: 'readings[].note',
};

const survey: Columns = {
  vehicle: 'vehicle',
  panel: 'panels[].panel',
  zone: 'panels[].zones[].zone',
  condition: 'panels[].condition',
  condition_sure: 'panels[].condition_sure',
  also: 'panels[].also[]',
  budget_um: 'panels[].budget_um',
  bound_by: 'panels[].bound_by',
  if_word_holds_um: 'panels[].if_otherwise.if_word_holds_um',
  if_otherwise_condition: 'panels[].if_otherwise.condition',
  n_points: 'panels[].n_points',
  n_readings: 'panels[].n_readings',
  mean_um: 'panels[].mean_um',
  sd_um: 'panels[].sd_um',
  min_um: 'panels[].min_um',
  max_um: 'panels[].max_um',
  median_um: 'panels[].median_um',
  thinnest_um: 'panels[].thinnest_um',
  baseline_um: 'panels[].baseline_um',
  clear_mean_um: 'panels[].clear.mean_um',
  clear_sd_um: 'panels[].clear.sd_um',
  clear_low_um: 'panels[].clear.low_um',
  substrate: 'panels[].substrate',
  low_points: 'panels[].low_points[]',
  high_points: 'panels[].high_points[]',
  evidence: 'panels[].evidence[]',
  evidence_text: 'panels[].evidence[].text',
};

const plan: Columns = {
  vehicle: 'vehicle',
  panel: 'panels[].panel',
  zone: 'panels[].zones[].zone',
  verdict: 'panels[].verdict',
  steps: 'panels[].steps[]',
  removal_um: 'panels[].removal_um.median',
  removal_low_um: 'panels[].removal_um.low',
  removal_high_um: 'panels[].removal_um.high',
  aimed_pct: 'panels[].correction.aimed_pct',
  expected_pct: 'panels[].correction.expected_pct',
  risk_prob: 'panels[].risk_prob',
  risk_if_thin_prob: 'panels[].risk_if_thin_prob',
  already_prob: 'panels[].already_prob',
  budget_um: 'panels[].budget_um',
  bound_by: 'panels[].bound_by',
  provisional: 'panels[].provisional',
  time_min: 'panels[].steps[].time_min',
  reasons: 'panels[].reasons[]',
  reasons_text: 'panels[].reasons[].text',
};

const quote: Columns = {
  vehicle: 'vehicle',
  kind: 'kind',
  currency: 'currency',
  aim: 'options[].aim',
  aimed_pct: 'options[].aimed_pct',
  expected_pct: 'options[].expected_pct',
  spent_um: 'options[].spent_um',
  left_um: 'options[].left_um',
  risk_prob: 'options[].risk_prob',
  time_p50_h: 'options[].time.p50_h',
  time_p80_h: 'options[].time.p80_h',
  days: 'options[].days',
  line_kind: 'options[].lines[].kind',
  id: 'options[].lines[].id',
  name: 'options[].lines[].name',
  quantity: 'options[].lines[].quantity',
  unit: 'options[].lines[].unit',
  price_minor: 'options[].lines[].price_minor',
  per: 'options[].lines[].per',
  markup_pct: 'options[].lines[].markup_pct',
  tax_pct: 'options[].lines[].tax_pct',
  amount_minor: 'options[].lines[].amount_minor',
  line_tax_minor: 'options[].lines[].tax_minor',
  subtotal_minor: 'options[].subtotal_minor',
  tax_minor: 'options[].tax_minor',
  total_minor: 'options[].total_minor',
};

const compare: Columns = {
  vehicle: 'vehicle',
  panel: 'panels[].panel',
  zone: 'panels[].zones[].zone',
  compared_by: 'panels[].compared_by',
  n_pairs: 'panels[].n_pairs',
  n_before: 'panels[].n_before',
  n_after: 'panels[].n_after',
  removed_um: 'panels[].removed_um.mean',
  removed_low_um: 'panels[].removed_um.low',
  removed_high_um: 'panels[].removed_um.high',
  resolved: 'panels[].resolved',
  gained: 'panels[].gained',
  seen_surely_um: 'panels[].seen_surely_um',
  planned_um: 'panels[].planned_um.median',
  worked_um: 'panels[].worked_um.median',
  planned_sets: 'panels[].planned_sets',
  worked_sets: 'panels[].worked_sets',
  against_plan: 'panels[].against_plan',
  allowed_um: 'panels[].allowed_um',
  overrun: 'panels[].overrun[]',
  clear_um: 'panels[].clear_um.mean',
  clear_sd_um: 'panels[].clear_um.sd',
  budget_left_um: 'panels[].budget_left_um',
  bound_by: 'panels[].bound_by',
  one_more_set_combination: 'panels[].one_more_set.combination',
  one_more_set_removal_um: 'panels[].one_more_set.removal_um',
  one_more_set_risk_prob: 'panels[].one_more_set.risk_prob',
  verdict: 'panels[].verdict',
  reasons: 'panels[].reasons[]',
  reasons_text: 'panels[].reasons[].text',
};

const grade: Columns = {
  trainee: 'trainees[].trainee',
  attempt: 'trainees[].attempt',
  file: 'trainees[].file',
  date: 'trainees[].date',
  trainee_verdict: 'trainees[].verdict',
  mark_pct: 'trainees[].mark_pct',
  mark_if_sound_pct: 'trainees[].mark_if_sound_pct',
  verdict_because: 'trainees[].verdict_because[]',
  bias_mean_um: 'trainees[].bias.mean_um',
  repeatability_um: 'trainees[].repeatability_um',
  reasons: 'trainees[].reasons[]',
  panel: 'trainees[].scores[].panel',
  n: 'trainees[].scores[].n',
  mean_um: 'trainees[].scores[].mean_um',
  reference_um: 'trainees[].scores[].reference_um',
  difference_um: 'trainees[].scores[].difference_um',
  shared_points: 'trainees[].scores[].shared_points',
  score: 'trainees[].scores[].score',
  z: 'trainees[].scores[].z',
  zeta: 'trainees[].scores[].zeta',
  en: 'trainees[].scores[].en',
  verdict: 'trainees[].scores[].verdict',
  void_as: 'trainees[].void_panels[].void_as',
};

const gauge: Columns = {
  check: 'shims[].check',
  shim_um: 'shims[].shim_um',
  shim_uncertainty_um: 'shims[].shim_uncertainty_um',
  n: 'shims[].n',
  mean_um: 'shims[].mean_um',
  error_um: 'shims[].error_um',
  expanded_um: 'shims[].expanded_um',
  permitted_um: 'shims[].permitted_um',
  conformance_prob: 'shims[].conformance_prob',
  verdict: 'shims[].verdict',
  residual_um: 'shims[].residual_um',
};

const templateList: Columns = {
  template: 'templates[].template',
  name: 'templates[].name',
  n_panels: 'templates[].n_panels',
  area_m2: 'templates[].area_m2',
  trim_m: 'templates[].trim_m',
  length_m: 'templates[].length_m',
  width_m: 'templates[].width_m',
  height_m: 'templates[].height_m',
};

const templateShow: Columns = {
  panel: 'templates[].panels[].panel',
  name: 'templates[].panels[].name',
  area_m2: 'templates[].panels[].area_m2',
  substrate: 'templates[].panels[].substrate',
  facing: 'templates[].panels[].facing',
  mirror: 'templates[].panels[].mirror',
  flat_width_mm: 'templates[].panels[].flat_width_mm',
  trim_m: 'templates[].panels[].trim_m',
  n_points: 'templates[].panels[].n_points',
};

const templateSheet: Columns = {
  panel: 'sheet[].panel',
  point: 'sheet[].points[].point',
  repeat: null,
  reading_um: null,
  u: 'sheet[].points[].u',
  v: 'sheet[].points[].v',
  note: null,
};

const methodsList: Columns = {
  combination: 'combinations[].combination',
  machine: 'combinations[].machine',
  pad: 'combinations[].pad',
  product: 'combinations[].product',
  removal_um_per_set: 'combinations[].removal_um_per_set.median',
  removal_um_per_set_low: 'combinations[].removal_um_per_set.low',
  removal_um_per_set_high: 'combinations[].removal_um_per_set.high',
  basis: 'combinations[].basis',
  observations: 'combinations[].observations',
  vehicles: 'combinations[].vehicles',
  min_per_section: 'combinations[].min_per_section',
  min_per_m2: 'combinations[].min_per_m2',
  haze: 'combinations[].haze',
  stages: 'combinations[].stages[]',
};

const methodsShow: Columns = {
  id: 'numbers[].id',
  name: 'numbers[].name',
  value: 'numbers[].value',
  unit: 'numbers[].unit',
  basis: 'numbers[].basis',
  source: 'numbers[].source',
  origin: 'numbers[].origin',
  where: 'numbers[].where',
};

const methodsMaterials: Columns = {
  id: 'materials[].id',
  material: 'materials[].material',
  unit: 'materials[].unit',
  quantity: 'materials[].uses[].quantity',
  per: 'materials[].uses[].per',
  used_by: 'materials[].used_by[]',
};

const job: Columns = {
  job: 'job',
  seq: 'seq',
  command: 'command',
  status: 'status',
  exit: 'exit',
  vehicle: null,
  template: null,
};
const failure: Columns = {
  n_warnings: null,
  error_code: 'diagnostics[].code',
  error: 'diagnostics[].message',
};

/** What the result of the command says, gathered over panels or aims. */
const gathered = (...names: readonly string[]): Columns =>
  Object.fromEntries(names.map((name) => [name, null]));

export const tableColumns: Readonly<Record<string, Columns>> = {
  read: readings,
  survey,
  plan,
  quote,
  compare,
  grade,
  gauge,
  'methods list': methodsList,
  'methods show': methodsShow,
  'methods materials': methodsMaterials,
  'template list': templateList,
  'template show': templateShow,
  'template sheet': templateSheet,
  'batch --command survey': {
    ...job,
    ...gathered('n_panels', 'n_panels_read', 'thinnest_um', 'least_budget_um'),
    ...failure,
  },
  'batch --command plan': {
    ...job,
    ...gathered('n_panels', 'n_panels_worked', 'least_expected_pct', 'largest_risk_prob'),
    ...gathered('time_p50_h', 'time_p80_h'),
    ...failure,
  },
  'batch --command quote': {
    ...job,
    ...gathered('kind', 'aims', 'currency', 'currency_digits'),
    ...gathered('least_total_minor', 'most_total_minor'),
    ...gathered('least_total', 'most_total', 'least_time_p50_h', 'most_time_p80_h', 'n_exclusions'),
    ...failure,
  },
  'batch --reorder': gathered(
    'status',
    'id',
    'material',
    'unit',
    'quantity',
    'used_up',
    'stock',
    'pack',
    'to_buy',
    'price_minor',
    'cost_minor',
    'currency',
    'jobs',
    'shop',
  ),
};
