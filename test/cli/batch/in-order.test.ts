import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inOrder, type Runner } from '../../../src/cli/batch/in-order.ts';

/** Runners that take as many turns of the event loop as a job says. */
function runners(count: number, seen: { running: number; most: number }): Runner<number, number>[] {
  return Array.from({ length: count }, () => async (turns) => {
    seen.running += 1;
    seen.most = Math.max(seen.most, seen.running);
    for (let k = 0; k < turns; k += 1) await new Promise(setImmediate);
    seen.running -= 1;
    return turns;
  });
}

describe('jobs done by several', () => {
  test('come out in the order they went in, however long each takes', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.integer({ min: 0, max: 12 }), { maxLength: 40 }),
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 1, max: 4 }),
        async (jobs, count, each) => {
          const seen = { running: 0, most: 0 };
          const taken: number[] = [];
          await inOrder(jobs, runners(count, seen), each * count, async (done) => {
            taken.push(done);
            return true;
          });
          expect(taken).toEqual(jobs);
          expect(seen.most).toBeLessThanOrEqual(count);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('never wait for their turn in a greater number than is allowed', async () => {
    let begun = 0;
    let taken = 0;
    let most = 0;
    const slowFirst: Runner<number, number> = async (job) => {
      begun += 1;
      most = Math.max(most, begun - taken);
      for (let k = 0; k < (job === 0 ? 200 : 1); k += 1) await new Promise(setImmediate);
      return job;
    };
    await inOrder([...Array(60).keys()], [slowFirst, slowFirst], 8, async () => {
      taken += 1;
      return true;
    });
    expect(taken).toBe(60);
    expect(most).toBe(8);
  });

  test('are not begun any more once the taker wants no more', async () => {
    const begun: number[] = [];
    const run: Runner<number, number> = async (job) => {
      begun.push(job);
      return job;
    };
    const taken: number[] = [];
    await inOrder([...Array(50).keys()], [run], 1, async (done) => {
      taken.push(done);
      return done < 3;
    });
    expect(taken).toEqual([0, 1, 2, 3]);
    expect(begun.length).toBeLessThan(8);
  });

  test('tell the fault of one that breaks, after those before it are taken', async () => {
    const taken: number[] = [];
    const run: Runner<number, number> = async (job) => {
      if (job === 2) throw new Error('broke');
      return job;
    };
    const all = inOrder([0, 1, 2, 3], [run, run], 8, async (done) => {
      taken.push(done);
      return true;
    });
    await expect(all).rejects.toThrow('broke');
    expect(taken).toEqual([0, 1]);
  });
});
