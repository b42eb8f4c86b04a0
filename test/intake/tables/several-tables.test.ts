import { expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

const brief = (text: string) => values(text)?.map(([panel, , , value]) => `${panel} ${value}`);

test('tables of other columns and another unit, each under a name of its own for the panels', () => {
  const text =
    'Flat panels,1 um,2 um\nbonnet,124,120\nroof,117,116\n\nUpright ones,1 mil,2 mil\nboot,4,5\ndoor front left,4,5\n';
  expect(brief(text)?.slice(0, 5)).toEqual([
    'bonnet 124',
    'bonnet 120',
    'roof 117',
    'roof 116',
    'boot 101.6',
  ]);
});

test('tables side by side, the panels of each under another name', () => {
  const text =
    'Left,1 (um),2 (um),,Right,1 (um),2 (um)\nbonnet,112,108,,boot,141,132\nroof,110,114,,door front left,148,140\n';
  expect(brief(text)?.sort()).toEqual(
    ['bonnet 112', 'bonnet 108', 'boot 141', 'boot 132', 'roof 110', 'roof 114']
      .concat(['door front left 148', 'door front left 140'])
      .sort(),
  );
});

test('a header that stands again with its columns in another order', () => {
  const text = 'Panel,1 um,2 um\nbonnet,102,101\n1 um,2 um,Panel\n143,147,roof\n';
  expect(brief(text)).toEqual(['bonnet 102', 'bonnet 101', 'roof 143', 'roof 147']);
});

test('a table of gloss below is left out aloud', () => {
  const text =
    'Panel;Dicke 1, µm;Dicke 2, µm\nbonnet;169;165\nroof;125;133\n\nPanel;Gloss 60°, GU\nbonnet;91\n';
  expect(brief(text)).toHaveLength(4);
  expect(briefs(text)).toEqual(['5:1+5 warning table-left-out']);
});

test('keys of the file below the rows are no rows', () => {
  const text =
    'Panel,1,2\nbonnet,118,114\nroof,119,121\n\nSerial,004417\nUnit,um\nProbe temp,21.5\n';
  expect(brief(text)).toEqual(['bonnet 118', 'bonnet 114', 'roof 119', 'roof 121']);
});

test('the end of a section is no row', () => {
  expect(
    brief('[Data]\nNr\tTeil\tW1\tW2\n1\tbonnet\t104\t111\n[Ende]\n'.replace('W2', 'W2 (µm)')),
  ).toHaveLength(2);
});

test('rows that all lack a cell between a reading and a temperature are refused', () => {
  const text = 'Panel,P1 (um),Temp (C),P2 (um)\nbonnet,104,21\nroof,98,101\n';
  expect(briefs(text)).toContain('2:12+2 error row-too-short');
});
