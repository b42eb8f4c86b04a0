import { describe, expect, it } from 'vitest';
import { saying } from '../../src/base/remark.ts';
import { tell } from '../../src/base/sentence.ts';
import { micrometres } from '../../src/base/units.ts';
import type { Overrun } from '../../src/film/film-model.ts';
import { overrunNotes, withOverrunsTold } from '../../src/film/overrun-note.ts';
import type { PanelSurvey } from '../../src/film/survey.ts';
import { amongSound, fiveAround } from './car-builder.ts';

const told = (
  allowed: number | null,
  paintedDaysAgo: number | null = null,
  surely = true,
  budget = 1,
): readonly string[] => {
  const overrun: Overrun = {
    date: '2026-03-31',
    mean: micrometres(6.2),
    sd: micrometres(0.4),
    allowed: allowed === null ? null : micrometres(allowed),
    surely,
  };
  const recorded = { mean: micrometres(6.2), sd: micrometres(0.4), overruns: [overrun] };
  const facts = { recorded, paintedDaysAgo };
  return overrunNotes({ facts, budget: micrometres(budget) }).map((note) =>
    tell(saying(note), 'um'),
  );
};

describe('what is said of a panel that lost more than might go at a visit on record', () => {
  it('says perhaps where what was measured may be off by as much', () => {
    expect(told(6, null, false)[0]).toContain('on 2026-03-31 perhaps more came off than might go');
    expect(told(6)[0]).toContain('on 2026-03-31 more came off than might go');
  });

  it('names what might go, that nothing might, or neither where nobody said', () => {
    expect(told(2.8)[0]).toContain('6.2 ± 0.4 µm (SD) where 2.80 µm might: its limits count that');
    expect(told(0)[0]).toContain('6.2 ± 0.4 µm (SD) where nothing might: its limits count that');
    expect(told(null)[0]).toContain('6.2 ± 0.4 µm (SD): its limits count that');
  });

  it('tells how it is worked only where something may go', () => {
    expect(told(6)[0]).toContain('is not on record, so if it is worked, read marked points');
    expect(told(6, null, true, 0)[0]).toMatch(/what took so much is not on record$/u);
  });

  it('is told anew by what may go once a test spot has freed the panel, or stopped it', () => {
    const [first] = amongSound(fiveAround('tested', 112)).survey.panels;
    if (first === undefined) throw new Error('there is a panel');
    const overrun: Overrun = {
      date: '2026-03-31',
      mean: micrometres(6.2),
      sd: micrometres(0.4),
      allowed: micrometres(6),
      surely: true,
    };
    const recorded = { mean: micrometres(6.2), sd: micrometres(0.4), overruns: [overrun] };
    const facts = { ...first.facts, recorded };
    const evidence = [...first.evidence, ...overrunNotes({ facts, budget: micrometres(0) })];
    const stopped = { ...first, facts, evidence, budget: micrometres(0) };
    const textOf = (panel: PanelSurvey) =>
      panel.evidence.filter(({ code }) => code === 'overrun-on-record').map((one) => one.text);
    const freed = withOverrunsTold({ ...stopped, budget: micrometres(1) });
    expect(textOf(stopped)[0]).not.toContain('so if it is worked');
    expect(textOf(freed)[0]).toContain('so if it is worked');
    expect(freed.evidence).toHaveLength(stopped.evidence.length);
    expect(withOverrunsTold(first)).toBe(first);
    const untold = { ...stopped, evidence: first.evidence };
    expect(withOverrunsTold(untold)).toBe(untold);
  });

  it('is nothing where it was painted since', () => {
    expect(told(2.8, 200)).toEqual([]);
  });
});
