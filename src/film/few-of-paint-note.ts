import { type Remark, remark } from '../base/remark.ts';
import type { CarBaseline } from './car-baseline.ts';
import { type GatheredPanel, isRead } from './gathered-panel.ts';
import { paintKindOf } from './paint-kind.ts';
import { panelNames } from './template/side-names.ts';

/** Panels of a finish that few others have, which are compared with film of other layers for want of their own. */
export const fewOfPaintNotes = (
  car: CarBaseline | null,
  gathered: readonly GatheredPanel[],
): readonly Remark[] =>
  (car?.fewOfPaint ?? []).map((kind) => {
    const own = gathered.filter((one) => isRead(one) && paintKindOf(one.facts.finish) === kind);
    const names = panelNames(own.map(({ panel }) => panel)).join(', ');
    const paint = kind === 'single-stage' ? 'single stage' : 'clear over base';
    return remark(
      'few-of-finish',
      `${names}: stated to be ${paint}, which most panels are not, and too few of them agree to be compared with each other: compared with the others, whose paint has other layers, so that cut-back or repaint may be no more than that`,
      own.length,
    );
  });
