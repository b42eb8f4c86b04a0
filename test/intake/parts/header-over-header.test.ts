import { describe, expect, test } from 'vitest';
import { read, values } from '../helpers.ts';

const isPanel = (label: string): boolean => /door|roof/iu.test(label);
const panelsAndValues = (text: string) =>
  values(text, { isPanel })?.map(([panel, , , value]) => [panel, value]);

describe('two rows of names are one header', () => {
  test('where sides are merged over panels', () => {
    const text =
      'Thickness µm;Left;;Right;\n;Front door;Rear door;Front door;Rear door\n1;121;119;118;117\n';
    expect(panelsAndValues(text)).toEqual([
      ['Left Front door', 121],
      ['Left Rear door', 119],
      ['Right Front door', 118],
      ['Right Rear door', 117],
    ]);
    expect(read(text, { isPanel }).value?.decisions.evidence.join()).toContain(
      'lines 1 and 2 name the columns together',
    );
  });

  test.each(['Panel;Readings (µm);;\n;1;2;3', 'Panel;Thickness;;\n;P1 (µm);P2 (µm);P3 (µm)'])(
    'where a name of readings is merged over their numbers: %j',
    (names) => {
      expect(panelsAndValues(`${names}\nroof;104;106;105\n`)).toEqual([
        ['roof', 104],
        ['roof', 106],
        ['roof', 105],
      ]);
    },
  );

  test('and not where the lower has numbers that do not count', () => {
    expect(values('Panel;Readings (µm);;\n;104;106;105\nroof;104;106;105\n')).toBeUndefined();
  });
});
