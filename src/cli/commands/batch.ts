import { runBatch, usualCommand } from '../batch/run-batch.ts';
import type { Command } from '../command.ts';
import { readingOptions } from '../options.ts';

export const batchCommand: Command = {
  name: 'batch',
  summary: 'survey, plan or quote many vehicles: a record for each, in parallel',
  operands: '<list | folder | readings.csv> | -',
  options: [
    'command',
    'workers',
    'resume',
    'failFast',
    'summary',
    'reorder',
    'shop',
    'template',
    'gauge',
    'rates',
    'history',
    'aim',
    'riskPct',
    'floorUm',
    'policy',
    'finish',
    ...readingOptions,
  ],
  formats: ['ndjson', 'csv', 'text', 'md', 'html'],
  examples: [
    `leastcut batch samples/week/jobs.csv --command ${usualCommand} --shop samples/shop.json`,
    'leastcut batch samples/week/jobs.csv --shop samples/shop.json --format text',
    'leastcut batch samples/week/jobs.csv --command survey --format csv',
    'cat samples/sound-saloon/readings.csv | leastcut batch - --command survey --workers 2',
  ],
  run: async () => {
    throw new Error('a batch is streamed');
  },
  stream: runBatch,
};
