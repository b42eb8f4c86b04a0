/** What is asked of a panel's history: never of what a record tells. */
import { describe, expect, test } from 'vitest';
import { tell } from '../../src/base/sentence.ts';
import { micrometres } from '../../src/base/units.ts';
import type { RecordedRemoval } from '../../src/film/film-model.ts';
import { type HelpTerms, whatWouldHelp } from '../../src/film/help/what-would-help.ts';
import { filmModel } from '../../src/formats/models.ts';
import { adviceOf } from '../../src/report/survey/help-lines.ts';
import { type HelpMeansOf, MEANS } from '../../src/report/survey/help-means.ts';
import { amongSound, fiveAround, standardTerms } from '../film/car-builder.ts';

const terms: HelpTerms = {
  removal: standardTerms,
  logSdAfterSpot: 0.37,
  spotTakes: micrometres(1.3),
  withZinc: null,
  gaugeKnown: true,
  readAgain: () => [],
};

function asked(recorded: RecordedRemoval | null) {
  const { panel } = amongSound(fiveAround('tested', 112), { facts: { taken: null, recorded } });
  const help = whatWouldHelp(panel, terms, filmModel);
  const advice = adviceOf(panel, new Map([[panel, help]]));
  const own = help.filter(({ code }) => code === 'history').map((one) => ({ ...one, part: panel }));
  return {
    advised: advice.find(({ code }) => code === 'history')?.text ?? '',
    means: MEANS.history(own, {} as HelpMeansOf).map((one) => tell(one, 'um'))[0],
  };
}

const taken = { mean: micrometres(2), sd: micrometres(0.5) };

describe('the history of a panel', () => {
  test('is asked for whole where nothing is on record', () => {
    const { advised, means } = asked(null);
    expect(advised).toBe(
      'find out what was polished off before (taken_um in the job); if nothing was',
    );
    expect(means).toBe('if never polished (taken_um)');
  });
  test('is asked for besides the record where there is one', () => {
    const { advised, means } = asked(taken);
    expect(advised).toBe(
      'find out what was polished off besides what is on record (taken_um in the job); if nothing was',
    );
    expect(means).toBe('if never polished but as on record (taken_um)');
  });
  test('is asked for whole where only test spots of this visit took film', () => {
    const { advised } = asked({ ...taken, by: 'test spots' });
    expect(advised).not.toContain('besides');
  });
});
