/** Letters stand for steps: README says that panels with the same steps share one. */
import { describe, expect, test } from 'vitest';
import type { PanelPlan, Verdict } from '../../src/correction/plan/plan.ts';
import { textOf } from '../../src/report/model.ts';
import { groupBlocks, lettered } from '../../src/report/plan/plan-groups.ts';

const planned = (verdict: Verdict, sets: number, expected: number): PanelPlan =>
  ({
    verdict,
    steps: [{ combination: { id: 'da/foam-soft/fine' }, sets }],
    removal: { median: 1, low: 0.4, high: 2.5 },
    expected,
    risk: 0.03,
  }) as unknown as PanelPlan;

const all = [planned('polish', 2, 0.88), planned('lighter', 2, 0.76), planned('polish', 3, 0.9)];

describe('panels with the same steps', () => {
  test('share a letter, whatever those steps come to on each', () => {
    const groups = lettered(all);
    expect(groups.map(({ letter, plans }) => [letter, plans.length])).toEqual([
      ['A', 2],
      ['B', 1],
    ]);
  });

  test('are told with the steps once, and a line for each verdict', () => {
    const lines = lettered(all).flatMap((group) => groupBlocks(group, 'um'));
    expect(
      lines.map((block) =>
        block.kind === 'paragraph'
          ? [block.label, textOf(block.text).replaceAll('\u00a0', ' ')]
          : block,
      ),
    ).toEqual([
      [
        'A polish',
        '2× da/foam-soft/fine: takes 1.00 µm (0.4–2.5, counted in the risk), clears 88 %, risk 3 %',
      ],
      ['A lighter', 'the same steps: takes 1.00 µm (0.4–2.5), clears 76 %, risk 3 %'],
      ['B polish', '3× da/foam-soft/fine: takes 1.00 µm (0.4–2.5), clears 90 %, risk 3 %'],
    ]);
  });
});
