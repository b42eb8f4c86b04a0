/** What is held of each panel’s paint, in the records of survey and plan. */
import { sum } from '../base/sum.ts';
import type { PanelFacts } from '../film/film-model.ts';
import type { PanelSurvey } from '../film/survey.ts';
import type { Effective } from '../tasks/settings/setting-origin.ts';
import type { SurveyResult } from '../tasks/survey/survey-vehicle.ts';
import type { MachineRecord } from './model.ts';
import { factsOf } from './panel-facts.ts';
import { recorded, recordedOrNull } from './recorded.ts';

/** `facts` of a panel in the records of survey and plan. */
export function factsRecord(survey: PanelSurvey, result: SurveyResult): MachineRecord {
  const facts = factsOf(survey, result);
  return {
    finish: facts.finish,
    taken_um: inRecord(facts.taken, recordedOrNull),
    taken_sd_um: inRecord(facts.takenSd, recorded),
    recorded_um: inRecord(facts.recorded, recordedRecord),
    clear_um: inRecord(facts.clear, layerRecord),
    under_um: inRecord(facts.under, layerRecord),
    galvanised: facts.galvanised,
    covered: facts.covered,
    clear_coat_failure: facts.clearCoatFailure,
    painted_days_ago: facts.paintedDaysAgo,
  };
}

const inRecord = <T>({ value, ...from }: Effective<T>, recordOf: (value: T) => unknown) => ({
  value: recordOf(value),
  ...from,
});

const layerRecord = (layer: PanelFacts['clear']) =>
  layer === null ? null : { value: recorded(layer.mean), sd: recorded(layer.sd), of: layer.of };

/** With the paint that came on: whoever is given the plan and not the record holds it too. */
const recordedRecord = (taken: PanelFacts['recorded']) =>
  taken === null
    ? null
    : {
        value: recorded(taken.mean),
        sd: recorded(taken.sd),
        gained_um:
          taken.gains === undefined ? null : recorded(sum(taken.gains.map(({ by }) => by))),
      };
