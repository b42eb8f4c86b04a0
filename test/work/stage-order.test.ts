import { describe, expect, it } from 'vitest';
import { stagePairs, stageRules } from '../../src/formats/data/stage-rules.ts';
import { stageFacts } from '../../src/formats/data/stages.ts';
import { readJob } from '../../src/formats/job/read-job.ts';
import { workModel } from '../../src/formats/models.ts';
import { type JobScope, usualScope } from '../../src/work/job-scope.ts';
import { orderedStages, orderFaults, unsaidPolishing } from '../../src/work/stage-order.ts';

const everything = stageFacts.map(({ id }) => id);
const rules = { rules: stageRules, pairs: stagePairs };

/** The same order with one stage moved to just before another. */
const moved = (order: readonly string[], stage: string, before: string): readonly string[] =>
  order.filter((id) => id !== stage).flatMap((id) => (id === before ? [stage, id] : [id]));

const scopes: readonly JobScope[] = (['on', 'off', 'none'] as const).flatMap((wheels) =>
  (['full', 'chemical', 'clay', 'none'] as const).flatMap((decontamination) =>
    (['none', 'wax', 'sealant', 'coating'] as const).flatMap((protection) =>
      [true, false].map((all) => ({
        ...usualScope,
        wheels,
        decontamination,
        protection,
        trim: all,
        interior: all,
        engineBay: all,
        shuts: all,
        glass: all,
      })),
    ),
  ),
);

describe('the usual order of a job', () => {
  it('breaks no rule, whatever the scope', () => {
    expect(scopes).toHaveLength(96);
    for (const scope of scopes) {
      const order = orderedStages(scope, workModel).map(({ id }) => id);
      expect(orderFaults(order, rules)).toEqual([]);
    }
  });

  it('names in its rules no stage that is not there', () => {
    const named = [
      ...stageRules.flatMap(({ before, after }) => [...before, ...after]),
      ...stagePairs.flatMap((pair) => [pair.stage, pair.with]),
    ];
    expect(named.filter((id) => !everything.includes(id))).toEqual([]);
  });
});

describe('an order that breaks a rule', () => {
  const planted = stageRules.flatMap(({ before, after, reason }) =>
    before.flatMap((first) => after.map((later) => ({ first, later, reason }))),
  );

  it.each(planted)('is told that $later is not before $first', ({ first, later, reason }) => {
    // Two stages alone, so that the one rule stands by itself.
    expect(orderFaults([later, first], rules)).toContainEqual({
      index: 0,
      message: `"${later}" stands before "${first}": ${reason}`,
      hint: `put "${later}" after "${first}"`,
    });
    expect(orderFaults([first, later], rules).map(({ message }) => message)).not.toContain(
      `"${later}" stands before "${first}": ${reason}`,
    );
  });

  it('is told once of a stage, behind the last of those that it must follow', () => {
    const faults = orderFaults(moved(everything, 'wax', 'cut'), rules);
    expect(faults).toMatchObject([
      {
        message: expect.stringMatching(
          /^"wax" stands before "remeasure": protection reads/,
        ) as string,
      },
    ]);
  });

  it.each(stagePairs)('is told that $stage is not done without $with', (pair) => {
    const order = everything.filter((id) => id !== pair.with);
    const messages = orderFaults(order, rules).map(({ message }) => message);
    expect(messages).toContain(`"${pair.stage}" is done and "${pair.with}" is not: ${pair.reason}`);
  });

  it('is told of a stage that stands in it twice', () => {
    const faults = orderFaults([...everything, 'wash'], rules);
    expect(faults).toMatchObject([
      { index: everything.length, message: '"wash" stands in the order twice' },
    ]);
  });

  it('is told of a polishing stage that is not in it, whose time would be lost', () => {
    const faults = unsaidPolishing(everything.filter((id) => id !== 'refine'));
    expect(faults.map(({ message }) => message)).toEqual([
      '"refine" is not in the order: the plan decides whether anything is done in it',
    ]);
  });
});

it('is told of its faults in the order in which its stages stand, whatever their kind', () => {
  // Wax stands before the cut, and the wash a second time at the end: what stands twice is looked for first.
  const order = [...moved(everything, 'wax', 'cut'), 'wash'];
  const places = orderFaults(order, rules).map(({ index }) => index);
  expect(places.length).toBeGreaterThan(1);
  expect(places).toEqual([...places].sort((a, b) => a - b));
  expect(places.at(-1)).toBe(order.length - 1);
});

describe('the order in a job file', () => {
  const job = (keys: object) =>
    readJob('job.json', JSON.stringify({ schema: 'leastcut/job/1', ...keys }, null, 2));
  const usual = orderedStages(usualScope, workModel).map(({ id }) => id);

  it('is taken where it breaks no rule', () => {
    expect(job({ order: usual }).value?.value.order).toEqual(usual);
  });

  it('is refused with the reason where the stage stands', () => {
    const { value, diagnostics } = job({ order: moved(usual, 'wax', 'remeasure') });
    expect(value).toBeUndefined();
    const [first] = diagnostics;
    expect(first?.code).toBe('stage-order');
    expect(first?.message).toBe(
      '"wax" stands before "remeasure": protection reads as film: never measure after it',
    );
    // Line 3 opens the list; each stage stands on a line of its own.
    expect(first?.at?.line).toBe(4 + usual.indexOf('remeasure'));
    expect(first?.at?.column).toBe(5);
  });

  it('is refused where it does what the scope leaves out', () => {
    const { diagnostics } = job({ scope: { protection: 'none' }, order: usual });
    expect(diagnostics.map(({ message }) => message)).toEqual([
      '"wax" is in the order and the scope leaves it out',
    ]);
  });

  it('is refused where it leaves out what the scope asks for', () => {
    const { diagnostics } = job({ scope: { interior: true }, order: usual });
    expect(diagnostics.map(({ message }) => message)).toEqual([
      'the scope asks for "interior" and the order leaves it out',
    ]);
  });

  it('may leave out what nobody asked for in so many words', () => {
    expect(job({ order: usual.filter((id) => id !== 'shuts') }).diagnostics).toEqual([]);
  });

  it('is refused where a stage is misspelt, with the one that was meant', () => {
    const { diagnostics } = job({ order: ['recrod'] });
    expect(diagnostics[0]?.code).toBe('settings-invalid');
    expect(diagnostics[0]?.hint).toContain('"record"');
  });
});
