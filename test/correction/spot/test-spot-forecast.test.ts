import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { CorrectionModel } from '../../../src/correction/removal/catalogue.ts';
import { ladder } from '../../../src/correction/removal/combination.ts';
import { removalLogSd } from '../../../src/correction/removal/removal-knowledge.ts';
import { logSdAfterSpot, spotTakes } from '../../../src/correction/spot/test-spot-forecast.ts';
import { correctionModel } from '../../../src/formats/models.ts';

/** A shop of one machine, one product and some pads, of which a set takes .8965 µm with the medium one. */
const withPads = (...pads: readonly string[]): CorrectionModel => ({
  ...correctionModel,
  machines: correctionModel.machines.filter(({ id }) => id === 'da'),
  products: correctionModel.products.filter(({ id }) => id === 'medium'),
  pads: correctionModel.pads.filter(({ id }) => pads.includes(id)),
});
const nothing: CorrectionModel = { ...correctionModel, machines: [] };

describe('what a test spot would teach', () => {
  it('narrows a removal from what is known before any', () => {
    const after = logSdAfterSpot(correctionModel, micrometres(1.5));
    expect(after).toBeLessThan(removalLogSd(correctionModel.removal));
    expect(after).toBeGreaterThan(correctionModel.removal.stepLogSd);
  });

  it('is by linear theory what ten marks and two sets tell of a rate, and the next step’s own (by hand)', () => {
    // Before .35² + .4² = .2825. Ten marks: 1.5·√.2/(2·.8965) = .37413; observed .37413² + .15² = .16247.
    // .2825·.16247/(.2825 + .16247) = .10315; + .0225 = .12565.
    const after = logSdAfterSpot(withPads('foam-medium'), micrometres(1.5));
    expect(after).toBeCloseTo(Math.sqrt(0.12565), 4);
  });

  it('is the less, the more the gauge scatters', () => {
    const [fine, coarse] = [0.5, 3].map((sd) => logSdAfterSpot(correctionModel, micrometres(sd)));
    expect(fine).toBeLessThan(coarse ?? 0);
  });

  it('comes to nothing with a gauge that cannot see two sets, and in a shop that polishes with nothing', () => {
    const blind = logSdAfterSpot(correctionModel, micrometres(1e6));
    expect(blind).toBeCloseTo(removalLogSd(correctionModel.removal), 6);
    expect(logSdAfterSpot(nothing, micrometres(1.5))).toBeCloseTo(
      removalLogSd(correctionModel.removal),
      12,
    );
  });
});

describe('what a test spot takes off its patch', () => {
  it('is two sets of the middle of the ladder', () => {
    expect(spotTakes(withPads('foam-medium'))).toBeCloseTo(2 * 0.8965, 3);
    const three = withPads('foam-soft', 'foam-medium', 'wool');
    expect(ladder(three)).toHaveLength(3);
    expect(spotTakes(three)).toBeCloseTo(2 * (ladder(three)[1]?.perSet ?? 0), 12);
  });

  it('is not known in a shop that polishes with nothing', () => {
    expect(spotTakes(nothing)).toBeNull();
  });
});
