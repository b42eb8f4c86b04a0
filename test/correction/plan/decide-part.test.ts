import { describe, expect, it } from 'vitest';
import { decisionsOn } from '../../../src/correction/plan/decide-part.ts';
import { amongSound, fiveAround } from '../../film/car-builder.ts';
import { defect, shopWith, untried } from '../shop.ts';

describe('a part on which nothing is worth its film', () => {
  const { panel } = amongSound(fiveAround('tested', 60));
  const decide = decisionsOn(panel, {
    panels: [panel],
    defectsOf: () => [defect('swirl-marks', 3)],
    hazeAllowed: 1,
    paintOf: () => untried,
    allowanceAt: (part: unknown) => part,
    model: shopWith('da', 'hand'),
  } as unknown as Parameters<typeof decisionsOn>[1]);

  it('is left for the same reason under every aim, which is worked out once', () => {
    const [full, half] = [decide(0.95), decide(0.5)];
    expect(full).toMatchObject({ kind: 'none', verdict: 'leave' });
    expect(half).toBe(full);
  });
});
