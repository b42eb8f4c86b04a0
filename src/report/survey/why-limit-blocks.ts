/** What limits the removal of a panel: its clear, and what each limit allows. */
import { saying, textIn } from '../../base/remark.ts';
import { says, tell, thicknessText, unitName } from '../../base/sentence.ts';
import type { PanelWhy } from '../../film/help/panel-why.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { setIn, toldFacts } from '../facts.ts';
import { type Block, list } from '../model.ts';
import { clearSteps } from './clear-steps.ts';
import { isOfFilm } from './evidence-lines.ts';
import { limitWord } from './film-table.ts';
import { limitSteps } from './limit-steps.ts';
import { toldIn, type WhyContext } from './why-context.ts';

export function clearBlocks(
  survey: PanelSurvey,
  { clear }: PanelWhy,
  context: WhyContext,
): readonly Block[] {
  const { topcoat } = survey;
  if (topcoat === null || clear === null) return [];
  const name = topcoat.finish === 'single-stage' ? 'Topcoat' : 'Clear';
  const steps = clearSteps(survey, clear, context.result.settings.film);
  return [list(`${name}, step by step (± SD)`, steps.map(toldIn(context.unit)))];
}

/** Every limit side by side, the one that binds marked. */
export function limitBlocks(
  survey: PanelSurvey,
  { limits }: PanelWhy,
  { unit }: WhyContext,
): readonly Block[] {
  const after = survey.evidence.filter((one) => !isOfFilm(one));
  const label = {
    text: `What limits it: median removal that each allows (${unitName(unit)}, ± SD)`,
    short: 'What limits it',
  };
  return [
    list(label, [
      ...limits.flatMap((why) => {
        const { limit } = why;
        const binds = limit === survey.boundBy;
        const allows = thicknessText(limit.value, unit, 2);
        const said = tell(says`${allows}: ${saying(limit)}${binds ? ' (binds)' : ''}`, unit);
        const word = limitWord(limit.code, survey);
        return [
          { text: `${binds ? '→' : '\u00a0'} ${said}`, facts: [said] },
          ...limitSteps(why).map((step) => setIn(word, toldFacts(step, unit))),
        ];
      }),
      ...after.map((one) => textIn(one, unit)),
    ]),
  ];
}
