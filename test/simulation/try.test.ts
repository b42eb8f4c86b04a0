import { it } from 'vitest';
import { runCars, elevenPanels } from './run-cars.ts';
it('tries', () => {
  console.log(elevenPanels.panels.length);
  const base = { clearMean: 42, underMean: 70, softness: 1, film: 'normal' } as const;
  for (const clearSpread of ['panel-means', 'points'] as const)
    for (const carShare of [0, 0.5, 1])
      for (const underMean of [70, 60]) {
        const t = Date.now();
        const o = runCars({ ...base, clearSpread, carShare, underMean }, 300, 1);
        console.log(clearSpread, carShare, underMean, 'worked', (o.worked / o.panels).toFixed(3), 'breach', (100 * o.breached / o.worked).toFixed(2), 'already', (100*o.alreadyUnder/o.worked).toFixed(2), 'stated', (100 * o.statedRisk).toFixed(2), 'free', o.free, (o.freeWorked / o.free).toFixed(3), 'polish', (o.freePolish/o.free).toFixed(3), Date.now() - t, 'ms');
      }
}, 600000);
