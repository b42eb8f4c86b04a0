import { expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

test('"Min" beside an hour is a minute, and no least value', () => {
  const text =
    'Hour,Min,Panel,Point,um\n10,11,bonnet,1,112.4\n10,11,bonnet,2,109.1\n10,12,roof,1,98.6\n';
  expect(values(text)?.map((own) => own[3])).toEqual([112.4, 109.1, 98.6]);
  expect(briefs(text).join()).not.toContain('statistics');
});

test('"Min" without an hour beside it is held against the readings', () => {
  const text = 'Panel,Point,um,Min\nbonnet,1,112.4,11.5\nbonnet,2,109.1,11.5\nroof,1,98.6,12.5\n';
  expect(briefs(text).join()).toContain('error statistics-disagree');
});

test('so it is beside "Heure" among columns of a day and a month, and not without them', () => {
  const dated =
    'Mois;Jour;Heure;Min;Pièce;Point;Épaisseur (µm)\n11;24;9;14;roof;1;107,4\n11;24;9;17;roof;2;97,9\n';
  expect(values(dated)?.map((own) => own[3])).toEqual([107.4, 97.9]);
  const undated = 'Heure;Min;Pièce;Point;Épaisseur (µm)\n9;14;roof;1;107,4\n9;17;roof;2;97,9\n';
  expect(briefs(undated).join()).toContain('error statistics-disagree');
});
