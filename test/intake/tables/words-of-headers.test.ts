import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

test.each(['Coating (µm)', 'Lack (µm)', 'Peinture (µm)', 'Valeur mesurée (µm)', 'Измерено (мкм)'])(
  '%s holds the readings where no other column does',
  (heading) => expect(values(`Panel;${heading}\nbonnet;118,1\nroof;132,4\n`)).toHaveLength(2),
);

test('a heading in two languages is known where both mean the same', () => {
  const text = 'Bauteil / Panel;Punkt / Point;Schichtdicke / Thickness (µm)\nbonnet;1;117\n';
  expect(values(text)).toEqual([['bonnet', '1', 1, 117]]);
  expect(briefs(text.replace('Bauteil / Panel', 'Datum / Panel'))[0]).toContain('column-missing');
});

test('a number behind a semicolon and a comma is no heading of a comma file', () => {
  const text = 'Panel;This (µm);That (µm)\nbonnet;118,1;2\nroof;132,4;3\n';
  expect(briefs(text)).toEqual(['1:1+5 error column-missing']);
});

test('the one column in a unit of film is taken for the readings, whatever it is called, and told', () => {
  const text = (name: string) => `Panel;${name} (µm)\nbonnet;118,1\nroof;132,4\n`;
  expect(briefs(text('Something'))).toEqual(['1:7+14 warning reading-doubted']);
  expect(values(text('Something'))?.map((one) => one[3])).toEqual([118.1, 132.4]);
  expect(values(text('Mean'))).toBeUndefined();
  expect(values(text('Limit'))).toBeUndefined();
  expect(values(text('Something (µm);Other'))).toBeUndefined();
});

test('the rows that a database says it wrote are no row', () => {
  const text = 'panel|point|reading_um\nroof|1|104\nroof|2|106\n(2 rows)\n';
  expect(briefs(text)).toEqual(['4:1+8 warning line-left-out']);
});

test.each([
  ['Teil;Punkt;Stärke µm'],
  ['Osa;Piste;Paksuus (µm)'],
  ['Elem;Pont;Rétegvastagság (µm)'],
  ['Τμήμα;Σημείο;Πάχος (μm)'],
])('%s are a panel, a point and a reading', (header) => {
  expect(values(`${header}\nbonnet;1;112,4\n`)).toEqual([['bonnet', '1', 1, 112.4]]);
});

test.each([
  ['اللوحة;النقطة;السماكة (µm)'],
  ['القطعة;رقم النقطة;القراءة (ميكرون)'],
  ['חלק;נקודה;עובי (µm)'],
  ['Τμήμα;Σημείο;Ένδειξη (μm)'],
  ['Parça;Nokta;Kalınlık (mikron)'],
  ['Element;Numer punktu;Grubość warstwy (µm)'],
  ['Díl;Číslo bodu;Naměřená hodnota (µm)'],
  ['Elem;Mérőpont;Mérési eredmény (µm)'],
  ['Panou;Punct;Citire (µm)'],
  ['Detalj;Mätpunkt;Tjocklek (µm)'],
  ['Del;Målepunkt;Tykkelse (µm)'],
  ['Karosseridel;Målepunkt;Lakktykkelse (µm)'],
  ['Osa;Mittauspiste;Kerrospaksuus (µm)'],
  ['Peça;Ponto;Espessura (µm)'],
  ['Деталь;№ точки;Показание, мкм'],
])('%s are a panel, a point and a reading too', (header) => {
  expect(briefs(`${header}\nbonnet;1;112,4\n`)).toEqual([]);
  expect(values(`${header}\nbonnet;1;112,4\n`)).toEqual([['bonnet', '1', 1, 112.4]]);
});

test('Arabic digits with their decimal mark are read', () => {
  expect(values('اللوحة;النقطة;السماكة (µm)\nbonnet;١;٨٣٫٣\n')?.map((one) => one[3])).toEqual([
    83.3,
  ]);
});

test('a word for a layer is the reading where it carries a unit of film, and a layer where it does not', () => {
  const inUnit = "Bauteil;Stelle;Schicht (µm)\nbonnet;1;1'727.7\nbonnet;2;139.7\n";
  expect(values(inUnit)?.map((one) => one[3])).toEqual([1727.7, 139.7]);
  expect(briefs(inUnit)).toEqual(['1:16+12 warning reading-doubted']);
  const layers = 'Bauteil;Schicht;µm\nbonnet;1;104\nbonnet;2;139\n';
  expect(read(layers).value?.decisions.columns.get('layer')).toEqual(['Schicht']);
});

test.each(['S1;S2', '測定1;測定2', '测量1;测量2'])('%s count the readings of a panel', (names) => {
  expect(values(`Panel;${names}\nroof;4.9 mil;3.5 mil\nboot;4.1 mil;4.3 mil\n`)).toHaveLength(4);
});
