/** A plan of the roof alone, by one step. */
type RoofPlan = {
  readonly sets: number;
  /** What is foretold, and how widely (as of ln). */
  readonly removal: number;
  readonly logSd: number;
  readonly budget: number;
};

export const planOfRoof = (
  { sets, removal, logSd, budget }: RoofPlan,
  besides: object = {},
): string =>
  JSON.stringify({
    schema: 'leastcut/plan/1',
    vehicle: null,
    panels: [
      {
        panel: 'roof',
        verdict: 'polish',
        steps: [{ machine: 'da', pad: 'foam-soft', product: 'fine', sets, removal_um: removal }],
        removal_um: { median: removal, high: removal * Math.exp(1.6449 * logSd) },
        budget_um: budget,
        zones: [],
        ...besides,
      },
    ],
  });
