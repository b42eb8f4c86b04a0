/** Letters stand for steps: README says that panels with the same steps share one. */
import { describe, expect, test } from 'vitest';
import type { PanelPlan, Verdict } from '../../src/correction/plan/plan.ts';
import { lettered, stepsTable } from '../../src/report/plan/plan-groups.ts';

const planned = (verdict: Verdict, sets: number, expected: number): PanelPlan =>
  ({
    verdict,
    steps: [{ combination: { id: 'da/foam-soft/fine' }, sets }],
    removal: { median: 1, low: 0.4, high: 2.5 },
    expected,
    risk: 0.03,
  }) as unknown as PanelPlan;

const all = [planned('polish', 2, 0.88), planned('lighter', 2, 0.76), planned('polish', 3, 0.9)];

const rowsOf = (groups: ReturnType<typeof lettered>) => {
  const table = stepsTable(groups, 'um');
  if (table.kind !== 'table') throw new TypeError(table.kind);
  return table.rows.map((row) =>
    row.map((one) => (one.kind === 'text' ? one.text.replaceAll('\u00a0', ' ') : one.kind)),
  );
};

describe('panels with the same steps', () => {
  test('share a letter, whatever those steps come to on each', () => {
    const groups = lettered(all);
    expect(groups.map(({ letter, plans }) => [letter, plans.length])).toEqual([
      ['A', 2],
      ['B', 1],
    ]);
  });

  test('are told in one row, in which only the share of marks cleared may be a range', () => {
    const [, ...alone] = lettered([planned('polish', 2, 0.88), planned('polish', 3, 0.86)]);
    const same = lettered([planned('polish', 2, 0.88), planned('polish', 2, 0.86)]);
    expect(rowsOf(alone)).toEqual([['B', '3× da/foam-soft/fine', '1.00 (0.4–2.5)', '86 %', '3 %']]);
    expect(rowsOf(same)).toEqual([
      ['A', '2× da/foam-soft/fine', '1.00 (0.4–2.5)', '86–88 %', '3 %'],
    ]);
  });

  test('have a row for each verdict where these differ', () => {
    expect(rowsOf(lettered(all)).map(([letter, , , clears]) => [letter, clears])).toEqual([
      ['A polish', '88 %'],
      ['A lighter', '76 %'],
      ['B', '90 %'],
    ]);
  });

  test('have a row for each paint on which they take something else, and for a risk that nobody knows', () => {
    const own = { ...planned('polish', 2, 0.87), removal: { median: 1.5, low: 0.6, high: 3.8 } };
    const unknown = { ...planned('polish', 2, 0.87), risk: null };
    const named = [planned('polish', 2, 0.88), own, unknown].map((plan, i) => ({
      ...plan,
      survey: { panel: { name: ['bonnet', 'tailgate', 'roof'][i] } },
    })) as unknown as readonly PanelPlan[];
    expect(rowsOf(lettered(named))).toEqual([
      ['A', '2× da/foam-soft/fine (bonnet)', '1.00 (0.4–2.5)', '88 %', '3 %'],
      ['A', '2× da/foam-soft/fine (tailgate)', '1.50 (0.6–3.8)', '87 %', '3 %'],
      ['A', '2× da/foam-soft/fine (roof)', '1.00 (0.4–2.5)', '87 %', 'not known'],
    ]);
  });
});
