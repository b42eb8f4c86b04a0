import { counted } from '../../base/counted.ts';
import { type Remark, remark } from '../../base/remark.ts';
import type { Minutes } from '../../base/units.ts';
import {
  type Condition,
  isFactoryFilm,
  isStatedRepaint,
  needsUltrasound,
} from '../condition/condition.ts';
import type { FilmModel, PanelFacts } from '../film-model.ts';
import { coloursAt } from '../limits/colour-at-spot.ts';
import type { PanelPoint } from '../panel-points.ts';
import type { Panel } from '../template/template.ts';

/** Something to do, with the further points to read where it is that, and the time it takes. */
export type SurveyAdvice = Remark & {
  readonly points?: number;
  readonly time?: Minutes;
  /** The panel that has to be settled before. */
  readonly after?: Panel;
};

type Measured = {
  readonly panel: Panel;
  readonly points: readonly PanelPoint[];
  readonly clearPoints: readonly PanelPoint[];
  /** Points of repaint that read under its line. */
  readonly underLine?: readonly string[];
};

/** What would make a panel's survey surer. More than nine points gain next to nothing. */
export function surveyAdvice(
  measured: Measured,
  condition: Condition,
  facts: PanelFacts,
  model: Pick<FilmModel, 'reading' | 'freshPaintDays' | 'measuring'>,
): readonly SurveyAdvice[] {
  if (condition === 'unread') return unreadAdvice(measured, model.measuring);
  if (facts.covered) {
    return [remark('uncover', 'once the film, wrap or coating is off, read it again')];
  }
  if (facts.finish === 'matte') return [];
  const wait = waitAdvice(facts, model);
  if (wait.length > 0) return [...wait, ...pointsAdvice(measured.points, model.reading.bestPoints)];
  return [
    ...pointsAdvice(measured.points, model.reading.bestPoints),
    ...filmAdvice(condition, facts, measured.underLine),
  ];
}

function unreadAdvice(
  { panel, points, clearPoints }: Measured,
  { pointTime }: FilmModel['measuring'],
): readonly SurveyAdvice[] {
  if (!needsUltrasound(panel)) {
    const count = panel.points.length;
    return [
      {
        ...remark('read', `read ${count} points on the face`),
        time: (pointTime * count) as Minutes,
      },
    ];
  }
  if (clearPoints.length > 0) {
    return [
      remark(
        'ultrasound',
        'its clear was read, but no total tells whether that is the factory’s: leave it alone',
      ),
    ];
  }
  return [
    // A gauge that needs metal hardly ever shows anything where there is none.
    ...(points.length > 0
      ? [remark('substrate', 'metal after all? State its substrate in the job')]
      : []),
    remark('ultrasound', 'ultrasonic gauge, or leave it alone'),
  ];
}

function waitAdvice(
  { paintedDaysAgo }: PanelFacts,
  { freshPaintDays }: Pick<FilmModel, 'freshPaintDays'>,
): readonly SurveyAdvice[] {
  if (paintedDaysAgo === null || paintedDaysAgo >= freshPaintDays) return [];
  const left = freshPaintDays - paintedDaysAgo;
  return [
    remark(
      'wait',
      `wait ${counted(left, 'more day')}, till the paint is hard, then make a test spot on it`,
    ),
  ];
}

function pointsAdvice(points: Measured['points'], best: number): readonly SurveyAdvice[] {
  if (points.length >= best) return [];
  const more = best - points.length;
  const why = points.length === 1 ? ', one is no basis for machine work' : '';
  const text = `read ${counted(more, 'more point')} a panel${why}`;
  return [{ ...remark('more-points', text), points: more }];
}

/** What is left of factory clear hangs on its history; that of a repaint shows on a test spot alone. */
function filmAdvice(
  condition: Condition,
  facts: PanelFacts,
  underLine: Measured['underLine'] = [],
): readonly SurveyAdvice[] {
  if (isFactoryFilm(condition)) {
    return facts.taken === null ? [remark('history', 'find out what was polished off before')] : [];
  }
  return [
    ...(condition === 'mixed' || coloursAt(facts).length > 0
      ? []
      : [remark('test-spot', 'make a test spot on it')]),
    // Where the job says so, it says it of the whole panel.
    ...(isStatedRepaint(facts) ? [] : [remark('repair-edge', edgeText(underLine))]),
  ];
}

/** `point e2 reads under the line of repaint: closer points between it and the others find the edge of the repair`. */
function edgeText(underLine: readonly string[]): string {
  const find = 'find the edge of the repair';
  if (underLine.length === 0) return `closer points ${find}`;
  const [word, reads, them] =
    underLine.length === 1 ? ['point', 'reads', 'it'] : ['points', 'read', 'them'];
  return `${word} ${underLine.join(', ')} ${reads} under the line of repaint: closer points between ${them} and the others ${find}`;
}
