/**
 * The tables that commands write as csv, by their columns: told where one stands in the place of readings or of a
 * job, whichever of its columns `--fields` left.
 */

/** All that each may have; what may stand in another's table of readings as well is in `common`. */
const tables: readonly { readonly called: string; readonly columns: string }[] = [
  {
    called: 'a survey',
    columns: `vehicle panel zone condition condition_sure also budget_um bound_by if_word_holds_um
      if_otherwise_condition n_points n_readings mean_um sd_um min_um max_um median_um thinnest_um baseline_um
      clear_mean_um clear_sd_um clear_low_um substrate low_points high_points evidence evidence_text`,
  },
  {
    called: 'a plan',
    columns: `vehicle panel zone verdict steps removal_um removal_low_um removal_high_um aimed_pct expected_pct
      risk_prob risk_if_thin_prob already_prob budget_um bound_by provisional time_min reasons reasons_text`,
  },
  {
    called: 'a quote',
    columns: `vehicle kind currency aim aimed_pct expected_pct spent_um left_um risk_prob time_p50_h time_p80_h days
      line_kind id name quantity unit price_minor per markup_pct tax_pct amount_minor line_tax_minor subtotal_minor
      tax_minor total_minor notes notes_text`,
  },
  {
    called: 'a comparison',
    columns: `vehicle panel zone compared_by n_pairs n_before n_after removed_um removed_low_um removed_high_um resolved
      gained seen_surely_um planned_um worked_um planned_sets worked_sets against_plan allowed_um overrun clear_um
      clear_sd_um budget_left_um bound_by one_more_set_combination one_more_set_removal_um one_more_set_risk_prob
      verdict reasons reasons_text`,
  },
  {
    called: 'a mark book',
    columns: `trainee attempt file date trainee_verdict mark_pct mark_if_sound_pct verdict_because bias_mean_um repeatability_um reasons
      panel n mean_um reference_um difference_um shared_points score z zeta en verdict void_as`,
  },
  {
    called: 'a check of a gauge',
    columns: `check shim_um shim_uncertainty_um n mean_um error_um expanded_um permitted_um conformance_prob verdict
      residual_um`,
  },
  {
    called: 'a list of templates',
    columns: 'template name n_panels area_m2 trim_m length_m width_m height_m',
  },
  {
    called: 'a template',
    columns: 'panel name area_m2 substrate facing mirror flat_width_mm trim_m n_points',
  },
  {
    called: 'a list of methods',
    columns: `combination machine pad product removal_um_per_set removal_um_per_set_low removal_um_per_set_high basis
      observations vehicles min_per_section min_per_m2 haze stages`,
  },
  { called: 'the numbers of a method', columns: 'id name value unit basis source origin where' },
  { called: 'a list of materials', columns: 'id material unit quantity per used_by' },
  {
    called: 'the summary of a batch',
    columns: `job seq command status exit vehicle template n_panels n_panels_read thinnest_um least_budget_um
      n_warnings error_code error`,
  },
  {
    called: 'the summary of a batch',
    columns: `job seq command status exit vehicle template n_panels n_panels_worked least_expected_pct largest_risk_prob
      time_p50_h time_p80_h n_warnings error_code error`,
  },
  {
    called: 'the summary of a batch',
    columns: `job seq command status exit vehicle template kind aims currency currency_digits least_total_minor
      most_total_minor least_total most_total aim aim_total_minor aim_total further_aim_costs_less
      least_time_p50_h most_time_p80_h n_exclusions n_warnings error_code error`,
  },
  {
    called: 'a list of what to buy',
    columns: `status id material unit quantity used_up stock pack to_buy price_minor cost_minor currency jobs shop`,
  },
  { called: 'a list of columns', columns: 'field' },
];

/**
 * Columns that a table of readings, a list of jobs or anything else that people write may have as well. A table of
 * nothing but these is told to be nobody's.
 */
const common = `vehicle panel zone point repeat substrate date file name id unit n note notes job command status kind days template
  attempt trainee score value source quantity machine pad product material shop currency clear_um
  reference_um shim_um shim_uncertainty_um check`;

/** Which of them has these names and none besides, as we write them: in small letters, with commas between. */
export function resultTable(head: string): string | undefined {
  const names = head.replace(/^\uFEFF/u, '').split(',');
  if (areAmong(names, common)) return undefined;
  return tables.find(({ columns }) => areAmong(names, columns))?.called;
}

/** A list is cut into its words only where each name stands in it somehow: one line of a file is asked about. */
function areAmong(names: readonly string[], list: string): boolean {
  if (!names.every((name) => list.includes(name))) return false;
  const words = list.split(/\s+/);
  return names.every((name) => words.includes(name));
}
