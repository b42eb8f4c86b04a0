import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { removalLogSd } from '../../../src/correction/removal/removal-knowledge.ts';
import { logSdAfterSpot } from '../../../src/correction/spot/test-spot-forecast.ts';
import { correctionModel } from '../../../src/formats/models.ts';

describe('what a test spot would teach', () => {
  it('narrows a removal from what is known before any', () => {
    const after = logSdAfterSpot(correctionModel, micrometres(1.5));
    expect(after).toBeLessThan(removalLogSd(correctionModel.removal));
    expect(after).toBeGreaterThan(correctionModel.removal.stepLogSd);
  });
  it('is the less, the more the gauge scatters', () => {
    const [fine, coarse] = [0.5, 3].map((sd) => logSdAfterSpot(correctionModel, micrometres(sd)));
    expect(fine).toBeLessThan(coarse ?? 0);
  });
  it('comes to nothing with a gauge that cannot see two sets', () => {
    const blind = logSdAfterSpot(correctionModel, micrometres(1e6));
    expect(blind).toBeCloseTo(removalLogSd(correctionModel.removal), 6);
  });
});
