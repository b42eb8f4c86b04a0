import { describe, expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const told = (text: string): string => read(text).value?.decisions.evidence.join('; ') ?? '';

describe('two columns that name one thing twice are read by one of them', () => {
  test('a code of each panel beside its name', () => {
    const text = 'part,panel,point,µm\nP01,roof,1,137\nP01,roof,2,139\nP02,bonnet,1,111\n';
    expect(values(text)?.map(([panel]) => panel)).toEqual(['roof', 'roof', 'bonnet']);
    expect(told(text)).toContain('"part" is a second name of what "panel" names');
    expect(briefs(text)).toEqual(['1:1+4 warning column-unknown']);
  });

  test('a place of each point beside its number', () => {
    const text = 'panel,position,point,µm\nroof,left,1,137\nroof,right,2,139\nboot,left,1,111\n';
    expect(values(text)?.map(([, point]) => point)).toEqual(['1', '2', '1']);
  });

  test('a vehicle’s plate beside its identity', () => {
    const text = 'VIN,Reg,panel,µm\nWX1,AB 1,roof,137\nWX1,AB 1,boot,139\n';
    expect(read(text).value?.readings.map(({ vehicle }) => vehicle)).toEqual(['WX1', 'WX1']);
  });

  test('one unit in two columns', () => {
    expect(values('panel,reading,unit,unit\nroof,137,um,µm\nboot,139,um,µm\n')).toHaveLength(2);
  });

  test.each([
    ['a side beside a panel', 'zone,panel,point,µm\nleft,roof,1,137\nright,roof,1,139\n'],
    ['words beside a panel', 'zone,panel,point,µm\nleft,roof,1,137\nright,boot,1,139\n'],
    ['points at an edge', 'panel,position,point,µm\nroof,edge,1,137\nroof,face,2,139\n'],
    ['a length in its unit', 'panel,position (mm),point,µm\nroof,92,1,137\nroof,96,2,139\n'],
    ['points under points', 'panel,spot,point,µm\nroof,1,1,137\nroof,1,2,139\nroof,2,1,127\n'],
    ['two units', 'panel,reading,unit,unit\nroof,137,um,mil\nboot,139,um,mil\n'],
    ['vehicles that differ', 'VIN,Reg,panel,µm\nWX1,AB 1,roof,137\nWX1,AB 2,boot,139\n'],
  ])('and %s is no second name', (_, text) => {
    expect(values(text)).toBeUndefined();
    expect(briefs(text).join()).toContain('column-repeated');
  });
});
