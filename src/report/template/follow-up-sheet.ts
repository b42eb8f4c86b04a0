/** A reading sheet of what a survey asks to be read next. */
import type { VehicleTemplate } from '../../film/template/template.ts';
import type { TemplateRules } from '../../formats/data/template-defaults.ts';
import type { FollowUpPanel } from '../../tasks/template/follow-up.ts';
import { type Block, gap, list, paragraph, title } from '../model.ts';
import { offName, sheetBlocks } from './template-sheet.ts';

export function followUpBlocks(
  {
    template,
    further,
    repeats,
    ofSome,
  }: {
    readonly template: VehicleTemplate;
    readonly further: readonly FollowUpPanel[];
    readonly repeats: number;
    /** Panels were asked for by name: of the others it says nothing. */
    readonly ofSome: boolean;
  },
  rules: TemplateRules,
): readonly Block[] {
  if (further.length === 0) {
    return [
      title(`Reading sheet: ${template.name}, nothing more to read`),
      paragraph(
        null,
        ofSome
          ? 'On the panels asked for further points would free next to nothing, or none can be read.'
          : 'Further points would free next to nothing, and no panel is unread or mixed.',
      ),
    ];
  }
  const panels = further.map(({ panel }) => panel);
  const sheet = sheetBlocks({ template, panels, repeats }, rules);
  const why = further.map(({ panel, why: reason }) => `${offName(panel)}: ${reason}`);
  return [...sheet, gap, list('Why these points', why)];
}
