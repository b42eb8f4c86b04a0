/** One more set on repaint that a test spot freed is told with the caution of its card: the clear there cannot be read. */
import { expect, test } from 'vitest';
import { renderText } from '../../../src/render/text.ts';
import { compareBlocks } from '../../../src/report/compare/compare-blocks.ts';
import { compared, panelLeft, readingsText, soundFilm, worked } from '../comparing.ts';

const film = { ...soundFilm, boot: [210, 212, 209, 211, 213] };
const spots = [
  'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct,haze_grade,colour_on_pad',
  ...[1, 2, 3, 4, 5].map((mark) => `A,boot,da,foam-soft,fine,1,${mark},211,210.8,45,0,no`),
].join('\n');
const result = compared({
  visits: [readingsText(film), readingsText(worked(film, () => 0.5))],
  job: { finish: 'clear-over-base', taken_um: 0 },
  spots,
});
const pageOf = (panels: typeof result.panels): string =>
  renderText(compareBlocks({ ...result, panels }, { unit: 'um', verbose: false }), {
    width: 80,
    paint: (text: string) => text,
  }).replace(/\s+/gu, ' ');

test('the risk is not known on repaint alone', () => {
  const unknown = result.panels.filter(({ isRiskUnknown }) => isRiskUnknown);
  expect(unknown.map(({ comparison }) => comparison.panel.id)).toEqual(['boot']);
});

test('a panel of unknown risk that may have one more set is named with what shows the end of its clear', () => {
  const boot = panelLeft(result, 'boot');
  const others = result.panels.filter((panel) => panel !== boot);
  expect(pageOf([...others, { ...boot, verdict: 'go-on' }])).toContain(
    'Mind: boot lid: risk not known, the clear there cannot be read: look at the pad, first colour: stop.',
  );
  for (const verdict of ['stop', 'unresolved'] as const) {
    expect(pageOf([...others, { ...boot, verdict }])).not.toContain('risk not known');
  }
});
