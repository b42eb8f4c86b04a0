/** What more points and a gauge without error would free of a panel that may be nothing but what its word says. */
import { expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { NO_SIDES } from '../../../src/film/condition/possible-sides.ts';
import { whatWouldHelp } from '../../../src/film/help/what-would-help.ts';
import { budgetOf } from '../../../src/film/limits/allowance.ts';
import { clearChain } from '../../../src/film/limits/thin-clear.ts';
import type { PanelFilm } from '../../../src/film/panel-film.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { amongSound, fiveAround, standardTerms } from '../car-builder.ts';

const helpOf = (code: string) => {
  const found = { ...amongSound(fiveAround('tested', 106)).panel, sides: NO_SIDES };
  const { film, topcoat } = found;
  if (film === null || topcoat === null) throw new Error('a panel of factory film was read');
  const panel = { ...found, film, topcoat };
  const help = whatWouldHelp(
    panel,
    {
      removal: standardTerms,
      logSdAfterSpot: standardTerms.logSd,
      spotTakes: null,
      withZinc: null,
      gaugeKnown: false,
      readAgain: () => [],
    },
    filmModel,
  );
  return { panel, help: help.find((one) => one.code === code) };
};

test('nine points in place of five are four degrees of freedom more, of the same mean and spread', () => {
  const { panel, help } = helpOf('points');
  const { film } = panel;
  const nine: PanelFilm = {
    ...film,
    count: 9,
    spread: { sd: film.spread.sd, dof: film.spread.dof + 4 },
  };
  const conditions = [panel.condition];
  const then = budgetOf({ ...panel, conditions, film: nine }, standardTerms, filmModel);
  expect([film.count, conditions[0], help?.points]).toEqual([5, 'original', 9]);
  expect(help?.gain).toBeGreaterThan(0.01);
  expect(help?.gain).toBeCloseTo(then - panel.budget, 9);
});

test('the gauge has the share of the doubt that the topcoat loses without its error, the budget having gone', () => {
  const { panel, help } = helpOf('gauge');
  const { told } = panel.topcoat;
  const varianceOf = (film: typeof told.film): number =>
    clearChain(film, told.knowledge, filmModel.topcoat).onThinnest.sd ** 2;
  const all = varianceOf(told.film);
  const without = (away: Partial<typeof told.film>): number =>
    varianceOf({ ...told.film, ...away });
  const exact = { calibration: micrometres(0) };
  const certain = { spread: { ...told.film.spread, dof: Number.POSITIVE_INFINITY } };
  const everywhere = { count: Number.POSITIVE_INFINITY };
  const growth = Math.exp(standardTerms.logSd ** 2);
  const removal = panel.budget ** 2 * growth * (growth - 1);
  const gauge = all - without(exact);
  const rest = 2 * all - without(certain) - without(everywhere);
  const sum = gauge + rest + removal + without({ ...exact, ...certain, ...everywhere });
  expect(help?.doubtShare).toBeGreaterThan(0);
  expect(help?.doubtShare).toBeCloseTo(gauge / sum, 9);
});
