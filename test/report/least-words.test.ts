import { expect, test } from 'vitest';
import { filmModel } from '../../src/formats/models.ts';
import { askLeastcut } from '../cli/ask-leastcut.ts';

test('the page and explain say of the thinnest credible film how much is thicker and how sure that is', async () => {
  const { content, confidence } = filmModel.tolerance;
  expect([content, confidence]).toEqual([0.95, 0.95]);
  const [page, word] = await Promise.all([
    askLeastcut(['survey', 'samples/sound-saloon/readings.csv']),
    askLeastcut(['explain', 'least']),
  ]);
  expect(page.out.replaceAll(/\s+/g, ' ')).toContain('least (‹): 95 % is thicker (95 % sure);');
  expect(word.out.replaceAll(/\s+/g, ' ')).toContain('exceeds, with 95 % confidence');
});
