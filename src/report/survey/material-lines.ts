/** What panels are taken to be made of where nobody said it, and what a gauge must be to read it. */
import { groupBy } from '../../base/group-by.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { panelNames } from '../../film/template/side-names.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';

/** `other panels are steel, both mirrors plastic (template)`: read or not, where it is the template that says so. */
export function materialAssumption(
  surveyed: readonly PanelSurvey[],
  { substrates }: Pick<SurveyResult, 'substrates'>,
): readonly string[] {
  const byTemplate = surveyed.map(({ panel }) => panel).filter(({ id }) => !substrates.has(id));
  const [most, ...others] = [...groupBy(byTemplate, ({ substrate }) => substrate)].sort(
    ([, one], [, other]) => other.length - one.length,
  );
  if (most === undefined) return [];
  const rest = others.map(([substrate, of]) => `${panelNames(of).join(', ')} ${substrate}, `);
  const which =
    byTemplate.length === surveyed.length && rest.length === 0 ? 'panels' : 'other panels';
  return [`${rest.join('')}${which} ${most[0]} (template)`];
}

/** A magnetic gauge shows nothing on aluminium, or something that is no film. The readings may say it. */
export function readByEddyCurrent(
  read: readonly PanelSurvey[],
  { substrates }: Pick<SurveyResult, 'substrates'>,
): readonly string[] {
  const panels = read
    .map(({ panel }) => panel)
    .filter(
      ({ id, substrate }) => substrate === 'aluminium' && substrates.get(id)?.inReadings !== true,
    );
  return panels.length === 0
    ? []
    : [
        `${panelNames(panels).join(', ')} (aluminium) read by the eddy-current side of the gauge: a magnetic one cannot, and then nothing may go there`,
      ];
}
