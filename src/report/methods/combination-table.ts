/** What combinations take in a set, mildest first. */
import { figure, shown } from '../../base/rounding.ts';
import { unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { MethodChain } from '../../correction/removal/method.ts';
import { column, figures } from '../columns.ts';
import { joined } from '../facts.ts';
import { type Block, cell, type Facts } from '../model.ts';
import { basisOf, rangeText, stagesText } from './method-words.ts';

export const rangeLegend = (unit: LengthUnit): Facts =>
  joined(
    [
      `${unitName(unit)} a set: nine cases of ten lie within, over paints as they come.`,
      'min: minutes of one set on one section, machine running.',
      'Mildest first.',
    ],
    ' ',
  );

export const combinationTable = (
  combinations: readonly MethodChain[],
  unit: LengthUnit,
): Block => ({
  kind: 'table',
  columns: [
    column('combination'),
    figures(`${unitName(unit)} a set`),
    { ...figures('min'), said: 'a set on a section takes', unit: 'min' },
    figures('haze'),
    column('stages'),
    column('basis'),
  ],
  rows: combinations.map((chain) => [
    cell(chain.combination.id),
    cell(rangeText(chain.rate, unit)),
    cell(shown(chain.sectionMinutes, 1)),
    cell(figure(chain.combination.haze)),
    cell(stagesText(chain.stages)),
    cell(basisText(chain)),
  ]),
});

/** With how many observations it was learned from. */
function basisText(chain: MethodChain): string {
  const observations = chain.learned?.observations ?? 0;
  return observations === 0 ? basisOf(chain) : `${basisOf(chain)} (${observations})`;
}
