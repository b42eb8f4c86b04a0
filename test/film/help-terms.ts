/** Under which terms tests ask what would help: an untried paint, whose gauge was checked. */
import { micrometres } from '../../src/base/units.ts';
import type { HelpTerms } from '../../src/film/help/what-would-help.ts';
import { standardTerms } from './car-builder.ts';

export const helpTerms: HelpTerms = {
  removal: standardTerms,
  logSdAfterSpot: 0.37,
  spotTakes: micrometres(1.3),
  withZinc: null,
  gaugeKnown: true,
  readAgain: () => [],
};
