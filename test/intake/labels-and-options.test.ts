import { describe, expect, test } from 'vitest';
import { briefs, read, values } from './helpers.ts';

describe('labels', () => {
  test('a name in two normal forms of Unicode is one, in its first spelling', () => {
    const text = 'panel,point,reading_um\nCapo\u0301,1,101\nCap\u00f3,2,99\n';
    expect(values(text)?.map(([panel]) => panel)).toEqual(['Capo\u0301', 'Capo\u0301']);
  });

  test('points 1, 01 and 1.0 are one where no panel has two of them', () => {
    const text = 'panel,point,reading_um\nroof,1,101\nboot,01,99\nboot,2.0,98\nroof,2,97\n';
    expect(values(text)?.map(([panel, point]) => [panel, point])).toEqual([
      ['roof', '1'],
      ['boot', '1'],
      ['boot', '2.0'],
      ['roof', '2.0'],
    ]);
  });

  test('where one panel has both they stay apart, and it is said', () => {
    const text = 'panel,point,reading_um\nroof,1,101\nroof,01,99\n';
    expect(values(text)?.map(([, point]) => point)).toEqual(['1', '01']);
    expect(briefs(text)).toEqual(['3:6+2 warning points-alike']);
    expect(values('panel,point,reading_um\nroof,1,101\nboot,01,99\nroof,a,9\n')?.[1]?.[1]).toBe(
      '01',
    );
  });

  test.each([
    '=1+1',
    '__proto__',
    '<b>x</b>',
    '\u001b[31mred',
    'a\u200bb',
    '\u202etxet',
    '**bold**',
    '00420000000000000001',
  ])('%j is ordinary text', (label) => {
    const text = `vehicle,panel,point,reading_um,note\n${label},roof,${label},101,${label}\n`;
    expect(read(text).value?.readings[0]).toMatchObject({
      vehicle: label,
      point: label,
      note: label,
    });
  });
});

describe('what a reading keeps besides', () => {
  test('operator, time, substrate, note and place on the panel stay as written', () => {
    const text =
      'panel,reading_um,operator,date,time,substrate,note,u,v\nroof,101,Ann,01.02.2026,14:05,steel,chip,0.5,0.25\nroof,99,,,,,,,\n';
    const [first, second] = read(text).value?.readings ?? [];
    expect(first).toMatchObject({
      ...{ operator: 'Ann', time: '01.02.2026 14:05', substrate: 'steel' },
      ...{ note: 'chip', u: '0.5', v: '0.25' },
    });
    expect(Object.keys(second ?? {})).not.toContain('operator');
  });

  test('rows marked as deleted are left out aloud, and one that says neither is refused', () => {
    const text = 'panel,point,reading_um,deleted\nroof,1,101,\nroof,2,40,x\nroof,3,99,no\n';
    expect(values(text)?.map(([, point]) => point)).toEqual(['1', '3']);
    expect(read(text).value?.excluded).toMatchObject([{ line: 3, text: '40', class: 'deleted' }]);
    expect(briefs(text)).toEqual(['3:11+1 warning reading-deleted']);
    expect(briefs('panel,reading_um,deleted\nroof,101,perhaps\n')).toEqual([
      '2:10+7 error cell-invalid',
    ]);
  });

  test('in a column of valid rows no and 0 take the row back', () => {
    const text = 'panel,reading_um,valid\nroof,101,1\nroof,40,0\nroof,99,yes\n';
    expect(values(text)?.map(([, , , value]) => value)).toEqual([101, 99]);
  });
});

describe('what the user settles by hand', () => {
  const unit = { unit: 'um' } as const;
  const asked = (...pairs: [string, string][]) => new Map(pairs);

  test('columns by name or by number', () => {
    const byName = { ...unit, columns: asked(['panel', 'a'], ['reading', 'b']) };
    expect(values('a,b\nroof,101\n', byName)).toHaveLength(1);
    const byNumber = { ...unit, columns: asked(['panel', '2'], ['reading', '3']) };
    expect(values('7,roof,101\n8,boot,99\n', byNumber)).toHaveLength(2);
    expect(values('x,y,z\n8,boot,99\n', byNumber)).toHaveLength(1);
  });

  test('a column that is not there is refused with the one that may be meant', () => {
    const { diagnostics } = read('panels,b\nroof,101\n', {
      ...unit,
      columns: asked(['panel', 'pannels'], ['reading', 'b']),
    });
    expect(diagnostics[0]).toMatchObject({
      code: 'column-missing',
      hint: 'did you mean "panels"?',
    });
    expect(briefs('a,b\nroof,1\n', { columns: asked(['pannel', 'a']) })[0]).toContain(
      'usage-option-value',
    );
  });

  test('the line of the header, and no other', () => {
    const text = 'panel,value\nold,7\npanel,reading\nroof,101\n';
    expect(values(text, { ...unit, headerLine: 3 })).toEqual([['roof', '1', 1, 101]]);
    expect(briefs(text, { ...unit, headerLine: 2 })).toEqual(['2:1+3 error header-missing']);
  });

  test('the layout, and no other', () => {
    const text = 'panel,reading\nroof,101\n';
    expect(values(text, { ...unit, layout: 'long' })).toHaveLength(1);
    expect(briefs(text, { ...unit, layout: 'wide' })[0]).toContain('error header-missing');
  });

  test('names of panels are replaced, and those that were met are told', () => {
    const text = 'Teil;Wert\nHaube;101\n';
    const panelNames = asked(['Haube', 'bonnet'], ['Dach', 'roof']);
    const { value } = read(text, { ...unit, panelNames });
    expect(value?.readings.map(({ panel }) => panel)).toEqual(['bonnet']);
    expect([...(value?.panelsSeen ?? [])]).toEqual(['haube']);
  });

  test('two columns of one meaning where their texts are read as one', () => {
    const text = 'a,b,c,d\nroof,101,1 May,10:00\n';
    const columns = new Map<string, string | readonly string[]>([
      ['panel', 'a'],
      ['reading', 'b'],
      ['time', ['c', 'd']],
    ]);
    expect(read(text, { ...unit, columns }).value?.readings[0]?.time).toBe('1 May 10:00');
  });
});
