import { describe, expect, it } from 'vitest';
import { readHistoryFile } from '../../src/intake/read-history-file.ts';

const stages = ['wash', 'clay', 'cut'];
const read = (text: string) =>
  readHistoryFile({ name: 'hours.csv', bytes: new TextEncoder().encode(text) }, stages);
const messages = (text: string) => read(text).diagnostics.map(({ message }) => message);

describe('a table of hours', () => {
  it('is read row by row; a row without a stage is of the whole job', () => {
    const text =
      'job,stage,estimated_min,actual_min,date\nA,,600,650,2026-01-12\nA,clay,40,55.5,\n';
    expect(read(text)).toEqual({
      value: [
        { job: 'A', stage: null, estimated: 600, actual: 650 },
        { job: 'A', stage: 'clay', estimated: 40, actual: 55.5 },
      ],
      diagnostics: [],
    });
  });

  it('may leave the column of stages out, and be of another dialect', () => {
    const { value } = read('job;estimated_min;actual_min\nA;600,5;650\n');
    expect(value).toEqual([{ job: 'A', stage: null, estimated: 600.5, actual: 650 }]);
  });

  it('takes a time with its unit behind it', () => {
    expect(read('job,estimated_min,actual_min\nA,600 min,650\n').value?.[0]?.estimated).toBe(600);
  });

  it.each([
    ['A,,600,0', '"0" is not a time in minutes'],
    ['A,,600,-5', '"-5" is not a time in minutes'],
    ['A,,600,50000', '"50000" is not a time in minutes'],
    ['A,,600,long', '"long" is not a time in minutes'],
    ['A,,10 h,650', '"10 h" is not a time in minutes'],
    ['A,,,650', '"" is not a time in minutes'],
    ['A,waxing,600,650', '"waxing" is not a stage of a job'],
    [',,600,650', 'the row names no job'],
  ])('refuses the row %s', (row, message) => {
    expect(messages(`job,stage,estimated_min,actual_min\n${row}\n`)).toEqual([message]);
  });

  it('refuses a number that may be read in two ways', () => {
    expect(read('job,estimated_min,actual_min\nA,"1.234",650\n').value).toBeUndefined();
  });

  it('refuses a table without its columns', () => {
    expect(read('job,hours\nA,10\n').value).toBeUndefined();
  });
});
