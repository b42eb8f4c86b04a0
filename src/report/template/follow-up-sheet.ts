/** A reading sheet of what a survey asks to be read next. */
import type { VehicleTemplate } from '../../film/template/template.ts';
import type { TemplateRules } from '../../formats/data/template-defaults.ts';
import type { FollowUpPanel } from '../../tasks/template/follow-up.ts';
import { type Block, gap, list, paragraph, title } from '../model.ts';
import { sheetBlocks } from './template-sheet.ts';

export function followUpBlocks(
  template: VehicleTemplate,
  panels: readonly FollowUpPanel[],
  rules: TemplateRules,
): readonly Block[] {
  if (panels.length === 0) {
    return [
      title(`Reading sheet: ${template.name}, nothing more to read`),
      paragraph(
        null,
        'Further points would free next to nothing, and no panel is unread or mixed.',
      ),
    ];
  }
  const sheet = sheetBlocks(
    template,
    panels.map(({ panel }) => panel),
    rules,
  );
  const why = panels.map(({ panel, why: reason }) => `${panel.name}: ${reason}`);
  return [...sheet, gap, list('Why these points', why)];
}
